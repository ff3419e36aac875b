// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.heat;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.measure.Quantity;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialProblem;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.material.PropertyRange;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.Sourced;
import org.meltwright.core.thermal.EstimateInput;
import org.meltwright.core.thermal.EstimateInput.Corner;
import org.meltwright.core.thermal.EstimateInput.Direction;
import org.meltwright.core.thermal.ThermalProblem;
import org.meltwright.core.thermal.heat.HeatAssumptions.Assumption;
import org.meltwright.core.thermal.melting.ComponentMelting;
import org.meltwright.core.thermal.melting.MeltingReport;
import org.meltwright.core.thermal.setting.Substance;
import org.meltwright.units.MassFraction;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityRange;
import org.meltwright.units.SpecificHeatCapacity;
import org.meltwright.units.TemperatureRange;

/** Gathers the heat figures of a mix from its materials and from what is assumed. */
final class HeatFigures {

  private record Substance(
      double share,
      EstimateInput solid,
      EstimateInput liquid,
      EstimateInput fusion,
      double solidus,
      double liquidus) {

    MeltingHeat at(Corner corner) {
      return new MeltingHeat(
          solid.at(corner), liquid.at(corner), fusion.at(corner), solidus, liquidus);
    }
  }

  private final HeatAssumptions assumptions;
  private final List<Substance> substances = new ArrayList<>();
  private final List<EstimateInput> inputs = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();
  private final Set<String> assumed = new LinkedHashSet<>();
  private final Set<Source> sources = new LinkedHashSet<>();

  static HeatFigures of(Composition composition, HeatAssumptions assumptions) {
    HeatFigures figures = gather(composition, assumptions);
    if (!figures.problems.isEmpty()) {
      throw new ProblemException(figures.problems);
    }
    return figures;
  }

  static Optional<HeatFigures> find(Composition composition, HeatAssumptions assumptions) {
    return Optional.of(gather(composition, assumptions)).filter(f -> f.problems.isEmpty());
  }

  HeatAssumptions assumptions() {
    return assumptions;
  }

  private static HeatFigures gather(Composition composition, HeatAssumptions assumptions) {
    HeatFigures figures = new HeatFigures(assumptions);
    Composition inside =
        composition.expandedUnless(m -> m.find(PropertyKey.SOLID_SPECIFIC_HEAT).isPresent());
    for (int i = 0; i < inside.size(); i++) {
      figures.add(inside.materials().get(i), inside.massFractionValue(i));
    }
    return figures;
  }

  private HeatFigures(HeatAssumptions assumptions) {
    this.assumptions = assumptions;
  }

  EnthalpyCurve curve(Corner corner) {
    return EnthalpyCurve.of(
        substances.stream().map(s -> s.at(corner)).toList(),
        substances.stream().mapToDouble(Substance::share).toArray());
  }

  List<EstimateInput> inputs() {
    return inputs;
  }

  List<String> assumed() {
    return List.copyOf(assumed);
  }

  List<Source> sources() {
    return List.copyOf(sources);
  }

  private void add(Material material, double share) {
    if (share == 0) {
      return;
    }
    if (MeltingReport.melts(material)) {
      addMelting(material, share);
    } else {
      EstimateInput heat = specificHeat(material, HeatAssumptions.heatOfWhatStays(material));
      substances.add(new Substance(share, heat, heat, nothing(), 0, 0));
    }
  }

  private void addMelting(Material material, double share) {
    Optional<TemperatureRange> range =
        ComponentMelting.of(material, MassFraction.of(share))
            .endOfMelting()
            .map(f -> f.value().range());
    if (range.isEmpty()) {
      problems.add(
          Problem.of(MaterialProblem.PROPERTY_MISSING, material.id())
              .with("property", PropertyKey.MELTING_RANGE.inWords()));
      return;
    }
    substances.add(
        new Substance(
            share,
            specificHeat(material, PropertyKey.SOLID_SPECIFIC_HEAT),
            specificHeat(material, PropertyKey.LIQUID_SPECIFIC_HEAT),
            figure(material, PropertyKey.HEAT_OF_FUSION, assumptions.fusion(), "J/kg"),
            range.get().low().celsius(),
            range.get().high().celsius()));
  }

  private EstimateInput specificHeat(
      Material material, PropertyKey<PropertyRange<SpecificHeatCapacity>> key) {
    return figure(material, key, assumptions.heat(material), "J/(kg K)");
  }

  private <Q extends Quantity<Q>> EstimateInput figure(
      Material material,
      PropertyKey<PropertyRange<Q>> key,
      Optional<Assumption<Q>> fallback,
      String unit) {
    Optional<Sourced<PropertyRange<Q>>> stated = material.find(key);
    Optional<QuantityRange<Q>> range =
        stated.map(f -> f.value().range()).or(() -> fallback.map(Assumption::range));
    stated.map(Sourced::source).or(() -> fallback.map(Assumption::source)).ifPresent(sources::add);
    String name = material.id() + " " + key.id();
    if (range.isEmpty()) {
      problems.add(
          Problem.of(ThermalProblem.FIGURE_NEEDED, material.id()).with("property", key.inWords()));
      return nothing();
    }
    if (stated.isEmpty()) {
      assumed.add(name);
    }
    EstimateInput input =
        new EstimateInput(name, range.get().lowSi(), range.get().highSi(), unit, Direction.RAISES);
    inputs.add(input);
    return input;
  }

  private static EstimateInput nothing() {
    return new EstimateInput("heat of fusion", 0, 0, "J/kg", Direction.RAISES);
  }
}
