// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.setting;

import static org.meltwright.core.thermal.setting.Substance.CHECK;

import org.meltwright.core.explain.EstimateInput;
import org.meltwright.core.explain.Symbol;
import org.meltwright.core.thermal.ThermalProblem;
import org.meltwright.units.TemperaturePoint;

/**
 * The air above a film or around a cake, and how well it takes heat away.
 *
 * <p>A room without draught, and an air stream whose transfer was estimated elsewhere:
 *
 * <pre>{@code
 * Surroundings room = Surroundings.stillRoom(ofCelsius(20));
 * room.lowTransferWattsPerSquareMetreKelvin(); // 8 W/(m² K)
 * room.highTransferWattsPerSquareMetreKelvin(); // 12 W/(m² K)
 * Surroundings draught = new Surroundings(ofCelsius(18), 20, 40);
 * draught.air(); // 18.0 °C
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param air the temperature of the air and the walls
 * @param lowTransferWattsPerSquareMetreKelvin the lowest heat transfer coefficient, radiation
 *     included, in W/(m² K)
 * @param highTransferWattsPerSquareMetreKelvin the highest, in W/(m² K)
 */
public record Surroundings(
    TemperaturePoint air,
    double lowTransferWattsPerSquareMetreKelvin,
    double highTransferWattsPerSquareMetreKelvin) {

  private static final Symbol TRANSFER =
      Symbol.beside(ThermalProblem.class, "heat transfer to the air", "W/(m² K)");

  public Surroundings {
    CHECK.between(air.celsius(), -100, 1000, "temperature of the air in °C");
    CHECK.between(
        lowTransferWattsPerSquareMetreKelvin, 1e-3, 1e5, "lowest heat transfer in W/(m² K)");
    CHECK.between(
        highTransferWattsPerSquareMetreKelvin, 1e-3, 1e5, "highest heat transfer in W/(m² K)");
    CHECK.ordered(
        lowTransferWattsPerSquareMetreKelvin,
        highTransferWattsPerSquareMetreKelvin,
        "heat transfer in W/(m² K)");
  }

  /**
   * Returns a room without draught: 8 to 12 W/(m² K), of which radiation at 40 °C is 6.6 and free
   * convection the rest (remembered from heat-transfer tables).
   *
   * @param air the temperature of the air and the walls
   * @return the surroundings
   */
  public static Surroundings stillRoom(TemperaturePoint air) {
    return new Surroundings(air, 8, 12);
  }

  /** The heat transfer as an input of an estimate that it shortens. */
  EstimateInput transfer() {
    return EstimateInput.of(
        TRANSFER,
        lowTransferWattsPerSquareMetreKelvin,
        highTransferWattsPerSquareMetreKelvin,
        EstimateInput.Direction.LOWERS);
  }
}
