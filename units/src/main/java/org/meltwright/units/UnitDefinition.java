// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import tech.units.indriya.function.MultiplyConverter;
import tech.units.indriya.unit.TransformedUnit;

/**
 * What one unit is: its kind, its symbol, and how many SI units it holds, as an exact fraction.
 *
 * <p>One pound is 45 359 237 / 100 000 000 kg. Numbers below 2^53 on both sides keep a conversion
 * to a multiplication and a division, which is right to the last digit when one of them is 1.
 */
final class UnitDefinition<Q extends Quantity<Q>> implements Factor {

  private static final MathContext FORTY_DIGITS = new MathContext(40);

  private final QuantityKind<Q> kind;
  private final String symbol;
  private final long numerator;
  private final long denominator;
  private final Unit<Q> unit;

  static <Q extends Quantity<Q>> UnitDefinition<Q> si(
      QuantityKind<Q> kind, String symbol, Unit<Q> unit) {
    return new UnitDefinition<>(kind, symbol, 1, 1, unit);
  }

  static <Q extends Quantity<Q>> UnitDefinition<Q> of(
      QuantityKind<Q> kind, String symbol, long numerator, long denominator) {
    UnitConverter factor = MultiplyConverter.ofRational(numerator, denominator);
    Unit<Q> unit = new TransformedUnit<>(symbol, kind.siUnit(), factor);
    return new UnitDefinition<>(kind, symbol, numerator, denominator, unit);
  }

  private UnitDefinition(
      QuantityKind<Q> kind, String symbol, long numerator, long denominator, Unit<Q> unit) {
    long divisor =
        BigInteger.valueOf(numerator).gcd(BigInteger.valueOf(denominator)).longValueExact();
    this.kind = kind;
    this.symbol = symbol;
    this.numerator = numerator / divisor;
    this.denominator = denominator / divisor;
    this.unit = unit;
    kind.register(this);
  }

  QuantityKind<Q> kind() {
    return kind;
  }

  String symbol() {
    return symbol;
  }

  Unit<Q> unit() {
    return unit;
  }

  @Override
  public double toSi(double value) {
    double product = value * numerator / denominator;
    return Double.isInfinite(product) ? value * ((double) numerator / denominator) : product;
  }

  /** Rounded once, from the exact product. */
  double toSi(BigDecimal value) {
    return toSiExact(value).doubleValue();
  }

  BigDecimal toSiExact(BigDecimal value) {
    return value
        .multiply(BigDecimal.valueOf(numerator))
        .divide(BigDecimal.valueOf(denominator), FORTY_DIGITS);
  }

  @Override
  public double fromSi(double si) {
    double product = si * denominator / numerator;
    return Double.isInfinite(product) ? si * ((double) denominator / numerator) : product;
  }

  BigDecimal fromSiExact(BigDecimal si) {
    return si.multiply(BigDecimal.valueOf(denominator))
        .divide(BigDecimal.valueOf(numerator), FORTY_DIGITS);
  }

  @Override
  public String toString() {
    return symbol;
  }
}
