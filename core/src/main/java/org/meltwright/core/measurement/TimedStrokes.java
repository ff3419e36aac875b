// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.measurement;

import static org.meltwright.core.measurement.MeasurementProblem.CHECK;
import static org.meltwright.core.measurement.Measuring.input;
import static org.meltwright.core.measurement.Measuring.more;

import java.util.List;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import org.meltwright.core.thermal.setting.Film;
import org.meltwright.core.thermal.setting.MeltFigures;
import org.meltwright.core.thermal.setting.OpenTime;
import org.meltwright.core.thermal.setting.Panel;
import org.meltwright.core.thermal.setting.Surroundings;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.TemperaturePoint;

/**
 * How thick a stroke is and how hot it meets the panel, from a weighed panel and timed strokes.
 *
 * <p>h = (m(after) − m(before)) / (ρ A n). The temperature on contact is the one at which {@link
 * OpenTime} gives the time that was measured: seldom that of the pot, mostly 10 to 20 K below it.
 * It is no better than the figures of the melt and the panel, which count as known here.
 *
 * <p>Ten strokes over the same 100 cm²:
 *
 * <pre>{@code
 * TimedStrokes strokes =
 *     new TimedStrokes(
 *         Reading.shown(212.4, 0.1),
 *         Reading.shown(242.5, 0.1),
 *         Reading.within(100, 2),
 *         10,
 *         Reading.within(955, 5),
 *         Reading.repeated(9.1, 10.4, 8.6, 9.8, 10.0));
 * strokes.film().text(); // 0.3152 ± 0.0076 mm
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param beforeGrams the bare panel, in g
 * @param afterGrams the panel with all layers, in g
 * @param areaSquareCentimetres the area that was covered, in cm²
 * @param layers how many times it was covered
 * @param solidDensity the density of the cold medium, in kg/m³
 * @param dragSeconds how long a stroke stayed workable, in s
 */
public record TimedStrokes(
    Reading beforeGrams,
    Reading afterGrams,
    Reading areaSquareCentimetres,
    int layers,
    Reading solidDensity,
    Reading dragSeconds) {

  /** g to kg, cm² to m², m to mm. */
  private static final double MILLIMETRES = 1e-3 / 1e-4 * 1e3;

  private static final double HOTTEST = 200;
  private static final int HALVINGS = 22;

  /** Draws a problem if the panel grew no heavier or another number is not above zero. */
  public TimedStrokes {
    more(afterGrams, beforeGrams, "mass of the painted panel in g");
    CHECK.between(areaSquareCentimetres.value(), 1e-3, 1e9, "painted area in cm²");
    CHECK.between(layers, 1, 1e6, "number of layers");
    CHECK.between(solidDensity.value(), 1, 1e5, "density of the medium in kg/m³");
    CHECK.between(dragSeconds.value(), 1e-3, 1e6, "time until a stroke drags in s");
  }

  /**
   * Returns the mean thickness of one layer.
   *
   * @return the thickness, in mm
   */
  public Measurement film() {
    return Measurement.of(
        "thickness of a stroke",
        "mm",
        List.of(
            input("bare panel", "g", beforeGrams),
            input("painted panel", "g", afterGrams),
            input("painted area", "cm²", areaSquareCentimetres),
            input("density of the medium", "kg/m³", solidDensity)),
        x -> MILLIMETRES * (x[1] - x[0]) / (x[3] * x[2] * layers));
  }

  /**
   * Returns the temperature at which the stroke met the panel.
   *
   * @param melt the figures of the medium
   * @param panel the panel
   * @param surroundings the air above
   * @return the temperature, in °C
   * @throws ProblemException if no temperature up to 200 °C gives the time that was measured
   */
  public Measurement contact(MeltFigures melt, Panel panel, Surroundings surroundings) {
    return contact((metres, celsius) -> drags(melt, panel, surroundings, metres, celsius));
  }

  private static double drags(
      MeltFigures melt, Panel panel, Surroundings air, double metres, double celsius) {
    Film film = Film.of(melt, metres, metres, TemperaturePoint.ofCelsius(celsius));
    return OpenTime.of(film, panel, air).halfSet().centralSi();
  }

  /** The same for any law of the seconds until a film of metres drags that was at °C. */
  Measurement contact(DoubleBinaryOperator drags) {
    return Measurement.of(
        "temperature on contact",
        "°C",
        List.of(
            input("thickness of a stroke", "mm", film().reading()),
            input("time until it drags", "s", dragSeconds)),
        x -> celsius(x[1], at -> drags.applyAsDouble(x[0] / 1e3, at)));
  }

  /** Where a growing law reaches the seconds. */
  private static double celsius(double seconds, DoubleUnaryOperator drags) {
    if (drags.applyAsDouble(HOTTEST) < seconds) {
      throw new ProblemException(
          Problem.of(MeasurementProblem.NOT_APART, Bilingual.of(seconds).plus(" s")));
    }
    double low = 0;
    double high = HOTTEST;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      boolean tooCold = drags.applyAsDouble(middle) < seconds;
      low = tooCold ? middle : low;
      high = tooCold ? high : middle;
    }
    return (low + high) / 2;
  }
}
