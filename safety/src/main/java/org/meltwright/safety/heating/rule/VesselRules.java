// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import static org.meltwright.safety.heating.RuleInfo.Topic.VESSEL;
import static org.meltwright.safety.heating.rule.Check.either;
import static org.meltwright.safety.heating.rule.Check.not;
import static org.meltwright.safety.heating.rule.Check.stated;
import static org.meltwright.safety.heating.rule.Check.uses;
import static org.meltwright.safety.heating.rule.Check.using;
import static org.meltwright.safety.heating.rule.Rule.caution;
import static org.meltwright.safety.heating.rule.Rule.danger;
import static org.meltwright.safety.heating.rule.Rule.warning;

import java.util.List;
import java.util.Optional;
import java.util.function.DoublePredicate;
import java.util.function.Function;
import java.util.function.Predicate;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.core.equipment.HeatSource.Kind;
import org.meltwright.core.equipment.Lining;
import org.meltwright.core.equipment.Vessel;
import org.meltwright.core.equipment.VesselMaterial;
import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.Circumstance;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.HeatingReview;
import org.meltwright.safety.heating.HeatingRule;
import org.meltwright.safety.heating.RuleOutcome;
import org.meltwright.units.Limit;
import org.meltwright.units.TemperaturePoint;

/** The vessel, how full it is, and the fire under it. */
final class VesselRules {

  /** From this on hot wax that is stirred or moved runs over; policy. */
  private static final double NEARLY_FULL = 0.9;

  private static final Predicate<HeatingPlan> FLAME_OR_GLOW =
      uses(Kind.TORCH, Kind.OPEN_COIL_OR_GAS);

  /** What heats what it meets above 200 °C at once. */
  private static final Predicate<HeatingPlan> OPEN_HEAT = FLAME_OR_GLOW.or(uses(Kind.HEAT_GUN));

  static final List<HeatingRule> ALL =
      List.of(
          new Rule(
              caution("vessel-too-full", VESSEL, Source.COMMON_PRACTICE),
              filled(
                  level ->
                      Limit.exceeds(level, HeatingReview.WORKING_FILL.value())
                          && !Limit.reaches(level, NEARLY_FULL))),
          new Rule(
              danger("vessel-overflows", VESSEL, Source.COMMON_PRACTICE).asBlocking(),
              filled(level -> Limit.reaches(level, NEARLY_FULL))),
          new Rule(
              warning("plastic-vessel", VESSEL, Source.COMMON_PRACTICE).asBlocking().asFixed(),
              vessel(
                  Vessel::material,
                  VesselMaterial.PLASTIC,
                  VesselMaterial.UNKNOWN,
                  "vessel-material")),
          new Rule(
              warning("plastic-lined-can", VESSEL, Source.COMMON_PRACTICE).asBlocking().asFixed(),
              vessel(Vessel::lining, Lining.PLASTIC, Lining.UNKNOWN, "lining")),
          new Rule(
              warning("round-bottom", VESSEL, Source.COMMON_PRACTICE),
              vessel(Vessel::bottom, Vessel.Bottom.ROUND, Vessel.Bottom.UNKNOWN, "bottom")),
          new Rule(
              caution("unknown-coating", VESSEL, Source.COMMON_PRACTICE),
              vessel(vessel -> RuleOutcome.foundIf(vessel.lining() == Lining.UNKNOWN))),
          new Rule(
              warning("non-stick-open-heat", VESSEL, Source.COMMON_PRACTICE).asBlocking(),
              using(OPEN_HEAT, vessel(Vessel::lining, Lining.NON_STICK, Lining.UNKNOWN, "lining"))),
          new Rule(
              warning("paper-liner-flame", VESSEL, Source.COMMON_PRACTICE).asBlocking(),
              using(OPEN_HEAT.or(uses(Kind.LAMP)), Paper::review)),
          new Rule(
              caution("paper-liner-above-ceiling", VESSEL, Source.COMMON_PRACTICE).asBlocking(),
              Paper::reviewHeat),
          new Rule(
              warning("open-coil-or-gas", VESSEL, Source.COMMON_PRACTICE).asBlocking().asFixed(),
              using(uses(Kind.OPEN_COIL_OR_GAS))),
          new Rule(
              danger("flame-under-pot", VESSEL, Source.COMMON_PRACTICE).asBlocking().asFixed(),
              using(VesselRules::isHeatedByTorch)),
          new Rule(
              danger("hot-air-at-pot", VESSEL, Source.COMMON_PRACTICE).asBlocking().asFixed(),
              using(plan -> isHeatedBy(plan, Kind.HEAT_GUN))),
          new Rule(
              warning("glass-on-plate", VESSEL, Source.COMMON_PRACTICE).asBlocking(),
              using(
                  not(VesselRules::isInBath),
                  madeOf(VesselMaterial.GLASS, VesselMaterial.HEAT_RESISTANT_GLASS))),
          new Rule(
              caution("ceramic-on-plate", VESSEL, Source.COMMON_PRACTICE),
              using(
                  uses(
                      Kind.HOT_PLATE,
                      Kind.HEATED_PALETTE,
                      Kind.RING_WITH_NUMBERS,
                      Kind.OPEN_COIL_OR_GAS),
                  madeOf(VesselMaterial.CERAMIC))),
          new Rule(
              caution("galvanised-vessel", VESSEL, Source.COMMON_PRACTICE),
              madeOf(VesselMaterial.GALVANISED_STEEL)),
          new Rule(
              danger("galvanised-flame", VESSEL, Source.COMMON_PRACTICE).asBlocking(),
              using(FLAME_OR_GLOW, madeOf(VesselMaterial.GALVANISED_STEEL))),
          new Rule(
              caution("copper-or-iron-vessel", VESSEL, Source.COMMON_PRACTICE),
              madeOf(VesselMaterial.COPPER, VesselMaterial.CAST_IRON)),
          new Rule(
              warning("silicone-pot", VESSEL, Source.COMMON_PRACTICE).asBlocking(),
              using(not(VesselRules::isInBath), madeOf(VesselMaterial.SILICONE))),
          new Rule(
              warning("paper-cup-on-heat", VESSEL, Source.COMMON_PRACTICE).asBlocking(),
              either(
                  vessel(VesselRules::linedPaper),
                  using(VesselRules::isInBath, inBathOf(VesselMaterial.PAPER)))),
          new Rule(
              warning("microwave", VESSEL, Sources.MICROWAVED_WAX).asBlocking(),
              using(uses(Kind.MICROWAVE))),
          new Rule(caution("oven", VESSEL, Source.COMMON_PRACTICE), using(VesselRules::isHotOven)),
          new Rule(
              danger("ring-with-numbers", VESSEL, Source.COMMON_PRACTICE).asBlocking(),
              using(VesselRules::isRingWithoutProbe)),
          new Rule(
              warning("slow-cooker", VESSEL, Source.COMMON_PRACTICE),
              using(VesselRules::isCookerWithoutProbe)),
          new Rule(
              warning("bath-not-watched", VESSEL, Source.COMMON_PRACTICE),
              using(VesselRules::isInBath, stated(Circumstance.BATH_NOT_WATCHED))),
          new Rule(
              caution("glass-in-bath", VESSEL, Source.COMMON_PRACTICE),
              using(VesselRules::isInBath, madeOf(VesselMaterial.GLASS))),
          new Rule(
              caution("silicone-in-bath", VESSEL, Source.COMMON_PRACTICE),
              using(VesselRules::isInBath, inBathOf(VesselMaterial.SILICONE))),
          new Rule(
              danger("bath-too-hot", VESSEL, Source.COMMON_PRACTICE).asBlocking(),
              using(VesselRules::isInBath, VesselRules::bathTooHot)));

