// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import java.util.Map;
import org.meltwright.core.explain.Explanation;
import org.meltwright.core.explain.Expr;
import org.meltwright.core.explain.Formula;
import org.meltwright.core.explain.Symbol;

/** The formulas of a selling price, loaded when somebody asks how a number came about. */
final class SalesWorking {

  static final Symbol PRICE = money("price").withSign("p");
  static final Symbol COST = money("full cost").withSign("c");
  static final Symbol TAX = money("tax").withSign("T");
  static final Symbol FEE = money("fees").withSign("D");
  static final Symbol LEFT = money("what the sale leaves").withSign("N");
  static final Symbol PROFIT = money("profit").withSign("G");
  static final Symbol SPENT = money("spending").withSign("s");
  static final Symbol OVERHEADS = money("overheads").withSign("o");
  static final Symbol HOURS = symbol("working time", "h").withSign("t");
  static final Symbol WAGE = symbol("wage", "money/h").withDigits(9).withSign("w");
  static final Symbol EARNED = symbol("left per hour", "money/h").withDigits(9).withSign("e");
  static final Symbol TAX_RATE = symbol("rate of the tax", "1").withSign("v");
  static final Symbol FEE_RATE = symbol("rate of the fee", "1").withSign("f");
  static final Symbol FIXED_FEE = money("fee for each sale").withSign("k");

  static final Formula FULL_COST = new Formula(COST, SPENT.plus(HOURS.times(WAGE)).plus(OVERHEADS));
  static final Formula TAKEN_TAX =
      new Formula(TAX, PRICE.minus(PRICE.over(Expr.of(1).plus(TAX_RATE))));
  static final Formula TAKEN_FEE = new Formula(FEE, FEE_RATE.times(PRICE).plus(FIXED_FEE));
  static final Formula LEAVES = new Formula(LEFT, PRICE.minus(TAX).minus(FEE));
  static final Formula GAIN = new Formula(PROFIT, LEFT.minus(COST));
  static final Formula PER_HOUR =
      new Formula(EARNED, LEFT.minus(SPENT).minus(OVERHEADS).over(HOURS));

  private SalesWorking() {}

  static Explanation of(SellingPrice sale) {
    Explanation.Builder text = CostWorking.builder("working.selling-price", Map.of());
    given(sale, text);
    text.step(FULL_COST, sale.cost().total().figure(COST))
        .step(TAKEN_TAX, sale.tax().figure(TAX))
        .step(TAKEN_FEE, sale.fee().figure(FEE))
        .step(LEAVES, sale.left().figure(LEFT))
        .step(GAIN, sale.profit().figure(PROFIT));
    sale.leftPerHour().ifPresent(earned -> text.step(PER_HOUR, earned.figure(EARNED)));
    return text.build();
  }

  private static void given(SellingPrice sale, Explanation.Builder text) {
    UnitCost cost = sale.cost();
    SalesTerms terms = sale.terms();
    ExactMoney none = ExactMoney.zero(sale.price().currency());
    text.stated(sale.price().figure(PRICE))
        .stated(cost.spent().figure(SPENT))
        .stated(HOURS, cost.hours().toDouble())
        .stated(cost.perHour().figure(WAGE))
        .given(cost.overheads().figure(OVERHEADS))
        .stated(TAX_RATE, terms.taxRate().fraction().toDouble())
        .stated(FEE_RATE, terms.feeRate().fraction().toDouble())
        .stated(terms.fixedFee().orElse(none).figure(FIXED_FEE));
  }

  private static Symbol symbol(String name, String unit) {
    return Symbol.beside(SalesWorking.class, name, unit);
  }

  private static Symbol money(String name) {
    return symbol(name, "money").withDigits(9);
  }
}
