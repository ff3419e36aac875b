// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import java.util.List;
import java.util.Map;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.meltwright.core.explain.Explanation;
import org.meltwright.core.explain.Expr;
import org.meltwright.core.explain.Expr.Function;
import org.meltwright.core.explain.Figure;
import org.meltwright.core.explain.Formula;
import org.meltwright.core.explain.Symbol;
import org.meltwright.units.Bilingual;

/** The formulas of this package, loaded when somebody asks how a number came about. */
final class CostWorking {

  private static final int EXACT = 9;

  static final Symbol FIXED = money("fixed cost").withSign("F");
  static final Symbol PRICE = money("price").withSign("p");
  static final Symbol PER_UNIT = money("cost of one unit").withSign("v");
  static final Symbol UNITS = symbol("number of units", "").withSign("n");
  static final Symbol WHOLE = symbol("whole units", "").withDigits(16).withSign("N");

  static final Formula UNITS_EVEN = new Formula(UNITS, FIXED.over(PRICE.minus(PER_UNIT)));
  static final Formula WHOLE_EVEN =
      new Formula(WHOLE, Expr.call(Function.CEILING, FIXED.over(PRICE.minus(PER_UNIT))));

  static final Symbol BATCH = money("cost of the batch").withSign("C");
  static final Symbol NET = symbol("mass of net product", "kg").withSign("N");
  static final Symbol READY_MADE = perKilogram("ready-made, per kilogram").withSign("b");
  static final Symbol OWN = perKilogram("own, per kilogram").withSign("c");
  static final Symbol SAVING = perKilogram("saving per kilogram").withSign("S");
  static final Symbol GOODS = money("goods");
  static final Symbol FREIGHT = money("freight");
  static final Symbol INSURANCE = money("insurance");
  static final Symbol DUTY = money("duty");
  static final Symbol HANDLING = money("handling fee");
  static final Symbol TAX = money("tax");
  static final Symbol CUSTOMS_VALUE = money("customs value");
  static final Symbol TAX_BASE = money("base of the tax");
  static final Symbol TAX_RATE = symbol("rate of the tax", "1");
  static final Symbol IMPORT_TAX = money("tax on imports");
  static final Symbol FEE_TAX = money("tax on fees");
  static final Symbol RECOVERED = money("tax that is refunded");
  static final Symbol PAID = money("paid");
  static final Symbol BORNE = money("borne");

  private static final Symbol MASS = symbol("mass", "kg");
  private static final Symbol PER_KILOGRAM = perKilogram("price per kilogram");
  private static final Symbol PART = money("cost");
  private static final Symbol TOTAL = money("exact total");
  private static final Symbol ROUNDED = money("total");
  private static final Symbol COIN = money("smallest coin");
  private static final Symbol YEARLY =
      symbol("mass a year from which making pays", "kg").withSign("Q");

  static final Formula OWN_COST = new Formula(OWN, BATCH.over(NET));
  static final Formula SAVES = new Formula(SAVING, READY_MADE.minus(OWN));
  static final Formula EVEN = new Formula(YEARLY, FIXED.over(SAVING));
  static final Formula GOODS_SUM = new Formula(GOODS, new Expr.Total(GOODS, GOODS));
  static final Formula IMPORT =
      new Formula(IMPORT_TAX, Expr.call(Function.ROUND, TAX_RATE.times(TAX_BASE), COIN));
  static final Formula TAXES = new Formula(TAX, IMPORT_TAX.plus(FEE_TAX));
  static final Formula PAY =
      new Formula(PAID, GOODS.plus(FREIGHT).plus(INSURANCE).plus(DUTY).plus(HANDLING).plus(TAX));
  static final Formula BEAR = new Formula(BORNE, PAID.minus(RECOVERED));

  private static final Formula LINE = new Formula(PART, MASS.times(PER_KILOGRAM));
  private static final Formula SUM = new Formula(TOTAL, new Expr.Total(PART, PART));
  private static final Formula TO_NEAREST =
      new Formula(ROUNDED, Expr.call(Function.ROUND, TOTAL, COIN));
  private static final Formula UP =
      new Formula(ROUNDED, Expr.call(Function.CEILING, TOTAL.over(COIN)).times(COIN));
  private static final Formula DOWN =
      new Formula(ROUNDED, Expr.call(Function.FLOOR, TOTAL.over(COIN)).times(COIN));

  private CostWorking() {}

  static Explanation of(CostRollUp cost) {
    Explanation.Builder text =
        builder("working.cost", Map.of("name", Bilingual.of(cost.root().label())));
    List<CostLine> leaves = cost.leaves();
    List<Bilingual> names =
        Explanation.lines(leaves.stream().map(leaf -> Bilingual.of(leaf.label())).toList());
    for (int i = 0; i < leaves.size(); i++) {
      line(leaves.get(i), names.get(i), text);
    }
    return text.step(SUM, cost.exactTotal().figure(TOTAL))
        .given(coin(cost.total().getCurrencyUnit()))
        .step(rounding(cost), ExactMoney.of(cost.total()).figure(ROUNDED))
        .build();
  }

  private static void line(CostLine leaf, Bilingual name, Explanation.Builder text) {
    Figure amount = leaf.exact().figure(PART.of(name));
    if (leaf.massKilograms() > 0) {
      Ratio perKilogram = Ratio.ONE.dividedBy(Ratio.of(leaf.massKilograms()));
      text.given(MASS.of(name), leaf.massKilograms())
          .given(leaf.exact().times(perKilogram).figure(PER_KILOGRAM.of(name)))
          .step(LINE, amount);
    } else {
      text.given(amount);
    }
  }

  /** The mode is known by what it did. */
  private static Formula rounding(CostRollUp cost) {
    ExactMoney up = ExactMoney.of(cost.total()).minus(cost.exactTotal());
    double coins = Math.abs(up.amount().toDouble()) / coin(cost.total().getCurrencyUnit()).value();
    if (coins <= 0.5) {
      return TO_NEAREST;
    }
    return up.isPositive() ? UP : DOWN;
  }

  static Figure coin(CurrencyUnit currency) {
    return ExactMoney.of(Money.ofMinor(currency, 1)).figure(COIN);
  }

  private static Symbol perKilogram(String name) {
    return symbol(name, "money/kg").withDigits(EXACT);
  }

  static Explanation.Builder builder(String title, Map<String, Bilingual> values) {
    return Explanation.builder(CostWorking.class, title, values);
  }

  private static Symbol symbol(String name, String unit) {
    return Symbol.beside(CostWorking.class, name, unit);
  }

  private static Symbol money(String name) {
    return symbol(name, "money").withDigits(EXACT);
  }
}
