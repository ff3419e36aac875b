// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.numeric;

import java.math.BigDecimal;
import java.math.BigInteger;

/** A fraction of whole numbers: arithmetic without any rounding. */
record Fraction(BigInteger over, BigInteger under) implements Comparable<Fraction> {

  static final Fraction ZERO = new Fraction(BigInteger.ZERO, BigInteger.ONE);
  static final Fraction ONE = new Fraction(BigInteger.ONE, BigInteger.ONE);

  /** The number that a double is, to its last bit. */
  static Fraction of(double value) {
    BigDecimal exact = new BigDecimal(value);
    return exact.scale() > 0
        ? reduced(exact.unscaledValue(), BigInteger.TEN.pow(exact.scale()))
        : new Fraction(exact.toBigIntegerExact(), BigInteger.ONE);
  }

  private static Fraction reduced(BigInteger over, BigInteger under) {
    BigInteger divisor = over.gcd(under);
    if (under.signum() < 0) {
      divisor = divisor.negate();
    }
    return divisor.equals(BigInteger.ONE)
        ? new Fraction(over, under)
        : new Fraction(over.divide(divisor), under.divide(divisor));
  }

  Fraction plus(Fraction other) {
    return isZero()
        ? other
        : other.isZero()
            ? this
            : reduced(
                over.multiply(other.under).add(other.over.multiply(under)),
                under.multiply(other.under));
  }

  Fraction minus(Fraction other) {
    return plus(other.negated());
  }

  Fraction negated() {
    return new Fraction(over.negate(), under);
  }

  Fraction times(Fraction other) {
    return isZero() || other.isZero()
        ? ZERO
        : reduced(over.multiply(other.over), under.multiply(other.under));
  }

  Fraction dividedBy(Fraction other) {
    return reduced(over.multiply(other.under), under.multiply(other.over));
  }

  boolean isZero() {
    return over.signum() == 0;
  }

  int signum() {
    return over.signum();
  }

  double toDouble() {
    return new BigDecimal(over)
        .divide(new BigDecimal(under), java.math.MathContext.DECIMAL64)
        .doubleValue();
  }

  @Override
  public int compareTo(Fraction other) {
    return over.multiply(other.under).compareTo(other.over.multiply(under));
  }
}
