// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.meltwright.units.Limit;
import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.TemperaturePoint;

/**
 * Whether a label may say to heat: never without the margin below the flash point, never where what
 * may burn has no known one, never what bursts, explodes or feeds a fire.
 */
final class HeatingAdvice {

  /** What is not heated, whatever its flash point. */
  private static final Set<HazardClass> NEVER_HEATED =
      EnumSet.of(
          HazardClass.AEROSOL,
          HazardClass.EXPLOSIVE,
          HazardClass.DESENSITISED_EXPLOSIVE,
          HazardClass.FLAMMABLE_GAS,
          HazardClass.OXIDISING_GAS,
          HazardClass.GAS_UNDER_PRESSURE,
          HazardClass.CHEMICAL_UNDER_PRESSURE,
          HazardClass.SELF_REACTIVE,
          HazardClass.ORGANIC_PEROXIDE,
          HazardClass.PYROPHORIC,
          HazardClass.SELF_HEATING,
          HazardClass.OXIDISING);

  /** What stands in the way of heating. */
  enum Verdict {
    NONE,
    NEVER,
    FLASH_UNKNOWN,
    FLASH_NEAR,
    CEILING
  }

  private final HazardLabel label;
  private final HazardMixture mixture;
  private final RuleSet rules;

  HeatingAdvice(HazardLabel label) {
    this.label = label;
    this.mixture = label.review().mixture();
    this.rules = label.review().rules();
  }

  /** Whether heating is spoken of at all: a highest temperature is stated, or it may be melted. */
  boolean isAsked() {
    return label.mayBeMelted() || stated().isPresent();
  }

  private Optional<TemperaturePoint> stated() {
    return label.details().maximumTemperature();
  }

  Verdict verdict() {
    if (!neverHeated().isEmpty() || isTestedToBurn()) {
      return Verdict.NEVER;
    }
    Optional<TemperaturePoint> flash = flashPoint();
    if (flash.isEmpty()) {
      return needsFlashPoint() ? Verdict.FLASH_UNKNOWN : byCeiling();
    }
    boolean near = Limit.reaches(stated().orElse(ceiling()), highest(flash.get()));
    return near ? Verdict.FLASH_NEAR : byCeiling();
  }

  private Verdict byCeiling() {
    return stated().filter(t -> Limit.reaches(t, ceiling())).isPresent()
        ? Verdict.CEILING
        : Verdict.NONE;
  }

  private TemperaturePoint ceiling() {
    return TemperaturePoint.ofCelsius(rules.bound(Bound.HEATING_CEILING_CELSIUS));
  }

  private TemperaturePoint highest(TemperaturePoint flash) {
    return flash.minus(
        TemperatureDifference.ofKelvin(rules.bound(Bound.HEATING_FLASH_MARGIN_KELVIN)));
  }

  private List<HazardIngredient> neverHeated() {
    return mixture.ingredients().stream()
        .filter(i -> i.percent() > 0)
        .filter(
            i ->
                NEVER_HEATED.stream()
                    .anyMatch(
                        c ->
                            i.hazards().isClassifiedFor(c) && !mixture.testedWithout().contains(c)))
        .toList();
  }

  private boolean isTestedToBurn() {
    return mixture.tested().stream().anyMatch(c -> c.hazardClass() != HazardClass.METAL_CORROSION);
  }

  /** As measured; else the lowest of the catalogue, if each that may burn has one. */
  private Optional<TemperaturePoint> flashPoint() {
    Optional<TemperaturePoint> measured = mixture.flashPoint();
    return measured.isPresent() || needsFlashPoint()
        ? measured
        : relevant().stream()
            .flatMap(i -> Catalogued.flashPoint(i).stream())
            .min(TemperaturePoint::compareTo);
  }

  private boolean needsFlashPoint() {
    return Limit.reaches(flammablePercent(), mayBurnFrom())
        || relevant().stream().anyMatch(this::mayBurnUnknown);
  }

  private double flammablePercent() {
    return mixture.ingredients().stream()
        .filter(i -> i.hazards().isClassifiedFor(HazardClass.FLAMMABLE_LIQUID))
        .filter(i -> Catalogued.flashPoint(i).isEmpty())
        .mapToDouble(HazardIngredient::percent)
        .sum();
  }

  private double mayBurnFrom() {
    return rules.bound(Bound.MAY_BURN_FROM_PER_CENT);
  }

  private List<HazardIngredient> relevant() {
    return mixture.ingredients().stream()
        .filter(i -> Limit.reaches(i.percent(), mayBurnFrom()))
        .toList();
  }

  /** Nothing is known of it, no pigment, and the catalogue has no flash point of it. */
  private boolean mayBurnUnknown(HazardIngredient i) {
    boolean liquid = mixture.state().filter(s -> s == PhysicalState.LIQUID).isPresent();
    boolean open =
        i.hazards().isOpenFor(HazardClass.FLAMMABLE_LIQUID) && Catalogued.of(i).isEmpty();
    return (open || liquid)
        && i.hazards().evidence() != HazardEvidence.REST_PRESUMED_NONE
        && i.pigment().isEmpty()
        && Catalogued.flashPoint(i).isEmpty();
  }

  /** The lines of the label; what to do instead where heating is not advised. */
  List<String> lines(Locale locale) {
    List<String> lines = new ArrayList<>();
    if (!isAsked()) {
      return lines;
    }
    Verdict verdict = verdict();
    if (verdict != Verdict.NONE) {
      lines.add(HazardTexts.label("heat." + key(verdict), locale, values(locale)));
      return lines;
    }
    stated().ifPresent(t -> lines.add(HazardTexts.label("temperature", locale, values(locale))));
    if (label.mayBeMelted()) {
      lines.add(HazardTexts.label("use", locale));
    }
    return lines;
  }

  /** Below room temperature there is no margin left to heat in. */
  private String key(Verdict verdict) {
    boolean cold =
        verdict == Verdict.FLASH_NEAR
            && highest(flashPoint().orElseThrow()).isBelow(TemperaturePoint.ofCelsius(40));
    return cold ? "flash-low" : verdict.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private Map<String, String> values(Locale locale) {
    Optional<TemperaturePoint> flash = flashPoint();
    return Map.of(
        "limit", number(stated(), locale),
        "flash", number(flash, locale),
        "safe", number(flash.map(this::highest), locale),
        "ceiling", number(Optional.of(ceiling()), locale),
        "names", neverHeated().stream().map(i -> i.name(locale)).distinct().collect(joining(", ")));
  }

  private static String number(Optional<TemperaturePoint> t, Locale locale) {
    return t.map(point -> HazardTexts.shown(point.celsius(), locale)).orElse("");
  }
}
