// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import static org.meltwright.core.cost.CostProblem.CHECK;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Time;
import org.joda.money.BigMoneyProvider;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.ProblemException;

/**
 * What one piece, or one class, costs its maker in full: what is spent on it, the working time with
 * its wage, and a share of the overheads.
 *
 * <p>Time is all of it: making and buying, records, photographs, the day at the market, cleaning.
 * Overheads are what a year costs however much is made: rent, insurance, a web page. They come as
 * the costs of a period over what is made in it, or over the hours paid in it; as a flat share only
 * where that was checked against a year.
 *
 * <p>For example:
 *
 * <pre>{@code
 * UnitCost cake =
 *     UnitCost.of(Money.parse("EUR 2.40"))
 *         .withWork(minutes(6), Money.parse("EUR 20"))
 *         .withOverheads(Money.parse("EUR 600"), 1000);
 * cake.work(); // 2 EUR
 * cake.overheads(); // 0.6 EUR
 * cake.total(); // 5 EUR
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class UnitCost {

  private static final Ratio SECONDS_AN_HOUR = Ratio.of(3600);

  private final ExactMoney spent;
  private final Ratio hours;
  private final ExactMoney perHour;
  private final ExactMoney overheads;

  /**
   * Returns a cost without work and overheads.
   *
   * @param spent what is spent on one: materials net of what is really used, packing, energy; zero
   *     or more, such as {@link CostRollUp#perPiece}
   * @return the cost
   * @throws ProblemException if the amount is below zero
   */
  public static UnitCost of(BigMoneyProvider spent) {
    ExactMoney exact = notNegative(spent, "spending");
    ExactMoney none = ExactMoney.zero(exact.currency());
    return new UnitCost(exact, Ratio.ZERO, none, none);
  }

  private UnitCost(ExactMoney spent, Ratio hours, ExactMoney perHour, ExactMoney overheads) {
    this.spent = spent;
    this.hours = hours;
    this.perHour = perHour;
    this.overheads = overheads;
  }

  /**
   * Returns a copy with working time instead of the one before.
   *
   * @param time the time at work for one, 0 to 10¹⁵ s
   * @param perHour what an hour is worth, zero or more
   * @return the new cost
   * @throws ProblemException if time or wage are below zero, or the currency differs
   */
  public UnitCost withWork(Quantity<Time> time, BigMoneyProvider perHour) {
    Ratio seconds = Ratio.of(CHECK.between(time, 0, 1e15, "working time"));
    ExactMoney wage = same(notNegative(perHour, "wage"));
    return new UnitCost(spent, seconds.dividedBy(SECONDS_AN_HOUR), wage, overheads);
  }

  /**
   * Returns a copy that bears its part of what a period costs, by pieces, instead of the overheads
   * before.
   *
   * @param ofPeriod what the period costs however much is made, zero or more
   * @param made how many are made in the period, at least one
   * @return the new cost
   * @throws ProblemException if the amount is below zero, the currency differs or none is made
   */
  public UnitCost withOverheads(BigMoneyProvider ofPeriod, long made) {
    CHECK.between((double) made, 1, 1e15, "number of pieces");
    ExactMoney share = notNegative(ofPeriod, "overheads").dividedBy(made);
    return new UnitCost(spent, hours, perHour, same(share));
  }

  /**
   * Returns a copy that bears its part of what a period costs, by the hours of work stated until
   * now, instead of the overheads before.
   *
   * @param ofPeriod what the period costs however much is made, zero or more
   * @param paid the hours that are paid for in the period, 1 s to 10¹⁵ s
   * @return the new cost
   * @throws ProblemException if the amount is below zero, the currency differs or no time is paid
   */
  public UnitCost withOverheads(BigMoneyProvider ofPeriod, Quantity<Time> paid) {
    Ratio seconds = Ratio.of(CHECK.between(paid, 1, 1e15, "paid time"));
    ExactMoney all = notNegative(ofPeriod, "overheads");
    Ratio share = hours.times(SECONDS_AN_HOUR).dividedBy(seconds);
    return new UnitCost(spent, hours, perHour, same(all.times(share)));
  }

  /**
   * Returns a copy that bears a flat share on top of spending and work stated until now, instead of
   * the overheads before.
   *
   * @param share the share, such as 15 %
   * @return the new cost
   */
  public UnitCost withOverheads(Rate share) {
    return new UnitCost(spent, hours, perHour, share.of(spent.plus(work())));
  }

  private static ExactMoney notNegative(BigMoneyProvider amount, String what) {
    ExactMoney exact = ExactMoney.of(amount);
    if (exact.isNegative()) {
      throw CostProblem.negative(exact, what);
    }
    return exact;
  }

  private ExactMoney same(ExactMoney amount) {
    CostProblem.requireSame(spent.currency(), amount.currency());
    return amount;
  }

  /** {@return what is spent on one} */
  public ExactMoney spent() {
    return spent;
  }

  /**
   * Returns what the working time costs.
   *
   * @return hours × wage, exactly
   */
  public ExactMoney work() {
    return perHour.times(hours);
  }

  /** {@return the part of the overheads} */
  public ExactMoney overheads() {
    return overheads;
  }

  /**
   * Returns the full cost.
   *
   * @return what is spent, work and overheads
   */
  public ExactMoney total() {
    return spent.plus(work()).plus(overheads);
  }

  Ratio hours() {
    return hours;
  }

  ExactMoney perHour() {
    return perHour;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof UnitCost that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(spent, hours, perHour, overheads);
  }

  @Override
  public String toString() {
    return "cost of " + spent + " + " + hours + " h at " + perHour + " + " + overheads;
  }
}
