// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.measurement;

import static org.meltwright.core.measurement.MeasurementProblem.CHECK;
import static org.meltwright.core.measurement.Measuring.input;

import java.util.List;
import org.meltwright.units.TemperaturePoint;

/**
 * Density of a solid piece by the liquid it displaces.
 *
 * <p>ρ = ρ(liquid) m / m(displaced). Put a bowl of water on the balance, set it to zero, and push
 * the piece just under with a needle: the balance shows the displaced water, whether the piece
 * sinks or floats. A piece that hangs in the water and is weighed there has displaced its mass in
 * air less that in the water.
 *
 * <p>A cake of beeswax:
 *
 * <pre>{@code
 * Displacement cake =
 *     Displacement.ofWater(
 *         Reading.shown(71.2, 0.1), Reading.shown(74.5, 0.1), Reading.within(21, 1));
 * cake.density().text(); // 953.8 ± 1.1 kg/m³ at 21 °C
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param pieceGrams the piece in air, in g
 * @param displacedGrams the liquid that it displaces, in g
 * @param liquidDensity the density of the liquid, in kg/m³
 * @param celsius the temperature of both, in °C
 */
public record Displacement(
    Reading pieceGrams, Reading displacedGrams, Reading liquidDensity, Reading celsius) {

  /** Draws a problem if a mass or the density is not above zero. */
  public Displacement {
    CHECK.between(pieceGrams.value(), 1e-9, 1e9, "mass of the piece in g");
    CHECK.between(displacedGrams.value(), 1e-9, 1e9, "mass of the displaced liquid in g");
    CHECK.between(liquidDensity.value(), 1, 1e5, "density of the liquid in kg/m³");
  }

  /**
   * Returns a piece in water.
   *
   * @param pieceGrams the piece in air, in g
   * @param displacedGrams the water that it displaces, in g
   * @param celsius the temperature of both, from 0 to 40 °C
   * @return the displacement
   * @throws org.meltwright.units.ProblemException if a mass is not above zero or the water is
   *     warmer than 40 °C
   */
  public static Displacement ofWater(Reading pieceGrams, Reading displacedGrams, Reading celsius) {
    double at = Measuring.waterAt(celsius).value();
    double u = celsius.uncertainty();
    double moves = Measuring.waterDensity(at - u) - Measuring.waterDensity(at + u);
    Reading water = new Reading(Measuring.waterDensity(at), Math.abs(moves) / 2, celsius.freedom());
    return new Displacement(pieceGrams, displacedGrams, water, celsius);
  }

  /**
   * Returns the density of the piece, for {@code solid-density}.
   *
   * @return the density, in kg/m³, at the temperature of the liquid
   */
  public Measurement density() {
    return Measurement.of(
            "density of a piece by displacement",
            "kg/m³",
            List.of(
                input("piece", "g", pieceGrams),
                input("displaced liquid", "g", displacedGrams),
                input("density of the liquid", "kg/m³", liquidDensity)),
            x -> x[2] * x[0] / x[1])
        .at(TemperaturePoint.ofCelsius(celsius.value()));
  }
}
