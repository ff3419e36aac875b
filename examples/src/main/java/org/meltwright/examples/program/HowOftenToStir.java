// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import static org.meltwright.units.MetricUnits.gramsPerMillilitre;
import static org.meltwright.units.MetricUnits.millimetres;

import java.util.Locale;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.thermal.settling.MeltBath;
import org.meltwright.core.thermal.settling.StirringInterval;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityRange;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.VolumeFraction;

/** How often to stir: which colour wants it most? */
public final class HowOftenToStir {

  private HowOftenToStir() {}

  /**
   * Prints how long each colour may stand until a tenth of it is lost, the neediest first.
   *
   * @param args none
   */
  public static void main(String[] args) {
    MaterialCatalogue catalogue = MaterialCatalogue.standard();
    MeltBath tin =
        MeltBath.of(
            QuantityRange.of(
                QuantityKind.DENSITY, gramsPerMillilitre(0.82), gramsPerMillilitre(0.85)),
            new QuantityRange<>(QuantityKind.DYNAMIC_VISCOSITY, 0.010, 0.030),
            millimetres(30),
            millimetres(5),
            TemperaturePoint.ofCelsius(80));
    QuantityRange<Length> pieces = new QuantityRange<>(QuantityKind.LENGTH, 2e-6, 10e-6);
    StirringInterval.byNeed(
            Stream.of("titanium-white-rutile", "red-iron-oxide", "ultramarine", "vermilion")
                .map(catalogue::require)
                .map(c -> StirringInterval.of(c, pieces, VolumeFraction.ofPercent(2), tin, 0.1))
                .toList())
        .forEach(HowOftenToStir::print);
  }

  private static void print(StirringInterval interval) {
    System.out.printf(
        Locale.ROOT,
        "%s: quiet %.1f min (%.1f to %.0f), on a plate %.1f min (%.1f to %.0f)%n",
        interval.particles().name(Locale.ENGLISH),
        interval.quiet().centralSi() / 60,
        interval.quiet().lowSi() / 60,
        interval.quiet().highSi() / 60,
        interval.convecting().centralSi() / 60,
        interval.convecting().lowSi() / 60,
        interval.convecting().highSi() / 60);
  }
}
