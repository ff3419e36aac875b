// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.joda.money.BigMoneyProvider;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.ProblemException;

/**
 * The duty on one kind of goods: a rate of the customs value, or one flat amount however much of
 * that kind is in the order, on the days and for the consignments it holds for.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Duty small = Duty.flat("wax", Money.parse("EUR 3")).forGoodsUpTo(Money.parse("EUR 150"));
 * Duty large = Duty.percent("wax", Rate.ofPercent("5")).forGoodsAbove(Money.parse("EUR 150"));
 * LocalDate day = LocalDate.of(2026, 9, 1);
 * ExactMoney goods = ExactMoney.of(Money.parse("EUR 200"));
 * Duty duty = Duty.require(List.of(small, large), "wax", day, goods);
 * duty; // wax: 5 %
 * duty.on(goods); // 10 EUR
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class Duty {

  private final String kindOfGoods;
  private final Rate rate;
  private final @Nullable ExactMoney flat;
  private final Validity validity;
  private final @Nullable ExactMoney goodsUpTo;
  private final @Nullable ExactMoney goodsAbove;

  /**
   * Returns a duty that is a rate of the customs value.
   *
   * @param kindOfGoods the kind of goods, for example a customs code
   * @param rate the rate
   * @return the duty, on any day and for any consignment
   */
  public static Duty percent(String kindOfGoods, Rate rate) {
    return new Duty(kindOfGoods, rate, null, Validity.ALWAYS, null, null);
  }

  /**
   * Returns a duty of one amount for all goods of the kind in an order.
   *
   * @param kindOfGoods the kind of goods, for example a customs code
   * @param amount the amount, zero or more
   * @return the duty, on any day and for any consignment
   * @throws ProblemException if the amount is below zero
   */
  public static Duty flat(String kindOfGoods, BigMoneyProvider amount) {
    ExactMoney exact = ExactMoney.of(amount);
    if (exact.isNegative()) {
      throw CostProblem.negative(exact, "duty");
    }
    return new Duty(kindOfGoods, Rate.ZERO, exact, Validity.ALWAYS, null, null);
  }

  private Duty(
      String kindOfGoods,
      Rate rate,
      @Nullable ExactMoney flat,
      Validity validity,
      @Nullable ExactMoney goodsUpTo,
      @Nullable ExactMoney goodsAbove) {
    this.kindOfGoods = kindOfGoods;
    this.rate = rate;
    this.flat = flat;
    this.validity = validity;
    this.goodsUpTo = goodsUpTo;
    this.goodsAbove = goodsAbove;
  }

  /**
   * Returns a copy for some days only.
   *
   * @param days the days on which it holds
   * @return the new duty
   */
  public Duty onlyOn(Validity days) {
    return new Duty(kindOfGoods, rate, flat, days, goodsUpTo, goodsAbove);
  }

  /**
   * Returns a copy for consignments up to a value only.
   *
   * @param value the value of all goods of the consignment, included
   * @return the new duty
   */
  public Duty forGoodsUpTo(BigMoneyProvider value) {
    return new Duty(kindOfGoods, rate, flat, validity, ExactMoney.of(value), goodsAbove);
  }

  /**
   * Returns a copy for consignments above a value only.
   *
   * @param value the value of all goods of the consignment, not included
   * @return the new duty
   */
  public Duty forGoodsAbove(BigMoneyProvider value) {
    return new Duty(kindOfGoods, rate, flat, validity, goodsUpTo, ExactMoney.of(value));
  }

  /**
   * Returns the kind of goods.
   *
   * @return the kind
   */
  public String kindOfGoods() {
    return kindOfGoods;
  }

  /**
   * Returns the one duty that holds.
   *
   * @param duties the duties known
   * @param kindOfGoods the kind of goods
   * @param date the day
   * @param consignment the value of all goods of the consignment
   * @return the duty
   * @throws ProblemException if none or more than one holds
   */
  public static Duty require(
      List<Duty> duties, String kindOfGoods, LocalDate date, BigMoneyProvider consignment) {
    ExactMoney value = ExactMoney.of(consignment);
    List<Duty> found = duties.stream().filter(d -> d.holds(kindOfGoods, date, value)).toList();
    if (found.size() != 1) {
      throw CostProblem.exception(
          found.isEmpty() ? CostProblem.DUTY_MISSING : CostProblem.DUTY_TWICE,
          kindOfGoods + ", " + date + ", " + value);
    }
    return found.get(0);
  }

  private boolean holds(String kind, LocalDate date, ExactMoney consignment) {
    return kindOfGoods.equals(kind)
        && validity.contains(date)
        && (goodsUpTo == null || consignment.compareTo(goodsUpTo) <= 0)
        && (goodsAbove == null || consignment.compareTo(goodsAbove) > 0);
  }

  /**
   * Returns the duty on the goods of this kind in an order.
   *
   * @param customsValue the customs value of all of them
   * @return the exact amount
   * @throws ProblemException if a flat amount is in another currency
   */
  public ExactMoney on(BigMoneyProvider customsValue) {
    if (flat == null) {
      return rate.of(customsValue);
    }
    CostProblem.requireSame(ExactMoney.of(customsValue).currency(), flat.currency());
    return flat;
  }

  /**
   * Returns kind and amount, locale-free.
   *
   * @return for example "3213: 6.5 %"
   */
  @Override
  public String toString() {
    return kindOfGoods + ": " + (flat == null ? rate : flat);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Duty that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<@Nullable Object> stated() {
    return Arrays.asList(kindOfGoods, rate, flat, validity, goodsUpTo, goodsAbove);
  }
}
