// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.Map;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.core.explain.Explanation;
import org.meltwright.core.explain.Formula;
import org.meltwright.core.explain.Symbol;
import org.meltwright.units.Bilingual;

/** The formulas of this package, loaded when somebody asks how a number came about. */
final class ReviewWorking {

  static final Symbol IN_LIQUID = symbol("read in the liquid", "°C");
  static final Symbol ON_SURFACE = symbol("read on the surface", "°C");
  static final Symbol TARGET = symbol("target", "°C");
  static final Symbol CEILING = symbol("hard ceiling", "°C");

  private static final Symbol WAX = symbol("temperature of the wax", "°C");
  private static final Symbol PLATE = symbol("reading of the plate", "°C");
  private static final Symbol OFFSET = symbol("measured offset", "K");
  private static final Symbol SET_POINT = symbol("set point", "°C");
  private static final Symbol OVERSHOOT = symbol("overshoot", "K");
  private static final Symbol MARGIN = symbol("margin to the target", "K");
  private static final Symbol LEFT = symbol("margin to the hard ceiling", "K");

  static final Formula TO_TARGET = new Formula(MARGIN, TARGET.minus(WAX));
  static final Formula TO_CEILING = new Formula(LEFT, CEILING.minus(WAX));

  private static final Formula OF_PLATE = new Formula(WAX, PLATE.plus(OFFSET));
  private static final Formula OF_DIAL = new Formula(WAX, SET_POINT.plus(OVERSHOOT));

  private ReviewWorking() {}

  /** Why this temperature binds, and how it came about where it was not read. */
  static void binding(HeatingPlan plan, BindingTemperature wax, Explanation.Builder text) {
    text.conclusion(
        "working.review.binds",
        Map.of("wax", Bilingual.of(wax.value()), "basis", Bilingual.of(wax.basis()::text)));
    switch (wax.basis()) {
      case PLATE_AND_OFFSET -> plate(plan, wax, text);
      case PALETTE_SET_POINT_AND_OVERSHOOT, PALETTE_STATED_AND_MEASURED -> dial(plan, wax, text);
      default -> text.given(WAX, wax.value().celsius());
    }
  }

  private static void plate(HeatingPlan plan, BindingTemperature wax, Explanation.Builder text) {
    BindingTemperature.plateReading(plan).ifPresent(t -> text.stated(PLATE, t.celsius()));
    plan.measuredOffset().ifPresent(offset -> text.stated(OFFSET, offset.kelvin()));
    text.step(OF_PLATE, wax.value().celsius());
  }

  private static void dial(HeatingPlan plan, BindingTemperature wax, Explanation.Builder text) {
    HeatSource heat = plan.heat().orElseThrow();
    heat.setPoint().ifPresent(t -> text.stated(SET_POINT, t.celsius()));
    heat.overshoot().ifPresent(d -> text.stated(OVERSHOOT, d.kelvin()));
    text.step(OF_DIAL, wax.value().celsius());
  }

  private static Symbol symbol(String name, String unit) {
    return Symbol.beside(ReviewWorking.class, name, unit);
  }
}
