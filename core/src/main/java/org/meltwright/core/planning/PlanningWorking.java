// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import java.util.Map;
import org.meltwright.core.explain.Explanation;
import org.meltwright.core.explain.Expr;
import org.meltwright.core.explain.Formula;
import org.meltwright.core.explain.Symbol;

/** The formulas of this package, loaded when somebody asks how a number came about. */
final class PlanningWorking {

  private static final int WHOLE = 9;

  static final Symbol AREA = symbol("area", "m²");
  static final Symbol FILM = symbol("thickness of a film", "m");
  static final Symbol LAYERS = symbol("number of layers", "").withDigits(WHOLE);
  static final Symbol DENSITY = symbol("density", "kg/m³");
  static final Symbol SOLIDS = symbol("share of volume that stays", "1");
  static final Symbol DRUNK = symbol("mass that the ground drinks per area", "kg/m²");
  static final Symbol REACHES = symbol("share of the mass that reaches the ground", "1");
  static final Symbol USED = symbol("mass for the area", "kg");
  static final Symbol PEOPLE = symbol("number of people", "").withDigits(WHOLE);
  static final Symbol LEFT = symbol("mass left in tins", "kg");
  static final Symbol SPARE = symbol("spare share", "1");
  static final Symbol TOTAL = symbol("mass in all", "kg");
  static final Symbol STUDENTS = symbol("number of students", "").withDigits(WHOLE);
  static final Symbol MATERIALS = money("materials bought");
  static final Symbol EACH = money("spent on each");
  static final Symbol FIXED = money("spent however many come");
  static final Symbol COST = money("cost of a student");

  static final Formula COVERAGE =
      new Formula(
          USED,
          AREA.times(DENSITY.times(FILM).times(LAYERS).over(SOLIDS).plus(DRUNK)).over(REACHES));

  static final Formula CLASS =
      new Formula(TOTAL, USED.plus(PEOPLE.times(LEFT)).times(Expr.of(1).plus(SPARE)));

  static final Formula BUDGET =
      new Formula(COST, MATERIALS.plus(STUDENTS.times(EACH)).plus(FIXED).over(STUDENTS));

  private PlanningWorking() {}

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
