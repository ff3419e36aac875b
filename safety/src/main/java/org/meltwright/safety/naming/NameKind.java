// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.naming;

import java.util.Locale;
import org.meltwright.units.Messages;

/**
 * What sort of thing a name of the list stands for.
 *
 * <p>A rule on solvents asks for one kind:
 *
 * <pre>{@code
 * NameKind kind = HazardNames.ofName("Brennspiritus").get(0).hazard().kind(); // SOLVENT
 * kind.label(Locale.GERMAN); // ein Lösemittel
 * kind.id(); // solvent
 * }</pre>
 */
public enum NameKind {
  /** A pigment that the name decides. */
  PIGMENT("pigment"),
  /** A metal as powder. */
  METAL_POWDER("metal-powder"),
  /** A mineral whose dust harms the lungs. */
  MINERAL_DUST("mineral-dust"),
  /** A name of several things: the worst of them holds until a number says which. */
  AMBIGUOUS_NAME("ambiguous-name"),
  /** A drier for oils, or a salt of a metal that serves as one. */
  DRIER("drier"),
  /** A painting medium that holds a metal. */
  MEDIUM("medium"),
  /** A chemical of the laboratory or the craft. */
  CHEMICAL("chemical"),
  /** A single word, such as "Blei", that tells the hazard of whatever is named with it. */
  GENERIC_WORD("generic-word"),
  /** A name that holds a word of hazard and is none: it is cut out before the rest is asked. */
  FALSE_FRIEND("false-friend"),
  /** A pigment of which nothing is told; by its name it is known what heat it stands. */
  ORDINARY_PIGMENT("ordinary-pigment"),
  /** A solvent, or what is thinned with one. */
  SOLVENT("solvent"),
  /** A varnish or lacquer: resin or oil in a solvent. */
  LACQUER("lacquer"),
  /** A balsam, which gives off turpentine vapour. */
  BALSAM("balsam"),
  /** A drying oil or alkyd resin: rags with it heat up by themselves. */
  OIL_RESIN("oil-resin"),
  /** A resin that sensitises. */
  RESIN("resin"),
  /** What holds water. */
  WATER_BORNE("water-borne"),
  /** A plastic, or the uncured parts of one. */
  PLASTIC("plastic"),
  /** A spray can. */
  AEROSOL("aerosol"),
  /** A fragrance or essential oil. */
  FRAGRANCE("fragrance"),
  /** A wax of unknown make. */
  WAX("wax"),
  /** What burns with wax without air. */
  OXIDISER("oxidiser"),
  /** A solid whose vapour lights at working temperatures. */
  FLAMMABLE_SOLID("flammable-solid");

  private final String id;

  NameKind(String id) {
    this.id = id;
  }

  /**
   * Returns the stable id.
   *
   * @return lower case, words joined by hyphens, for example {@code metal-powder}
   */
  public String id() {
    return id;
  }

  /**
   * Returns what it is called in a sentence.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return for example "a solvent"
   */
  public String label(Locale locale) {
    return Messages.beside(NameKind.class).text("kind." + id, locale);
  }

  /** Whether a CAS number of the list tells what the thing is: of these it is that of a part. */
  boolean isFoundByCas() {
    return switch (this) {
      case LACQUER, PLASTIC, AEROSOL, OIL_RESIN -> false;
      default -> true;
    };
  }
}
