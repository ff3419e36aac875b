// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.exposure;

import static org.meltwright.safety.exposure.ExposureProblem.CHECK;

import org.apache.commons.numbers.gamma.Erf;
import org.meltwright.units.TemperaturePoint;

/**
 * The damage integral of skin: Ω = ∫ P exp(−ΔE ⁄ (R T)) dt over the time above 44 °C (Henriques and
 * Moritz 1947), with P = 3.1e98 ⁄ s and ΔE ⁄ R = 75 000 K.
 *
 * <p>A widely copied rewrite of ΔE ⁄ R as 75 535 K gives rates five times lower and is another set:
 * the two do not mix. Ω of 0.53, 1 and 10 000 stand for burns of the first, second and third
 * degree. Against published exposure times the model is right within a factor of two, no better.
 * For example, at a constant 50 °C where the skin lives, Ω = 1 after 201.5 s.
 *
 * <p>In code:
 *
 * <pre>{@code
 * SkinDamage.Degree second = SkinDamage.Degree.SECOND;
 * SkinDamage.secondsAtConstant(ofCelsius(50), second); // 201.5 s
 * // no damage is counted below 44 °C
 * SkinDamage.ratePerSecond(ofCelsius(43)); // 0.00
 * // a surface that touches the skin has to warm it first
 * SkinDamage.secondsOfContact(ofCelsius(51), second); // 131 s
 * }</pre>
 *
 * <p>Not instantiable; thread-safe.
 */
public final class SkinDamage {

  /** ΔE ⁄ R, in K, of the original set. */
  public static final double ACTIVATION_KELVIN = 75_000;

  /** ln P, P in 1 ⁄ s. */
  private static final double LN_RATE = Math.log(3.1) + 98 * Math.log(10);

  /** Below this, in °C, no damage is counted. */
  private static final double ONSET_CELSIUS = 44;

  /** Depth at which the skin lives, in m; its diffusivity, in m² ⁄ s; its temperature, in °C. */
  private static final double DEPTH = 80e-6;

  private static final double DIFFUSIVITY = 1e-7;
  private static final double SKIN_CELSIUS = 33;

  /** No integral is carried beyond this: far above the third degree. */
  private static final double CAP = 1e6;

  private static final double LONGEST_SECONDS = 1e6;
  private static final double STEP = 1.002;

  /** The degree of a burn, by the integral. */
  public enum Degree {
    /** Ω of 0.53. */
    FIRST(0.53),
    /** Ω of 1. */
    SECOND(1),
    /** Ω of 10 000. */
    THIRD(1e4);

    private final double omega;

    Degree(double omega) {
      this.omega = omega;
    }

    /**
     * Returns the integral at which the degree begins.
     *
     * @return Ω
     */
    public double omega() {
      return omega;
    }
  }

  private SkinDamage() {}

  /**
   * Returns the rate of damage.
   *
   * @param skin the temperature where the skin lives
   * @return Ω per second; zero below 44 °C
   */
  public static double ratePerSecond(TemperaturePoint skin) {
    return rate(skin.celsius());
  }

  private static double rate(double celsius) {
    return celsius < ONSET_CELSIUS ? 0 : Math.exp(LN_RATE - ACTIVATION_KELVIN / (celsius + 273.15));
  }

  /**
   * Returns the time until a burn of a degree, with a constant temperature where the skin lives.
   *
   * @param skin the temperature
   * @param degree the degree
   * @return the seconds; infinite below 44 °C
   */
  public static double secondsAtConstant(TemperaturePoint skin, Degree degree) {
    return degree.omega / ratePerSecond(skin);
  }

  /**
   * Returns the time until a burn of a degree when a surface of constant temperature touches the
   * skin: heat has to reach a depth of 80 µm first.
   *
   * <p>For example, about 131 s at 51 °C; a public-health table says 2 minutes.
   *
   * @param surface the temperature at the surface of the skin
   * @param degree the degree
   * @return the seconds; infinite if it does not come to that within eleven days
   */
  public static double secondsOfContact(TemperaturePoint surface, Degree degree) {
    double time = 1e-5;
    double omega = 0;
    double rate = rateAtDepth(surface.celsius(), time);
    while (time < LONGEST_SECONDS) {
      double next = time * STEP;
      double nextRate = rateAtDepth(surface.celsius(), next);
      double gain = (rate + nextRate) / 2 * (next - time);
      if (omega + gain >= degree.omega) {
        return time + (next - time) * (degree.omega - omega) / gain;
      }
      omega += gain;
      time = next;
      rate = nextRate;
    }
    return Double.POSITIVE_INFINITY;
  }

  /**
   * Returns the integral after a contact of constant surface temperature.
   *
   * @param surface the temperature at the surface of the skin
   * @param seconds the time of contact, not negative
   * @return Ω, at most 1 000 000
   */
  public static double omegaAfter(TemperaturePoint surface, double seconds) {
    CHECK.between(seconds, 0, LONGEST_SECONDS, "time of contact in s");
    double time = 1e-5;
    double omega = 0;
    while (time < seconds && omega < CAP) {
      double next = Math.min(seconds, time * STEP);
      double mean =
          (rateAtDepth(surface.celsius(), time) + rateAtDepth(surface.celsius(), next)) / 2;
      omega += mean * (next - time);
      time = next;
    }
    return Math.min(CAP, omega);
  }

  private static double rateAtDepth(double surfaceCelsius, double seconds) {
    double reached = Erf.value(DEPTH / (2 * Math.sqrt(DIFFUSIVITY * seconds)));
    return rate(surfaceCelsius - (surfaceCelsius - SKIN_CELSIUS) * reached);
  }
}
