// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import static org.meltwright.safety.heating.RuleInfo.Topic.UPPER_LIMIT;
import static org.meltwright.safety.heating.RuleInfo.Topic.WORKING;
import static org.meltwright.safety.heating.rule.Check.whether;
import static org.meltwright.safety.heating.rule.Rule.caution;
import static org.meltwright.safety.heating.rule.Rule.danger;
import static org.meltwright.safety.heating.rule.Rule.notice;
import static org.meltwright.safety.heating.rule.Rule.warning;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.core.equipment.HeatSource.Kind;
import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.BindingTemperature;
import org.meltwright.safety.heating.HeatingLimits.Figure;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.HeatingRule;
import org.meltwright.safety.heating.PotFloor;
import org.meltwright.safety.heating.RuleOutcome;
import org.meltwright.safety.heating.TemperatureTable.Band;
import org.meltwright.safety.heating.TemperatureTable.FloorBand;
import org.meltwright.units.Limit;

/** Upper limits: the one temperature table, held against the wax and the floor of the pot. */
final class TemperatureRules {

  static final List<HeatingRule> ALL =
      List.of(
          new Rule(
              notice("darkening", UPPER_LIMIT, Sources.BEESWAX_RECORD),
              plan -> withHours(plan, wax(plan, Band.DARKENING))),
          new Rule(
              caution("above-target", UPPER_LIMIT, Source.COMMON_PRACTICE),
              plan -> wax(plan, Band.ABOVE_TARGET, Band.AT_CEILING)),
          new Rule(
              danger("hard-ceiling", UPPER_LIMIT, Sources.COUNTY_ENCAUSTIC).asBlocking().asFixed(),
              plan -> withAction(plan, wax(plan, Band.AT_CEILING))),
          new Rule(
              danger("fume", UPPER_LIMIT, Source.COMMON_PRACTICE).asBlocking().asFixed(),
              plan -> withAction(plan, wax(plan, Band.FUME))),
          new Rule(
              danger("flash-margin", UPPER_LIMIT, Sources.MATERIAL_FIGURES).asBlocking().asFixed(),
              FlashMargin::review),
          new Rule(
              caution("pot-floor", UPPER_LIMIT, Source.COMMON_PRACTICE),
              plan -> floor(plan, FloorBand.AT_CEILING)),
          new Rule(
              danger("pot-floor-hot", UPPER_LIMIT, Source.COMMON_PRACTICE).asBlocking(),
              plan -> floor(plan, FloorBand.TOO_HOT)),
          new Rule(
              caution("estimated-temperature", UPPER_LIMIT, Source.COMMON_PRACTICE),
              TemperatureRules::estimated),
          new Rule(
              warning("missing-temperature", UPPER_LIMIT, Source.COMMON_PRACTICE).asFixed(),
              whether(TemperatureRules::isMissing)),
          new Rule(
              caution("water-bath", UPPER_LIMIT, Source.COMMON_PRACTICE),
              whether(TemperatureRules::isBathWithoutProbe)),
          new Rule(
              caution("reading-not-molten", WORKING, Source.COMMON_PRACTICE),
              TemperatureRules::notMolten),
          new Rule(
              notice("reading-other-scale", WORKING, Source.COMMON_PRACTICE),
              TemperatureRules::otherScale),
          new Rule(
              notice("thermometer-tolerance", UPPER_LIMIT, Source.COMMON_PRACTICE),
              ThermometerTolerance::review),
          new Rule(
              warning("ceiling-within-tolerance", UPPER_LIMIT, Source.COMMON_PRACTICE),
              ThermometerTolerance::reviewCeiling),
          new Rule(
              caution("long-heat", WORKING, Source.COMMON_PRACTICE), TemperatureRules::longHeat));

  /** A palette is its own floor; a bath is told by what is measured in the wax. */
  private static final Set<Kind> WITHOUT_FLOOR = EnumSet.of(Kind.HEATED_PALETTE, Kind.WATER_BATH);

  /** What is switched high and low, or on and off, and asked for degrees only if somebody has. */
  private static final Set<Kind> WITHOUT_DIAL =
      EnumSet.of(Kind.SLOW_COOKER, Kind.TORCH, Kind.OPEN_COIL_OR_GAS, Kind.LAMP, Kind.MICROWAVE);

  private TemperatureRules() {}

  /** Finds wax in a band or beyond it. */
  private static RuleOutcome wax(HeatingPlan plan, Band band) {
    return WaxTemperature.review(
        plan,
        wax ->
            plan.table().hasBegun(band, wax.value())
                ? RuleOutcome.found().with("wax", wax.value()).at(figures(band))
                : WaxTemperature.ruledOut(plan, RuleOutcome.NOTHING, wax));
  }

  private static Figure[] figures(Band band) {
    return switch (band) {
      case ABOVE_TARGET -> new Figure[] {Figure.TARGET};
      case AT_CEILING -> new Figure[] {Figure.HARD_CEILING};
      default -> new Figure[0];
    };
  }

  /** Finds wax in a band until a worse one takes over. */
  private static RuleOutcome wax(HeatingPlan plan, Band band, Band worse) {
    boolean overtaken =
        plan.bindingTemperature()
            .filter(wax -> plan.table().hasBegun(worse, wax.value()))
            .isPresent();
    return overtaken ? RuleOutcome.NOTHING : wax(plan, band);
  }

  private static RuleOutcome withAction(HeatingPlan plan, RuleOutcome outcome) {
    return outcome.isFound() ? outcome.with("action", plan.action()) : outcome;
  }

  /** Hours above 85 °C that are counted already darken nothing worth a word below this; policy. */
  private static final double COUNTED_HOURS = 8;

