// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialProblem;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.thermal.WorkingWindow;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleOutcome;
import org.meltwright.units.ProblemException;

/** The working window of a mix below the target ceiling. */
final class Window {

  /** A melting range wider than this, in K, spans several grades: which one it is decides. */
  private static final double ONE_GRADE = 15;

  private Window() {}

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
    WorkingWindow window;
    try {
      window = plan.table().window(plan.mix(), plan.table().target());
    } catch (ProblemException e) {
      return unknown(plan, e);
    }
    return RuleOutcome.foundIf(wanted.test(window))
        .with("low", window.lowerBound().low())
        .with("high", window.lowerBound().high())
        .with("ceiling", plan.table().target())
        .with("component", window.highestMelting().map(List::of).orElse(List.of()));
  }

  private static RuleOutcome unknown(HeatingPlan plan, ProblemException why) {
    RuleOutcome outcome = RuleOutcome.NOTHING;
    for (Material material : plan.contents().materials()) {
      if (isNamed(material, why)) {
        outcome = outcome.andNotAssessed(material, "melting-range");
      }
    }
    return outcome;
  }

  private static boolean isNamed(Material material, ProblemException why) {
    Optional<String> id =
        why.problems().stream()
            .filter(p -> p.code() == MaterialProblem.PROPERTY_MISSING)
            .map(p -> p.found())
            .filter(material.id()::equals)
            .findFirst();
    return id.isPresent();
  }
}
