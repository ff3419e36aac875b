// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.setting;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.explain.Drivers.Values;
import org.meltwright.core.explain.EstimateInput;
import org.meltwright.core.explain.EstimateInput.Direction;
import org.meltwright.core.explain.Symbol;
import org.meltwright.core.material.DefinedTemperature;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.material.PropertyRange;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.DensityTable;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.Sourced;
import org.meltwright.core.thermal.ThermalProblem;
import org.meltwright.core.thermal.heat.HeatAssumptions;
import org.meltwright.core.thermal.heat.MeltingHeat;
import org.meltwright.core.thermal.heat.MixFigures;
import org.meltwright.core.thermal.melting.ComponentMelting;
import org.meltwright.core.thermal.melting.IdealLiquidus;
import org.meltwright.core.thermal.melting.MeltingReport;
import org.meltwright.core.thermal.melting.SolubilityAssumptions;
import org.meltwright.units.Density;
import org.meltwright.units.Estimate;

/**
 * The figures of a melt as ranges, for estimates of how soon it sets.
 *
 * <p>More heat in the melt (density, specific heats, heat of fusion) means later; better conduction
 * and a higher melting range mean sooner.
 *
 * <p>The figures of a medium of one part of damar to eight of beeswax, whose resin takes up no heat
 * of fusion; what the resin does not state is assumed and listed:
 *
 * <pre>{@code
 * MaterialCatalogue shelf = MaterialCatalogue.standard();
 * Composition medium =
 *     Composition.ofParts(List.of(shelf.require("damar"), shelf.require("beeswax")), 1, 8);
 * MeltFigures figures = MeltFigures.of(medium, MeltFigures.TYPICAL);
 * figures.central().heat().heatOfFusionJoulesPerKilogram(); // 152889 J/kg, 8/9 of 172 000
 * figures.inputs().get(7); // liquidus 60.6–65 °C
 * figures.assumed(); // [damar liquid-specific-heat]
 * }</pre>
 *
 * <p>This class is immutable and thread-safe.
 */
public final class MeltFigures {

  /** What a melt is known by, and which way more of it moves the time to set. */
  enum Figure {
    SOLID_CONDUCTIVITY("conductivity, solid", "W/(m K)", Direction.LOWERS),
    MELT_CONDUCTIVITY("conductivity, melt", "W/(m K)", Direction.LOWERS),
    DENSITY("density", "kg/m³", Direction.RAISES),
    SOLID_HEAT("specific heat, solid", "J/(kg K)", Direction.RAISES),
    MELT_HEAT("specific heat, melt", "J/(kg K)", Direction.RAISES),
    FUSION("heat of fusion", "J/kg", Direction.RAISES),
    SOLIDUS("solidus", "°C", Direction.LOWERS),
    LIQUIDUS("liquidus", "°C", Direction.LOWERS);

    private final String words;
    private final String unit;
    private final Direction direction;

    Figure(String words, String unit, Direction direction) {
      this.words = words;
      this.unit = unit;
      this.direction = direction;
    }

    private EstimateInput between(double low, double high) {
      Symbol symbol = Symbol.beside(ThermalProblem.class, words, unit);
      return EstimateInput.of(symbol, low, high, direction);
    }

    private double of(MeltSubstance melt) {
      MeltingHeat heat = melt.heat();
      return switch (this) {
        case SOLID_CONDUCTIVITY -> melt.solidConductivityWattsPerMetreKelvin();
        case MELT_CONDUCTIVITY -> melt.liquidConductivityWattsPerMetreKelvin();
        case DENSITY -> melt.densityKilogramsPerCubicMetre();
        case SOLID_HEAT -> heat.solidSpecificHeatJoulesPerKilogramKelvin();
        case MELT_HEAT -> heat.liquidSpecificHeatJoulesPerKilogramKelvin();
        case FUSION -> heat.heatOfFusionJoulesPerKilogram();
        case SOLIDUS -> heat.solidusCelsius();
        case LIQUIDUS -> heat.liquidusCelsius();
      };
    }
  }

  /**
   * Ranges that hold the figures of natural waxes, to be assumed where a material states none:
   * conductivity 0.2–0.3 solid and 0.15–0.2 molten, density 900–970, specific heat 1900–2400 solid
   * and 2100–2600 molten, heat of fusion 140–210 kJ/kg (remembered; melting range 50–64 °C).
   */
  public static final MeltFigures TYPICAL =
      between(
          new MeltSubstance(0.2, 0.15, 900, new MeltingHeat(1900, 2100, 140_000, 45, 62)),
          new MeltSubstance(0.3, 0.2, 970, new MeltingHeat(2400, 2600, 210_000, 55, 66)));

  private final Map<Figure, EstimateInput> inputs;
  private final List<String> assumed;
  private final List<Source> sources;

