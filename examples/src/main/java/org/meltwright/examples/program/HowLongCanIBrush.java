// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import javax.measure.quantity.Time;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.thermal.setting.Film;
import org.meltwright.core.thermal.setting.MeltFigures;
import org.meltwright.core.thermal.setting.NoFreezePanel;
import org.meltwright.core.thermal.setting.OpenTimeTable;
import org.meltwright.core.thermal.setting.Panel;
import org.meltwright.core.thermal.setting.PanelKind;
import org.meltwright.core.thermal.setting.Surroundings;
import org.meltwright.units.Estimate;
import org.meltwright.units.TemperaturePoint;

/** How long can I brush, and on a warm panel? Seconds until a stroke drags, by medium and panel. */
public final class HowLongCanIBrush {

  private static final List<TemperaturePoint> MELTS = points(75, 85);
  private static final List<TemperaturePoint> PANELS = points(20, 40, 55);

  private HowLongCanIBrush() {}

  /**
   * Prints the time until a stroke drags, melt against panel, and the panel that forms no skin.
   *
   * @param args none
   */
  public static void main(String[] args) {
    MaterialCatalogue catalogue = MaterialCatalogue.standard();
    List<Material> parts = List.of(catalogue.require("beeswax-yellow"), catalogue.require("damar"));
    MeltFigures medium = MeltFigures.of(Composition.ofParts(parts, 8, 1), MeltFigures.TYPICAL);
    Film stroke = Film.of(medium, 2e-4, 5e-4, MELTS.get(0));
    Panel plywood = Panel.of(PanelKind.WOOD, 0.010, PANELS.get(0));
    OpenTimeTable table =
        OpenTimeTable.of(stroke, plywood, Surroundings.stillRoom(PANELS.get(0)), MELTS, PANELS);
    for (int row = 0; row < MELTS.size(); row++) {
      for (int column = 0; column < PANELS.size(); column++) {
        System.out.printf(
            "medium %s, panel %s: drags after %s%n",
            MELTS.get(row), PANELS.get(column), seconds(table.halfSet(row, column)));
      }
    }
    for (PanelKind kind : PanelKind.values()) {
      NoFreezePanel warm =
          NoFreezePanel.of(
              medium.central(), MELTS.get(1), kind.substance(), TemperaturePoint.ofCelsius(55));
      System.out.printf("no skin on %s: panel %s%n", kind, warm.text(Locale.ENGLISH));
    }
  }

  private static String seconds(Estimate<Time> time) {
    return String.format(
        Locale.ROOT, "%.0f s (%.0f to %.0f)", time.centralSi(), time.lowSi(), time.highSi());
  }

  private static List<TemperaturePoint> points(double... celsius) {
    return DoubleStream.of(celsius).mapToObj(TemperaturePoint::ofCelsius).toList();
  }
}
