// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.heat;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.thermal.ThermalProblem;
import org.meltwright.units.Check;
import org.meltwright.units.TemperaturePoint;

/**
 * What flows into a pot at each of its temperatures: a constant power or a thermostat plate, less a
 * loss to the room.
 *
 * <p>Formula: net = a − b T, so that every kind comes to rest at a/b. A plate on a thermostat
 * drives only by its lead over the pot: at 63 °C on a plate of 85 °C that is 22 K, however large
 * its rated power.
 *
 * <p>A plate at 85 °C that passes on 8 W/K, and a pot that loses 1.2 W/K to a room of 20 °C. At 63
 * °C 8 × 22 W flow in, less 1.2 × 43 W; the pot never gets as hot as the plate:
 *
 * <pre>{@code
 * HeatSupply plate = HeatSupply.thermostatPlate(ofCelsius(85), 8);
 * plate.netWatts(ofCelsius(63)); // 176 W
 * HeatSupply lossy = plate.withLoss(1.2, ofCelsius(20));
 * lossy.netWatts(ofCelsius(63)); // 124.4 W
 * lossy.restingPoint().orElseThrow().celsius(); // 76.5 °C
 * HeatSupply.constantPower(150).restingPoint().isEmpty(); // true
 * }</pre>
 *
 * <p>This class is immutable and thread-safe.
 */
public final class HeatSupply {

  /**
   * The guards of this package: what they say stands in the bundle beside {@link ThermalProblem}.
   */
  static final Check CHECK = Check.beside(ThermalProblem.class);

  private static final double SERIES_BELOW = 0.05;
  private static final int SERIES_TERMS = 16;

  private final double wattsAtZeroCelsius;
  private final double wattsPerKelvin;

  /**
   * Returns a supply of constant power.
   *
   * @param watts what reaches the pot, in W: rated power times efficiency, not negative
   * @return the supply, without loss
   * @throws org.meltwright.units.ProblemException if the power cannot be
   */
  public static HeatSupply constantPower(double watts) {
    return new HeatSupply(CHECK.between(watts, 0, 1e7, "power in W"), 0);
  }

  /**
   * Returns a plate held at one temperature.
   *
   * @param plate the temperature of the plate
   * @param contactWattsPerKelvin what crosses from plate to pot for each kelvin between them, in
   *     W/K, above zero
   * @return the supply, without loss
   * @throws org.meltwright.units.ProblemException if the contact cannot be
   */
  public static HeatSupply thermostatPlate(TemperaturePoint plate, double contactWattsPerKelvin) {
    CHECK.between(contactWattsPerKelvin, 1e-9, 1e7, "heat contact in W/K");
    CHECK.between(plate.celsius(), -273.15, 1e5, "temperature of the plate in °C");
    return new HeatSupply(contactWattsPerKelvin * plate.celsius(), contactWattsPerKelvin);
  }

  private HeatSupply(double wattsAtZeroCelsius, double wattsPerKelvin) {
    this.wattsAtZeroCelsius = wattsAtZeroCelsius;
    this.wattsPerKelvin = wattsPerKelvin;
  }

  /**
   * Returns the supply less a loss to the room.
   *
   * @param lossWattsPerKelvin what the pot loses for each kelvin above the room, in W/K, not
   *     negative
   * @param room the temperature of the room
   * @return the new supply
   * @throws org.meltwright.units.ProblemException if the loss cannot be
   */
  public HeatSupply withLoss(double lossWattsPerKelvin, TemperaturePoint room) {
    CHECK.between(lossWattsPerKelvin, 0, 1e7, "heat loss in W/K");
    CHECK.between(room.celsius(), -273.15, 1e5, "temperature of the room in °C");
    return new HeatSupply(
        wattsAtZeroCelsius + lossWattsPerKelvin * room.celsius(),
        wattsPerKelvin + lossWattsPerKelvin);
  }

  /** Between a weak, a central and a strong supply; 0, 0.5 and 1 are these three. */
  static HeatSupply between(
      HeatSupply weak, HeatSupply central, HeatSupply strong, double strength) {
    return strength < 0.5
        ? weak.towards(central, 2 * strength)
        : central.towards(strong, 2 * strength - 1);
  }

  private HeatSupply towards(HeatSupply other, double share) {
    return new HeatSupply(
        wattsAtZeroCelsius + share * (other.wattsAtZeroCelsius - wattsAtZeroCelsius),
        wattsPerKelvin + share * (other.wattsPerKelvin - wattsPerKelvin));
  }

  /**
   * Returns what flows in at a temperature of the pot.
   *
   * @param pot the temperature of the pot
   * @return the net flow, in W; negative if it cools
   */
  public double netWatts(TemperaturePoint pot) {
    return netWatts(pot.celsius());
  }

  double netWatts(double celsius) {
    return wattsAtZeroCelsius - wattsPerKelvin * celsius;
  }

  /**
   * Returns the temperature that the pot comes to rest at.
   *
   * @return the temperature; empty if it rises without end, or would end below absolute zero
   */
  public Optional<TemperaturePoint> restingPoint() {
    double celsius = wattsAtZeroCelsius / wattsPerKelvin;
    return wattsPerKelvin > 0 && celsius >= -273.15
        ? Optional.of(TemperaturePoint.ofCelsius(celsius))
        : Optional.empty();
  }

  /**
   * Returns the time that a heat capacity takes from one temperature to another, in s; infinite if
   * it never gets there.
   */
  double seconds(double capacityFrom, double capacityTo, double from, double to) {
    double start = netWatts(from);
    double end = netWatts(to);
    if (!(start > 0 && end > 0)) {
      return Double.POSITIVE_INFINITY;
    }
    double rise = to - from;
    double fall = wattsPerKelvin * rise / start;
    double change = capacityTo - capacityFrom;
    if (fall < SERIES_BELOW) {
      return rise / start * (capacityFrom * series(1, fall) + change * series(2, fall));
    }
    double mean = Math.log(start / end) / fall;
    return rise / start * (capacityFrom * mean + change * (mean - 1) / fall);
  }

  /** Returns 1/n + f/(n + 1) + f²/(n + 2) + …, exact where the closed form cancels. */
  private static double series(int first, double f) {
    double sum = 0;
    double power = 1;
    for (int n = first; n < SERIES_TERMS; n++) {
      sum += power / n;
      power *= f;
    }
    return sum;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof HeatSupply that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(wattsAtZeroCelsius, wattsPerKelvin);
  }

  @Override
  public String toString() {
    return wattsAtZeroCelsius + " W at 0 °C, " + wattsPerKelvin + " W more a kelvin";
  }
}
