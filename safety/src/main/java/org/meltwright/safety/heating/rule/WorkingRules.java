// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import static org.meltwright.safety.heating.RuleInfo.Topic.WORKING;
import static org.meltwright.safety.heating.rule.Check.holding;
import static org.meltwright.safety.heating.rule.Check.stated;
import static org.meltwright.safety.heating.rule.Rule.caution;
import static org.meltwright.safety.heating.rule.Rule.notice;
import static org.meltwright.safety.heating.rule.Rule.warning;

import java.util.List;
import java.util.Set;
import org.meltwright.core.material.HotMeltUse;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.Circumstance;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.HeatingRule;
import org.meltwright.safety.heating.RuleOutcome;
import org.meltwright.units.Limit;
import org.meltwright.units.MassFraction;

/** Melting, dissolving, working. */
final class WorkingRules {

  private static final Set<String> HARD_WAXES =
      Set.of("carnauba", "candelilla", "rice-bran-wax", "montan");

  static final List<HeatingRule> ALL =
      List.of(
          new Rule(
              caution("window-closed", WORKING, Source.COMMON_PRACTICE).asBlocking(),
              plan -> Window.review(plan, Window::isClosed)),
          new Rule(
              caution("window-may-be-closed", WORKING, Source.COMMON_PRACTICE),
              plan -> Window.review(plan, Window::mayBeClosed)),
          new Rule(
              notice("colder-than-window", WORKING, Source.COMMON_PRACTICE),
              ColderThanWindow::review),
          new Rule(
              notice("resin-dissolves-slowly", WORKING, Source.COMMON_PRACTICE),
              ResinDissolvesSlowly::review),
          new Rule(
              caution("resin-unsuitable", WORKING, Source.COMMON_PRACTICE).asBlocking(),
              holding(WorkingRules::isRefusedResin)),
          new Rule(
              warning("melting-order", WORKING, Source.COMMON_PRACTICE),
              stated(Circumstance.RESIN_FIRST)),
          new Rule(
              notice("brittle-resin-share", WORKING, Source.COMMON_PRACTICE),
              WorkingRules::brittle),
          new Rule(
              notice("hard-wax-share", WORKING, Source.COMMON_PRACTICE), WorkingRules::hardWax));

  private WorkingRules() {}

  /** A resin that dissolves in wax only far above the ceiling, or hardens there for good. */
  private static boolean isRefusedResin(Material material) {
    return material.family() == MaterialFamily.RESIN
        && material
            .find(PropertyKey.USE_IN_HOT_MELT)
            .filter(use -> use.value() == HotMeltUse.REFUSE)
            .isPresent();
  }

  /** Finds resin from one fifth of the medium. */
  private static RuleOutcome brittle(HeatingPlan plan) {
    double resin = Medium.mostResin(plan);
    return RuleOutcome.foundIf(Limit.reaches(resin, 0.20)).with("resin", MassFraction.of(resin));
  }

  /** Finds hard wax above 5 % of a mix that is no balm or polish. */
  private static RuleOutcome hardWax(HeatingPlan plan) {
    MassFraction share = plan.contents().share(m -> HARD_WAXES.contains(m.id())).high();
    return RuleOutcome.foundIf(Limit.exceeds(share.value(), 0.05) && !Window.isRubbedIn(plan))
        .with("share", share);
  }
}
