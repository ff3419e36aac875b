// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.util.Locale;

/** The problems that values and texts of this package report. */
public enum UnitsProblem implements ProblemCode {
  /** A number that is not finite. */
  NUMBER_NOT_FINITE("number.not-finite"),
  /** A value below or above what its type allows. */
  VALUE_OUT_OF_RANGE("value.out-of-range"),
  /** The low end of a range lies above its high end. */
  RANGE_REVERSED("range.reversed"),
  /** A temperature below absolute zero. */
  TEMPERATURE_BELOW_ABSOLUTE_ZERO("temperature.below-absolute-zero"),
  /** A unit of another kind than asked for. */
  WRONG_KIND("quantity.wrong-kind");

  private final String id;

  UnitsProblem(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }

  /**
   * Guards a number against NaN and infinity.
   *
   * @param value the number
   * @param what the name of the value with its unit, such as "mass in kg"
   * @return the number
   * @throws ProblemException if it is not finite
   */
  public static double requireFinite(double value, String what) {
    if (Double.isFinite(value)) {
      return value;
    }
    throw new ProblemException(
        Problem.of(NUMBER_NOT_FINITE, Double.toString(value)).with("what", what));
  }

  /**
   * Guards a number between two limits, both allowed.
   *
   * @param value the number
   * @param low the lowest value allowed
   * @param high the highest value allowed
   * @param what the name of the value with its unit, such as "mass in kg"
   * @return the number
   * @throws ProblemException if it is not finite or lies outside
   */
  public static double requireBetween(double value, double low, double high, String what) {
    if (requireFinite(value, what) >= low && value <= high) {
      return value;
    }
    throw new ProblemException(
        Problem.of(VALUE_OUT_OF_RANGE, plain(value))
            .with("what", what)
            .with("low", plain(low))
            .with("high", plain(high)));
  }

  private static String plain(double value) {
    return String.format(Locale.ROOT, "%s", value);
  }
}
