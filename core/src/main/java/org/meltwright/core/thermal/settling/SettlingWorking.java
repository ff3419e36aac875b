// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.settling;

import java.util.Map;
import org.meltwright.core.explain.Explanation;
import org.meltwright.core.explain.Expr;
import org.meltwright.core.explain.Expr.Function;
import org.meltwright.core.explain.Formula;
import org.meltwright.core.explain.Symbol;
import org.meltwright.core.thermal.ThermalProblem;
import org.meltwright.units.Bilingual;

/** The formulas of this package, loaded when somebody asks how a number came about. */
final class SettlingWorking {

  static final Symbol LOST = symbol("share that may be lost", "1");
  static final Symbol DEPTH = symbol("depth of the melt", "m");
  static final Symbol LAYER = symbol("depth of the layer", "m");
  static final Symbol GRAVITY = symbol("gravity", "m/s²").withDigits(6);
  static final Symbol CROWDING = symbol("what crowding leaves of the velocity", "1");

  private static final Symbol SIZE = symbol("diameter of the pieces", "m");
  private static final Symbol DENSITY = symbol("density of the particles", "kg/m³");
  private static final Symbol MELT_DENSITY = symbol("density of the melt", "kg/m³");
  private static final Symbol VISCOSITY = symbol("viscosity of the melt", "Pa s");
  private static final Symbol VELOCITY = symbol("velocity of sinking", "m/s");
  private static final Symbol QUIET = symbol("time between two stirrings, quiet", "s");
  private static final Symbol CONVECTING = symbol("time between two stirrings, mixed", "s");

  static final Formula STOKES =
      new Formula(
          VELOCITY,
          CROWDING
              .times(DENSITY.minus(MELT_DENSITY))
              .times(GRAVITY)
              .times(SIZE.power(2))
              .over(Expr.of(18).times(VISCOSITY)));
  static final Formula IN_QUIET = new Formula(QUIET, LOST.times(LAYER).over(VELOCITY));
  static final Formula MIXED =
      new Formula(
          CONVECTING,
          Expr.of(-1)
              .times(DEPTH.over(VELOCITY))
              .times(Expr.call(Function.LOG, Expr.of(1).minus(LOST))));

  private SettlingWorking() {}

  static Explanation.Builder builder(String title, Map<String, Bilingual> values) {
    return Explanation.builder(ThermalProblem.class, title, values);
  }

  private static Symbol symbol(String name, String unit) {
    return Symbol.beside(ThermalProblem.class, name, unit);
  }
}
