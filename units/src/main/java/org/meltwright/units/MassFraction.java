// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import org.jspecify.annotations.Nullable;

/**
 * A share of a whole by mass, from 0 to 1; it does not mix with shares on another basis.
 *
 * <p>10 % is {@code ofPercent(10)} or {@code of(0.10)}: each factory says which it takes.
 *
 * <p>For example:
 *
 * <pre>{@code
 * MassFraction pigment = MassFraction.ofPercent(12.5);
 * pigment.value(); // 0.125
 * pigment.complement(); // 87.5 % by mass
 * // 12.5 is no share of a whole: per cent go through ofPercent
 * MassFraction.of(12.5); // throws ProblemException
 * }</pre>
 *
 * <p>This class is immutable and thread-safe.
 */
public final class MassFraction implements Comparable<MassFraction> {

  /** Nothing of the whole. */
  public static final MassFraction ZERO = new MassFraction(0);

  /** All of the whole. */
  public static final MassFraction ONE = new MassFraction(1);

  private final double value;

  /**
   * Returns a share given as a number from 0 to 1.
   *
   * @param value the share, where 0.10 is 10 %
   * @return the share
   * @throws ProblemException if the number is not from 0 to 1
   */
  public static MassFraction of(double value) {
    return new MassFraction(UnitsProblem.CHECK.between(value, 0, 1, "mass fraction"));
  }

  /**
   * Returns a share given in per cent.
   *
   * @param percent the share, where 10 is 10 %
   * @return the share
   * @throws ProblemException if the number is not from 0 to 100
   */
  public static MassFraction ofPercent(double percent) {
    return new MassFraction(
        UnitsProblem.CHECK.between(percent, 0, 100, "mass fraction in per cent") / 100);
  }

  private MassFraction(double value) {
    this.value = value + 0.0;
  }

  /**
   * Returns the share as a number from 0 to 1.
   *
   * @return the share, where 0.10 is 10 %
   */
  public double value() {
    return value;
  }

  /**
   * Returns the share in per cent.
   *
   * @return the share, where 10 is 10 %
   */
  public double percent() {
    return value * 100;
  }

  /** {@return what this share leaves of the whole} */
  public MassFraction complement() {
    return new MassFraction(1 - value);
  }

  @Override
  public int compareTo(MassFraction other) {
    return Double.compare(value, other.value);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof MassFraction that && value == that.value;
  }

  @Override
  public int hashCode() {
    return Double.hashCode(value);
  }

  /**
   * Returns the share in per cent with its basis, locale-free.
   *
   * <p>In thirteen digits, for reading; {@link QuantityFormatter#exact} keeps every bit.
   *
   * @return for example "10.0 % by mass"
   */
  @Override
  public String toString() {
    return Shown.number(percent()) + " % by mass";
  }
}
