// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.setting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.explain.Drivers.Values;
import org.meltwright.core.explain.EstimateInput;
import org.meltwright.core.explain.EstimateInput.Direction;
import org.meltwright.core.explain.Symbol;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.material.PropertyRange;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.Sourced;
import org.meltwright.core.thermal.ThermalProblem;
import org.meltwright.core.thermal.heat.HeatAssumptions;
import org.meltwright.core.thermal.heat.MeltingHeat;
import org.meltwright.core.thermal.melting.ComponentMelting;
import org.meltwright.core.thermal.melting.IdealLiquidus;
import org.meltwright.core.thermal.melting.MeltingReport;
import org.meltwright.core.thermal.melting.SolubilityAssumptions;
import org.meltwright.units.TemperaturePoint;

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

  private static final String HEAT = "J/(kg K)";
  private static final String CONDUCTION = "W/(m K)";

  /**
   * Ranges that hold the figures of natural waxes, to be assumed where a material states none:
   * conductivity 0.2–0.3 solid and 0.15–0.2 molten, density 900–970, specific heat 1900–2400 solid
   * and 2100–2600 molten, heat of fusion 140–210 kJ/kg (remembered; melting range 50–64 °C).
   */
  public static final MeltFigures TYPICAL =
      between(
          new MeltSubstance(0.2, 0.15, 900, new MeltingHeat(1900, 2100, 140_000, 45, 62)),
          new MeltSubstance(0.3, 0.2, 970, new MeltingHeat(2400, 2600, 210_000, 55, 66)));

  private final EstimateInput[] inputs;
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
    return new MeltFigures(
        new EstimateInput[] {
          conduction(
              "conductivity, solid",
              low.solidConductivityWattsPerMetreKelvin(),
              high.solidConductivityWattsPerMetreKelvin()),
          conduction(
              "conductivity, melt",
              low.liquidConductivityWattsPerMetreKelvin(),
              high.liquidConductivityWattsPerMetreKelvin()),
          density(low.densityKilogramsPerCubicMetre(), high.densityKilogramsPerCubicMetre()),
          heat(
              "specific heat, solid",
              low.heat().solidSpecificHeatJoulesPerKilogramKelvin(),
              high.heat().solidSpecificHeatJoulesPerKilogramKelvin()),
          heat(
              "specific heat, melt",
              low.heat().liquidSpecificHeatJoulesPerKilogramKelvin(),
              high.heat().liquidSpecificHeatJoulesPerKilogramKelvin()),
          fusion(
              low.heat().heatOfFusionJoulesPerKilogram(),
              high.heat().heatOfFusionJoulesPerKilogram()),
          temperature("solidus", low.heat().solidusCelsius(), high.heat().solidusCelsius()),
          temperature("liquidus", low.heat().liquidusCelsius(), high.heat().liquidusCelsius())
        },
        List.of(),
        List.of());
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

  private MeltFigures(EstimateInput[] inputs, List<String> assumed, List<Source> sources) {
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
    return List.of(inputs);
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
    double[] v = new double[inputs.length];
    for (int i = 0; i < v.length; i++) {
      v[i] = values.of(inputs[i]);
    }
    return new MeltSubstance(v[0], v[1], v[2], new MeltingHeat(v[3], v[4], v[5], v[6], v[7]));
  }

  private static EstimateInput conduction(String name, double low, double high) {
    return input(name, CONDUCTION, low, high, Direction.LOWERS);
  }

  private static EstimateInput density(double low, double high) {
    return input("density", "kg/m³", low, high, Direction.RAISES);
  }

  private static EstimateInput heat(String name, double low, double high) {
    return input(name, HEAT, low, high, Direction.RAISES);
  }

  private static EstimateInput fusion(double low, double high) {
    return input("heat of fusion", "J/kg", low, high, Direction.RAISES);
  }

  private static EstimateInput temperature(String name, double low, double high) {
    return input(name, "°C", low, high, Direction.LOWERS);
  }

  private static EstimateInput input(
      String name, String unit, double low, double high, Direction direction) {
    return EstimateInput.of(Symbol.beside(ThermalProblem.class, name, unit), low, high, direction);
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
    return List.of(List.of(inputs), assumed, sources);
  }

  @Override
  public String toString() {
    return "melt of " + Arrays.toString(inputs);
  }

  /** Adds up the figures of a mix. */
  private static final class Gathering {

    private final Composition composition;
    private final MeltFigures fallback;
    private final Set<String> assumed = new LinkedHashSet<>();
    private final Set<Source> sources = new LinkedHashSet<>();

    Gathering(Composition composition, MeltFigures fallback) {
      this.composition = composition;
      this.fallback = fallback;
    }

    MeltFigures figures() {
      List<ComponentMelting> melting = IdealLiquidus.componentsWithFigures(composition);
      List<Material> base = base(melting);
      double[] solid = perMass(PropertyKey.SOLID_SPECIFIC_HEAT, 3, false);
      double[] liquid = perMass(PropertyKey.LIQUID_SPECIFIC_HEAT, 4, false);
      double[] fusion = perMass(PropertyKey.HEAT_OF_FUSION, 5, true);
      double[] density = density();
      double[] solidK = widest(base, PropertyKey.SOLID_CONDUCTIVITY, 0);
      double[] liquidK = widest(base, PropertyKey.LIQUID_CONDUCTIVITY, 1);
      double[] liquidus = liquidus();
      double[] solidus = solidus(melting, liquidus);
      EstimateInput[] inputs = {
        conduction("conductivity, solid", solidK[0], solidK[1]),
        conduction("conductivity, melt", liquidK[0], liquidK[1]),
        MeltFigures.density(density[0], density[1]),
        heat("specific heat, solid", solid[0], solid[1]),
        heat("specific heat, melt", liquid[0], liquid[1]),
        fusion(fusion[0], fusion[1]),
        temperature("solidus", solidus[0], solidus[1]),
        temperature("liquidus", liquidus[0], liquidus[1])
      };
      return new MeltFigures(inputs, List.copyOf(assumed), List.copyOf(sources));
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

    private <Q extends Quantity<Q>> double[] widest(
        List<Material> versions, PropertyKey<PropertyRange<Q>> key, int place) {
      double[] widest = figure(versions.get(0), key, place);
      for (Material version : versions) {
        double[] figure = figure(version, key, place);
        widest[0] = Math.min(widest[0], figure[0]);
        widest[1] = Math.max(widest[1], figure[1]);
      }
      return widest;
    }

    private <Q extends Quantity<Q>> double[] figure(
        Material material, PropertyKey<PropertyRange<Q>> key, int place) {
      Optional<Sourced<PropertyRange<Q>>> stated = material.find(key);
      if (stated.isEmpty()) {
        assumed.add(material.id() + " " + key.id());
        return new double[] {fallback.inputs[place].low(), fallback.inputs[place].high()};
      }
      sources.add(stated.get().source());
      return new double[] {
        stated.get().value().range().lowSi(), stated.get().value().range().highSi()
      };
    }

    private <Q extends Quantity<Q>> double[] perMass(
        PropertyKey<PropertyRange<Q>> key, int place, boolean meltingOnly) {
      double[] sum = new double[2];
      Composition inside = composition.expandedUnless(m -> states(m, key));
      for (int i = 0; i < inside.size(); i++) {
        Material material = inside.materials().get(i);
        double share = inside.massFractionValue(i);
        boolean melts = MeltingReport.melts(material);
        if (share == 0 || (meltingOnly && !melts)) {
          continue;
        }
        double[] figure = melts ? figure(material, key, place) : heatOfSolid(material, place);
        sum[0] += share * figure[0];
        sum[1] += share * figure[1];
      }
      return sum;
    }

    /** Where something melts, it states the figure itself; else either specific heat serves. */
    private static boolean states(Material material, PropertyKey<?> key) {
      return material.find(key).isPresent()
          || (!MeltingReport.melts(material)
              && (material.find(PropertyKey.SOLID_SPECIFIC_HEAT).isPresent()
                  || material.find(PropertyKey.LIQUID_SPECIFIC_HEAT).isPresent()));
    }

    /** What does not melt has one specific heat on both sides. */
    private double[] heatOfSolid(Material material, int place) {
      return figure(material, HeatAssumptions.heatOfWhatStays(material), place);
    }

    private double[] density() {
      double[] volume = new double[2];
      Composition inside =
          composition.expandedUnless(
              m ->
                  m.find(PropertyKey.SOLID_DENSITY).isPresent()
                      || m.find(PropertyKey.LIQUID_DENSITY).isPresent());
      for (int i = 0; i < inside.size(); i++) {
        if (inside.massFractionValue(i) > 0) {
          double[] one = densityOf(inside.materials().get(i));
          volume[0] += inside.massFractionValue(i) / one[0];
          volume[1] += inside.massFractionValue(i) / one[1];
        }
      }
      return new double[] {1 / volume[0], 1 / volume[1]};
    }

    private double[] densityOf(Material material) {
      boolean liquid =
          material.find(PropertyKey.SOLID_DENSITY).isEmpty()
              && material.find(PropertyKey.LIQUID_DENSITY).isPresent();
      return figure(material, liquid ? PropertyKey.LIQUID_DENSITY : PropertyKey.SOLID_DENSITY, 2);
    }

    private double[] liquidus() {
      IdealLiquidus liquidus = IdealLiquidus.of(composition, SolubilityAssumptions.TYPICAL);
      return new double[] {liquidus.point().celsius(), liquidus.top().celsius()};
    }

    /** The low and high end of where melting begins, never above those of where it ends. */
    private static double[] solidus(List<ComponentMelting> melting, double[] liquidus) {
      List<Double> onsets = new ArrayList<>();
      List<Double> lows = new ArrayList<>();
      for (ComponentMelting component : melting) {
        onsets.add(low(component.startOfMelting().orElseThrow().value().range().low()));
        lows.add(low(component.endOfMelting().orElseThrow().value().range().low()));
      }
      double low = Math.min(onsets.stream().min(Double::compare).orElseThrow(), liquidus[0]);
      double high = Math.min(lows.stream().min(Double::compare).orElseThrow(), liquidus[1]);
      return new double[] {Math.min(low, high), high};
    }

    private static double low(TemperaturePoint point) {
      return point.celsius();
    }
  }
}
