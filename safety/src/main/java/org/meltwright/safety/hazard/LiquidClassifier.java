// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.meltwright.core.source.Source;
import org.meltwright.units.Limit;
import org.meltwright.units.TemperaturePoint;

/**
 * The two classes that ask for the liquid itself: aspiration by viscosity, flame by flash point.
 */
final class LiquidClassifier {

  private LiquidClassifier() {}

  /** Takes the answer by shares back where the mixture is solid or thick, or cannot be decided. */
  static HazardFinding aspiration(HazardFinding byShares, HazardMixture mixture, RuleSet rules) {
    OptionalDouble viscosity = mixture.viscosityAt40SquareMillimetresPerSecond();
    if (viscosity.isPresent()
        && Limit.exceeds(
            viscosity.getAsDouble(), rules.bound(Bound.ASPIRATION_VISCOSITY_UP_TO_MM2_PER_S))) {
      return answer(byShares, HazardStatus.NOT_CLASSIFIED, HazardRemark.VISCOUS);
    }
    if (isTooThickForCategory2(byShares, viscosity, rules)) {
      return answer(byShares, HazardStatus.NOT_CLASSIFIED, HazardRemark.VISCOUS);
    }
    if (mixture.state().filter(state -> state == PhysicalState.SOLID_AT_40).isPresent()) {
      return answer(byShares, HazardStatus.NOT_CLASSIFIED, HazardRemark.SOLID_AT_40);
    }
    if (!byShares.isClassified() || viscosity.isPresent()) {
      return byShares;
    }
    return answer(byShares, HazardStatus.INSUFFICIENT_DATA, HazardRemark.VISCOSITY_MISSING);
  }

  /** The UN system has a category 2 with a lower limit of viscosity. */
  private static boolean isTooThickForCategory2(
      HazardFinding byShares, OptionalDouble viscosity, RuleSet rules) {
    Bound bound = Bound.ASPIRATION_CATEGORY_2_VISCOSITY_UP_TO_MM2_PER_S;
    return byShares.category().equals(Optional.of(Category.TWO))
        && rules.has(bound)
        && viscosity.isPresent()
        && Limit.exceeds(viscosity.getAsDouble(), rules.bound(bound));
  }

  private static HazardFinding answer(
      HazardFinding found, HazardStatus status, HazardRemark remark) {
    boolean settled = status == HazardStatus.NOT_CLASSIFIED;
    return new HazardFinding(
        found.hazardClass(),
        status,
        List.of(),
        found.rule(),
        found.workings(),
        settled ? List.of() : found.open(),
        List.of(remark));
  }

  static HazardFinding flammable(Source rule, HazardMixture mixture, RuleSet rules) {
    Optional<PhysicalState> state = mixture.state();
    if (state.isEmpty()) {
      return open(rule, HazardRemark.STATE_MISSING);
    }
    return switch (state.orElseThrow()) {
      case SOLID, SOLID_AT_40 ->
          mayBurn(mixture, rules)
              ? open(rule, HazardRemark.MAY_BURN_AS_A_SOLID)
              : flammable(rule, HazardStatus.NOT_CLASSIFIED, List.of(), HazardRemark.NOT_A_LIQUID);
      case GAS -> open(rule, HazardRemark.GAS_NOT_ASSESSED);
      case LIQUID ->
          mixture
              .flashPoint()
              .map(flash -> flammable(rule, flash, mixture, rules))
              .orElseGet(() -> open(rule, HazardRemark.FLASH_POINT_MISSING));
    };
  }

  /** A paste of solvent is no liquid, and no harmless solid either until it was tested. */
  private static boolean mayBurn(HazardMixture mixture, RuleSet rules) {
    TemperaturePoint limit = bound(rules, Bound.FLASH_FLAMMABLE_UP_TO_CELSIUS);
    double flammablePercent =
        mixture.ingredients().stream()
            .filter(i -> i.hazards().isClassifiedFor(HazardClass.FLAMMABLE_LIQUID))
            .mapToDouble(HazardIngredient::percent)
            .sum();
    return mixture.flashPoint().filter(t -> !Limit.exceeds(t, limit)).isPresent()
        || Limit.reaches(flammablePercent, rules.bound(Bound.MAY_BURN_FROM_PER_CENT));
  }

  private static HazardFinding flammable(
      Source rule, TemperaturePoint flash, HazardMixture mixture, RuleSet rules) {
    if (Limit.exceeds(flash, bound(rules, Bound.FLASH_FLAMMABLE_UP_TO_CELSIUS))) {
      return isCombustible(flash, rules)
          ? classified(rule, Category.FOUR, HazardRemark.FLASH_POINT)
          : flammable(rule, HazardStatus.NOT_CLASSIFIED, List.of(), HazardRemark.FLASH_POINT_HIGH);
    }
    return Limit.reaches(flash, bound(rules, Bound.FLASH_HIGHLY_FLAMMABLE_BELOW_CELSIUS))
        ? classified(rule, Category.THREE, HazardRemark.FLASH_POINT)
        : highlyFlammable(rule, mixture.initialBoilingPoint(), rules);
  }

  /** Category 4, which the European rules do not have. */
  private static boolean isCombustible(TemperaturePoint flash, RuleSet rules) {
    return rules.has(Bound.FLASH_COMBUSTIBLE_UP_TO_CELSIUS)
        && !Limit.exceeds(flash, bound(rules, Bound.FLASH_COMBUSTIBLE_UP_TO_CELSIUS));
  }

  /** Below the flash point of category 3 the boiling point decides; without one, the graver. */
  private static HazardFinding highlyFlammable(
      Source rule, Optional<TemperaturePoint> boiling, RuleSet rules) {
    if (boiling.isEmpty()) {
      return classified(rule, Category.ONE, HazardRemark.BOILING_POINT_MISSING);
    }
    TemperaturePoint limit = bound(rules, Bound.BOILING_EXTREMELY_FLAMMABLE_UP_TO_CELSIUS);
    boolean high = Limit.exceeds(boiling.get(), limit);
    return classified(rule, high ? Category.TWO : Category.ONE, HazardRemark.FLASH_POINT);
  }

  private static TemperaturePoint bound(RuleSet rules, Bound name) {
    return TemperaturePoint.ofCelsius(rules.bound(name));
  }

  private static HazardFinding classified(Source rule, Category category, HazardRemark remark) {
    HazardClass c = HazardClass.FLAMMABLE_LIQUID;
    HazardCategory reached = HazardCategory.of(c, category, LabelElements.statement(c, category));
    return flammable(rule, HazardStatus.CLASSIFIED, List.of(reached), remark);
  }

  private static HazardFinding open(Source rule, HazardRemark remark) {
    return flammable(rule, HazardStatus.INSUFFICIENT_DATA, List.of(), remark);
  }

  private static HazardFinding flammable(
      Source rule, HazardStatus status, List<HazardCategory> categories, HazardRemark remark) {
    return new HazardFinding(
        HazardClass.FLAMMABLE_LIQUID,
        status,
        categories,
        rule,
        List.of(),
        List.of(),
        List.of(remark));
  }
}
