// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.meltwright.units.Limit;

/** Holds a data sheet against the entry of the law, which binds for what it names. */
final class SheetAgainstEntry {

  private final SubstanceHazards sheet;
  private final SubstanceHazards entry;
  private final RuleSet rules;

  private SheetAgainstEntry(SubstanceHazards sheet, SubstanceHazards entry, RuleSet rules) {
    this.sheet = sheet;
    this.entry = entry;
    this.rules = rules;
  }

  /** Whether the entry, by number or name, names something that the sheet says milder or not. */
  static boolean isMilder(HazardIngredient i, RuleSet rules) {
    return entries(i, rules)
        .map(entry -> new SheetAgainstEntry(i.hazards(), entry, rules))
        .anyMatch(SheetAgainstEntry::isMilder);
  }

  private static Stream<SubstanceHazards> entries(HazardIngredient i, RuleSet rules) {
    boolean ownSheet = i.hazards().evidence() == HazardEvidence.DATA_SHEET;
    return Stream.concat(
        i.overridden().stream(),
        ownSheet ? rules.entriesFor(i.hazards()).stream() : Stream.empty());
  }

  /** A note whose condition is stated to be met has lifted what it lifts. */
  private boolean isMilder() {
    boolean lifted = !ConditionNote.met(sheet).isEmpty();
    return !lifted
        && (entry.categories().stream().anyMatch(this::isMilder)
            || entry.specificLimits().stream().anyMatch(this::isMilder)
            || isLower(sheet.acuteFactor(), entry.acuteFactor())
            || isLower(sheet.chronicFactor(), entry.chronicFactor())
            || Stream.of(UptakeForm.values()).anyMatch(this::isMilder)
            || !sheet.supplements().containsAll(entry.supplements()));
  }

  private boolean isMilder(HazardCategory c) {
    return Claim.of(c).stream().anyMatch(e -> !covers(c.hazardClass(), e));
  }

  private boolean covers(HazardClass c, Claim e) {
    return sheet.claims(c, Effect.WHOLE).stream()
        .filter(s -> s.effect() == e.effect() || s.effect() == Effect.NOT_SAID)
        .anyMatch(s -> s.category().compareTo(e.category()) <= 0);
  }

  private boolean isMilder(SpecificLimit limit) {
    return rules
        .rule(limit.hazardClass())
        .filter(rule -> !rule.needsTest())
        .map(rule -> lowest(rule, limit.category()))
        .filter(own -> own.isEmpty() || Limit.exceeds(own.getAsDouble(), limit.fromPercent()))
        .isPresent();
  }

  /** From which share the sheet alone takes a mixture to a category, or to a graver one. */
  private OptionalDouble lowest(ClassRule rule, Category category) {
    boolean byEffect = rule.hazardClass() == HazardClass.REPRODUCTION;
    LimitLadder ladder = new LimitLadder(rule, Effect.WHOLE, null);
    return rule.levels().stream()
        .filter(level -> rule.rank(level) <= rule.rank(category))
        .flatMapToDouble(
            level ->
                (byEffect ? ladder.limitOfAnyEffect(sheet, level) : ladder.limit(sheet, level))
                    .stream())
        .min();
  }

  private static boolean isLower(OptionalDouble own, OptionalDouble binding) {
    return Limit.exceeds(binding.orElse(1), own.orElse(1));
  }

  /** An estimate above that of the entry, stated or by the category of the sheet. */
  private boolean isMilder(UptakeForm form) {
    OptionalDouble binding = entry.estimate(form);
    OptionalDouble own = sheet.estimate(form);
    double taken = own.orElseGet(() -> byCategory(form));
    return binding.isPresent() && Limit.exceeds(taken, binding.getAsDouble());
  }

  private double byCategory(UptakeForm form) {
    return rules.acuteLimits(form).stream()
        .filter(
            l ->
                sheet.claims(form.hazardClass(), Effect.WHOLE).stream()
                    .anyMatch(c -> c.category() == l.category()))
        .mapToDouble(AcuteLimit::pointEstimate)
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }
}
