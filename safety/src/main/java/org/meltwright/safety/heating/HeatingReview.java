// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.explain.Explanation;
import org.meltwright.core.material.Material;
import org.meltwright.core.thermal.melting.WorkingWindow;
import org.meltwright.units.Bilingual;
import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.VolumeFraction;

/**
 * What is to be said about a heating plan: findings, what was not assessed, what nobody was asked,
 * and the cautions that always hold. It never gives an all-clear: an empty list of findings means
 * that the rules found nothing in what was stated.
 *
 * <p>A screening aid; local codes, data sheets and licensed practice come first.
 *
 * <p>For example, a pot that reads 97 °C, of which nothing else is stated:
 *
 * <pre>{@code
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * HeatingPlan plan =
 *     HeatingPlan.builder(Composition.of(wax)).liquidReading(ofCelsius(97)).build();
 * HeatingReview review = HeatingRules.standard().review(plan);
 * review.isBlocked(); // true
 * review.findings().get(0).ruleId(); // hard-ceiling
 * review.marginToHardCeiling().get(); // -3.7 K
 * review.isNotAsked("vessel-too-full"); // true
 * }</pre>
 *
 * <p>This class is immutable and thread-safe.
 */
public final class HeatingReview {

  /**
   * Two thirds: above this fill level, hot, a vessel counts as too full. Common practice; no
   * publication measures it.
   */
  public static final VolumeFraction WORKING_FILL = VolumeFraction.of(2.0 / 3.0);

  private final HeatingPlan plan;
  private final List<Finding> findings;
  private final List<NotAssessed> notAssessed;
  private final List<NotAsked> notAsked;
  private final Map<String, String> switchedOff;

  HeatingReview(
      HeatingPlan plan,
      List<Finding> findings,
      List<NotAssessed> notAssessed,
      List<NotAsked> notAsked,
      Map<String, String> switchedOff) {
    this.plan = plan;
    this.findings = findings;
    this.notAssessed = notAssessed;
    this.notAsked = notAsked;
    this.switchedOff = switchedOff;
  }

  /**
   * Returns the plan.
   *
   * @return what was reviewed, with the limits it was held against
   */
  public HeatingPlan plan() {
    return plan;
  }

  /**
   * Returns the limits that the plan was held against.
   *
   * @return those of the rule set, tightened by the age of the youngest
   */
  public HeatingLimits limits() {
    return plan.limits();
  }

  /**
   * Returns the target ceiling.
   *
   * @return 90.0 °C, or less where it is tightened
   */
  public TemperaturePoint target() {
    return limits().target();
  }

  /**
   * Returns the hard ceiling.
   *
   * @return 93.3 °C, or less where it is tightened
   */
  public TemperaturePoint hardCeiling() {
    return limits().hardCeiling();
  }

  /**
   * Returns the temperature that the table was held against.
   *
   * @return the temperature and how it was got; empty if nothing tells it
   */
  public Optional<BindingTemperature> bindingTemperature() {
    return plan.bindingTemperature();
  }

  /**
   * Returns the floor of the pot at its hottest.
   *
   * @return the floor; empty if there is none or nothing tells it
   */
  public Optional<PotFloor> potFloor() {
    return plan.potFloor();
  }

  /**
   * Returns how far the wax lies below the target.
   *
   * @return the margin, negative above the target; empty if the temperature is unknown
   */
  public Optional<TemperatureDifference> marginToTarget() {
    return bindingTemperature().map(t -> target().minus(t.value()));
  }

  /**
   * Returns how far the wax lies below the hard ceiling.
   *
   * @return the margin, negative above the ceiling; empty if the temperature is unknown
   */
  public Optional<TemperatureDifference> marginToHardCeiling() {
    return bindingTemperature().map(t -> hardCeiling().minus(t.value()));
  }

  /**
   * Returns the lowest flash point that a rule may use, of what burns in the mix; the wax stays the
   * margin of the limits below it.
   *
   * @return the low end of its range; empty if none is known
   */
  public Optional<TemperaturePoint> lowestFlashPoint() {
    return plan.contents().lowestFlashPoint();
  }

  /**
   * Returns the temperature that the mix may be worked up to: the target, or less if something in
   * the mix has a flash point so low that the wax must stay below it.
   *
   * @return the target, or the lowest usable flash point less the margin of the limits, whichever
   *     is lower; what has no usable flash point does not lower it and stands in {@link
   *     #withoutFlashPoint}
   */
  public TemperaturePoint workingCeiling() {
    return lowestFlashPoint()
        .map(plan.table()::flashLimit)
        .filter(limit -> limit.isBelow(target()))
        .orElse(target());
  }

  /**
   * Returns where the mix can be worked, up to the {@link #workingCeiling}.
   *
   * @return the working window; empty if nothing melts, or what melts has no melting range
   */
  public Optional<WorkingWindow> workingWindow() {
    return plan.table().window(plan.mix(), workingCeiling());
  }

  /**
   * Returns what burns, or may burn, in the mix and has no usable flash point.
   *
   * @return the materials, by id; what is listed here is unknown, not safe
   */
  public List<Material> withoutFlashPoint() {
    return plan.contents().withoutFlashPoint();
  }

  /**
   * Returns the findings: blocking ones first, then by severity, then by id.
   *
   * @return the findings; may be empty, which is no all-clear
   */
  public List<Finding> findings() {
    return findings;
  }

