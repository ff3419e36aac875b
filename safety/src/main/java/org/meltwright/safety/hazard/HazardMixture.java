// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.material.Material;
import org.meltwright.core.mixture.Composition;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
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

  /**
   * Returns a mixture of materials, with what the tables hold of each.
   *
   * @param composition the shares by mass
   * @param rules the rules whose tables are asked
   * @return a builder that holds them
   */
  public static Builder builder(Composition composition, RuleSet rules) {
    Builder b = new Builder(rules);
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
  public static Builder builder(RuleSet rules) {
    return new Builder(rules);
  }

  private HazardMixture(Builder b) {
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
        supplements);
  }

  /**
   * Collects the ingredients of a mixture; not thread-safe.
   *
   * <p>Compared by identity: a builder changes.
   */
  public static final class Builder {

    private final RuleSet rules;
    private final IngredientLines lines;
    private final List<HazardCategory> tested = new ArrayList<>();
    private final Set<HazardClass> testedWithout = EnumSet.noneOf(HazardClass.class);
    private final List<String> supplements = new ArrayList<>();
    private @Nullable PhysicalState state;
    private @Nullable Double viscosityAt40;
    private @Nullable TemperaturePoint flashPoint;
    private @Nullable TemperaturePoint boilingPoint;
    private @Nullable Double ph;
    private @Nullable Double reserve;
    private boolean phRefuted;
    private boolean breathable;

    private Builder(RuleSet rules) {
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
    public Builder material(Material material, double percent) {
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
    public Builder substance(SubstanceHazards hazards, double percent) {
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
    public Builder substance(SubstanceHazards hazards, double lowPercent, double highPercent) {
      if (lowPercent > highPercent) {
        throw new ProblemException(
            Problem.of(HazardProblem.SHARE_RANGE, HazardTexts.percent(lowPercent, highPercent)));
      }
      lines.substance(hazards, DeclaredShare.of(hazards, lowPercent, highPercent));
      return this;
    }

    /**
     * Says that what is not named, up to 100 %, is in no class: an assumption that the result and
     * its explanations show.
     *
     * @return this builder
     */
    public Builder restNotClassified() {
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
    public Builder cas(String cas, double percent) {
      return substance(
          rules.find(cas).orElseGet(() -> SubstanceHazards.unknown("CAS " + cas)), percent);
    }

    /**
     * Lets the user's own data sheet override what the tables hold.
     *
     * <p>Materials and sheets may be given in any order; {@link #build} refuses a sheet for what
     * the mixture does not hold. A material that is taken apart is spoken of by its constituents.
     *
     * @param id the material's id or the substance's CAS number
     * @param sheet what the data sheet says
     * @return this builder
     */
    public Builder dataSheet(String id, SubstanceHazards sheet) {
      lines.sheet(id, sheet);
      return this;
    }

    /**
     * Sets the state as handed over.
     *
     * @param value the state; a viscosity at 40 °C wins over {@link PhysicalState#SOLID}
     * @return this builder
     */
    public Builder state(PhysicalState value) {
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
    public Builder viscosityAt40(double squareMillimetresPerSecond) {
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
    public Builder flashPoint(TemperaturePoint value) {
      flashPoint = value;
      return this;
    }

    /**
     * Sets the measured initial boiling point of the mixture.
     *
     * @param value the initial boiling point
     * @return this builder
     */
    public Builder initialBoilingPoint(TemperaturePoint value) {
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
    public Builder ph(double value) {
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
    public Builder reserve(double gramsPer100Grams) {
      boolean possible = gramsPer100Grams >= 0 && gramsPer100Grams < Double.POSITIVE_INFINITY;
      reserve = require(gramsPer100Grams, possible, HazardProblem.RESERVE);
      return this;
    }

    /**
     * States that a test of the mixture showed that it is not corrosive in spite of its pH.
     *
     * @return this builder
     */
    public Builder phRefutedByTest() {
      phRefuted = true;
      return this;
    }

    /**
     * Says that dust, spray or vapour of it can be breathed in: a powder that raises dust, what is
     * sprayed, what is volatile.
     *
     * @return this builder
     */
    public Builder breathable() {
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
    public Builder supplement(String code) {
      supplements.add(Statements.requireSupplement(code));
      return this;
    }

    /**
     * States what a test of the mixture showed in a class that is not computed.
     *
     * @param category in the notation of the law, for example "Ox. Sol. 2 H272"
     * @return this builder
     * @throws ProblemException if the class is computed from the ingredients or cannot be read
     */
    public Builder tested(String category) {
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
    public Builder testedWithout(HazardClass hazardClass) {
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
}
