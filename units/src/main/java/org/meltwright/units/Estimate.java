// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import javax.measure.Quantity;

/**
 * What is known only roughly: a low, a central and a high value of one kind, in the SI unit.
 *
 * <p>The central value has every input at the middle of its range; low and high move every named
 * input to its worse end together. The bounds are not a confidence interval. All are finite, save
 * for a time that has no end, which is infinite.
 *
 * <p>For example:
 *
 * <pre>{@code
 * // somewhere from 20 to 45 minutes until the pot is clear
 * Estimate<Time> clear = new Estimate<>(QuantityKind.TIME, 1200, 1800, 2700);
 * QuantityFormatter.ofDecimals(0).format(clear.central(), MINUTE); // 30 min
 * QuantityFormatter.ofDecimals(0).format(clear.high(), MINUTE); // 45 min
 * new Estimate<>(QuantityKind.TIME, 2700, 1800, 1200); // throws ProblemException
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param <Q> the kind as a type
 * @param kind the kind
 * @param lowSi the low value, in the kind's SI unit
 * @param centralSi the central value, not below the low one
 * @param highSi the high value, not below the central one
 */
public record Estimate<Q extends Quantity<Q>>(
    QuantityKind<Q> kind, double lowSi, double centralSi, double highSi) {

  /**
   * Draws a problem if they are not in order or not finite; a time may be without end, but not
   * without beginning.
   */
  public Estimate {
    requireFinite(kind, lowSi);
    requireFinite(kind, highSi);
    if (!(lowSi <= centralSi && centralSi <= highSi)) {
      throw UnitsProblem.CHECK.reversed(
          Bilingual.list(kind.inWords(lowSi), kind.inWords(centralSi), kind.inWords(highSi)),
          kind.noun());
    }
  }

  /** A time may have no end: what never melts takes as long as you like. */
  private static void requireFinite(QuantityKind<?> kind, double si) {
    if (!(si == Double.POSITIVE_INFINITY && kind.equals(QuantityKind.TIME))) {
      UnitsProblem.CHECK.finite(si, kind.noun());
    }
  }

  /**
   * Returns the low value.
   *
   * @return the quantity, in the SI unit
   * @throws ProblemException if it is a time without end, which no quantity holds
   */
  public Quantity<Q> low() {
    return kind.ofSi(lowSi);
  }

  /**
   * Returns the central value.
   *
   * @return the quantity, in the SI unit
   * @throws ProblemException if it is a time without end, which no quantity holds
   */
  public Quantity<Q> central() {
    return kind.ofSi(centralSi);
  }

  /**
   * Returns the high value.
   *
   * @return the quantity, in the SI unit
   * @throws ProblemException if it is a time without end, which no quantity holds
   */
  public Quantity<Q> high() {
    return kind.ofSi(highSi);
  }
}
