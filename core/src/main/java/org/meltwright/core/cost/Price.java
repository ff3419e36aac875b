// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import java.math.RoundingMode;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.joda.money.BigMoneyProvider;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityParser;

/**
 * What one package costs: an amount of money, the mass in it, and how tax stands in the amount.
 *
 * <p>For example, 500 g at 14.90 EUR with 19 % tax in it. Without a word on tax, the amount is what
 * the buyer pays.
 *
 * <p>In code:
 *
 * <pre>{@code
 * Price wax = Price.parse("14.90 EUR/500 g").withVat(Vat.included(Rate.ofPercent("19")));
 * wax.net().toMoney(); // EUR 12.52
 * wax.unitPrice().perKilogram(); // 29.8 EUR
 * wax.cost(grams(50)); // 1.49 EUR
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class Price {

  private final UnitPrice stated;
  private final Vat vat;

  /**
   * Returns the price of a package, with no tax in it or on top.
   *
   * @param amount the money for one package, zero or more
   * @param packageMass the mass in it, above zero
   * @return the price
   * @throws ProblemException if the amount is below zero or the mass is not above zero
   */
  public static Price of(BigMoneyProvider amount, Quantity<Mass> packageMass) {
    return new Price(UnitPrice.of(amount, packageMass), Vat.NONE);
  }

  /**
   * Reads a price: number, currency, slash, mass of the package.
   *
   * @param text for example "14.90 EUR/500 g"; the grammar of {@link UnitPrice#parse}
   * @return the price, with no tax in it or on top
   * @throws ProblemException if the text does not fit
   */
  public static Price parse(String text) {
    return new Price(UnitPrice.parse(text), Vat.NONE);
  }

  /**
   * Reads a price with the decimal sign of a parser.
   *
   * @param text for example "14,90 €/500 g"; the grammar of {@link UnitPrice#parse}
   * @param parser the parser, such as {@link QuantityParser#forLocale}
   * @return the price, with no tax in it or on top
   * @throws ProblemException if the text does not fit
   */
  public static Price parse(String text, QuantityParser parser) {
    return new Price(UnitPrice.parse(text, parser), Vat.NONE);
  }

  private Price(UnitPrice stated, Vat vat) {
    this.stated = stated;
    this.vat = vat;
  }

  /**
   * Returns a copy with another word on tax.
   *
   * @param newVat how tax stands in the amount
   * @return the new price, of the same amount
   */
  public Price withVat(Vat newVat) {
    return new Price(stated, newVat);
  }

  /** {@return the currency} */
  public CurrencyUnit currency() {
    return stated.currency();
  }

  /**
   * Returns the money for one package as stated.
   *
   * @return the amount, rounded to the smallest coin if it was stated finer
   */
  public Money amount() {
    return stated.amount().toMoney(RoundingMode.HALF_UP);
  }

  /**
   * Returns how tax stands in the amount.
   *
   * @return the tax
   */
  public Vat vat() {
    return vat;
  }

  /**
   * Returns the mass in one package.
   *
   * @return the mass, in kilograms
   */
  public double packageKilograms() {
    return stated.massKilograms();
  }

  /**
   * Returns the mass in one package.
   *
   * @return the mass
   */
  public Quantity<Mass> packageMass() {
    return QuantityKind.MASS.ofSi(packageKilograms());
  }

  /**
   * Returns the stated amount without tax, exactly.
   *
   * @return the net amount of one package
   */
  public ExactMoney net() {
    return vat.net(exact());
  }

  /**
   * Returns the stated amount with tax, exactly.
   *
   * @return the gross amount of one package
   */
  public ExactMoney gross() {
    return vat.gross(exact());
  }

  /**
   * Returns what the buyer bears for one package.
   *
   * @return the net amount if the tax is recoverable, else the gross amount
   */
  public ExactMoney borne() {
    return vat.borne(exact());
  }

  /**
   * Returns the stated amount per mass, whatever tax is in it.
   *
   * @return the unit price; 29.80 EUR/kg for 500 g at 14.90 EUR
   */
  public UnitPrice unitPrice() {
    return stated;
  }

  /**
   * Returns what the buyer bears for a mass used from the package.
   *
   * @param mass the mass
   * @return the exact cost
   */
  public ExactMoney cost(Quantity<Mass> mass) {
    return vat.borne(stated.cost(mass));
  }

  /**
   * Returns this price as it is written down.
   *
   * @return the draft, which reads back as an equal price if the amount has at most twelve digits
   *     before and behind the point
   */
  public PriceDraft toDraft() {
    return PriceDraft.of(this);
  }

  private ExactMoney exact() {
    return ExactMoney.of(stated.amount());
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Price that
        && stated.equals(that.stated)
        && packageKilograms() == that.packageKilograms()
        && vat.equals(that.vat);
  }

  @Override
  public int hashCode() {
    return Objects.hash(stated, packageKilograms(), vat);
  }

  /**
   * Returns the stated amount and mass as {@link #parse} reads it, locale-free.
   *
   * @return for example "14.90 EUR/500 g"
   */
  @Override
  public String toString() {
    return stated.toString();
  }
}
