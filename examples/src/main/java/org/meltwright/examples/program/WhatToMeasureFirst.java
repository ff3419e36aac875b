// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import java.util.List;
import java.util.Locale;
import org.meltwright.core.explain.Drivers;
import org.meltwright.core.explain.Drivers.Driver;
import org.meltwright.core.explain.EstimateInput;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.thermal.setting.Film;
import org.meltwright.core.thermal.setting.MeltFigures;
import org.meltwright.core.thermal.setting.OpenTime;
import org.meltwright.core.thermal.setting.Panel;
import org.meltwright.core.thermal.setting.PanelKind;
import org.meltwright.core.thermal.setting.Surroundings;
import org.meltwright.units.TemperaturePoint;

/** What to measure first? The input that decides an open time, and how well it must be known. */
public final class WhatToMeasureFirst {

  private static final Locale READER = Locale.ENGLISH;
  private static final TemperaturePoint ROOM = TemperaturePoint.ofCelsius(20);

  private WhatToMeasureFirst() {}

  /**
   * Prints how sure an open time is, what it hangs on, and what measuring the strokes brings.
   *
   * @param args none
   */
  public static void main(String[] args) {
    Drivers time = stroke(2e-4, 5e-4).halfSetDrivers();
    System.out.println("drags after " + time.worst().text(READER) + ", all at their worse ends");
    System.out.println("likely " + time.likely().text(READER) + ", 95 of 100");
    time.ranked().stream().limit(4).forEach(WhatToMeasureFirst::print);
    time.measureFirst(READER).ifPresent(System.out::println);

    EstimateInput film = time.ranked().get(0).input();
    System.out.println(time.needed(film, 10).text(READER));
    System.out.println(time.needed(film, 3).text(READER));

    Drivers weighed = stroke(3.1e-4, 3.5e-4).halfSetDrivers();
    System.out.println("weighed: " + weighed.worst().text(READER));
    System.out.println("likely " + weighed.likely().text(READER));
    weighed.measureFirst(READER).ifPresent(System.out::println);
  }

  private static void print(Driver driver) {
    System.out.printf(
        Locale.ROOT,
        "  %s: %.0f %%, known it leaves %s%n",
        driver.input().text(READER),
        100 * driver.shrink(),
        driver.ifKnown().text(READER));
  }

  private static OpenTime stroke(double leastMetres, double mostMetres) {
    MaterialCatalogue catalogue = MaterialCatalogue.standard();
    List<Material> parts = List.of(catalogue.require("beeswax-yellow"), catalogue.require("damar"));
    MeltFigures medium = MeltFigures.of(Composition.ofParts(parts, 8, 1), MeltFigures.TYPICAL);
    return OpenTime.of(
        Film.of(medium, leastMetres, mostMetres, TemperaturePoint.ofCelsius(75)),
        Panel.of(PanelKind.WOOD, 0.010, ROOM),
        Surroundings.stillRoom(ROOM));
  }
}
