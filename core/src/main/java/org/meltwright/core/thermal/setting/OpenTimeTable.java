// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.setting;

import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Time;
import org.meltwright.units.Estimate;
import org.meltwright.units.TemperaturePoint;

/**
 * Open times side by side: the temperature of the melt against that of the panel.
 *
 * <p>It shows what pays: a warmed panel gives far more time than a hotter melt.
 *
 * <p>What ten kelvin more in the melt bring on a cold panel, and twenty more in the panel:
 *
 * <pre>{@code
 * OpenTimeTable table =
 *     OpenTimeTable.of(
 *         Film.of(MeltFigures.TYPICAL, 5e-4, 5e-4, ofCelsius(75)),
 *         Panel.of(PanelKind.WOOD, 0.010, ofCelsius(20)),
 *         Surroundings.stillRoom(ofCelsius(20)),
 *         List.of(ofCelsius(75), ofCelsius(85)),
 *         List.of(ofCelsius(20), ofCelsius(40)));
 * double usual = table.halfSet(0, 0).centralSi();
 * table.halfSet(1, 0).centralSi() / usual; // 1.3 times
 * table.halfSet(0, 1).centralSi() / usual; // 2.5 times
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param melts the temperatures of the melt, a row each
 * @param panels the temperatures of the panel, a column each
 * @param rows the open times
 */
public record OpenTimeTable(
    List<TemperaturePoint> melts, List<TemperaturePoint> panels, List<List<OpenTime>> rows) {

  public OpenTimeTable {
    melts = List.copyOf(melts);
    panels = List.copyOf(panels);
    rows = rows.stream().map(List::copyOf).toList();
  }

  /**
   * Returns the table of a film on a panel.
   *
   * @param film the film
   * @param panel the panel
   * @param surroundings the air above
   * @param melts the temperatures of the melt; none above what the caller allows
   * @param panels the temperatures of the panel
   * @return the table
   */
  public static OpenTimeTable of(
      Film film,
      Panel panel,
      Surroundings surroundings,
      List<TemperaturePoint> melts,
      List<TemperaturePoint> panels) {
    List<List<OpenTime>> rows = new ArrayList<>();
    for (TemperaturePoint melt : melts) {
      List<OpenTime> row = new ArrayList<>();
      for (TemperaturePoint point : panels) {
        row.add(
            OpenTime.of(film.withTemperature(melt), panel.withTemperature(point), surroundings));
      }
      rows.add(row);
    }
    return new OpenTimeTable(melts, panels, rows);
  }

  /**
   * Returns the time until the film is half set.
   *
   * @param row the place of the melt's temperature, from zero
   * @param column the place of the panel's temperature, from zero
   * @return the time
   * @throws IndexOutOfBoundsException if there is no such place
   */
  public Estimate<Time> halfSet(int row, int column) {
    return rows.get(row).get(column).halfSet();
  }
}
