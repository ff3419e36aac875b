// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import javax.measure.Quantity;

/**
 * A range of quantities of one kind with both ends in it, held as two numbers in the SI unit.
 *
 * <p>For example:
 *
 * <pre>{@code
 * QuantityRange<Density> bought =
 *     QuantityParser.localeFree().parseRange("0.82–0.86 g/ml", QuantityKind.DENSITY);
 * bought.lowSi(); // 820.0 kg/m³
 * bought.middleSi(); // 840.0 kg/m³
 * QuantityFormatter.exact().format(bought, GRAM_PER_MILLILITRE); // 0.82–0.86 g/ml
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param <Q> the kind as a type
 * @param kind the kind
 * @param lowSi the low end, in the kind's SI unit
 * @param highSi the high end, in the kind's SI unit, not below the low end
 */
public record QuantityRange<Q extends Quantity<Q>>(
    QuantityKind<Q> kind, double lowSi, double highSi) {

  /** Draws a problem if an end is not finite or the ends are reversed. */
  public QuantityRange {
    UnitsProblem.CHECK.finite(lowSi, kind.noun());
    UnitsProblem.CHECK.finite(highSi, kind.noun());
    if (lowSi > highSi) {
      throw UnitsProblem.CHECK.reversed(
          Bilingual.range(kind.inWords(lowSi), kind.inWords(highSi)), kind.noun());
    }
  }

  /**
   * Returns a range between two quantities.
   *
   * @param <Q> the kind as a type
   * @param kind the kind
   * @param low the low end
   * @param high the high end
   * @return the range
   * @throws ProblemException if an end is not finite or the ends are reversed
   */
  public static <Q extends Quantity<Q>> QuantityRange<Q> of(
      QuantityKind<Q> kind, Quantity<Q> low, Quantity<Q> high) {
    if (kind.toSi(low) > kind.toSi(high)) {
      throw UnitsProblem.CHECK.reversed(
          Bilingual.range(Bilingual.of(low), Bilingual.of(high)), kind.noun());
    }
    return new QuantityRange<>(kind, kind.toSi(low), kind.toSi(high));
  }

  /**
   * Returns a range of no width, for a figure that is taken as exact.
   *
   * @param <Q> the kind as a type
   * @param kind the kind
   * @param exact both ends
   * @return the range
   * @throws ProblemException if it is not finite
   */
  public static <Q extends Quantity<Q>> QuantityRange<Q> of(
      QuantityKind<Q> kind, Quantity<Q> exact) {
    return of(kind, exact, exact);
  }

  /** {@return the low end, in the SI unit} */
  public Quantity<Q> low() {
    return kind.ofSi(lowSi);
  }

  /** {@return the high end, in the SI unit} */
  public Quantity<Q> high() {
    return kind.ofSi(highSi);
  }

  /**
   * Returns the value half way between the ends.
   *
   * @return the middle, in the kind's SI unit
   */
  public double middleSi() {
    return lowSi + (highSi - lowSi) / 2;
  }
}