  /**
   * Returns the findings of one rule.
   *
   * @param ruleId the id of the rule
   * @return the finding; empty if the rule found nothing
   */
  public Optional<Finding> finding(String ruleId) {
    return findings.stream().filter(f -> f.ruleId().equals(ruleId)).findFirst();
  }

  /**
   * Returns what was not assessed for want of a datum.
   *
   * @return one entry for each missing datum; may be empty
   */
  public List<NotAssessed> notAssessed() {
    return notAssessed;
  }

  /**
   * Tells whether a rule could not be assessed in full.
   *
   * @param ruleId the id of the rule
   * @return whether a datum that it wanted is missing
   */
  public boolean isNotAssessed(String ruleId) {
    return notAssessed.stream().anyMatch(n -> n.ruleIds().contains(ruleId));
  }

  /**
   * Returns what nobody mentioned, though a rule would look at it.
   *
   * @return the entries, by id; to be said in one line, once for all pots: {@link NotAsked#line}
   */
  public List<NotAsked> notAsked() {
    return notAsked;
  }

  /**
   * Tells whether a rule would look at something that nobody mentioned.
   *
   * @param ruleId the id of the rule
   * @return whether it would
   */
  public boolean isNotAsked(String ruleId) {
    return notAsked.stream().anyMatch(n -> n.ruleIds().contains(ruleId));
  }

  /**
   * Returns the rules that were switched off, and why.
   *
   * @return the reasons by rule id; to be shown with the review
   */
  public Map<String, String> switchedOff() {
    return switchedOff;
  }

  /**
   * Returns the cautions that always hold.
   *
   * @return those that hold for the plan, in the order to show them in
   */
  public List<StandingAdvice> standingAdvice() {
    return Stream.of(StandingAdvice.values()).filter(a -> a.holdsFor(plan)).toList();
  }

  /**
   * Tells whether the work must not go on, and the tables of the recipe are to be withheld.
   *
   * @return whether a finding blocks, or a rule failed that may block
   */
  public boolean isBlocked() {
    return findings.stream().anyMatch(Finding::isBlocking)
        || notAssessed.stream().anyMatch(NotAssessed::isBlocking);
  }

  /**
   * Returns the worst severity of findings and of what was not assessed.
   *
   * @return the severity; empty if there are neither, which is no all-clear
   */
  public Optional<Severity> worstSeverity() {
    return Stream.concat(
            findings.stream().map(Finding::severity),
            notAssessed.stream().map(NotAssessed::severity))
        .min(Comparator.naturalOrder());
  }

  /**
   * Returns how the review came about.
   *
   * @return temperature, margins, findings and sources
   */
  public Explanation explanation() {
    Explanation.Builder text = Explanation.builder(HeatingReview.class, "working.review", Map.of());
    temperatures(text);
    switchedOff.forEach(
        (rule, why) ->
            text.caution(
                "working.review.switched-off",
                Map.of("rule", Bilingual.of(rule), "why", Bilingual.of(why))));
    for (Finding finding : findings) {
      text.caution(Bilingual.of(r -> finding.severity().word(r) + ": " + finding.summary(r)))
          .source(finding.source());
    }
    notAssessed.forEach(
        n -> text.caution("working.review.not-assessed", Map.of("what", Bilingual.of(n::what))));
    if (!notAsked.isEmpty()) {
      text.caution(Bilingual.of(reader -> NotAsked.line(notAsked, reader)));
    }
    return text.build();
  }

  private void temperatures(Explanation.Builder text) {
    plan.liquidReading().ifPresent(t -> text.stated(ReviewWorking.IN_LIQUID, t.celsius()));
    plan.surfaceReading().ifPresent(t -> text.stated(ReviewWorking.ON_SURFACE, t.celsius()));
    bindingTemperature().ifPresent(wax -> ReviewWorking.binding(plan, wax, text));
    potFloor()
        .ifPresent(
            floor ->
                text.conclusion(
                    "working.review.floor",
                    Map.of("floor", Bilingual.of(reader -> Texts.write(floor, reader)))));
    marginToTarget()
        .ifPresent(
            margin ->
                text.given(ReviewWorking.TARGET, target().celsius())
                    .step(ReviewWorking.TO_TARGET, margin.kelvin()));
    marginToHardCeiling()
        .ifPresent(
            margin ->
                text.given(ReviewWorking.CEILING, hardCeiling().celsius())
                    .step(ReviewWorking.TO_CEILING, margin.kelvin()));
  }

  /**
   * Compares plan, findings, what was not assessed or not asked, and what was switched off.
   *
   * @param other the other object
   * @return whether both reviews say the same
   */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof HeatingReview that
        && plan.equals(that.plan)
        && findings.equals(that.findings)
        && notAssessed.equals(that.notAssessed)
        && notAsked.equals(that.notAsked)
        && switchedOff.equals(that.switchedOff);
  }

  @Override
  public int hashCode() {
    return Objects.hash(plan, findings, notAssessed, notAsked, switchedOff);
  }

  /**
   * Returns what was found and what was not assessed, by the ids of the rules.
   *
   * @return for example "blocks: [hard-ceiling]; not assessed: [overshoot]"
   */
  @Override
  public String toString() {
    return (isBlocked() ? "blocks: " : "found: ")
        + findings.stream().map(Finding::ruleId).toList()
        + "; not assessed: "
        + notAssessed.stream().map(NotAssessed::property).toList();
  }
}
