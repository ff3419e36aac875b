// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.List;
import java.util.function.Predicate;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.MaterialRole;
import org.meltwright.core.material.PerMaterial;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.thermal.melting.WorkingWindow;
import org.meltwright.safety.heating.Contents;
import org.meltwright.safety.heating.HeatingLimits.Figure;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleOutcome;
import org.meltwright.units.Limit;

/** The working window of a mix below the target ceiling. */
final class Window {

  /** A melting range wider than this, in K, spans several grades: which one it is decides. */
  private static final double ONE_GRADE = 15;

  /** From this share of wax and resin on a mix is brushed; below it is a balm. */
  private static final double BRUSHED = 0.5;

  /** From this share of oil, fat and fragrance on a mix is a balm or polish, and rubbed in. */
  private static final double RUBBED = 0.1;

  private static final PerMaterial<Boolean> OILY = PerMaterial.of(Window::isOily);

  private Window() {}

  /** Tells whether a mix is one for the brush: half of it wax and resin, and no balm or polish. */
  static boolean isBrushed(HeatingPlan plan) {
    return plan.contents().share(m -> isSolid(m.family())).high().value() >= BRUSHED
        && !isRubbedIn(plan);
  }

  /** Tells whether a mix is a balm, a polish or full of scent: nobody brushes it. */
  static boolean isRubbedIn(HeatingPlan plan) {
    double oily = 0;
    for (Material material : plan.contents().materials()) {
      oily += OILY.get(material) ? plan.mix().massFractionValue(material) : 0;
    }
    return Limit.reaches(oily, RUBBED);
  }

  /** Oil or fat that is weighed in as such, and fragrance; what nobody knows is none of them. */
  private static boolean isOily(Material material) {
    return material.role() == MaterialRole.OIL
        || Contents.isFragrance(material)
        || Contents.namesakes(material).stream().anyMatch(m -> m.role() == MaterialRole.OIL);
  }

  private static boolean isSolid(MaterialFamily family) {
    return family == MaterialFamily.WAX || family == MaterialFamily.RESIN;
  }

  /** Tells whether there is no room for any grade of the component that melts highest. */
  static boolean isClosed(WorkingWindow window) {
    return window.state() == WorkingWindow.State.CLOSED && !isGradeUnknown(window);
  }

  /** Tells whether there may be no room: by the strict estimate, or for some of the grades. */
  static boolean mayBeClosed(WorkingWindow window) {
    return window.state() == WorkingWindow.State.MAY_BE_CLOSED
        || (window.state() == WorkingWindow.State.CLOSED && isGradeUnknown(window));
  }

  private static boolean isGradeUnknown(WorkingWindow window) {
    return window
        .highestMelting()
        .flatMap(material -> material.find(PropertyKey.MELTING_RANGE))
        .filter(melting -> melting.value().range().width().kelvin() > ONE_GRADE)
        .isPresent();
  }

  /** Returns a finding if the window of the plan's mix is as asked for. */
  static RuleOutcome review(HeatingPlan plan, Predicate<WorkingWindow> wanted) {
    RuleOutcome outcome =
        plan.workingWindow().map(window -> review(window, wanted)).orElseGet(() -> unknown(plan));
    return outcome.equals(RuleOutcome.NOTHING) || !isRubbedIn(plan) ? outcome : RuleOutcome.NOTHING;
  }

  private static RuleOutcome review(WorkingWindow window, Predicate<WorkingWindow> wanted) {
    return wanted.test(window)
        ? RuleOutcome.found()
            .with("low", window.lowerBound().low())
            .with("high", window.lowerBound().high())
            .with("component", window.highestMelting().map(List::of).orElse(List.of()))
            .at(Figure.TARGET, Figure.LEAST_WIDTH)
        : RuleOutcome.NOTHING;
  }

  private static RuleOutcome unknown(HeatingPlan plan) {
    RuleOutcome outcome = RuleOutcome.NOTHING;
    List<Material> unknown = WorkingWindow.withoutMeltingRange(plan.mix());
    for (Material material : plan.contents().materials()) {
      if (Contents.parts(material).anyMatch(unknown::contains)) {
        outcome = outcome.andNotAsked("melting-range");
        break;
      }
    }
    return outcome;
  }
}
