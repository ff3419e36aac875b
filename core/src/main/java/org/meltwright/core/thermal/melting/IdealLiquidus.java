// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.melting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.meltwright.core.explain.Drivers;
import org.meltwright.core.explain.EstimateInput;
import org.meltwright.core.explain.EstimateInput.Direction;
import org.meltwright.core.explain.Symbol;
import org.meltwright.core.material.Constituent;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialProblem;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.thermal.ThermalProblem;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.TemperatureRange;

/**
 * The temperature at which the last crystals of a mix vanish, by ideal solubility: an estimate of a
 * lower bound.
 *
 * <p>Each component that melts is taken at the low end of its range, the most favourable lot or
 * grade, and lowered by what is dissolved beside it; the highest of them is the liquidus. Resins
 * and oils dilute; pigments do not. Natural materials form solid solutions, which crystallise
 * higher than this.
 *
 * <p>The top of the highest-melting component stands beside it: the mix is clear there at the
 * latest.
 *
 * <p>A tenth of carnauba wax (from 80 °C) in beeswax (from 62 °C): so diluted, the carnauba stays
 * dissolved on cooling, and the beeswax crystallises first, a kelvin below its own range:
 *
 * <pre>{@code
 * MaterialCatalogue shelf = MaterialCatalogue.standard();
 * Composition mix =
 *     Composition.ofParts(List.of(shelf.require("beeswax"), shelf.require("carnauba")), 9, 1);
 * IdealLiquidus liquidus = IdealLiquidus.of(mix, SolubilityAssumptions.TYPICAL);
 * liquidus.governing(); // beeswax-yellow
 * liquidus.point().celsius(); // 61.2 °C
 * liquidus.highestMelting(); // carnauba
 * liquidus.top(); // 86.0 °C
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param point the liquidus
 * @param governing the component whose crystals vanish last
 * @param top the top of the range of the highest-melting component
 * @param highestMelting the highest-melting component
 * @param assumed the materials whose heat of fusion was assumed
 * @param mixedDefinitions whether the ranges compared have different definitions
 */
