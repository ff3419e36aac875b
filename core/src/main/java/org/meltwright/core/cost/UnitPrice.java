// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import static org.meltwright.core.cost.CostProblem.CHECK;

import java.math.BigDecimal;
import java.math.RoundingMode;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.joda.money.BigMoney;
import org.joda.money.BigMoneyProvider;
import org.joda.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityParser;

/**
 * Money per mass, such as 12.50 EUR/kg or 1.49 EUR/100 g; zero or more.
 *
 * <p>The amount and the mass are kept as given, so nothing is lost in a division. Masses are taken
 * to 15 significant digits.
 *
 * <p>For example:
 *
 * <pre>{@code
 * UnitPrice wax = UnitPrice.parse("1.49 EUR/100 g");
 * wax.perKilogram(); // 14.9 EUR
 * wax.cost(grams(730)); // 10.877 EUR
 * wax.equals(UnitPrice.parse("14.90 EUR/kg")); // true
 * // as a German types it
 * QuantityParser german = QuantityParser.forLocale(Locale.GERMANY);
 * UnitPrice.parse("14,90 €/kg", german).equals(wax); // true
 * UnitPrice.parse("1.49"); // throws ProblemException
 * }</pre>
 *
 * <p>Immutable and thread-safe. Two are equal if they cost the same per kilogram to the last digit:
 * 1.49 EUR/100 g equals 14.90 EUR/kg.
 */
public final class UnitPrice implements Comparable<UnitPrice> {

  private static final double LEAST_KILOGRAMS = 1e-9;
  private static final double MOST_KILOGRAMS = 1e9;

  private final BigMoney amount;
  private final BigDecimal kilograms;

  /**
   * Returns an amount per mass.
   *
   * @param amount the money, zero or more
   * @param per the mass it is for, above zero
   * @return the unit price
   * @throws ProblemException if the amount is below zero or the mass is not above zero
   */
  public static UnitPrice of(BigMoneyProvider amount, Quantity<Mass> per) {
    BigDecimal kilograms = Ratio.decimal(QuantityKind.MASS.toSi(per));
    double digits = kilograms.doubleValue();
    if (digits < LEAST_KILOGRAMS || digits > MOST_KILOGRAMS) {
      CHECK.between(per, LEAST_KILOGRAMS, MOST_KILOGRAMS, "mass of a price");
    }
    return of(amount.toBigMoney(), kilograms);
  }

  /**
   * Returns an amount per kilogram.
   *
   * @param amount the money, zero or more
   * @return the unit price
   * @throws ProblemException if the amount is below zero
   */
  public static UnitPrice perKilogram(BigMoneyProvider amount) {
    return of(amount.toBigMoney(), BigDecimal.ONE);
  }

  /**
   * Reads a unit price with a decimal point: number, currency, slash, mass.
   *
   * <p>The currency is its code of ISO 4217, €, £ or a word for euro, before the number or behind
   * it; the mass is a unit, or a number and a unit, of those that {@link QuantityParser} reads. For
   * example "12.50 EUR/kg", "€ 12.50/kg", "1.49 EUR per 100 g".
   *
   * @param text the text, all of which must fit
   * @return the unit price
   * @throws ProblemException if the text does not fit, the currency is unknown or shared by several
   *     countries, or the mass is zero
   */
  public static UnitPrice parse(String text) {
    return parse(text, QuantityParser.localeFree());
  }

  /**
   * Reads a unit price with the decimal sign of a parser.
   *
   * @param text for example "12,50 €/kg"; the grammar of {@link #parse(String)}
   * @param parser the parser, such as {@link QuantityParser#forLocale}
   * @return the unit price
   * @throws ProblemException if the text does not fit, the currency is unknown or shared by several
   *     countries, or the mass is zero
   */
  public static UnitPrice parse(String text, QuantityParser parser) {
    return MoneyText.price(text, parser);
  }

  static UnitPrice of(BigMoney amount, BigDecimal kilograms) {
    if (amount.isNegative()) {
      throw CostProblem.negative(amount, "price");
    }
    CHECK.between(
        kilograms.doubleValue(), LEAST_KILOGRAMS, MOST_KILOGRAMS, "mass of a price in kg");
    return new UnitPrice(amount, kilograms);
  }

  private UnitPrice(BigMoney amount, BigDecimal kilograms) {
    this.amount = amount;
    this.kilograms = kilograms;
  }

  /** {@return the currency} */
  public CurrencyUnit currency() {
    return amount.getCurrencyUnit();
  }

  /**
   * Returns the money as it was given.
   *
   * @return the amount for the whole {@linkplain #massKilograms() mass}
   */
  public BigMoney amount() {
    return amount;
  }

  /**
   * Returns the mass that the amount is for.
   *
   * @return the mass, in kilograms
   */
  public double massKilograms() {
    return kilograms.doubleValue();
  }

  /**
   * Returns what a kilogram costs, exactly.
   *
   * @return the amount per kilogram
   */
  public ExactMoney perKilogram() {
    return ExactMoney.of(amount).dividedBy(kilograms);
  }

  /**
   * Returns what a kilogram costs, to the smallest coin, half a coin upwards.
   *
   * @return the amount per kilogram; 33.33 EUR for 10 EUR per 300 g
   */
  public BigMoney perKilogramRounded() {
    return perKilogram().toBigMoney(currency().getDecimalPlaces(), RoundingMode.HALF_UP);
  }

  /**
   * Returns what a mass costs, exactly.
   *
   * @param mass the mass
   * @return the cost; 12.50 EUR/kg for 730 g is 9.125 EUR
   */
  public ExactMoney cost(Quantity<Mass> mass) {
    return cost(QuantityKind.MASS.toSi(mass));
  }

  ExactMoney cost(double massKilograms) {
    return perKilogram().times(Ratio.of(massKilograms));
  }

  /**
   * Returns how many times another price this one is.
   *
   * @param other the price to measure with, above zero
   * @return the quotient of both, per the same mass
   * @throws ProblemException if the currencies differ
   * @throws ArithmeticException if the other is zero
   */
  public double dividedBy(UnitPrice other) {
    return perKilogram().dividedBy(other.perKilogram());
  }

  /**
   * Compares two prices of one currency, per the same mass.
   *
   * @param other the other price
   * @return the sign of the difference
   * @throws ProblemException if the currencies differ
   */
  @Override
  public int compareTo(UnitPrice other) {
    return perKilogram().compareTo(other.perKilogram());
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof UnitPrice that && perKilogram().equals(that.perKilogram());
  }

  @Override
  public int hashCode() {
    return perKilogram().hashCode();
  }

  /**
   * Returns the price as {@link #parse} reads it, locale-free.
   *
   * @return amount and mass as given: "12.50 EUR/kg", "1.49 EUR/100 g", "40.00 EUR/2.5 kg"
   */
  @Override
  public String toString() {
    return MoneyText.digits(amount.getAmount()) + " " + currency().getCode() + "/" + massText();
  }

  private String massText() {
    if (kilograms.compareTo(BigDecimal.ONE) == 0) {
      return "kg";
    }
    return kilograms.compareTo(BigDecimal.ONE) > 0
        ? plain(kilograms) + " kg"
        : plain(kilograms.movePointRight(3)) + " g";
  }

  private static String plain(BigDecimal value) {
    return value.stripTrailingZeros().toPlainString();
  }
}