  private VesselRules() {}

  private static boolean isHeatedBy(HeatingPlan plan, Kind kind) {
    return plan.heat().filter(heat -> heat.kind() == kind).isPresent();
  }

  /** An oven on at most this dial is only melted down in; its dial may be 20 K off. */
  private static final TemperaturePoint OVEN_DIAL = TemperaturePoint.ofCelsius(80);

  private static boolean isHotOven(HeatingPlan plan) {
    boolean low =
        plan.heat().flatMap(HeatSource::setPoint).filter(t -> !t.isAbove(OVEN_DIAL)).isPresent();
    return isHeatedBy(plan, Kind.OVEN) && !(low && WaxTemperature.isMeasured(plan));
  }

  /** Water boils here; what is set to it and above is no bath, or none for long. */
  private static final TemperaturePoint BOILING = TemperaturePoint.ofCelsius(100);

  /** What nobody says of the dial is not asked for: most baths have none. */
  private static RuleOutcome bathTooHot(HeatingPlan plan) {
    Optional<HeatSource> bath = plan.heat();
    Optional<TemperaturePoint> most = bath.flatMap(HeatSource::highestSurface);
    Optional<TemperaturePoint> set = most.or(() -> bath.flatMap(HeatSource::setPoint));
    if (set.filter(t -> Limit.reaches(t, BOILING)).isPresent()) {
      return RuleOutcome.found().with("set", set.get());
    }
    return most.isPresent() ? RuleOutcome.NOTHING : RuleOutcome.notAsked("bath-setting");
  }

  private static boolean isInBath(HeatingPlan plan) {
    return isHeatedBy(plan, Kind.WATER_BATH);
  }

  static boolean isRingWithoutProbe(HeatingPlan plan) {
    return isHeatedBy(plan, Kind.RING_WITH_NUMBERS) && !WaxTemperature.isMeasured(plan);
  }

  static boolean isCookerWithoutProbe(HeatingPlan plan) {
    return isHeatedBy(plan, Kind.SLOW_COOKER) && !WaxTemperature.isMeasured(plan);
  }

  /** Finds a vessel of one of some materials. */
  private static Check madeOf(VesselMaterial... anyOf) {
    return vessel(vessel -> RuleOutcome.foundIf(List.of(anyOf).contains(vessel.material())));
  }

  private static Check inBathOf(VesselMaterial wrong) {
    return vessel(Vessel::material, wrong, VesselMaterial.UNKNOWN, "vessel-material");
  }

  /** Uncoated paper up to the target is the painter's own palette. */
  private static RuleOutcome linedPaper(Vessel vessel) {
    boolean lined = vessel.lining() == Lining.PLASTIC || vessel.lining() == Lining.UNKNOWN;
    return RuleOutcome.foundIf(vessel.material() == VesselMaterial.PAPER && lined);
  }

  private static boolean isHeatedByTorch(HeatingPlan plan) {
    return isHeatedBy(plan, Kind.TORCH);
  }

  private static Check filled(DoublePredicate tooFull) {
    return plan -> {
      if (plan.fillLevel().isEmpty()) {
        return RuleOutcome.notAsked("fill-level");
      }
      double level = plan.fillLevel().getAsDouble();
      return RuleOutcome.foundIf(tooFull.test(level)).with("percent", level * 100);
    };
  }

  private static Check vessel(Function<Vessel, RuleOutcome> check) {
    return plan -> plan.vessel().map(check).orElseGet(() -> RuleOutcome.notAsked("vessel"));
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