public record IdealLiquidus(
    TemperaturePoint point,
    Material governing,
    TemperaturePoint top,
    Material highestMelting,
    List<Material> assumed,
    boolean mixedDefinitions) {

  private static final double KELVIN = 273.15;

  private static final Symbol CLEAR_POINT =
      Symbol.beside(ThermalProblem.class, "clear point", "°C");
  private static final Symbol MELTS = Symbol.beside(ThermalProblem.class, "melting range", "°C");
  private static final EstimateInput FROM_IDEAL =
      EstimateInput.of(
          Symbol.beside(ThermalProblem.class, "how far the melt is from ideal", ""),
          0,
          1,
          Direction.RAISES);

  public IdealLiquidus {
    assumed = List.copyOf(assumed);
  }

  /**
   * Returns the liquidus of a mix.
   *
   * @param composition what the mix is made of
   * @param assumptions the molar masses, and the heat of fusion where none is stated
   * @return the estimate
   * @throws ProblemException if nothing melts, or a component that melts has no figure for it
   */
  public static IdealLiquidus of(Composition composition, SolubilityAssumptions assumptions) {
    List<Moles> moles = moles(MeltingReport.inside(composition), assumptions);
    double total = amount(moles.stream());
    List<ComponentMelting> melting = byId(componentsWithFigures(composition));
    ComponentMelting governing = melting.get(0);
    ComponentMelting highest = melting.get(0);
    double kelvin = 0;
    for (ComponentMelting component : byId(melting)) {
      double liquidus =
          kelvin(component, range(component).low().kelvin(), moles, total, assumptions);
      if (liquidus > kelvin) {
        kelvin = liquidus;
        governing = component;
      }
      highest = top(component).isAbove(top(highest)) ? component : highest;
    }
    return new IdealLiquidus(
        lower(TemperaturePoint.ofKelvin(kelvin), top(highest)),
        governing.material(),
        top(highest),
        highest.material(),
        withoutHeat(melting),
        mixed(melting));
  }

  /**
   * Returns what the clear point of a mix hangs on: where each component melts within its range,
   * and how far the mix is from ideal, from 0 for {@link #point} to 1 for {@link #top}.
   *
   * @param composition what the mix is made of
   * @param assumptions the molar masses, and the heat of fusion where none is stated
   * @return the drivers of the clear point in °C
   * @throws ProblemException if nothing melts, or a component that melts has no figure for it
   */
  public static Drivers clearPointDrivers(
      Composition composition, SolubilityAssumptions assumptions) {
    List<Moles> moles = moles(MeltingReport.inside(composition), assumptions);
    double total = amount(moles.stream());
    List<ComponentMelting> melting = byId(componentsWithFigures(composition));
    List<EstimateInput> inputs =
        new ArrayList<>(melting.stream().map(IdealLiquidus::input).toList());
    inputs.add(FROM_IDEAL);
    return Drivers.of(
        CLEAR_POINT,
        inputs,
        values -> {
          double ideal = 0;
          double top = 0;
          for (ComponentMelting component : melting) {
            double melts = values.of(input(component)) + KELVIN;
            ideal = Math.max(ideal, kelvin(component, melts, moles, total, assumptions));
            top = Math.max(top, melts);
          }
          ideal = Math.min(ideal, top);
          return ideal + values.of(FROM_IDEAL) * (top - ideal) - KELVIN;
        });
  }

  private static EstimateInput input(ComponentMelting component) {
    TemperatureRange range = range(component);
    return EstimateInput.of(
        MELTS.of(Bilingual.of(component.material()::name)),
        range.low().celsius(),
        range.high().celsius(),
        Direction.RAISES);
  }

  /** Where the last crystals of a component vanish that melts at a temperature by itself. */
  private static double kelvin(
      ComponentMelting component,
      double melts,
      List<Moles> moles,
      double total,
      SolubilityAssumptions assumptions) {
    Material material = component.material();
    double ofIt = amount(moles.stream().filter(m -> m.material.isSameMaterial(material)));
    return IdealSolubility.liquidusKelvin(
        Math.min(1, ofIt / total),
        assumptions.heatOfFusion(material) * assumptions.molarMass(material),
        melts);
  }

  /**
   * Returns the liquidus of a mix, if it can be estimated.
   *
   * @param composition what the mix is made of
   * @param assumptions the molar masses, and the heat of fusion where none is stated
   * @return the estimate; empty if nothing melts, or a component that melts has no figure for it:
   *     see {@link MeltingReport#tellsClearPoint}
   */
  public static Optional<IdealLiquidus> find(
      Composition composition, SolubilityAssumptions assumptions) {
    return report(composition).tellsClearPoint()
        ? Optional.of(of(composition, assumptions))
        : Optional.empty();
  }

  /**
   * Returns how a mix melts, without a ceiling: only what dissolves asks for one.
   *
   * @param composition the mix
   * @return the report
   */
  public static MeltingReport report(Composition composition) {
    return MeltingReport.of(composition, TemperaturePoint.ofCelsius(0));
  }

  /**
   * Returns what melts in a mix, each with the figures that an ideal liquidus needs.
   *
   * @param composition the mix
   * @return the components that melt
   * @throws ProblemException if one of them has no melting range, or nothing melts
   */
  public static List<ComponentMelting> componentsWithFigures(Composition composition) {
    List<ComponentMelting> melting = report(composition).melting();
    List<Problem> problems = new ArrayList<>();
    for (Material material : withoutFigure(melting)) {
      problems.add(
          Problem.of(MaterialProblem.PROPERTY_MISSING, material.id())
              .with("property", PropertyKey.MELTING_RANGE.inWords()));
    }
    if (melting.isEmpty()) {
      problems.add(Problem.of(ThermalProblem.NOTHING_MELTS, composition.materials().toString()));
    }
    if (!problems.isEmpty()) {
      throw new ProblemException(problems.stream().distinct().toList());
    }
    return melting;
  }

  static List<Material> withoutFigure(List<ComponentMelting> melting) {
    return melting.stream()
        .filter(component -> component.endOfMelting().isEmpty())
        .map(ComponentMelting::material)
        .toList();
  }

  private static TemperaturePoint top(ComponentMelting component) {
    return range(component).high();
  }

  private static TemperatureRange range(ComponentMelting component) {
    return component.endOfMelting().orElseThrow().value().range();
  }

  /** Of two that tie, the same one is named whatever the order of the mix. */
  private static List<ComponentMelting> byId(List<ComponentMelting> melting) {
    return melting.stream().sorted(Comparator.comparing(c -> c.material().id())).toList();
  }

  /** How many moles of a material are in a kilogram of the mix; its lots and versions add up. */
  private record Moles(Material material, double amount) {}

  /** Sums up, whatever the order. */
  private static double amount(Stream<Moles> moles) {
    return moles.mapToDouble(Moles::amount).sorted().sum();
  }

  private static List<Moles> moles(Composition composition, SolubilityAssumptions assumptions) {
    List<Moles> moles = new ArrayList<>();
    for (int i = 0; i < composition.size(); i++) {
      add(composition.materials().get(i), composition.massFractionValue(i), moles, assumptions);
    }
    return moles;
  }

  private static void add(
      Material material, double mass, List<Moles> moles, SolubilityAssumptions assumptions) {
    if (SolubilityAssumptions.joinsMelt(material)) {
      moles.add(new Moles(material, mass / assumptions.molarMass(material)));
      return;
    }
    for (Constituent part : material.constituents()) {
      add(part.material(), mass * part.share().middle().value(), moles, assumptions);
    }
  }

  private static List<Material> withoutHeat(List<ComponentMelting> melting) {
    return melting.stream()
        .map(ComponentMelting::material)
        .filter(m -> m.find(PropertyKey.HEAT_OF_FUSION).isEmpty())
        .toList();
  }

  private static boolean mixed(List<ComponentMelting> melting) {
    return melting.stream()
            .map(m -> m.endOfMelting().orElseThrow().value().definition())
            .distinct()
            .count()
        > 1;
  }

  /** The reciprocal of a reciprocal may come out a hair above. */
  private static TemperaturePoint lower(TemperaturePoint a, TemperaturePoint b) {
    return a.isAbove(b) ? b : a;
  }
}
