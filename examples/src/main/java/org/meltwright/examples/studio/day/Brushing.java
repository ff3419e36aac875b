// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.day;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.meltwright.core.thermal.setting.Film;
import org.meltwright.core.thermal.setting.MeltFigures;
import org.meltwright.core.thermal.setting.NoFreezePanel;
import org.meltwright.core.thermal.setting.OpenTimeTable;
import org.meltwright.core.thermal.setting.Panel;
import org.meltwright.core.thermal.setting.PanelKind;
import org.meltwright.core.thermal.setting.Surroundings;
import org.meltwright.units.QuantityRange;
import org.meltwright.units.TemperaturePoint;

/**
 * What is brushed on which panel.
 *
 * @param recipe the name of what is brushed
 * @param figures its figures of melting
 * @param stroke how thick a stroke is
 * @param panel the panel, at the temperature of the room
 * @param kind what the panel is made of
 * @param ground what lies on the panel as a ground; empty if nothing does
 * @param melts the temperatures of the melt to compare
 * @param panels the temperatures of the panel to compare
 */
public record Brushing(
    String recipe,
    MeltFigures figures,
    QuantityRange<Length> stroke,
    Panel panel,
    PanelKind kind,
    Optional<PanelKind> ground,
    List<TemperaturePoint> melts,
    List<TemperaturePoint> panels) {

  /** Copies the lists. */
  public Brushing {
    melts = List.copyOf(melts);
    panels = List.copyOf(panels);
  }

  /**
   * Returns how long each melt can be brushed on each panel.
   *
   * @return the times
   */
  public OpenTimeTable table() {
    Film film = new Film(figures, stroke, melts.get(0));
    return OpenTimeTable.of(film, panel, Surroundings.stillRoom(air()), melts, panels);
  }

  /**
   * Returns the panel on which no skin forms at once, none warmer than the warmest that is
   * compared.
   *
   * @param of the kind of panel
   * @param melt the temperature of the melt
   * @return the panel
   */
  public NoFreezePanel withoutSkin(PanelKind of, TemperaturePoint melt) {
    return NoFreezePanel.of(figures.central(), melt, of.substance(), warmest());
  }

  /**
   * Returns the kind of panel that is brushed, then all others.
   *
   * @return the kinds
   */
  public List<PanelKind> kinds() {
    return Arrays.stream(PanelKind.values()).sorted(Comparator.comparing(k -> k != kind)).toList();
  }

  /**
   * Returns the temperature of the air.
   *
   * @return the temperature
   */
  public TemperaturePoint air() {
    return panel.temperature();
  }

  /**
   * Returns the warmest panel that is compared.
   *
   * @return its temperature
   */
  public TemperaturePoint warmest() {
    return panels.stream().max(Comparator.naturalOrder()).orElseThrow();
  }
}
