// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.heat;

import static org.meltwright.core.thermal.heat.HeatSupply.CHECK;

import java.util.Locale;
import java.util.Map;
import org.meltwright.core.numeric.Texts;
import org.meltwright.core.thermal.ThermalProblem;
import org.meltwright.units.Messages;
import org.meltwright.units.ProblemException;
import org.meltwright.units.TemperaturePoint;

/**
 * How long a pot takes to reach a temperature, or that it never does.
 *
 * <p>For example, 2500 J/K on 150 W with a loss of 1.2 W/K to a room of 20 °C take 878 s from 20 to
 * 63 °C; on 45 W they come to rest at 57.5 °C and never get there.
 *
 * <p>The same in code:
 *
 * <pre>{@code
 * EnthalpyCurve load = EnthalpyCurve.of(MeltingHeat.withoutMelting(2500));
 * TemperaturePoint room = ofCelsius(20);
 * HeatSupply strong = HeatSupply.constantPower(150).withLoss(1.2, room);
 * HeatUpTime.of(load, 1, 0, room, ofCelsius(63), strong).seconds(); // 878 s
 * HeatSupply weak = HeatSupply.constantPower(45).withLoss(1.2, room);
 * HeatUpTime time = HeatUpTime.of(load, 1, 0, room, ofCelsius(63), weak);
 * ((HeatUpTime.NeverReached) time).restingPoint(); // 57.5 °C
 * }</pre>
 */
public sealed interface HeatUpTime {

  /**
   * Returns the time in all.
   *
   * @return the time, in s; infinite if the temperature is never reached
   */
  double seconds();

  /**
   * The temperature is reached. Immutable and thread-safe.
   *
   * @param warmingSeconds the time until melting begins, in s
   * @param meltingSeconds the time until all is molten, in s
   * @param superheatingSeconds the time after that, in s
   */
  record Reached(double warmingSeconds, double meltingSeconds, double superheatingSeconds)
      implements HeatUpTime {

    @Override
    public double seconds() {
      return warmingSeconds + meltingSeconds + superheatingSeconds;
    }
  }

  /**
   * The temperature is never reached. Immutable and thread-safe.
   *
   * @param wanted the temperature wanted
   * @param restingPoint where the pot comes to rest
   * @param melts whether all that melts is molten there
   */
  record NeverReached(TemperaturePoint wanted, TemperaturePoint restingPoint, boolean melts)
      implements HeatUpTime {

    @Override
    public double seconds() {
      return Double.POSITIVE_INFINITY;
    }

    /**
     * Returns why.
     *
     * @param locale the reader's language: German for {@code de}, English for all others
     * @return a sentence or two
     */
    public String reason(Locale locale) {
      return Messages.beside(HeatUpTime.class)
          .text(
              melts ? "heat-up.never-reached" : "heat-up.never-melts",
              locale,
              Map.of(
                  "resting", Texts.celsius(restingPoint, locale),
                  "wanted", Texts.celsius(wanted, locale)));
    }
  }

  /**
   * Returns the time of a pot on a supply.
   *
   * @param curve the heat that a kilogram takes up
   * @param massKilograms how much there is, in kg, not negative
   * @param vesselJoulesPerKelvin the heat capacity of the vessel, in J/K, not negative
   * @param from the first temperature
   * @param to the last temperature, not below the first
   * @param supply what flows in
   * @return the time, or that it is never reached
   * @throws ProblemException if an amount cannot be or the temperatures fall
   */
  static HeatUpTime of(
      EnthalpyCurve curve,
      double massKilograms,
      double vesselJoulesPerKelvin,
      TemperaturePoint from,
      TemperaturePoint to,
      HeatSupply supply) {
    CHECK.between(massKilograms, 0, 1e9, "mass in kg");
    CHECK.between(vesselJoulesPerKelvin, 0, 1e9, "heat capacity of the vessel in J/K");
    if (to.isBelow(from)) {
      throw ThermalProblem.outOfOrder("from ≤ to", from.celsius(), to.celsius());
    }
    return new HeatUp(curve, massKilograms, vesselJoulesPerKelvin, supply).between(from, to);
  }
}