  private static RuleOutcome withHours(HeatingPlan plan, RuleOutcome outcome) {
    if (!outcome.isFound()) {
      return outcome;
    } else if (plan.hoursHeld().isEmpty()) {
      return outcome.andNotAsked("hours-held");
    }
    double hours = plan.hoursHeld().getAsDouble();
    return Limit.reaches(hours, COUNTED_HOURS) ? outcome.with("hours", hours) : RuleOutcome.NOTHING;
  }

  /** Finds the floor in a band; an overshoot that is not stated is never taken as zero. */
  private static RuleOutcome floor(HeatingPlan plan, FloorBand band) {
    if (plan.heat().map(HeatSource::kind).filter(WITHOUT_FLOOR::contains).isPresent()) {
      return RuleOutcome.NOTHING;
    }
    RuleOutcome outcome =
        plan.potFloor().map(floor -> floor(plan, band, floor)).orElseGet(() -> unknownFloor(plan));
    return outcome.isFound() || plan.heat().isPresent()
        ? outcome
        : outcome.andNotAsked("heat-source");
  }

  /** What has no dial is not told to state its set point. */
  private static RuleOutcome unknownFloor(HeatingPlan plan) {
    if (plan.heat().isEmpty()) {
      return RuleOutcome.NOTHING;
    } else if (plan.heat().map(HeatSource::kind).filter(WITHOUT_DIAL::contains).isPresent()) {
      return RuleOutcome.notAsked("pot-floor");
    }
    return RuleOutcome.notAssessed(isOfNumbers(plan) ? "degrees" : "set-point");
  }

  private static boolean isOn(Kind kind, HeatingPlan plan) {
    return plan.heat().filter(heat -> heat.kind() == kind).isPresent();
  }

  /** What may yet be hotter stays unassessed, unless a worse band has taken over. */
  private static RuleOutcome floor(HeatingPlan plan, FloorBand band, PotFloor floor) {
    FloorBand reached = plan.table().floorBand(floor.value());
    if (reached.compareTo(band) >= 0) {
      return RuleOutcome.foundIf(reached == band)
          .with("floor", floor)
          .at(band == FloorBand.TOO_HOT ? Figure.FLOOR_LIMIT : Figure.HARD_CEILING);
    }
    return floor.isKnown() ? RuleOutcome.NOTHING : RuleOutcome.notAssessed(missing(plan));
  }

  /** A plate of which only the set point is stated, or that was only read in a doubtful way. */
  private static String missing(HeatingPlan plan) {
    if (isOfNumbers(plan)) {
      return "degrees";
    }
    boolean isSet = plan.heat().flatMap(HeatSource::setPoint).isPresent();
    boolean rises = plan.heat().flatMap(HeatSource::overshoot).isPresent();
    return isSet && !rises ? "overshoot" : "surface-method";
  }

  private static boolean isOfNumbers(HeatingPlan plan) {
    return plan.heat().filter(heat -> !heat.kind().hasDegrees()).isPresent();
  }

  /** Finds a reading in the liquid that cannot be one of molten wax. */
  private static RuleOutcome notMolten(HeatingPlan plan) {
    boolean isFound = plan.liquidReading().isPresent() && plan.moltenReading().isEmpty();
    RuleOutcome outcome = RuleOutcome.foundIf(isFound).with("reading", plan.liquidReading());
    return isFound
        ? plan.otherScale().map(in -> outcome.with("other", in)).orElse(outcome)
        : outcome;
  }

  /** Finds a reading at the hard ceiling or above whose number would fit on the other scale. */
  private static RuleOutcome otherScale(HeatingPlan plan) {
    return plan.moltenReading()
        .filter(reading -> Limit.reaches(reading, plan.limits().hardCeiling()))
        .flatMap(reading -> plan.otherScale())
        .map(in -> RuleOutcome.found().with("reading", plan.liquidReading()).with("other", in))
        .orElse(RuleOutcome.NOTHING)
        .at(Figure.HARD_CEILING);
  }

  private static boolean isBathWithoutProbe(HeatingPlan plan) {
    return isOn(Kind.WATER_BATH, plan) && !WaxTemperature.isMeasured(plan);
  }

  /** Hours from which on a pot is kept too long, whatever it reads; policy. */
  private static final double LONG_HOURS = 24;

  private static RuleOutcome longHeat(HeatingPlan plan) {
    return plan.hoursHeld().isEmpty()
        ? RuleOutcome.notAsked("hours-held")
        : RuleOutcome.foundIf(Limit.reaches(plan.hoursHeld().getAsDouble(), LONG_HOURS))
            .with("hours", plan.hoursHeld().getAsDouble());
  }

  /** Where a bath, a ring or a cooker has a rule of its own, that one speaks. */
  private static boolean isMissing(HeatingPlan plan) {
    return plan.bindingTemperature().isEmpty()
        && !isBathWithoutProbe(plan)
        && !VesselRules.isRingWithoutProbe(plan)
        && !VesselRules.isCookerWithoutProbe(plan);
  }

  /** Finds an estimate, unless nothing that tells the temperature was stated: a graver rule. */
  private static RuleOutcome estimated(HeatingPlan plan) {
    if (plan.bindingTemperature().isEmpty()) {
      return isMissing(plan) ? RuleOutcome.NOTHING : RuleOutcome.notAssessed("liquid-reading");
    }
    BindingTemperature wax = plan.bindingTemperature().get();
    RuleOutcome outcome = RuleOutcome.foundIf(wax.isEstimated()).with("wax", wax.value());
    return WaxTemperature.ruledOut(plan, outcome, wax);
  }
}
