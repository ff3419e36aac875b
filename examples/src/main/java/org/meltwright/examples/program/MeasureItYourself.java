// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.meltwright.core.material.Comparison;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.measurement.FullCup;
import org.meltwright.core.measurement.Measurement;
import org.meltwright.core.measurement.Reading;
import org.meltwright.core.measurement.ThermometerCalibration;
import org.meltwright.core.measurement.ThermometerCalibration.Point;

/** Measure it yourself: a thermometer, a cup of melt, and what becomes of the figure in print. */
public final class MeasureItYourself {

  private MeasureItYourself() {}

  /**
   * Prints a calibration, a density with what made it unsure, and the comparison.
   *
   * @param args none
   */
  public static void main(String[] args) {
    ThermometerCalibration probe =
        ThermometerCalibration.of(
            List.of(
                Point.ice(Reading.shown(0.6, 0.1)),
                Point.boilingAtHeight(Reading.shown(98.9, 0.1), 180)));
    Measurement hot = probe.corrected(Reading.shown(80, 0.1));
    System.out.println(hot);

    FullCup cup =
        new FullCup(
            Reading.shown(48.2, 0.1),
            Reading.shown(248.0, 0.1),
            Reading.within(21, 1),
            Reading.shown(218.0, 0.1),
            hot.reading());
    Measurement melt = cup.density();
    System.out.println(melt.explanation().text(Locale.ENGLISH));

    Material wax = MaterialCatalogue.standard().require("beeswax-yellow").withLot("7");
    var own = melt.figure(PropertyKey.LIQUID_DENSITY, "Ada", LocalDate.of(2026, 3, 14));
    Material bag = wax.withFirst(PropertyKey.LIQUID_DENSITY, own);
    Comparison.of(bag, PropertyKey.LIQUID_DENSITY).ifPresent(System.out::println);
  }
}
