// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.explain;

import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.core.mixture.Mixture;
import org.meltwright.core.thermal.heat.HeatAssumptions;
import org.meltwright.core.thermal.heat.HeatDemand;
import org.meltwright.core.thermal.setting.Film;
import org.meltwright.core.thermal.setting.MeltFigures;
import org.meltwright.core.thermal.setting.OpenTime;
import org.meltwright.core.thermal.setting.Panel;
import org.meltwright.core.thermal.setting.PanelKind;
import org.meltwright.core.thermal.setting.Surroundings;
import org.meltwright.core.thermal.settling.MeltBath;
import org.meltwright.core.thermal.settling.StirringInterval;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityRange;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.VolumeFraction;

/** Estimates of a medium of beeswax and damar with a little oxide. */
final class DriversCases {

  record Case(String name, Supplier<?> estimate, Supplier<Drivers> drivers) {}

  private static final TemperaturePoint ROOM = TemperaturePoint.ofCelsius(20);
  private static final TemperaturePoint HOT = TemperaturePoint.ofCelsius(85);

  private DriversCases() {}

  static List<Case> all() {
    MaterialCatalogue shelf = MaterialCatalogue.standard();
    List<Material> parts =
        Stream.of("beeswax-yellow", "carnauba", "damar", "red-iron-oxide")
            .map(shelf::require)
            .toList();
    Composition mix = Composition.ofParts(parts, 80, 5, 10, 5);
    return List.of(density(mix), heat(mix), open(mix), stirring(parts.get(3)));
  }

  private static Case density(Composition mix) {
    var view = mix.volumeView(DensityBasis.SOLID);
    return new Case("density of a mix", view::density, view::densityDrivers);
  }

  private static Case heat(Composition mix) {
    HeatDemand demand = HeatDemand.of(new Mixture(mix, 1), ROOM, HOT, HeatAssumptions.TYPICAL);
    return new Case("heat to melt it", demand::totalHeat, demand::totalHeatDrivers);
  }

  private static Case open(Composition mix) {
    Film film =
        Film.of(
            MeltFigures.of(mix, MeltFigures.TYPICAL), 2e-4, 5e-4, TemperaturePoint.ofCelsius(75));
    Panel panel = Panel.of(PanelKind.WOOD, 0.01, ROOM);
    Surroundings air = Surroundings.stillRoom(ROOM);
    OpenTime time = OpenTime.of(film, panel, air);
    return new Case(
        "open time", () -> OpenTime.of(film, panel, air).halfSet(), time::halfSetDrivers);
  }

  private static Case stirring(Material oxide) {
    MeltBath pot =
        MeltBath.of(
            new QuantityRange<>(QuantityKind.DENSITY, 820, 850),
            new QuantityRange<>(QuantityKind.DYNAMIC_VISCOSITY, 0.010, 0.030),
            QuantityKind.LENGTH.ofSi(0.05),
            QuantityKind.LENGTH.ofSi(0.005),
            HOT);
    StirringInterval interval =
        StirringInterval.of(
            oxide,
            new QuantityRange<>(QuantityKind.LENGTH, 2e-6, 20e-6),
            VolumeFraction.ofPercent(2),
            pot,
            0.1);
    return new Case("time between two stirrings", interval::quiet, interval::quietDrivers);
  }
}
