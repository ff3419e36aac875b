// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import org.meltwright.units.Bilingual;
import org.meltwright.units.MassFraction;

/**
 * A range of shares by mass, such as the oil in a tube of paint.
 *
 * <p>For example:
 *
 * <pre>{@code
 * MassFractionRange oil =
 *     new MassFractionRange(MassFraction.ofPercent(20), MassFraction.ofPercent(25));
 * oil; // 20 to 25 % by mass
 * oil.middle(); // 22.5 % by mass
 * MassFractionRange.of(MassFraction.ofPercent(4)).high(); // 4.0 % by mass
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param low the low end
 * @param high the high end, not below the low end
 */
public record MassFractionRange(MassFraction low, MassFraction high) {

  /** Draws a problem if the low end is above the high end. */
  public MassFractionRange {
    if (low.value() > high.value()) {
      throw MaterialProblem.CHECK.reversed(
          Bilingual.range(Bilingual.of(low), Bilingual.of(high)), "mass fraction");
    }
  }

  /**
   * Returns the range of one share only.
   *
   * @param share the share
   * @return the range
   */
  public static MassFractionRange of(MassFraction share) {
    return new MassFractionRange(share, share);
  }

  /**
   * Returns the share half way between the ends.
   *
   * @return the middle
   */
  public MassFraction middle() {
    return MassFraction.of((low.value() + high.value()) / 2);
  }

  /**
   * Returns the range in per cent with its basis, locale-free.
   *
   * @return for example "20 to 25 % by mass"
   */
  @Override
  public String toString() {
    return Span.format(low.value(), high.value(), -2) + " % by mass";
  }
}
