// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.material.Material;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.TemperaturePoint;

/**
 * Collects the ingredients of a mixture; not thread-safe.
 *
 * <p>For example:
 *
 * <pre>{@code
 * RuleSet rules = RuleSet.clpOn(LocalDate.of(2026, 6, 1));
 * HazardMixtureBuilder medium = HazardMixture.builder(rules).cas("8012-89-3", 90);
 * medium.cas("8050-09-7", 10).build(); // [90.0 % beeswax, 10.0 % rosin (colophony)]
 * }</pre>
 *
 * <p>Compared by identity: a builder changes.
 */
public final class HazardMixtureBuilder {

  final RuleSet rules;
  final IngredientLines lines;
  final List<HazardCategory> tested = new ArrayList<>();
  final Set<HazardClass> testedWithout = EnumSet.noneOf(HazardClass.class);
  final List<String> supplements = new ArrayList<>();
  final Set<String> withoutSupplements = new TreeSet<>();
  @Nullable PhysicalState state;
  @Nullable Double viscosityAt40;
  @Nullable TemperaturePoint flashPoint;
  @Nullable TemperaturePoint boilingPoint;
  @Nullable Double ph;
  @Nullable Double reserve;
  boolean phRefuted;
  boolean breathable;

  HazardMixtureBuilder(RuleSet rules) {
    this.rules = rules;
    this.lines = new IngredientLines(rules);
  }

  /**
   * Adds a material, taken apart into its constituents if it has any.
   *
   * @param material the material
   * @param percent its share by mass, in per cent
   * @return this builder
   */
  public HazardMixtureBuilder material(Material material, double percent) {
    lines.material(material, DeclaredShare.of(material, percent));
    return this;
  }

  /**
   * Adds a substance by what is known of it.
   *
   * @param hazards what is known of the substance
   * @param percent its share by mass, in per cent
   * @return this builder
   */
  public HazardMixtureBuilder substance(SubstanceHazards hazards, double percent) {
    return substance(hazards, percent, percent);
  }

  /**
   * Adds a substance whose share is a range; the rules take the upper end.
   *
   * @param hazards what is known of the substance
   * @param lowPercent the low end of its share by mass, in per cent
   * @param highPercent the high end, in per cent
   * @return this builder
   * @throws ProblemException if the low end lies above the high end
   */
  public HazardMixtureBuilder substance(
      SubstanceHazards hazards, double lowPercent, double highPercent) {
    if (lowPercent > highPercent) {
      throw new ProblemException(
          Problem.of(HazardProblem.SHARE_RANGE, HazardTexts.percent(lowPercent, highPercent)));
    }
    lines.substance(hazards, DeclaredShare.of(hazards, lowPercent, highPercent));
    return this;
  }

  /**
   * Says that what is not named, up to 100 %, is in no class: an assumption that the result and its
   * explanations show.
   *
   * @return this builder
   */
  public HazardMixtureBuilder restNotClassified() {
    lines.restNotClassified();
    return this;
  }

  /**
   * Adds a substance by its CAS registry number.
   *
   * @param cas the number with hyphens
   * @param percent its share by mass, in per cent
   * @return this builder
   */
  public HazardMixtureBuilder cas(String cas, double percent) {
    return substance(
        rules.find(cas).orElseGet(() -> SubstanceHazards.unknown("CAS " + cas)), percent);
  }

  /**
   * Lets the user's own data sheet override what the tables hold.
   *
   * <p>Materials and sheets may be given in any order; {@link #build} refuses a sheet for what the
   * mixture does not hold. A material that is taken apart is spoken of by its constituents.
   *
   * @param id the material's id or the substance's CAS number
   * @param sheet what the data sheet says
   * @return this builder
   */
  public HazardMixtureBuilder dataSheet(String id, SubstanceHazards sheet) {
    lines.sheet(id, sheet);
    return this;
  }

  /**
   * Sets the state as handed over.
   *
   * @param value the state; a viscosity at 40 °C wins over {@link PhysicalState#SOLID}
   * @return this builder
   */
  public HazardMixtureBuilder state(PhysicalState value) {
    state = value;
    return this;
  }

  /**
   * Sets the kinematic viscosity at 40 °C.
   *
   * @param squareMillimetresPerSecond the viscosity in mm²/s, above 0; the dynamic viscosity in
   *     mPa·s divided by the density in g/cm³, both at 40 °C
   * @return this builder
   * @throws ProblemException if it is not above 0
   */
  public HazardMixtureBuilder viscosityAt40(double squareMillimetresPerSecond) {
    boolean possible =
        squareMillimetresPerSecond > 0 && squareMillimetresPerSecond < Double.POSITIVE_INFINITY;
    viscosityAt40 = require(squareMillimetresPerSecond, possible, HazardProblem.VISCOSITY);
    return this;
  }

