// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import org.jspecify.annotations.Nullable;

/**
 * A share of a whole by volume, from 0 to 1; it does not mix with shares on another basis.
 *
 * <p>10 % is {@code ofPercent(10)} or {@code of(0.10)}: each factory says which it takes.
 *
 * <p>For example:
 *
 * <pre>{@code
 * VolumeFraction solids = QuantityParser.localeFree().parseVolumeFraction("40 % by volume");
 * solids.value(); // 0.4
 * solids.complement().percent(); // 60.00 %
 * // a share by mass is another type: densities turn one into the other
 * QuantityParser.localeFree().parseVolumeFraction("40 % by mass"); // throws ProblemException
 * }</pre>
 *
 * <p>This class is immutable and thread-safe.
 */
public final class VolumeFraction implements Comparable<VolumeFraction> {

  /** Nothing of the whole. */
  public static final VolumeFraction ZERO = new VolumeFraction(0);

  /** All of the whole. */
  public static final VolumeFraction ONE = new VolumeFraction(1);

  private final double value;

  /**
   * Returns a share given as a number from 0 to 1.
   *
   * @param value the share, where 0.10 is 10 %
   * @return the share
   * @throws ProblemException if the number is not from 0 to 1
   */
  public static VolumeFraction of(double value) {
    return new VolumeFraction(UnitsProblem.CHECK.between(value, 0, 1, "volume fraction"));
  }

  /**
   * Returns a share given in per cent.
   *
   * @param percent the share, where 10 is 10 %
   * @return the share
   * @throws ProblemException if the number is not from 0 to 100
   */
  public static VolumeFraction ofPercent(double percent) {
    return new VolumeFraction(
        UnitsProblem.CHECK.between(percent, 0, 100, "volume fraction in per cent") / 100);
  }

  private VolumeFraction(double value) {
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
  public VolumeFraction complement() {
    return new VolumeFraction(1 - value);
  }

  @Override
  public int compareTo(VolumeFraction other) {
    return Double.compare(value, other.value);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof VolumeFraction that && value == that.value;
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
   * @return for example "10.0 % by volume"
   */
  @Override
  public String toString() {
    return Shown.number(percent()) + " % by volume";
  }
}
