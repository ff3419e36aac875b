// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import static org.meltwright.core.cost.CostProblem.CHECK;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.joda.money.BigMoneyProvider;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.explain.Explanation;
import org.meltwright.units.ProblemException;

/**
 * What to charge for one piece, and what of it stays: the price that the buyer pays, less tax, less
 * fees, less cost.
 *
 * <p>A wish is a margin or a mark-up, and they are two things. The margin is a share of what the
 * sale leaves once tax and fees are off; the mark-up is a share of the cost. 100 % of mark-up are
 * 50 % of margin.
 *
 * <p>For example:
 *
 * <pre>{@code
 * UnitCost cake = UnitCost.of(Money.parse("EUR 2")).withWork(minutes(6), Money.parse("EUR 20"));
 * SalesTerms market =
 *     SalesTerms.taxed(Rate.ofPercent("19"))
 *         .withFee(Rate.ofPercent("10"))
 *         .withFixedFee(Money.parse("EUR 0.30"));
 * SellingPrice price = SellingPrice.forMarkUp(cake, market, Rate.ofPercent("100"));
 * price.price().toMoney(); // EUR 11.21
 * price.profit(); // 4 EUR
 * price.margin(); // 0.5
 * price.roundedUpTo(Money.parse("EUR 0.50")).price(); // 11.5 EUR
 * SellingPrice.of(cake, market, Money.parse("EUR 5.95")).leftPerHour(); // 21.05 EUR
 * }</pre>
 *
 * <p>Everything is exact; {@link #roundedUpTo} comes last. Immutable and thread-safe.
 */
public final class SellingPrice {

  private static final Ratio HUNDRED_PERCENT = Ratio.ONE;

  private final UnitCost cost;
  private final SalesTerms terms;
  private final ExactMoney price;

  /**
   * Returns a price as it stands on the tag.
   *
   * @param cost what the piece costs
   * @param terms what is taken from the price
   * @param price what the buyer pays, zero or more
   * @return the price
   * @throws ProblemException if the price is below zero or the currencies differ
   */
  public static SellingPrice of(UnitCost cost, SalesTerms terms, BigMoneyProvider price) {
    ExactMoney exact = ExactMoney.of(price);
    if (exact.isNegative()) {
      throw CostProblem.negative(exact, "price");
    }
    terms.left(exact).minus(cost.total());
    return new SellingPrice(cost, terms, exact);
  }

  /**
   * Returns the price that leaves a share of the takings as profit.
   *
   * @param cost what the piece costs
   * @param terms what is taken from the price
   * @param margin the profit as a share of what the sale leaves, below 100 %
   * @return the exact price
   * @throws ProblemException if the margin is 100 % or more, or the currencies differ
   */
  public static SellingPrice forMargin(UnitCost cost, SalesTerms terms, Rate margin) {
    CHECK.between(margin.percent().doubleValue(), 0, Math.nextDown(100.0), "margin in %");
    Ratio rest = HUNDRED_PERCENT.minus(margin.fraction());
    return leaving(cost, terms, cost.total().times(HUNDRED_PERCENT.dividedBy(rest)));
  }

  /**
   * Returns the price that leaves a share of the cost as profit.
   *
   * @param cost what the piece costs
   * @param terms what is taken from the price
   * @param markUp the profit as a share of the cost; 100 % doubles it
   * @return the exact price
   * @throws ProblemException if the currencies differ
   */
  public static SellingPrice forMarkUp(UnitCost cost, SalesTerms terms, Rate markUp) {
    return leaving(cost, terms, cost.total().plus(markUp.of(cost.total())));
  }

  private static SellingPrice leaving(UnitCost cost, SalesTerms terms, ExactMoney left) {
    return of(cost, terms, terms.priceLeaving(left));
  }

  private SellingPrice(UnitCost cost, SalesTerms terms, ExactMoney price) {
    this.cost = cost;
    this.terms = terms;
    this.price = price;
  }

  /**
   * Returns the next price that is a multiple of a step.
   *
   * @param step the step, such as 0.50 EUR, above zero
   * @return this price or a higher one
   * @throws ProblemException if the step is not above zero or in another currency
   */
  public SellingPrice roundedUpTo(BigMoneyProvider step) {
    Money coins = Money.of(step.toBigMoney());
    CostProblem.requireSame(price.currency(), coins.getCurrencyUnit());
    CHECK.between(coins.getAmount().doubleValue(), 1e-9, 1e9, "step of a price");
    BigDecimal steps =
        price.dividedBy(coins.getAmount()).toBigMoney(0, RoundingMode.CEILING).getAmount();
    return new SellingPrice(cost, terms, ExactMoney.of(coins).times(steps));
  }

  /** {@return what the buyer pays, tax included} */
  public ExactMoney price() {
    return price;
  }

  /** {@return the tax in the price} */
  public ExactMoney tax() {
    return terms.tax(price);
  }

  /** {@return the fees on the price} */
  public ExactMoney fee() {
    return terms.fee(price);
  }

  /** {@return what the piece costs} */
  public UnitCost cost() {
    return cost;
  }

  /**
   * Returns what the sale leaves.
   *
   * @return price less tax less fees
   */
  public ExactMoney left() {
    return terms.left(price);
  }

  /**
   * Returns what stays beyond the cost, work and overheads paid.
   *
   * @return price less tax, fees and cost; below zero for a loss
   */
  public ExactMoney profit() {
    return left().minus(cost.total());
  }

  /**
   * Returns the profit as a share of what the sale leaves.
   *
   * @return the margin, where 0.5 is 50 %; empty where nothing is left
   */
  public Optional<Double> margin() {
    return share(left());
  }

  /**
   * Returns the profit as a share of the cost.
   *
   * @return the mark-up, where 1 is 100 %; empty where the piece costs nothing
   */
  public Optional<Double> markUp() {
    return share(cost.total());
  }

  private Optional<Double> share(ExactMoney whole) {
    return whole.isPositive() ? Optional.of(profit().dividedBy(whole)) : Optional.empty();
  }

  /**
   * Returns what an hour of work earns at this price, whatever wage is stated.
   *
   * @return price less tax, fees, spending and overheads, per hour; below zero where not even those
   *     are paid; empty where no working time is stated
   */
  public Optional<ExactMoney> leftPerHour() {
    if (cost.hours().signum() == 0) {
      return Optional.empty();
    }
    return Optional.of(profit().plus(cost.work()).times(Ratio.ONE.dividedBy(cost.hours())));
  }

  /**
   * Explains what stays.
   *
   * @return cost, tax, fees, what the sale leaves and the profit, each with its formula
   */
  public Explanation explanation() {
    return SalesWorking.of(this);
  }

  SalesTerms terms() {
    return terms;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof SellingPrice that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(cost, terms, price);
  }

  @Override
  public String toString() {
    return price + " with " + terms + " for a " + cost;
  }
}
