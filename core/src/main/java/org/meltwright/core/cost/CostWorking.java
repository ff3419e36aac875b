// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import java.util.Map;
import org.meltwright.core.explain.Explanation;
import org.meltwright.core.explain.Expr;
import org.meltwright.core.explain.Expr.Function;
import org.meltwright.core.explain.Formula;
import org.meltwright.core.explain.Symbol;
import org.meltwright.units.Bilingual;

/** The formulas of this package, loaded when somebody asks how a number came about. */
final class CostWorking {

  private static final int EXACT = 9;

  static final Symbol FIXED = money("fixed cost");
  static final Symbol PRICE = money("price");
  static final Symbol PER_UNIT = money("cost of one unit");
  static final Symbol UNITS = symbol("number of units", "");
  static final Symbol WHOLE = symbol("whole units", "").withDigits(16);

  static final Formula UNITS_EVEN = new Formula(UNITS, FIXED.over(PRICE.minus(PER_UNIT)));
  static final Formula WHOLE_EVEN =
      new Formula(WHOLE, Expr.call(Function.CEILING, FIXED.over(PRICE.minus(PER_UNIT))));

  private CostWorking() {}

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
