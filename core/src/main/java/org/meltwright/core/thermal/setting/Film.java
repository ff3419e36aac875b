// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.setting;

import static org.meltwright.core.thermal.setting.Substance.CHECK;

import javax.measure.quantity.Length;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityRange;
import org.meltwright.units.TemperaturePoint;

/**
 * A film of melt as it is laid: its figures, its thickness, its temperature on contact.
 *
 * <p>A brushed film of 0.3 to 0.7 mm that the brush has cooled from 85 to 75 °C, and the same from
 * a warmed brush:
 *
 * <pre>{@code
 * Film film = Film.of(MeltFigures.TYPICAL, 3e-4, 7e-4, ofCelsius(75));
 * film.thickness().middleSi(); // 0.0005 m
 * film.withTemperature(ofCelsius(83)).temperature(); // 83.0 °C
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param melt the figures of the melt
 * @param thickness the thickness, as a range, from 1 µm
 * @param temperature the temperature on contact; a tool cools it on the way from the pot
 */
public record Film(
    MeltFigures melt, QuantityRange<Length> thickness, TemperaturePoint temperature) {

  /** Draws a problem if the thickness or the temperature cannot be. */
  public Film {
    CHECK.between(temperature.celsius(), -100, 1000, "temperature of the film in °C");
    CHECK.between(thickness.lowSi(), 1e-6, 1, "thickness of the film in m");
    CHECK.between(thickness.highSi(), 1e-6, 1, "thickness of the film in m");
  }

  /**
   * Returns a film.
   *
   * @param melt the figures of the melt
   * @param lowMetres the least thickness, in m
   * @param highMetres the greatest thickness, in m
   * @param temperature the temperature on contact
   * @return the film
   * @throws org.meltwright.units.ProblemException if the thickness cannot be
   */
  public static Film of(
      MeltFigures melt, double lowMetres, double highMetres, TemperaturePoint temperature) {
    return new Film(
        melt, new QuantityRange<>(QuantityKind.LENGTH, lowMetres, highMetres), temperature);
  }

  /**
   * Returns a copy at another temperature.
   *
   * @param point the temperature on contact
   * @return the new film
   */
  public Film withTemperature(TemperaturePoint point) {
    return new Film(melt, thickness, point);
  }
}