  /**
   * Returns figures without spread.
   *
   * @param melt the figures
   * @return the same as ranges of no width
   */
  public static MeltFigures exactly(MeltSubstance melt) {
    return between(melt, melt);
  }

  /**
   * Returns figures that each lie between two ends.
   *
   * @param low the low end of each figure
   * @param high the high end of each figure, none below the low end
   * @return the ranges
   * @throws org.meltwright.units.ProblemException if two ends are reversed
   */
  public static MeltFigures between(MeltSubstance low, MeltSubstance high) {
    Map<Figure, EstimateInput> inputs = new EnumMap<>(Figure.class);
    for (Figure figure : Figure.values()) {
      inputs.put(figure, figure.between(figure.of(low), figure.of(high)));
    }
    return new MeltFigures(inputs, List.of(), List.of());
  }

  /**
   * Returns the figures of a mix: heats by mass, density by volume, conduction of the component
   * that makes up most of what melts.
   *
   * <p>A material that is a mix itself and does not state a figure is looked into for that figure.
   *
   * <p>The solidus reaches from the lowest onset of melting to the lowest range, the liquidus from
   * the ideal liquidus to the top of the highest-melting component.
   *
   * @param composition what the mix is made of
   * @param assumed what to assume where a material states no figure
   * @return the figures, with what was assumed
   * @throws org.meltwright.units.ProblemException if nothing melts, or what melts has no range
   */
  public static MeltFigures of(Composition composition, MeltFigures assumed) {
    return new Gathering(composition, assumed).figures();
  }

  /**
   * Returns the figures of a mix, if its clear point can be estimated.
   *
   * @param composition what the mix is made of
   * @param assumed what to assume where a material states no figure
   * @return the figures, with what was assumed; empty if nothing melts, or what melts has no range:
   *     see {@link MeltingReport#tellsClearPoint}
   */
  public static Optional<MeltFigures> find(Composition composition, MeltFigures assumed) {
    return IdealLiquidus.report(composition).tellsClearPoint()
        ? Optional.of(of(composition, assumed))
        : Optional.empty();
  }

  private MeltFigures(
      Map<Figure, EstimateInput> inputs, List<String> assumed, List<Source> sources) {
    this.inputs = inputs;
    this.assumed = assumed;
    this.sources = sources;
  }

  /**
   * Returns the named inputs with their ranges and directions.
   *
   * @return eight inputs
   */
  public List<EstimateInput> inputs() {
    return List.copyOf(inputs.values());
  }

  /**
   * Returns what was assumed.
   *
   * @return material and property of each assumed figure
   */
  public List<String> assumed() {
    return assumed;
  }

  /**
   * Returns what the figures rest on.
   *
   * @return the sources
   */
  public List<Source> sources() {
    return sources;
  }

  /**
   * Returns the figures at the middle of their ranges.
   *
   * @return the central figures
   */
  public MeltSubstance central() {
    return at(EstimateInput::central);
  }

  MeltSubstance at(Values values) {
    double liquidus = at(values, Figure.LIQUIDUS);
    double solidus = Math.min(at(values, Figure.SOLIDUS), liquidus); // their ranges may overlap
    return new MeltSubstance(
        at(values, Figure.SOLID_CONDUCTIVITY),
        at(values, Figure.MELT_CONDUCTIVITY),
        at(values, Figure.DENSITY),
        new MeltingHeat(
            at(values, Figure.SOLID_HEAT),
            at(values, Figure.MELT_HEAT),
            at(values, Figure.FUSION),
            solidus,
            liquidus));
  }

  private double at(Values values, Figure figure) {
    return values.of(input(figure));
  }

  private EstimateInput input(Figure figure) {
    return Objects.requireNonNull(inputs.get(figure));
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof MeltFigures that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(inputs, assumed, sources);
  }

  @Override
  public String toString() {
    return "melt of " + inputs();
  }

  /** Adds up the figures of a mix. */
  private static final class Gathering {

    private final Composition composition;
    private final MeltFigures fallback;
    private final MixFigures found = new MixFigures();
    private final Map<Figure, EstimateInput> inputs = new EnumMap<>(Figure.class);

    Gathering(Composition composition, MeltFigures fallback) {
      this.composition = composition;
      this.fallback = fallback;
    }

    MeltFigures figures() {
      List<ComponentMelting> melting = IdealLiquidus.componentsWithFigures(composition);
      addByMass(Figure.SOLID_HEAT, PropertyKey.SOLID_SPECIFIC_HEAT);
      addByMass(Figure.MELT_HEAT, PropertyKey.LIQUID_SPECIFIC_HEAT);
      addByMass(Figure.FUSION, PropertyKey.HEAT_OF_FUSION);
      addDensity();
      addWidest(Figure.SOLID_CONDUCTIVITY, base(melting), PropertyKey.SOLID_CONDUCTIVITY);
      addWidest(Figure.MELT_CONDUCTIVITY, base(melting), PropertyKey.LIQUID_CONDUCTIVITY);
      addMeltingRange(melting);
      return new MeltFigures(inputs, found.assumed(), found.sources());
    }

