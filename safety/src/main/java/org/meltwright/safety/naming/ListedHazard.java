// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.naming;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.meltwright.safety.hazard.DustClass;
import org.meltwright.safety.hazard.HeatUse;
import org.meltwright.safety.hazard.PigmentHazard;
import org.meltwright.safety.hazard.PigmentHazards;
import org.meltwright.units.Bilingual;
import org.meltwright.units.TemperaturePoint;

/**
 * One entry of the list of hazard names: what several names stand for.
 *
 * <p>For example, what stands behind the old name of a white:
 *
 * <pre>{@code
 * ListedHazard white = HazardNames.ofName("Kremser Weiß").get(0).hazard();
 * white.id(); // lead-white
 * white.kind(); // PIGMENT
 * white.text(Locale.ENGLISH); // lead
 * white.mayHold("Pb"); // true
 * white.heatUse(); // NEVER_HEATED
 * white.dust().orElseThrow(); // REFUSE_POWDER
 * white.pigment().orElseThrow().name(Locale.GERMAN); // Bleiweiß
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param id the stable id; of a pigment of the pigment table, its id there
 * @param kind what sort of thing it is
 * @param words what it is or holds, for example "lead and antimony"
 * @param alternatives the symbols of the elements to be treated as toxic, a set for each thing that
 *     it may be; an empty set is one without such an element
 * @param casNumbers CAS registry numbers of members of the group; none is the identity of a name
 * @param colourIndexNames Colour Index generic names that are this entry
 * @param heatUse how much heat it may meet
 * @param dust how carefully its powder is handled; empty for what is no powder
 * @param flashPoint the flash point of what counts as fragrance, where the name tells it; its low
 *     end
 */
public record ListedHazard(
    String id,
    NameKind kind,
    Bilingual words,
    List<Set<String>> alternatives,
    List<String> casNumbers,
    List<String> colourIndexNames,
    HeatUse heatUse,
    Optional<DustClass> dust,
    Optional<TemperaturePoint> flashPoint) {

  /** By the care with dust; what is no powder last. */
  static final Comparator<Optional<DustClass>> DUST_STRICTEST_FIRST =
      Comparator.comparing((Optional<DustClass> dust) -> dust.isEmpty())
          .thenComparing(dust -> dust.orElse(DustClass.FINE));

  public ListedHazard {
    alternatives = alternatives.stream().<Set<String>>map(Set::copyOf).toList();
    casNumbers = List.copyOf(casNumbers);
    colourIndexNames = List.copyOf(colourIndexNames);
  }

  /**
   * Says what it is or holds.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return a phrase, for example "lead and antimony" or "flammable, flash point 12–13 °C…"
   */
  public String text(Locale locale) {
    return words.in(locale);
  }

  /**
   * Tells whether it holds an element, or may be something that does.
   *
   * @param symbol the symbol of the element, for example "Pb"
   * @return whether the element is among those to be treated as toxic
   */
  public boolean mayHold(String symbol) {
    return alternatives.stream().anyMatch(a -> a.contains(symbol));
  }

  /**
   * Returns the row of the pigment table, with its reason and the advice on its dust.
   *
   * @return the pigment; empty for what is not in that table
   */
  public Optional<PigmentHazard> pigment() {
    return PigmentHazards.byId(id);
  }

  /** A pigment of the pigment table that the list does not name. */
  static ListedHazard unlisted(PigmentHazard pigment) {
    return ofTable(pigment, NameKind.PIGMENT, pigment.name());
  }

  /** An entry whose facts stand in the pigment table. */
  static ListedHazard ofTable(PigmentHazard pigment, NameKind kind, Bilingual words) {
    return new ListedHazard(
        pigment.id(),
        kind,
        words,
        List.of(Set.copyOf(pigment.elements())),
        pigment.casNumbers(),
        pigment.colourIndexNames(),
        pigment.heatUse(),
        Optional.of(pigment.dust()),
        Optional.empty());
  }

  /** Whether it is a powder, with limits that a CAS number or Colour Index name may settle. */
  boolean isPowder() {
    return dust.isPresent();
  }

  /** Whether it is a colour, of which a "hue" may be sold. */
  boolean isColour() {
    return switch (kind) {
      case PIGMENT, METAL_POWDER, AMBIGUOUS_NAME, GENERIC_WORD -> isPowder();
      default -> false;
    };
  }

  /** Whether less heat, or more care with dust, is asked for. */
  boolean isStricterThan(ListedHazard other) {
    return heatUse.compareTo(other.heatUse) < 0
        || DUST_STRICTEST_FIRST.compare(dust, other.dust) < 0;
  }

  boolean isWithoutElements() {
    return alternatives.stream().allMatch(Set::isEmpty);
  }

  /** Whether all elements of one of several sets are in it. */
  boolean holdsOneOf(List<Set<String>> others) {
    return others.stream()
        .filter(other -> !other.isEmpty())
        .anyMatch(other -> alternatives.stream().anyMatch(own -> own.containsAll(other)));
  }

  boolean carries(String colourIndexName) {
    int colon = colourIndexName.indexOf(':');
    return colourIndexNames.contains(colourIndexName)
        || (colon > 0 && colourIndexNames.contains(colourIndexName.substring(0, colon)));
  }
}
