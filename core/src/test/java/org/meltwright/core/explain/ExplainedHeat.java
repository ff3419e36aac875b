// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.explain;

import static org.meltwright.core.explain.Explained.log;

import java.util.List;
import java.util.Random;
import javax.measure.Quantity;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.measurement.Measurement;
import org.meltwright.core.measurement.Reading;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.Mixture;
import org.meltwright.core.thermal.heat.HeatAssumptions;
import org.meltwright.core.thermal.heat.HeatDemand;
import org.meltwright.core.thermal.melting.MeltingReport;
import org.meltwright.core.thermal.melting.WorkingWindow;
import org.meltwright.core.thermal.setting.CakeSetting;
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
import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.TemperatureRange;
import org.meltwright.units.VolumeFraction;

/** Draws of results of heat and of measurements. */
final class ExplainedHeat {

  private static final MaterialCatalogue SHELF = MaterialCatalogue.standard();
  private static final Material WAX = SHELF.require("beeswax-yellow");

  private ExplainedHeat() {}

  private static Composition mix(Random r) {
    List<Material> waxes = List.of(WAX, SHELF.require("carnauba"), SHELF.require("damar"));
    return Composition.ofParts(waxes, log(r, 1, 9), log(r, 0.05, 2), log(r, 0.05, 1));
  }

  private static TemperaturePoint celsius(Random r, double low, double high) {
    return TemperaturePoint.ofCelsius(low + (high - low) * r.nextDouble());
  }

  static Explanation demand(Random r) {
    HeatDemand demand =
        HeatDemand.of(
            new Mixture(mix(r), log(r, 0.05, 20)),
            celsius(r, 5, 40),
            celsius(r, 60, 110),
            HeatAssumptions.TYPICAL);
    return (r.nextBoolean() ? demand : demand.withVesselCapacity(log(r, 50, 2000))).explanation();
  }

  static Explanation cake(Random r) {
    double thick = log(r, 0.005, 0.04);
    return CakeSetting.of(
            MeltFigures.of(Composition.of(WAX), MeltFigures.TYPICAL),
            range(QuantityKind.LENGTH, thick, 0.1 * thick),
            celsius(r, 70, 90),
            Surroundings.stillRoom(celsius(r, 10, 30)),
            r.nextBoolean() ? CakeSetting.Faces.BOTH : CakeSetting.Faces.TOP)
        .explanation();
  }

  static Explanation openTime(Random r) {
    double film = log(r, 1e-4, 1e-3);
    return OpenTime.of(
            Film.of(
                MeltFigures.of(Composition.of(WAX), MeltFigures.TYPICAL),
                film,
                1.2 * film,
                celsius(r, 70, 90)),
            Panel.of(
                PanelKind.values()[r.nextInt(PanelKind.values().length)],
                0.010,
                celsius(r, 10, 70)),
            Surroundings.stillRoom(celsius(r, 10, 30)))
        .explanation();
  }

  static Explanation stirring(Random r) {
    double size = log(r, 1e-8, 1e-3);
    double depth = log(r, 0.005, 0.2);
    MeltBath bath =
        new MeltBath(
            range(QuantityKind.DENSITY, 800 + 60 * r.nextDouble(), 30),
            range(QuantityKind.DYNAMIC_VISCOSITY, log(r, 5e-3, 0.1), 0.01),
            depth,
            depth * (0.05 + 0.95 * r.nextDouble()),
            celsius(r, 60, 100));
    List<String> pieces = List.of("red-iron-oxide", "titanium-white-rutile", "carnauba");
    return StirringInterval.of(
            SHELF.require(pieces.get(r.nextInt(3))),
            range(QuantityKind.LENGTH, size, size),
            VolumeFraction.of(0.1 * r.nextDouble()),
            bath,
            log(r, 1e-3, 0.9))
        .explanation();
  }

  private static <Q extends Quantity<Q>> QuantityRange<Q> range(
      QuantityKind<Q> kind, double low, double width) {
    return new QuantityRange<>(kind, low, low + width);
  }

  static Explanation window(Random r) {
    TemperaturePoint ceiling = celsius(r, 70, 110);
    TemperatureDifference margin = TemperatureDifference.ofKelvin(20 * r.nextDouble());
    TemperatureDifference width = TemperatureDifference.ofKelvin(10 * r.nextDouble());
    double low = 40 + 40 * r.nextDouble();
    return (r.nextBoolean()
            ? WorkingWindow.of(mix(r), ceiling, margin, width)
            : WorkingWindow.ofMeasured(
                TemperatureRange.ofCelsius(low, low + 5), ceiling, margin, width))
        .explanation();
  }

  static Explanation melting(Random r) {
    return MeltingReport.of(mix(r), celsius(r, 60, 110)).explanation();
  }

  static Explanation measurement(Random r) {
    return Measurement.of(
            "density of a bar",
            "g/cm³",
            List.of(
                new Measurement.Input("mass", "g", Reading.of(log(r, 1, 900), log(r, 1e-3, 1))),
                new Measurement.Input("length", "cm", Reading.within(log(r, 1, 30), 0.05)),
                new Measurement.Input("section", "cm²", Reading.within(log(r, 1, 30), 0.05))),
            x -> x[0] / x[1] / x[2])
        .explanation();
  }
}
