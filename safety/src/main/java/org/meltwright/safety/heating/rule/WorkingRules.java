// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import static org.meltwright.safety.heating.RuleInfo.Topic.WORKING;
import static org.meltwright.safety.heating.rule.Check.holding;
import static org.meltwright.safety.heating.rule.Check.stated;
import static org.meltwright.safety.heating.rule.Rule.caution;
import static org.meltwright.safety.heating.rule.Rule.notice;
import static org.meltwright.safety.heating.rule.Rule.warning;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.meltwright.core.material.HotMeltUse;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.source.Source;
import org.meltwright.core.thermal.melting.WorkingWindow;
import org.meltwright.safety.heating.Circumstance;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.HeatingRule;
import org.meltwright.safety.heating.RuleOutcome;
import org.meltwright.safety.heating.TemperatureTable.FloorBand;
import org.meltwright.units.Limit;
import org.meltwright.units.MassFraction;
import org.meltwright.units.TemperaturePoint;

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

  /** Wax colder than the lower bound of its working window: it sets on the brush. */
  private static final class ColderThanWindow {

    private ColderThanWindow() {}

    static RuleOutcome review(HeatingPlan plan) {
      return !Window.isBrushed(plan) || isFloorTooHot(plan)
          ? RuleOutcome.NOTHING
          : WaxTemperature.review(
              plan, wax -> WaxTemperature.ruledOut(plan, below(plan, wax.value()), wax));
    }

    /** Nobody is told to warm wax on a floor that is too hot already. */
    private static boolean isFloorTooHot(HeatingPlan plan) {
      return plan.potFloor()
          .filter(floor -> plan.table().floorBand(floor.value()) != FloorBand.WORKING)
          .isPresent();
    }

    private static RuleOutcome below(HeatingPlan plan, TemperaturePoint wax) {
      return Window.review(plan, window -> isColder(wax, window)).with("wax", wax);
    }

    /** A closed window asks for more than the ceiling allows: that is the other rule's to say. */
    private static boolean isColder(TemperaturePoint wax, WorkingWindow window) {
      return window.state() != WorkingWindow.State.CLOSED && wax.isBelow(window.lowerBound().low());
    }
  }

  /**
   * Wax colder than a resin dissolves from: a matter of crushing, stirring and waiting, never of
   * more heat. The resin's own melting figure is no part of this.
   */
  private static final class ResinDissolvesSlowly {

    private ResinDissolvesSlowly() {}

    static RuleOutcome review(HeatingPlan plan) {
      List<Material> resins =
          plan.contents().materials().stream()
              .filter(material -> material.family() == MaterialFamily.RESIN)
              .toList();
      if (resins.isEmpty()) {
        return RuleOutcome.NOTHING;
      }
      return WaxTemperature.review(
          plan, wax -> WaxTemperature.ruledOut(plan, review(resins, wax.value()), wax));
    }

    private static RuleOutcome review(List<Material> resins, TemperaturePoint wax) {
      List<Material> slow = new ArrayList<>();
      RuleOutcome missing = RuleOutcome.NOTHING;
      for (Material resin : resins) {
        var bound = resin.find(PropertyKey.DISSOLVES_FROM);
        if (bound.isEmpty()) {
          missing = missing.andNotAssessed(resin, "dissolves-from");
        } else if (wax.isBelow(bound.get().value().range().low())) {
          slow.add(resin);
        }
      }
      return missing
          .andFoundIf(!slow.isEmpty())
          .with("wax", wax)
          .with("materials", List.copyOf(slow));
    }
  }
}
