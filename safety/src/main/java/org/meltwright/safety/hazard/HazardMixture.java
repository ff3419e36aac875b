// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.mixture.Composition;
import org.meltwright.units.TemperaturePoint;

/**
 * A finished mixture as the rules see it: ingredients by mass, and what was measured on the whole.
 *
 * <p>A material that is itself a mix, such as an oil paint, is taken apart into its constituents,
 * each at the upper end of its range. Lines of the same substance are added.
 *
 * <p>A medium with rosin from one maker, by CAS number; every ingredient is named, or the mixture
 * is refused:
 *
 * <pre>{@code
 * RuleSet rules = RuleSet.clpOn(LocalDate.of(2026, 6, 1));
 * HazardMixture medium =
 *     HazardMixture.builder(rules)
 *         .cas("8012-89-3", 90)
 *         .cas("8050-09-7", 10)
 *         .state(PhysicalState.SOLID)
 *         .build();
 * medium; // [90.0 % beeswax, 10.0 % rosin (colophony)]
 * HazardReview.of(medium, rules); // skin-sensitisation 1 H317
 * HazardMixture.builder(rules).cas("8012-89-3", 90).build(); // throws ProblemException
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class HazardMixture {

  private final LocalDate day;
  private final List<DeclaredShare> declared;
  private final List<HazardIngredient> ingredients;
  private final @Nullable PhysicalState state;
  private final @Nullable Double viscosityAt40;
  private final @Nullable TemperaturePoint flashPoint;
  private final @Nullable TemperaturePoint boilingPoint;
  private final @Nullable Double ph;
  private final @Nullable Double reserve;
  private final boolean phRefuted;
  private final boolean breathable;
  private final List<HazardCategory> tested;
  private final Set<HazardClass> testedWithout;
  private final List<String> supplements;
  private final Set<String> withoutSupplements;

  /**
   * Returns a mixture of materials, with what the tables hold of each.
   *
   * @param composition the shares by mass
   * @param rules the rules whose tables are asked
   * @return a builder that holds them
   */
  public static HazardMixtureBuilder builder(Composition composition, RuleSet rules) {
    HazardMixtureBuilder b = new HazardMixtureBuilder(rules);
    for (int i = 0; i < composition.size(); i++) {
      b.material(composition.materials().get(i), composition.massFractionValue(i) * 100);
    }
    return b;
  }

  /**
   * Starts a mixture of single ingredients.
   *
   * @param rules the rules whose tables are asked for materials and CAS numbers
   * @return a builder
   */
  public static HazardMixtureBuilder builder(RuleSet rules) {
    return new HazardMixtureBuilder(rules);
  }

  HazardMixture(HazardMixtureBuilder b) {
    this.day = b.rules.day();
    this.declared = b.lines.declared();
    this.ingredients = b.lines.ingredients();
    this.state = b.state;
    this.viscosityAt40 = b.viscosityAt40;
    this.flashPoint = b.flashPoint;
    this.boilingPoint = b.boilingPoint;
    this.ph = b.ph;
    this.reserve = b.reserve;
    this.phRefuted = b.phRefuted;
    this.breathable = b.breathable;
    this.tested = List.copyOf(b.tested);
    this.testedWithout = Set.copyOf(b.testedWithout);
    this.supplements = List.copyOf(b.supplements);
    this.withoutSupplements = Set.copyOf(b.withoutSupplements);
  }

  /**
   * Returns the day whose tables told what is known of its ingredients.
   *
   * @return the day of the rules that it was built with
   */
  public LocalDate day() {
    return day;
  }

  /**
   * Returns the lines as they were given.
   *
   * @return names and shares, in the order given
   */
  public List<DeclaredShare> declared() {
    return declared;
  }

  /**
   * Returns the ingredients, lines of the same substance added.
   *
   * @return the ingredients, in the order given
   */
  public List<HazardIngredient> ingredients() {
    return ingredients;
  }

  /**
   * Returns the state as handed over.
   *
   * @return the state; empty if not stated
   */
  public Optional<PhysicalState> state() {
    return Optional.ofNullable(state);
  }

  /**
   * Returns the kinematic viscosity at 40 °C.
   *
   * @return the viscosity in mm²/s; empty if not measured
   */
  public OptionalDouble viscosityAt40SquareMillimetresPerSecond() {
    return optional(viscosityAt40);
  }

  /**
   * Returns the flash point of the mixture.
   *
   * @return the measured flash point; empty if not measured
   */
  public Optional<TemperaturePoint> flashPoint() {
    return Optional.ofNullable(flashPoint);
  }

  /**
   * Returns the initial boiling point of the mixture.
   *
   * @return the initial boiling point; empty if not measured
   */
  public Optional<TemperaturePoint> initialBoilingPoint() {
    return Optional.ofNullable(boilingPoint);
  }

  /**
   * Returns the pH of the mixture.
   *
   * @return the measured pH; empty if not measured or without meaning
   */
  public OptionalDouble ph() {
    return optional(ph);
  }

  /**
   * Returns what tests of the mixture itself showed, in classes that are not computed.
   *
   * @return the categories; empty if none was stated
   */
  public List<HazardCategory> tested() {
    return tested;
  }

  /**
   * Returns the classes that are not computed and that tests of the mixture showed it not to be in.
   *
   * @return the classes; empty if none was stated
   */
  public Set<HazardClass> testedWithout() {
    return testedWithout;
  }

  /**
   * Returns the acid or alkaline reserve.
   *
   * @return g of sodium hydroxide, or what equals it, per 100 g; empty if not measured
   */
  public OptionalDouble reserveGramsPer100Grams() {
    return optional(reserve);
  }

  /**
   * Tells whether a test showed that the mixture is not corrosive in spite of its pH.
   *
   * @return whether it did
   */
  public boolean isPhRefutedByTest() {
    return phRefuted;
  }

  /**
   * Tells whether dust, spray or vapour of it can be breathed in.
   *
   * @return whether it was stated
   */
  public boolean isBreathable() {
    return breathable;
  }

  /**
   * Returns the supplements that the mixture's own evidence asks for.
   *
   * @return codes, for example "EUH066"
   */
  public List<String> supplements() {
    return supplements;
  }

  /**
   * Returns the supplemental statements that were found not to hold for it.
   *
   * @return EUH codes
   */
  public Set<String> withoutSupplements() {
    return withoutSupplements;
  }

  private static OptionalDouble optional(@Nullable Double value) {
    return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  @Override
  public String toString() {
    return ingredients.toString();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof HazardMixture that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<@Nullable Object> stated() {
    return Arrays.asList(
        day,
        declared,
        ingredients,
        state,
        viscosityAt40,
        flashPoint,
        boilingPoint,
        ph,
        reserve,
        phRefuted,
        breathable,
        tested,
        testedWithout,
        supplements,
        withoutSupplements);
  }
}
