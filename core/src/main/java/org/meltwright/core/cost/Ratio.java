// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import static org.meltwright.core.cost.CostProblem.CHECK;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** An exact fraction in lowest terms; immutable. */
final class Ratio implements Comparable<Ratio> {

  static final Ratio ZERO = new Ratio(BigInteger.ZERO, BigInteger.ONE);
  static final Ratio ONE = new Ratio(BigInteger.ONE, BigInteger.ONE);

  private static final BigInteger FIVE = BigInteger.valueOf(5);

  /** What a {@code double} holds for certain; the digits after it are dust of the conversion. */
  private static final MathContext DOUBLE_DIGITS = new MathContext(15);

  /** Every double fits; a number with more zeros than this is a slip, and would take for ever. */
  private static final int MOST_SCALE = 1000;

  private final BigInteger numerator;
  private final BigInteger denominator;

  static Ratio of(BigDecimal value) {
    if (value.signum() == 0) {
      return ZERO;
    }
    CHECK.between(value.scale(), -MOST_SCALE, MOST_SCALE, "decimal places");
    BigInteger unscaled = value.unscaledValue();
    return value.scale() >= 0
        ? reduced(unscaled, BigInteger.TEN.pow(value.scale()))
        : new Ratio(unscaled.multiply(BigInteger.TEN.pow(-value.scale())), BigInteger.ONE);
  }

  static Ratio of(BigInteger value) {
    return new Ratio(value, BigInteger.ONE);
  }

  static Ratio of(long value) {
    return of(BigInteger.valueOf(value));
  }

  /** The decimal of 15 significant digits that a person would have written. */
  static BigDecimal decimal(double value) {
    return new BigDecimal(value, DOUBLE_DIGITS);
  }

  static Ratio of(double value) {
    return of(decimal(value));
  }

  private static Ratio reduced(BigInteger numerator, BigInteger denominator) {
    BigInteger gcd = numerator.gcd(denominator);
    BigInteger by = denominator.signum() < 0 ? gcd.negate() : gcd;
    return new Ratio(numerator.divide(by), denominator.divide(by));
  }

  private Ratio(BigInteger numerator, BigInteger denominator) {
    this.numerator = numerator;
    this.denominator = denominator;
  }

  Ratio plus(Ratio other) {
    return reduced(
        numerator.multiply(other.denominator).add(other.numerator.multiply(denominator)),
        denominator.multiply(other.denominator));
  }

  Ratio minus(Ratio other) {
    return plus(other.negated());
  }

  Ratio times(Ratio other) {
    return reduced(numerator.multiply(other.numerator), denominator.multiply(other.denominator));
  }

  Ratio dividedBy(Ratio other) {
    return reduced(numerator.multiply(other.denominator), denominator.multiply(other.numerator));
  }

  Ratio negated() {
    return new Ratio(numerator.negate(), denominator);
  }

  int signum() {
    return numerator.signum();
  }

  BigInteger floor() {
    BigInteger[] parts = numerator.divideAndRemainder(denominator);
    return parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0];
  }

  BigInteger ceiling() {
    return negated().floor().negate();
  }

  BigDecimal toDecimal(int scale, RoundingMode mode) {
    return new BigDecimal(numerator).divide(new BigDecimal(denominator), scale, mode);
  }

  /** All digits; empty where they have no end. */
  Optional<BigDecimal> toDecimal() {
    BigInteger rest = denominator.shiftRight(denominator.getLowestSetBit());
    while (rest.mod(FIVE).signum() == 0) {
      rest = rest.divide(FIVE);
    }
    return rest.equals(BigInteger.ONE)
        ? Optional.of(new BigDecimal(numerator).divide(new BigDecimal(denominator)))
        : Optional.empty();
  }

  /** Sixteen significant digits or all of them, whichever are fewer. */
  double toDouble() {
    return new BigDecimal(numerator)
        .divide(new BigDecimal(denominator), MathContext.DECIMAL64)
        .doubleValue();
  }

  @Override
  public int compareTo(Ratio other) {
    return numerator.multiply(other.denominator).compareTo(other.numerator.multiply(denominator));
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Ratio that
        && numerator.equals(that.numerator)
        && denominator.equals(that.denominator);
  }

  @Override
  public int hashCode() {
    return numerator.hashCode() * 31 + denominator.hashCode();
  }

  /** All digits if they end, else the fraction. */
  @Override
  public String toString() {
    try {
      return new BigDecimal(numerator).divide(new BigDecimal(denominator)).toPlainString();
    } catch (ArithmeticException endless) {
      return numerator + "/" + denominator;
    }
  }
}
