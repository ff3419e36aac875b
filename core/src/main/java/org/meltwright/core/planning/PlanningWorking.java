// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import java.util.List;
import java.util.Map;
import org.meltwright.core.cost.ExactMoney;
import org.meltwright.core.explain.Explanation;
import org.meltwright.core.explain.Expr;
import org.meltwright.core.explain.Figure;
import org.meltwright.core.explain.Formula;
import org.meltwright.core.explain.Symbol;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Messages;

/** The formulas of this package, loaded when somebody asks how a number came about. */
final class PlanningWorking {

  private static final int WHOLE = 9;
  private static final Messages WORDS = Messages.beside(PlanningWorking.class);

  static final Symbol AREA = symbol("area", "m²").withSign("A");
  static final Symbol FILM = symbol("thickness of a film", "m").withSign("f");
  static final Symbol LAYERS = symbol("number of layers", "").withDigits(WHOLE).withSign("n");
  static final Symbol DENSITY = symbol("density", "kg/m³").withSign("ρ");
  static final Symbol SOLIDS = symbol("share of volume that stays", "1").withSign("s");
  static final Symbol DRUNK = symbol("mass that the ground drinks per area", "kg/m²").withSign("a");
  static final Symbol REACHES =
      symbol("share of the mass that reaches the ground", "1").withSign("τ");
  static final Symbol USED = symbol("mass for the area", "kg").withSign("m");
  static final Symbol PEOPLE = symbol("number of people", "").withDigits(WHOLE).withSign("n");
  static final Symbol LEFT = symbol("mass left in tins", "kg").withSign("r");
  static final Symbol SPARE = symbol("spare share", "1").withSign("e");
  static final Symbol TOTAL = symbol("mass in all", "kg").withSign("M");
  static final Symbol STUDENTS = symbol("number of students", "").withDigits(WHOLE).withSign("n");
  static final Symbol MATERIALS = money("materials bought").withSign("B");
  static final Symbol EACH = money("spent on each").withSign("e");
  static final Symbol FIXED = money("spent however many come").withSign("F");
  static final Symbol COST = money("cost of a student").withSign("c");

  static final Formula COVERAGE =
      new Formula(
          USED,
          AREA.times(DENSITY.times(FILM).times(LAYERS).over(SOLIDS).plus(DRUNK)).over(REACHES));

  static final Formula CLASS =
      new Formula(TOTAL, USED.plus(PEOPLE.times(LEFT)).times(Expr.of(1).plus(SPARE)));

  static final Formula BUDGET =
      new Formula(COST, MATERIALS.plus(STUDENTS.times(EACH)).plus(FIXED).over(STUDENTS));

  static final Symbol GOODS = money("amount");
  static final Symbol PAID = money("total of the purchase");

  private static final Symbol CARRIAGE = money("carriage");
  private static final Symbol HANDLING = money("handling fee");
  private static final Symbol FLAT_DUTY = money("flat duty");
  private static final Symbol LEAST = money("no plan costs less than");
  private static final Symbol LEFT_OVER = symbol("mass left", "kg");
  private static final Symbol WORTH = money("worth of what is left");

  static final Formula PURCHASE =
      new Formula(
          PAID,
          new Expr.Total(GOODS, GOODS)
              .plus(new Expr.Total(CARRIAGE, CARRIAGE.plus(HANDLING).plus(FLAT_DUTY))));

  private PlanningWorking() {}

  static void charges(SupplierOrder order, Explanation.Builder text) {
    Bilingual supplier = Bilingual.of(order.supplier());
    text.given(ExactMoney.of(order.freight()).figure(CARRIAGE.of(supplier)))
        .given(ExactMoney.of(order.handling()).figure(HANDLING.of(supplier)))
        .given(ExactMoney.of(order.flatDuty()).figure(FLAT_DUTY.of(supplier)));
  }

  static void leftOver(LeftOver left, Explanation.Builder text) {
    Figure mass = Figure.of(LEFT_OVER, left.massKilograms());
    Figure worth = ExactMoney.of(left.worth()).figure(WORTH);
    text.conclusion(
        "working.purchase.left",
        Map.of(
            "name",
            Bilingual.of(left.material()),
            "mass",
            Bilingual.of(mass::number),
            "worth",
            Bilingual.of(worth::number)));
  }

  /** The plan was searched for; the bound is its certificate. */
  static Explanation.Method search(boolean isProved, ExactMoney bound) {
    String key = isProved ? "working.purchase.proved" : "working.purchase.not-proved";
    return new Explanation.Method(
        WORDS.both("working.purchase.search", Map.of()),
        List.of(bound.figure(LEAST)),
        WORDS.both(key, Map.of()));
  }

  static Explanation.Builder builder(String title) {
    return Explanation.builder(PlanningWorking.class, title, Map.of());
  }

  private static Symbol symbol(String name, String unit) {
    return Symbol.beside(PlanningWorking.class, name, unit);
  }

  private static Symbol money(String name) {
    return symbol(name, "money").withDigits(WHOLE);
  }
}
