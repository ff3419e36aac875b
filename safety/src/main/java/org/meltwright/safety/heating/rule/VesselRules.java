// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import static org.meltwright.safety.heating.RuleInfo.Topic.VESSEL;
import static org.meltwright.safety.heating.rule.Check.uses;
import static org.meltwright.safety.heating.rule.Check.when;
import static org.meltwright.safety.heating.rule.Check.whether;
import static org.meltwright.safety.heating.rule.Rule.caution;
import static org.meltwright.safety.heating.rule.Rule.danger;
import static org.meltwright.safety.heating.rule.Rule.warning;

import java.util.List;
import java.util.function.DoublePredicate;
import java.util.function.Function;
import java.util.function.Predicate;
import org.meltwright.core.equipment.HeatSource.Kind;
import org.meltwright.core.equipment.Lining;
import org.meltwright.core.equipment.Vessel;
import org.meltwright.core.equipment.VesselMaterial;
import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.HeatingReview;
import org.meltwright.safety.heating.HeatingRule;
import org.meltwright.safety.heating.RuleOutcome;
import org.meltwright.units.Limit;

/** The vessel, how full it is, and the fire under it. */
final class VesselRules {

  private static final double FULL = 1;

  private static final Predicate<HeatingPlan> FIRE = uses(Kind.TORCH).or(Tools::isOpenCoilOrGas);

  static final List<HeatingRule> ALL =
      List.of(
          new Rule(
              caution("vessel-too-full", VESSEL, Source.COMMON_PRACTICE),
              filled(
                  level ->
                      Limit.exceeds(level, HeatingReview.WORKING_FILL.value())
                          && !Limit.exceeds(level, FULL))),
          new Rule(
              danger("vessel-overflows", VESSEL, Source.COMMON_PRACTICE).asBlocking(),
              filled(level -> Limit.exceeds(level, FULL))),
          new Rule(
              warning("plastic-vessel", VESSEL, Source.COMMON_PRACTICE).asBlocking(),
              vessel(
                  Vessel::material,
                  VesselMaterial.PLASTIC,
                  VesselMaterial.UNKNOWN,
                  "vessel-material")),
          new Rule(
              warning("plastic-lined-can", VESSEL, Source.COMMON_PRACTICE).asBlocking(),
              vessel(Vessel::lining, Lining.PLASTIC, Lining.UNKNOWN, "lining")),
          new Rule(
              caution("round-bottom", VESSEL, Source.COMMON_PRACTICE),
              vessel(Vessel::bottom, Vessel.Bottom.ROUND, Vessel.Bottom.UNKNOWN, "bottom")),
          new Rule(
              caution("unknown-coating", VESSEL, Source.COMMON_PRACTICE),
              vessel(vessel -> RuleOutcome.foundIf(vessel.lining() == Lining.UNKNOWN))),
          new Rule(
              warning("non-stick-open-heat", VESSEL, Source.COMMON_PRACTICE).asBlocking(),
              when(
                  FIRE,
                  vessel(vessel -> RuleOutcome.foundIf(vessel.lining() == Lining.NON_STICK)))),
          new Rule(
              warning("paper-liner-flame", VESSEL, Source.COMMON_PRACTICE).asBlocking(),
              when(FIRE, Paper::review)),
          new Rule(
              caution("paper-liner-above-ceiling", VESSEL, Source.COMMON_PRACTICE).asBlocking(),
              Paper::reviewHeat),
          new Rule(
              warning("open-coil-or-gas", VESSEL, Source.COMMON_PRACTICE).asBlocking(),
              whether(Tools::isOpenCoilOrGas)));

  private VesselRules() {}

  private static Check filled(DoublePredicate tooFull) {
    return plan -> {
      if (plan.fillLevel().isEmpty()) {
        return RuleOutcome.notAssessed("fill-level");
      }
      double level = plan.fillLevel().getAsDouble();
      return RuleOutcome.foundIf(tooFull.test(level)).with("percent", level * 100);
    };
  }

  private static Check vessel(Function<Vessel, RuleOutcome> check) {
    return plan -> plan.vessel().map(check).orElseGet(() -> RuleOutcome.notAssessed("vessel"));
  }

  /** Finds what is wrong of a vessel; what is not known of it is missing. */
  private static <E extends Enum<E>> Check vessel(
      Function<Vessel, E> asked, E wrong, E unknown, String missing) {
    return vessel(
        vessel ->
            asked.apply(vessel) == unknown
                ? RuleOutcome.notAssessed(missing)
                : RuleOutcome.foundIf(asked.apply(vessel) == wrong));
  }
}
