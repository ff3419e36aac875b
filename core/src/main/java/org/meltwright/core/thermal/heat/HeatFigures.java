// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.heat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import org.meltwright.core.explain.Drivers.Values;
import org.meltwright.core.explain.EstimateInput;
import org.meltwright.core.explain.EstimateInput.Direction;
import org.meltwright.core.explain.Symbol;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialProblem;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.material.PropertyRange;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.source.Source;
import org.meltwright.core.thermal.ThermalProblem;
import org.meltwright.core.thermal.heat.HeatAssumptions.Assumption;
import org.meltwright.core.thermal.melting.ComponentMelting;
import org.meltwright.core.thermal.melting.MeltingReport;
import org.meltwright.units.Bilingual;
import org.meltwright.units.MassFraction;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityRange;
import org.meltwright.units.SpecificHeatCapacity;
import org.meltwright.units.TemperatureRange;

/** Gathers the heat figures of a mix from its materials and from what is assumed. */
final class HeatFigures {

  private static final Symbol SOLID_HEAT = symbol("specific heat, solid", "J/(kg K)");
  private static final Symbol MELT_HEAT = symbol("specific heat, melt", "J/(kg K)");
  private static final Symbol FUSION = symbol("heat of fusion", "J/kg");

  private record Substance(
      double share,
      EstimateInput solid,
      EstimateInput liquid,
      EstimateInput fusion,
      double solidus,
      double liquidus) {

    MeltingHeat at(Values values) {
      return new MeltingHeat(
          values.of(solid), values.of(liquid), values.of(fusion), solidus, liquidus);
    }
  }

  private final HeatAssumptions assumptions;
  private final List<Substance> substances = new ArrayList<>();
  private final List<EstimateInput> inputs = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();
  private final MixFigures found = new MixFigures();

  private static Symbol symbol(String name, String unit) {
    return Symbol.beside(ThermalProblem.class, name, unit);
  }

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

  EnthalpyCurve curve(Values values) {
    return EnthalpyCurve.of(
        substances.stream().map(s -> s.at(values)).toList(),
        substances.stream().mapToDouble(Substance::share).toArray());
  }

  List<EstimateInput> inputs() {
    return inputs;
  }

  List<String> assumed() {
    return found.assumed();
  }

  List<Source> sources() {
    return found.sources();
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
            figure(material, PropertyKey.HEAT_OF_FUSION, assumptions.fusion(), FUSION),
            range.get().low().celsius(),
            range.get().high().celsius()));
  }

  private EstimateInput specificHeat(
      Material material, PropertyKey<PropertyRange<SpecificHeatCapacity>> key) {
    Symbol symbol = key.equals(PropertyKey.SOLID_SPECIFIC_HEAT) ? SOLID_HEAT : MELT_HEAT;
    return figure(material, key, assumptions.heat(material), symbol);
  }

  private <Q extends Quantity<Q>> EstimateInput figure(
      Material material,
      PropertyKey<PropertyRange<Q>> key,
      Optional<Assumption<Q>> fallback,
      Symbol symbol) {
    Optional<QuantityRange<Q>> stated = found.find(material, key);
    Optional<QuantityRange<Q>> range = stated.or(() -> fallback.map(Assumption::range));
    if (range.isEmpty()) {
      problems.add(
          Problem.of(ThermalProblem.FIGURE_NEEDED, material.id()).with("property", key.inWords()));
      return nothing();
    }
    if (stated.isEmpty()) {
      fallback.map(Assumption::source).ifPresent(found::restOn);
    }
    EstimateInput input =
        EstimateInput.of(
            symbol.of(Bilingual.of(material::name)),
            range.get().lowSi(),
            range.get().highSi(),
            Direction.RAISES);
    inputs.add(input);
    return input;
  }

  private static EstimateInput nothing() {
    return EstimateInput.of(FUSION, 0, 0, Direction.RAISES);
  }
}