  /**
   * Sets the measured flash point of the mixture.
   *
   * @param value the flash point
   * @return this builder
   */
  public HazardMixtureBuilder flashPoint(TemperaturePoint value) {
    flashPoint = value;
    return this;
  }

  /**
   * Sets the measured initial boiling point of the mixture.
   *
   * @param value the initial boiling point
   * @return this builder
   */
  public HazardMixtureBuilder initialBoilingPoint(TemperaturePoint value) {
    boilingPoint = value;
    return this;
  }

  /**
   * Sets the measured pH of the mixture.
   *
   * @param value the pH, from -2 to 16
   * @return this builder
   * @throws ProblemException if it lies outside
   */
  public HazardMixtureBuilder ph(double value) {
    ph = require(value, value >= -2 && value <= 16, HazardProblem.PH);
    return this;
  }

  /**
   * Sets the acid or alkaline reserve; it shows how much there is to the pH, but lifts nothing
   * without a test.
   *
   * @param gramsPer100Grams g of sodium hydroxide, or what equals it, per 100 g, 0 or more
   * @return this builder
   * @throws ProblemException if it is below 0
   */
  public HazardMixtureBuilder reserve(double gramsPer100Grams) {
    boolean possible = gramsPer100Grams >= 0 && gramsPer100Grams < Double.POSITIVE_INFINITY;
    reserve = require(gramsPer100Grams, possible, HazardProblem.RESERVE);
    return this;
  }

  /**
   * States that a test of the mixture showed that it is not corrosive in spite of its pH.
   *
   * @return this builder
   */
  public HazardMixtureBuilder phRefutedByTest() {
    phRefuted = true;
    return this;
  }

  /**
   * Says that dust, spray or vapour of it can be breathed in: a powder that raises dust, what is
   * sprayed, what is volatile.
   *
   * @return this builder
   */
  public HazardMixtureBuilder breathable() {
    breathable = true;
    return this;
  }

  /**
   * Adds a supplement that the mixture's own evidence asks for, such as EUH066 after long use.
   *
   * @param code the code, for example "EUH066"
   * @return this builder
   * @throws ProblemException if the law has no such supplement
   */
  public HazardMixtureBuilder supplement(String code) {
    supplements.add(Statements.requireSupplement(code));
    return this;
  }

  /**
   * Says that a supplemental statement of an ingredient does not hold for the mixture, by its own
   * test or evidence.
   *
   * @param code the code, for example EUH031
   * @return this builder
   * @throws ProblemException if the law has no such supplement
   */
  public HazardMixtureBuilder withoutSupplement(String code) {
    withoutSupplements.add(Statements.requireSupplement(code));
    return this;
  }

  /**
   * States what a test of the mixture showed in a class that is not computed.
   *
   * @param category in the notation of the law, for example "Ox. Sol. 2 H272"
   * @return this builder
   * @throws ProblemException if the class is computed from the ingredients or cannot be read
   */
  public HazardMixtureBuilder tested(String category) {
    HazardCategory stated = HazardCategory.parse(category);
    if (stated.hazardClass().isComputed() || !LabelElements.knows(stated)) {
      throw new ProblemException(Problem.of(HazardProblem.NOT_FOR_TEST, category));
    }
    tested.add(stated);
    return this;
  }

  /**
   * States that a test of the mixture showed no category of a class that is not computed. Without
   * it, an ingredient in such a class leaves the class open.
   *
   * @param hazardClass the class, for example {@link HazardClass#FLAMMABLE_SOLID}
   * @return this builder
   * @throws ProblemException if the class is computed from the ingredients
   */
  public HazardMixtureBuilder testedWithout(HazardClass hazardClass) {
    if (hazardClass.isComputed()) {
      throw new ProblemException(Problem.of(HazardProblem.NOT_FOR_TEST, hazardClass.id()));
    }
    testedWithout.add(hazardClass);
    return this;
  }

  /**
   * Returns the mixture.
   *
   * @return what was collected
   * @throws ProblemException if a share lies outside 0 to 100 %, the shares leave part of the
   *     mixture unsaid or exceed it, a data sheet is for no ingredient, or the state contradicts
   *     the viscosity
   */
  public HazardMixture build() {
    requireNoContradiction();
    return new HazardMixture(this);
  }

  private void requireNoContradiction() {
    PhysicalState given = state;
    if ((given == PhysicalState.SOLID_AT_40 || given == PhysicalState.GAS)
        && viscosityAt40 != null) {
      throw new ProblemException(
          Problem.of(
              HazardProblem.STATE_AGAINST_VISCOSITY,
              Bilingual.list(given.inWords(), Bilingual.of(viscosityAt40).plus(" mm²/s"))));
    }
  }

  private static double require(double value, boolean possible, HazardProblem problem) {
    if (possible) {
      return value;
    }
    throw new ProblemException(Problem.of(problem, Bilingual.of(value)));
  }
}
