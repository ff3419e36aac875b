// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.material.Material;

/**
 * An ingredient of a mixture: its share and what its classification rests on.
 *
 * <p>Lead white in a tenth of the mixture: its limits count the lead, which makes up 3 × 207.2 of
 * 775.6 g/mol.
 *
 * <pre>{@code
 * RuleSet rules = RuleSet.clpOn(LocalDate.of(2026, 6, 1));
 * HazardMixture mixture =
 *     HazardMixture.builder(rules).cas("8012-89-3", 90).cas("1319-46-6", 10).build();
 * HazardIngredient white = mixture.ingredients().get(1);
 * white.percent(); // 10 %
 * white.limitPercent(); // 8.01 % of lead
 * white.pigment().orElseThrow().heatUse(); // NEVER_HEATED
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class HazardIngredient {

  private final @Nullable Material material;
  private final double percent;
  private final SubstanceHazards hazards;
  private final @Nullable SubstanceHazards overridden;

  HazardIngredient(
      @Nullable Material material,
      double percent,
      SubstanceHazards hazards,
      @Nullable SubstanceHazards overridden) {
    this.material = material;
    this.percent = percent;
    this.hazards = hazards;
    this.overridden = overridden;
  }

  /**
   * Returns the name that a label prints.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return the material's name, else the substance's
   */
  public String name(Locale locale) {
    if (material != null) {
      return material.name(locale);
    }
    return HazardTexts.isGerman(locale) ? germanName().orElse(hazards.name()) : hazards.name();
  }

  /** Its own, that of its pigment, else that of the catalogue for its number. */
  private Optional<String> germanName() {
    return hazards
        .germanName()
        .or(this::germanPigmentName)
        .or(() -> Catalogued.germanName(hazards));
  }

  private Optional<String> germanPigmentName() {
    return pigment().map(p -> p.name(Locale.GERMAN));
  }

  /** Tells whether a German label can name it in German. */
  boolean hasGermanName() {
    return material != null || germanName().isPresent();
  }

  /**
   * Returns the material.
   *
   * @return the material; empty if a bare substance was given
   */
  public Optional<Material> material() {
    return Optional.ofNullable(material);
  }

  /**
   * Returns the share by mass; for a range its upper end.
   *
   * @return the share in per cent
   */
  public double percent() {
    return percent;
  }

  /**
   * Returns the classification that is used.
   *
   * @return the user's data sheet where there is one, else what the tables hold
   */
  public SubstanceHazards hazards() {
    return hazards;
  }

  /**
   * Returns what the tables hold where the user's data sheet overrides it.
   *
   * @return the entry that is not used; empty if nothing is overridden
   */
  public Optional<SubstanceHazards> overridden() {
    return Optional.ofNullable(overridden);
  }

  /**
   * Returns the pigment's hazards, with the advice on its dust.
   *
   * @return the pigment; empty if it is none that the table knows
   */
  public Optional<PigmentHazard> pigment() {
    return material == null
        ? hazards.casNumbers().stream()
            .flatMap(cas -> PigmentHazards.byCas(cas).stream())
            .findFirst()
        : PigmentHazards.of(material);
  }

  /**
   * Returns the share that limits are held against: that of the metal under note 1, else its own.
   *
   * <p>Never used in a sum of acute toxicity estimates. Where the metal's share is not known, the
   * whole compound counts.
   *
   * @return the share in per cent
   */
  public double limitPercent() {
    return hazards.notes().contains("1") ? percent * hazards.metalShare().orElse(1) : percent;
  }

  /** Returns the key under which lines of the same substance are added. */
  String key() {
    return hazards.casNumbers().isEmpty() && material != null ? material.id() : hazards.key();
  }

  HazardIngredient plus(HazardIngredient other) {
    return new HazardIngredient(material, percent + other.percent, hazards, overridden);
  }

  HazardIngredient replacedBy(SubstanceHazards sheet) {
    return new HazardIngredient(material, percent, sheet, hazards);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof HazardIngredient that
        && percent == that.percent
        && Objects.equals(material, that.material)
        && hazards.equals(that.hazards)
        && Objects.equals(overridden, that.overridden);
  }

  @Override
  public int hashCode() {
    return Objects.hash(percent, hazards);
  }

  @Override
  public String toString() {
    return percent + " % " + name(Locale.ENGLISH);
  }
}
