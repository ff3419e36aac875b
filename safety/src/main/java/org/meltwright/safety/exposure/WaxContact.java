// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.exposure;

import static org.meltwright.safety.exposure.ExposureProblem.CHECK;

import java.util.Locale;
import org.apache.commons.numbers.gamma.Erf;
import org.apache.commons.numbers.gamma.Erfc;
import org.meltwright.units.Messages;
import org.meltwright.units.TemperaturePoint;

/**
 * Molten wax on skin: always an immediate burn.
 *
 * <p>The temperature at which wax and skin meet is a lower bound for the reader's curiosity only;
 * it lowers no finding. It has to count the heat that wax gives off as it freezes: the formula of
 * two bodies without freezing gives 53.5 °C for wax of 90 °C and misleads; with freezing it is
 * about 58.6 °C or more. Wax sticks, too, and goes on heating.
 *
 * <p>For example:
 *
 * <pre>{@code
 * WaxContact.text(Locale.ENGLISH); // Molten wax on skin burns at once. Cool the burn …
 * // to learn from, not to decide by: where wax of 90 °C and skin meet, at least
 * WaxContact.lowerBoundWithFreezing(ofCelsius(90)).celsius(); // 58.6 °C
 * // colder than it freezes, it is not molten
 * WaxContact.lowerBoundWithFreezing(ofCelsius(60)); // throws ProblemException
 * }</pre>
 *
 * <p>Not instantiable; thread-safe.
 */
public final class WaxContact {

  /** Skin: thermal effusivity in W s½ ⁄ (m² K), and temperature in °C; remembered figures. */
  private static final double SKIN_EFFUSIVITY = 1100;

  private static final double SKIN_CELSIUS = 33;

  /** Solid wax: W ⁄ (m K), kg ⁄ m³, J ⁄ (kg K); assumed figures of paraffin and beeswax. */
  private static final double SOLID_CONDUCTIVITY = 0.25;

  private static final double SOLID_DENSITY = 900;
  private static final double SOLID_HEAT = 2000;

  /** Liquid wax, in the same units. */
  private static final double LIQUID_CONDUCTIVITY = 0.18;

  private static final double LIQUID_DENSITY = 850;
  private static final double LIQUID_HEAT = 2300;

  /** Heat of fusion, J ⁄ kg, and freezing point, °C, of beeswax. */
  private static final double FUSION = 175e3;

  private static final double FREEZING_CELSIUS = 63;

  private WaxContact() {}

  /**
   * Says what molten wax on skin is, whatever its temperature.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return that it is an immediate burn, and what to do
   */
  public static String text(Locale locale) {
    return Messages.beside(WaxContact.class).text("wax-contact", locale);
  }

  /**
   * Returns a lower bound of the temperature at which molten wax and skin meet, the heat of
   * freezing included: Neumann's solution for two bodies that touch.
   *
   * @param wax the temperature of the wax, at least 63 °C
   * @return the lower bound; a number to learn from, not to decide by
   * @throws org.meltwright.units.ProblemException if the wax is colder than it freezes
   */
  public static TemperaturePoint lowerBoundWithFreezing(TemperaturePoint wax) {
    CHECK.between(wax.celsius(), FREEZING_CELSIUS, 400, "temperature of molten wax in °C");
    double low = 1e-9;
    double high = 5;
    for (int i = 0; i < 200; i++) {
      double middle = (low + high) / 2;
      if (excessHeat(middle, wax.celsius()) > 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return TemperaturePoint.ofCelsius(interfaceCelsius(low));
  }

  /**
   * Returns where two bodies meet without freezing: T = (e₁ T₁ + e₂ T₂) ⁄ (e₁ + e₂).
   *
   * <p>For molten wax it is too low and must not be used.
   *
   * @param wattRootSecondsPerSquareMetreKelvin thermal effusivity of the body, in W s½ ⁄ (m² K)
   * @param body its temperature
   * @return the temperature at which it meets skin of 33 °C
   */
  public static TemperaturePoint withoutFreezing(
      double wattRootSecondsPerSquareMetreKelvin, TemperaturePoint body) {
    double effusivity = wattRootSecondsPerSquareMetreKelvin;
    double sum = effusivity * body.celsius() + SKIN_EFFUSIVITY * SKIN_CELSIUS;
    return TemperaturePoint.ofCelsius(sum / (effusivity + SKIN_EFFUSIVITY));
  }

  /** Heat into the crust less heat out of the melt and heat of freezing, for a growth constant. */
  private static double excessHeat(double growth, double waxCelsius) {
    double solid = diffusivity(SOLID_CONDUCTIVITY, SOLID_DENSITY, SOLID_HEAT);
    double liquid = diffusivity(LIQUID_CONDUCTIVITY, LIQUID_DENSITY, LIQUID_HEAT);
    double inLiquid = growth * Math.sqrt(solid / liquid);
    double intoSkin =
        SOLID_CONDUCTIVITY
            * (FREEZING_CELSIUS - interfaceCelsius(growth))
            / Math.sqrt(Math.PI * solid)
            * Math.exp(-growth * growth)
            / Erf.value(growth);
    double outOfMelt =
        LIQUID_CONDUCTIVITY
            * (waxCelsius - FREEZING_CELSIUS)
            / Math.sqrt(Math.PI * liquid)
            * Math.exp(-inLiquid * inLiquid)
            / Erfc.value(inLiquid);
    return intoSkin - outOfMelt - SOLID_DENSITY * FUSION * growth * Math.sqrt(solid);
  }

  private static double interfaceCelsius(double growth) {
    double solid = Math.sqrt(SOLID_CONDUCTIVITY * SOLID_DENSITY * SOLID_HEAT) / Erf.value(growth);
    return (solid * FREEZING_CELSIUS + SKIN_EFFUSIVITY * SKIN_CELSIUS) / (solid + SKIN_EFFUSIVITY);
  }

  private static double diffusivity(double conductivity, double density, double heat) {
    return conductivity / (density * heat);
  }
}
