// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import org.joda.money.CurrencyUnit;
import org.meltwright.units.Check;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemCode;
import org.meltwright.units.ProblemException;

/**
 * The problems that prices, sums and orders report.
 *
 * <p>For example:
 *
 * <pre>{@code
 * List<Problem> problems = new ArrayList<>();
 * try {
 *   ExactMoney.of(Money.parse("EUR 5")).plus(ExactMoney.of(Money.parse("GBP 5")));
 * } catch (ProblemException e) {
 *   problems.addAll(e.problems());
 * }
 * problems.get(0).code(); // CURRENCY_MIXED
 * problems.get(0).what(Locale.ENGLISH); // Amounts in EUR and GBP cannot be added or compared.
 * }</pre>
 */
public enum CostProblem implements ProblemCode {
  /** Amounts in two currencies that were to be added or compared. */
  CURRENCY_MIXED("cost.currency.mixed"),
  /** A currency code that is not in ISO 4217. */
  CURRENCY_UNKNOWN("cost.currency.unknown"),
  /** A sign that several currencies share, such as $. */
  CURRENCY_AMBIGUOUS("cost.currency.ambiguous"),
  /** An amount of money that cannot be read. */
  MONEY_TEXT("cost.money.text"),
  /** A price that cannot be read. */
  PRICE_TEXT("cost.price.text"),
  /** An amount of money below zero where none can be. */
  AMOUNT_NEGATIVE("cost.amount.negative"),
  /** A sum of nothing, whose currency nobody knows. */
  NO_LINES("cost.no-lines"),
  /** Shares of which none is above zero. */
  NO_WEIGHT("cost.no-weight"),
  /** A date without an exchange rate. */
  RATE_MISSING("cost.exchange-rate.missing"),
  /** A kind of goods without a duty on that day. */
  DUTY_MISSING("cost.duty.missing"),
  /** A kind of goods with two duties on that day. */
  DUTY_TWICE("cost.duty.twice"),
  /** An import regime that takes duty of duty or tax of tax. */
  BASE_CIRCULAR("cost.base.circular"),
  /** A price or a duty used on a day on which it does not hold. */
  NOT_VALID("cost.price.not-valid"),
  /** An ingredient without a price. */
  PRICE_MISSING("cost.price.missing"),
  /** A recipe that is made of what it makes. */
  RECIPE_IN_ITSELF("cost.recipe.in-itself"),
  /** A batch of more lines than anyone reads, counting those of recipes in recipes. */
  TOO_MANY_LINES("cost.lines.too-many"),
  /** A last day before the first. */
  DATES_REVERSED("cost.dates.reversed"),
  /** A group of costs that was to be one amount. */
  GROUP_HAS_PARTS("cost.group-has-parts"),
  /** A selling price that does not cover what one more unit costs. */
  NO_CONTRIBUTION("cost.no-contribution"),
  /** Tax and fee that leave nothing of a price. */
  FEE_TAKES_ALL("cost.fee-takes-all"),
  /** An amount of money is wanted with all its decimals, and they have no end. */
  ENDLESS("cost.money.endless");

  /** The guards of this package. */
  static final Check CHECK = Check.beside(CostProblem.class);

  private final String id;

  CostProblem(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }

  static void requireSame(CurrencyUnit one, CurrencyUnit other) {
    if (!one.equals(other)) {
      throw new ProblemException(
          Problem.of(CURRENCY_MIXED, one.getCode()).with("other", other.getCode()));
    }
  }

  static ProblemException exception(CostProblem code, Object found) {
    return new ProblemException(Problem.of(code, found.toString()));
  }

  static ProblemException negative(Object found, String what) {
    return new ProblemException(
        Problem.of(AMOUNT_NEGATIVE, MoneyText.inWords(found)).with("what", CHECK.name(what)));
  }
}
