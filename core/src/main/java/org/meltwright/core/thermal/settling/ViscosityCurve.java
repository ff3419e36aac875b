// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.settling;

import static org.meltwright.core.thermal.settling.MeltBath.CHECK;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.thermal.ThermalProblem;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.TemperaturePoint;

/**
 * The viscosity of a melt against temperature, after Andrade, or with a shifted origin after Vogel,
 * Fulcher and Tammann.
 *
 * <p>Formula: ln μ = A + B/(T − T₀), T₀ = 0 after Andrade.
 *
 * <p>Symbols: μ viscosity [Pa s], T temperature [K], A [–], B and T₀ [K] fitted.
 *
 * <p>Valid above the clear point only: below it crystals rule the flow, and a viscosity is refused.
 * A melt gets thinner as it gets hotter, so B is not below zero; one that thickens reacts or loses
 * what thinned it, and no curve of temperature tells its viscosity. For example, 20 mPa s at 70 °C
 * and 12 mPa s at 90 °C give 15.38 mPa s at 80 °C.
 *
 * <p>The same in code, for a melt that is clear from 65 °C:
 *
 * <pre>{@code
 * ViscosityCurve curve =
 *     ViscosityCurve.through(ofCelsius(70), 0.020, ofCelsius(90), 0.012, ofCelsius(65));
 * curve.pascalSeconds(ofCelsius(80)); // 0.01538 Pa s
 * curve.slopeKelvin(); // 3183 K
 * curve.pascalSeconds(ofCelsius(60)); // throws ProblemException
 * }</pre>
 *
 * <p>This class is immutable and thread-safe.
 */
public final class ViscosityCurve {

  private final double a;
  private final double bKelvin;
  private final double originKelvin;
  private final TemperaturePoint clearPoint;

  /**
   * Returns the curve through two measurements, after Andrade.
   *
   * @param first the first temperature
   * @param firstPascalSeconds the viscosity there, in Pa s, above zero
   * @param second the second temperature, another than the first
   * @param secondPascalSeconds the viscosity there, in Pa s, above zero
   * @param clearPoint the temperature from which the curve holds
   * @return the curve
   * @throws ProblemException if a viscosity cannot be, the temperatures are the same or the melt is
   *     thicker at the higher one
   */
  public static ViscosityCurve through(
      TemperaturePoint first,
      double firstPascalSeconds,
      TemperaturePoint second,
      double secondPascalSeconds,
      TemperaturePoint clearPoint) {
    guard(firstPascalSeconds);
    guard(secondPascalSeconds);
    if (first.equals(second)) {
      throw ThermalProblem.outOfOrder("first ≠ second", first.celsius(), second.celsius());
    }
    boolean rises = first.isBelow(second);
    CHECK.between(
        rises ? secondPascalSeconds : firstPascalSeconds,
        0,
        rises ? firstPascalSeconds : secondPascalSeconds,
        "viscosity at the higher temperature in Pa s");
    double bKelvin =
        Math.log(firstPascalSeconds / secondPascalSeconds)
            / (1 / first.kelvin() - 1 / second.kelvin());
    return of(Math.log(firstPascalSeconds) - bKelvin / first.kelvin(), bKelvin, 0, clearPoint);
  }

  /**
   * Returns the curve with known constants.
   *
   * @param a the constant A, for viscosities in Pa s
   * @param bKelvin the constant B, in K, not below zero
   * @param originKelvin the constant T₀, in K; 0 after Andrade
   * @param clearPoint the temperature from which the curve holds, above T₀
   * @return the curve
   * @throws ProblemException if a constant is not finite, B is below zero or the clear point lies
   *     at or below T₀
   */
  public static ViscosityCurve of(
      double a, double bKelvin, double originKelvin, TemperaturePoint clearPoint) {
    CHECK.finite(a, "constant A");
    CHECK.between(bKelvin, 0, Double.MAX_VALUE, "constant B in K");
    CHECK.between(originKelvin, 0, Math.nextDown(clearPoint.kelvin()), "constant T₀ in K");
    return new ViscosityCurve(a, bKelvin, originKelvin, clearPoint);
  }

  private ViscosityCurve(
      double a, double bKelvin, double originKelvin, TemperaturePoint clearPoint) {
    this.a = a;
    this.bKelvin = bKelvin;
    this.originKelvin = originKelvin;
    this.clearPoint = clearPoint;
  }

  /**
   * Returns the constant B.
   *
   * @return B, in K; 3183 K for the example above
   */
  public double slopeKelvin() {
    return bKelvin;
  }

  /**
   * Returns the viscosity at a temperature.
   *
   * @param temperature the temperature, not below the clear point
   * @return the viscosity, in Pa s
   * @throws ProblemException if the temperature lies below the clear point
   */
  public double pascalSeconds(TemperaturePoint temperature) {
    if (temperature.isBelow(clearPoint)) {
      throw new ProblemException(
          Problem.of(ThermalProblem.BELOW_CLEAR_POINT, Bilingual.of(temperature))
              .with("low", Bilingual.of(clearPoint)));
    }
    return CHECK.finite(
        Math.exp(a + bKelvin / (temperature.kelvin() - originKelvin)), "viscosity in Pa s");
  }

  private static void guard(double pascalSeconds) {
    CHECK.between(pascalSeconds, 1e-9, 1e9, "viscosity in Pa s");
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof ViscosityCurve that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(a, bKelvin, originKelvin, clearPoint);
  }

  @Override
  public String toString() {
    return "viscosity down to " + clearPoint;
  }
}
