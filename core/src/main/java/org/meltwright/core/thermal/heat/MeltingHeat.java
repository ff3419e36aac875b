// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.heat;

import static org.meltwright.core.thermal.heat.HeatSupply.CHECK;

import org.meltwright.units.Bilingual;
import org.meltwright.units.ProblemException;

/**
 * The heat figures of one substance: two specific heats, a heat of fusion, and the range over which
 * it melts.
 *
 * <p>The liquid fraction rises in proportion over the range; a range of no width melts at one
 * temperature.
 *
 * <p>A wax that melts from 40 to 65 °C is half molten in the middle; a pigment takes up heat too,
 * but does not melt:
 *
 * <pre>{@code
 * MeltingHeat wax = new MeltingHeat(2000, 2400, 180_000, 40, 65);
 * wax.liquidFraction(52.5); // 0.5
 * wax.liquidFraction(20); // 0
 * MeltingHeat.withoutMelting(700).melts(); // false
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param solidSpecificHeatJoulesPerKilogramKelvin specific heat of the solid, in J/(kg K), above
 *     zero
 * @param liquidSpecificHeatJoulesPerKilogramKelvin specific heat of the melt, in J/(kg K), above
 *     zero
 * @param heatOfFusionJoulesPerKilogram heat of fusion, in J/kg, not negative
 * @param solidusCelsius where melting begins, in °C
 * @param liquidusCelsius where melting ends, in °C, not below the solidus
 */
public record MeltingHeat(
    double solidSpecificHeatJoulesPerKilogramKelvin,
    double liquidSpecificHeatJoulesPerKilogramKelvin,
    double heatOfFusionJoulesPerKilogram,
    double solidusCelsius,
    double liquidusCelsius) {

  public MeltingHeat {
    CHECK.between(solidSpecificHeatJoulesPerKilogramKelvin, 1, 1e5, "specific heat in J/(kg K)");
    CHECK.between(liquidSpecificHeatJoulesPerKilogramKelvin, 1, 1e5, "specific heat in J/(kg K)");
    CHECK.between(heatOfFusionJoulesPerKilogram, 0, 1e8, "heat of fusion in J/kg");
    CHECK.between(solidusCelsius, -273.15, 1e5, "solidus in °C");
    CHECK.between(liquidusCelsius, -273.15, 1e5, "liquidus in °C");
    if (liquidusCelsius < solidusCelsius) {
      throw CHECK.reversed(
          Bilingual.range(Bilingual.of(solidusCelsius), Bilingual.of(liquidusCelsius)).plus(" °C"),
          "melting range");
    }
  }

  /**
   * Returns the figures of what does not melt: a pigment, or a resin that softens without a heat of
   * fusion.
   *
   * @param specificHeatJoulesPerKilogramKelvin the specific heat, in J/(kg K), above zero
   * @return the figures, with no heat of fusion
   * @throws ProblemException if the figure cannot be
   */
  public static MeltingHeat withoutMelting(double specificHeatJoulesPerKilogramKelvin) {
    return new MeltingHeat(
        specificHeatJoulesPerKilogramKelvin, specificHeatJoulesPerKilogramKelvin, 0, 0, 0);
  }

  /**
   * Tells whether it melts.
   *
   * @return whether it has a heat of fusion
   */
  public boolean melts() {
    return heatOfFusionJoulesPerKilogram > 0;
  }

  /**
   * Returns the share that is molten.
   *
   * @param celsius the temperature, in °C
   * @return from 0 below the solidus to 1 at and above the liquidus
   */
  public double liquidFraction(double celsius) {
    if (CHECK.finite(celsius, "temperature in °C") >= liquidusCelsius) {
      return 1;
    }
    return celsius <= solidusCelsius
        ? 0
        : (celsius - solidusCelsius) / (liquidusCelsius - solidusCelsius);
  }

  /**
   * Returns the sensible heat of the solid share up to a temperature, from the solidus, in J/kg.
   */
  double solidHeat(double celsius) {
    if (celsius <= solidusCelsius) {
      return solidSpecificHeatJoulesPerKilogramKelvin * (celsius - solidusCelsius);
    }
    double width = liquidusCelsius - solidusCelsius;
    double above = Math.min(celsius - solidusCelsius, width);
    return width == 0
        ? 0
        : solidSpecificHeatJoulesPerKilogramKelvin * (above - above * above / (2 * width));
  }

  /** Returns the sensible heat of the molten share up to a temperature, in J/kg. */
  double meltHeat(double celsius) {
    if (celsius <= solidusCelsius) {
      return 0;
    }
    double width = liquidusCelsius - solidusCelsius;
    double inside = Math.min(celsius - solidusCelsius, width);
    double inRange = width == 0 ? 0 : inside * inside / (2 * width);
    return liquidSpecificHeatJoulesPerKilogramKelvin
        * (inRange + Math.max(0, celsius - liquidusCelsius));
  }

  /** Returns the heat of fusion taken up at a temperature, in J/kg. */
  double fusionHeat(double celsius) {
    return heatOfFusionJoulesPerKilogram * liquidFraction(celsius);
  }

  /** Returns the heat per kelvin at a temperature, in the region that a probe lies in. */
  double capacity(double celsius, double probe) {
    if (probe <= solidusCelsius) {
      return solidSpecificHeatJoulesPerKilogramKelvin;
    }
    if (probe >= liquidusCelsius) {
      return liquidSpecificHeatJoulesPerKilogramKelvin;
    }
    double width = liquidusCelsius - solidusCelsius;
    double fraction = (celsius - solidusCelsius) / width;
    return solidSpecificHeatJoulesPerKilogramKelvin
        + fraction
            * (liquidSpecificHeatJoulesPerKilogramKelvin - solidSpecificHeatJoulesPerKilogramKelvin)
        + heatOfFusionJoulesPerKilogram / width;
  }
}
