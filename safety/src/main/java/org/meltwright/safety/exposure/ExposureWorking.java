// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.exposure;

import java.util.Map;
import org.meltwright.core.explain.Explanation;
import org.meltwright.core.explain.Expr;
import org.meltwright.core.explain.Formula;
import org.meltwright.core.explain.Symbol;
import org.meltwright.units.Bilingual;

/** The formulas of this package, loaded when somebody asks how a number came about. */
final class ExposureWorking {

  static final Symbol EVAPORATION = symbol("evaporation", "g/h").withSign("g");
  static final Symbol MOLAR_MASS = symbol("molar mass", "g/mol").withSign("M");
  static final Symbol MOLAR_VOLUME =
      symbol("molar volume of a gas at 25 °C", "l/mol").withSign("v");
  static final Symbol LIMIT = symbol("limit value", "ppm").withSign("C");
  static final Symbol MIXING = symbol("mixing factor", "").withSign("K");
  static final Symbol VOLTAGE = symbol("voltage", "V").withSign("U");
  static final Symbol RATING = symbol("rating", "A");
  static final Symbol CONTINUOUS = symbol("factor on continuous loads", "");
  static final Symbol POWER = symbol("power", "W").withSign("P");
  static final Symbol FACTOR = symbol("factor on its load", "").withSign("φ");

  private static final Symbol FLOW = symbol("flow of air", "m³/h").withSign("Q");
  private static final Symbol CURRENT = symbol("current, at least", "A").withSign("I");

  /** Litres of vapour are thousandths, parts per million are millionths of a cubic metre. */
  static final Formula DILUTION =
      new Formula(
          FLOW,
          EVAPORATION
              .over(MOLAR_MASS)
              .times(MOLAR_VOLUME)
              .over(Expr.of(1000))
              .over(LIMIT.times(Expr.of(1e-6)))
              .times(MIXING));

  static final Formula CIRCUIT =
      new Formula(CURRENT, new Expr.Total(POWER, POWER.times(FACTOR)).over(VOLTAGE));

  private ExposureWorking() {}

  static Explanation.Builder builder(String title, Map<String, Bilingual> values) {
    return Explanation.builder(ExposureWorking.class, title, values);
  }

  private static Symbol symbol(String name, String unit) {
    return Symbol.beside(ExposureWorking.class, name, unit);
  }
}
