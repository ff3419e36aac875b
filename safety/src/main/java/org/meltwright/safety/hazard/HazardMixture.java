// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.material.Constituent;
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

  private static final double SLACK_PERCENT = 1e-6;

  private final List<DeclaredShare> declared;
  private final List<HazardIngredient> ingredients;
  private final @Nullable PhysicalState state;
  private final double viscosityAt40;
  private final @Nullable TemperaturePoint flashPoint;
  private final @Nullable TemperaturePoint boilingPoint;
  private final double ph;
  private final List<HazardCategory> tested;
  private final Set<HazardClass> testedWithout;

  /**
   * Returns a mixture of materials, with what the tables hold of each.
   *
   * @param composition the shares by mass
   * @param rules the rules whose tables are asked
   * @return a builder that holds them
   */
  public static Builder of(Composition composition, RuleSet rules) {
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
    this.declared = List.copyOf(b.declared);
    this.ingredients = List.copyOf(b.merged.values());
    this.state = b.state;
    this.viscosityAt40 = b.viscosityAt40;
    this.flashPoint = b.flashPoint;
    this.boilingPoint = b.boilingPoint;
    this.ph = b.ph;
    this.tested = List.copyOf(b.tested);
    this.testedWithout = Set.copyOf(b.testedWithout);
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

  private static OptionalDouble optional(double value) {
    return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  @Override
  public String toString() {
    return ingredients.toString();
  }

  /** Collects the ingredients of a mixture; not thread-safe. */
  public static final class Builder {

    private final RuleSet rules;
    private final Map<String, HazardIngredient> merged = new LinkedHashMap<>();
    private final Map<String, SubstanceHazards> sheets = new LinkedHashMap<>();
    private final List<HazardIngredient> lines = new ArrayList<>();
    private final List<DeclaredShare> declared = new ArrayList<>();
    private final List<HazardCategory> tested = new ArrayList<>();
    private final Set<HazardClass> testedWithout = EnumSet.noneOf(HazardClass.class);
    private double lowSum;
    private double highSum;
    private @Nullable PhysicalState state;
    private double viscosityAt40 = Double.NaN;
    private @Nullable TemperaturePoint flashPoint;
    private @Nullable TemperaturePoint boilingPoint;
    private double ph = Double.NaN;

    private Builder(RuleSet rules) {
      this.rules = rules;
    }

    /**
     * Adds a material, taken apart into its constituents if it has any.
     *
     * @param material the material
     * @param percent its share by mass, in per cent
     * @return this builder
     */
    public Builder material(Material material, double percent) {
      declare(
          new DeclaredShare(
              material.name(Locale.ENGLISH),
              material.name(Locale.GERMAN),
              colourIndexNames(material),
              percent,
              percent));
      takeApart(material, percent);
      return this;
    }

    /** The material's own Colour Index name, else those of what it is made of. */
    private static String colourIndexNames(Material material) {
      return material
          .colourIndexName()
          .orElseGet(
              () ->
                  material.constituents().stream()
                      .map(c -> colourIndexNames(c.material()))
                      .filter(name -> !name.isEmpty())
                      .distinct()
                      .collect(Collectors.joining(", ")));
    }

    private void declare(DeclaredShare share) {
      declared.add(share);
      lowSum += share.lowPercent();
      highSum += share.highPercent();
    }

    private void takeApart(Material material, double percent) {
      if (material.constituents().isEmpty()) {
        lines.add(new HazardIngredient(material, percent, rules.of(material), null));
        return;
      }
      for (Constituent c : material.constituents()) {
        takeApart(c.material(), percent * c.share().high().value());
      }
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
            Problem.of(HazardProblem.SHARE_RANGE, percent(lowPercent, highPercent)));
      }
      String name = hazards.name();
      declare(new DeclaredShare(name, name, "", lowPercent, highPercent));
      lines.add(new HazardIngredient(null, highPercent, hazards, null));
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
      sheets.put(id, sheet);
      return this;
    }

    /**
     * Sets the state as handed over.
     *
     * @param value the state
     * @return this builder
     */
    public Builder state(PhysicalState value) {
      state = value;
      return this;
    }

    /**
     * Sets the kinematic viscosity at 40 °C.
     *
     * @param squareMillimetresPerSecond the viscosity in mm²/s
     * @return this builder
     */
    public Builder viscosityAt40(double squareMillimetresPerSecond) {
      viscosityAt40 = squareMillimetresPerSecond;
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
     * @param value the pH
     * @return this builder
     */
    public Builder ph(double value) {
      ph = value;
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

    private static Bilingual percent(double low, double high) {
      return Bilingual.range(Bilingual.of(low), Bilingual.of(high)).plus(" %");
    }

    /**
     * Returns the mixture.
     *
     * @return what was collected
     * @throws ProblemException if a share is negative or not finite, the shares leave part of the
     *     mixture unsaid or exceed it, or a data sheet is for no ingredient
     */
    public HazardMixture build() {
      boolean eachIsShare =
          lines.stream().allMatch(l -> l.percent() >= 0 && l.percent() <= 100)
              && declared.stream().allMatch(d -> d.lowPercent() >= 0);
      boolean whole = lowSum <= 100 + SLACK_PERCENT && highSum >= 100 - SLACK_PERCENT;
      if (!eachIsShare || !whole) {
        throw new ProblemException(Problem.of(HazardProblem.SHARES, percent(lowSum, highSum)));
      }
      requireUsed();
      merged.clear();
      lines.stream().map(this::withSheet).forEach(this::merge);
      return new HazardMixture(this);
    }

    /** Lines of one substance are added; what says something else stays a line of its own. */
    private void merge(HazardIngredient line) {
      String key = line.key();
      while (merged.containsKey(key) && !merged.get(key).hazards().saysTheSameAs(line.hazards())) {
        key += "'";
      }
      merged.merge(key, line, HazardIngredient::plus);
    }

    private void requireUsed() {
      Set<String> ids =
          lines.stream().flatMap(Builder::ids).collect(Collectors.toCollection(TreeSet::new));
      List<Problem> unused =
          sheets.keySet().stream()
              .filter(id -> !ids.contains(id))
              .map(id -> Problem.of(HazardProblem.NO_SUCH_INGREDIENT, id))
              .map(p -> p.with("ids", String.join(", ", ids)))
              .toList();
      if (!unused.isEmpty()) {
        throw new ProblemException(unused);
      }
    }

    private static Stream<String> ids(HazardIngredient line) {
      return Stream.concat(line.material().map(Material::id).stream(), Stream.of(line.key()));
    }

    private HazardIngredient withSheet(HazardIngredient line) {
      SubstanceHazards sheet =
          ids(line).filter(sheets::containsKey).map(sheets::get).findFirst().orElse(null);
      return sheet == null ? line : line.replacedBy(sheet);
    }
  }
}
