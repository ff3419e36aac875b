// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.settling;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.meltwright.core.thermal.ThermalProblem;
import org.meltwright.units.Check;
import org.meltwright.units.Density;
import org.meltwright.units.DynamicViscosity;
import org.meltwright.units.QuantityRange;
import org.meltwright.units.TemperaturePoint;

/**
 * A pot of melt in which particles settle: how dense, how thin, how deep, how hot.
 *
 * <p>A pot of 50 mm whose top 5 mm are used, at 80 °C:
 *
 * <pre>{@code
 * MeltBath pot =
 *     MeltBath.of(
 *         QuantityRange.of(
 *             QuantityKind.DENSITY, gramsPerMillilitre(0.82), gramsPerMillilitre(0.85)),
 *         new QuantityRange<>(QuantityKind.DYNAMIC_VISCOSITY, 0.008, 0.016),
 *         millimetres(50),
 *         millimetres(5),
 *         ofCelsius(80));
 * pot.viscosity().middleSi(); // 0.012 Pa s
 * pot.depthMetres(); // 0.05 m
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param density the density of the melt, as a range
 * @param viscosity the viscosity of the melt without the particles, as a range
 * @param depthMetres the depth of the melt, in m, above zero
 * @param layerMetres the depth of the top layer that is used from, in m, above zero, not above the
 *     depth
 * @param temperature the temperature
 */
public record MeltBath(
    QuantityRange<Density> density,
    QuantityRange<DynamicViscosity> viscosity,
    double depthMetres,
    double layerMetres,
    TemperaturePoint temperature) {

  /**
   * The guards of this package: what they say stands in the bundle beside {@link ThermalProblem}.
   */
  static final Check CHECK = Check.beside(ThermalProblem.class);

  public MeltBath {
    CHECK.between(density.lowSi(), 1, 1e5, "density of the melt in kg/m³");
    CHECK.between(density.highSi(), 1, 1e5, "density of the melt in kg/m³");
    CHECK.between(viscosity.highSi(), 1e-6, 1e6, "viscosity in Pa s");
    CHECK.between(temperature.celsius(), -100, 1000, "temperature of the melt in °C");
    CHECK.between(viscosity.lowSi(), 1e-6, 1e6, "viscosity in Pa s");
    CHECK.between(depthMetres, 1e-6, 100, "depth of the melt in m");
    CHECK.between(layerMetres, 1e-6, depthMetres, "depth of the layer in m");
  }

  /**
   * Returns a pot of melt.
   *
   * @param density the density of the melt, as a range
   * @param viscosity the viscosity of the melt without the particles, as a range
   * @param depth the depth of the melt
   * @param layer the depth of the top layer that is used from, not above the depth
   * @param temperature the temperature
   * @return the pot
   * @throws org.meltwright.units.ProblemException if a figure cannot be
   */
  public static MeltBath of(
      QuantityRange<Density> density,
      QuantityRange<DynamicViscosity> viscosity,
      Quantity<Length> depth,
      Quantity<Length> layer,
      TemperaturePoint temperature) {
    double metres = CHECK.between(depth, 1e-6, 100, "depth of the melt");
    double layerMetres = CHECK.between(layer, 1e-6, metres, "depth of the layer");
    return new MeltBath(density, viscosity, metres, layerMetres, temperature);
  }
}