    private void add(Figure figure, double low, double high) {
      inputs.put(figure, figure.between(low, high));
    }

    /** What there is most of among what melts, in all its lots and versions; of two, by id. */
    private static List<Material> base(List<ComponentMelting> melting) {
      Map<String, Double> shares = new TreeMap<>();
      melting.forEach(c -> shares.merge(c.material().id(), c.share().value(), Double::sum));
      double most = shares.values().stream().max(Double::compare).orElseThrow();
      shares.values().removeIf(share -> share < most);
      String id = shares.keySet().iterator().next();
      return melting.stream()
          .map(ComponentMelting::material)
          .filter(m -> m.id().equals(id))
          .toList();
    }

    private <Q extends Quantity<Q>> void addWidest(
        Figure figure, List<Material> versions, PropertyKey<PropertyRange<Q>> key) {
      List<EstimateInput> all = versions.stream().map(m -> figure(m, key, figure)).toList();
      add(
          figure,
          all.stream().mapToDouble(EstimateInput::low).min().orElseThrow(),
          all.stream().mapToDouble(EstimateInput::high).max().orElseThrow());
    }

    private <Q extends Quantity<Q>> EstimateInput figure(
        Material material, PropertyKey<PropertyRange<Q>> key, Figure figure) {
      return found
          .find(material, key)
          .map(range -> figure.between(range.lowSi(), range.highSi()))
          .orElseGet(() -> fallback.input(figure));
    }

    private <Q extends Quantity<Q>> void addByMass(
        Figure figure, PropertyKey<PropertyRange<Q>> key) {
      double low = 0;
      double high = 0;
      Composition inside = composition.expandedUnless(m -> states(m, key));
      for (int i = 0; i < inside.size(); i++) {
        Material material = inside.materials().get(i);
        double share = inside.massFractionValue(i);
        boolean melts = MeltingReport.melts(material);
        if (share > 0 && (melts || figure != Figure.FUSION)) {
          EstimateInput one =
              melts
                  ? figure(material, key, figure)
                  : figure(material, HeatAssumptions.heatOfWhatStays(material), figure);
          low += share * one.low();
          high += share * one.high();
        }
      }
      add(figure, low, high);
    }

    /** Where something melts, it states the figure itself; else either specific heat serves. */
    private static boolean states(Material material, PropertyKey<?> key) {
      return material.find(key).isPresent()
          || (!MeltingReport.melts(material)
              && material.find(HeatAssumptions.heatOfWhatStays(material)).isPresent());
    }

    /** By additive volumes; what is only known as a liquid counts with that. */
    private void addDensity() {
      Composition inside =
          composition.expandedUnless(m -> m.find(MeltFigures.density(m)).isPresent());
      double[] low = new double[inside.size()];
      double[] high = new double[inside.size()];
      for (int i = 0; i < low.length; i++) {
        Material material = inside.materials().get(i);
        if (inside.massFractionValue(i) > 0) {
          EstimateInput one = figure(material, MeltFigures.density(material), Figure.DENSITY);
          low[i] = one.low();
          high[i] = one.high();
        } else { // what is not there takes no room, whatever its density
          low[i] = 1;
          high[i] = 1;
        }
      }
      Estimate<Density> density = inside.volumeView(DensityTable.of(low, high)).density();
      add(Figure.DENSITY, density.lowSi(), density.highSi());
    }

    /** Where melting begins, from its low to its high end, lies never above where it ends. */
    private void addMeltingRange(List<ComponentMelting> melting) {
      IdealLiquidus ideal = IdealLiquidus.of(composition, SolubilityAssumptions.TYPICAL);
      double liquidus = ideal.point().celsius();
      double top = ideal.top().celsius();
      double high = Math.min(lowest(melting, ComponentMelting::endOfMelting), top);
      double low = Math.min(lowest(melting, ComponentMelting::startOfMelting), liquidus);
      add(Figure.SOLIDUS, Math.min(low, high), high);
      add(Figure.LIQUIDUS, liquidus, top);
    }

    private static double lowest(
        List<ComponentMelting> melting,
        Function<ComponentMelting, Optional<Sourced<DefinedTemperature>>> figure) {
      return melting.stream()
          .mapToDouble(c -> figure.apply(c).orElseThrow().value().range().low().celsius())
          .min()
          .orElseThrow();
    }
  }

  private static PropertyKey<PropertyRange<Density>> density(Material material) {
    boolean isLiquid =
        material.find(PropertyKey.SOLID_DENSITY).isEmpty()
            && material.find(PropertyKey.LIQUID_DENSITY).isPresent();
    return isLiquid ? PropertyKey.LIQUID_DENSITY : PropertyKey.SOLID_DENSITY;
  }
}
