// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.material.Material;
import org.meltwright.units.TemperatureDifference;

/**
 * A heating review as plain data, in the reader's language: any JSON library writes it.
 *
 * <p>Like the review it gives no all-clear: show what was not assessed and the standing advice
 * whether there are findings or not.
 *
 * <pre>{@code
 * Composition wax = Composition.of(MaterialCatalogue.standard().require("beeswax-yellow"));
 * HeatingPlan plan = HeatingPlan.builder(wax).liquidReading(ofCelsius(95)).build();
 * HeatingReview review = HeatingRules.standard().review(plan);
 *
 * HeatingReviewData data = HeatingReviewData.of(review, Locale.GERMAN);
 * data.blocking(); // true
 * data.findings().get(0).ruleId(); // hard-ceiling
 * data.findings().get(0).severityWord(); // GEFAHR
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param blocking whether the work must not go on: a finding blocks
 * @param worstSeverity the id of the worst severity of findings and of what was not assessed:
 *     {@code danger}, {@code warning}, {@code caution} or {@code notice}; absent if there are
 *     neither, which is no all-clear
 * @param limits the limits that the plan was held against, with the reasons of those tightened
 * @param readings all readings that were given, whether they count or not
 * @param wax the temperature that was held against them; absent if nothing tells it
 * @param potFloor the floor of the pot at its hottest; absent if there is none or nothing tells it
 * @param findings what the rules found: blocking first, then by severity, then by id
 * @param notAssessed what was not assessed for want of a datum
 * @param notAsked what nobody mentioned, in one line; absent if there is nothing
 * @param switchedOff the rules that were switched off
 * @param standingAdvice the cautions that always hold, in the order to show them in
 */
public record HeatingReviewData(
    boolean blocking,
    @Nullable String worstSeverity,
    LimitsData limits,
    List<ReadingData> readings,
    @Nullable Wax wax,
    @Nullable Floor potFloor,
    List<FindingData> findings,
    List<NotAssessedData> notAssessed,
    @Nullable String notAsked,
    List<SwitchedOff> switchedOff,
    List<AdviceData> standingAdvice) {

  /**
   * The limits that the plan was held against.
   *
   * @param targetCelsius the target ceiling, in °C
   * @param hardCeilingCelsius the hard ceiling, in °C
   * @param floorLimitCelsius the limit of a pot's floor, in °C
   * @param flashMarginKelvin the margin below the lowest flash point, in K
   * @param leastWidthKelvin the least width of the working window, in K
   * @param tightened each figure that is tightened, and why
   */
  public record LimitsData(
      double targetCelsius,
      double hardCeilingCelsius,
      double floorLimitCelsius,
      double flashMarginKelvin,
      double leastWidthKelvin,
      List<TightenedData> tightened) {

    public LimitsData {
      tightened = List.copyOf(tightened);
    }

    private static LimitsData of(HeatingLimits limits, Locale locale) {
      return new LimitsData(
          limits.target().celsius(),
          limits.hardCeiling().celsius(),
          limits.floorLimit().celsius(),
          limits.flashMargin().kelvin(),
          limits.leastWidth().kelvin(),
          Stream.of(HeatingLimits.Figure.values())
              .filter(limits::isTightened)
              .map(f -> TightenedData.of(limits, f, locale))
              .toList());
    }
  }

  /**
   * A figure of the limits that is tightened.
   *
   * @param figure its id, for example {@code hard-ceiling}
   * @param reasons why, in the user's words or the reader's language; may be empty
   */
  public record TightenedData(String figure, List<String> reasons) {

    public TightenedData {
      reasons = List.copyOf(reasons);
    }

    private static TightenedData of(
        HeatingLimits limits, HeatingLimits.Figure figure, Locale locale) {
      return new TightenedData(
          figure.id(), limits.reasons(figure).stream().map(r -> r.in(locale)).toList());
    }
  }

  /**
   * A reading that was given.
   *
   * @param place where it was taken: {@code liquid} or {@code surface}
   * @param celsius what was read, in °C
   * @param method how a surface was read, for example {@code probe}; absent if it is not stated or
   *     the liquid was read
   * @param counts whether it can be held against a limit in both directions; a reading in the
   *     liquid that cannot be molten wax counts as not taken, a surface reading that is not
   *     reliable counts upwards only
   */
  public record ReadingData(String place, double celsius, @Nullable String method, boolean counts) {

    private static List<ReadingData> of(HeatingPlan plan) {
      Stream<ReadingData> liquid =
          plan.liquidReading().stream()
              .map(
                  t ->
                      new ReadingData(
                          "liquid", t.celsius(), null, plan.moltenReading().isPresent()));
      Stream<ReadingData> surface =
          plan.surfaceReading().stream()
              .map(
                  t ->
                      new ReadingData(
                          "surface",
                          t.celsius(),
                          plan.surfaceMethod().map(SurfaceMethod::id).orElse(null),
                          plan.isSurfaceReadingReliable()));
      return Stream.concat(liquid, surface).toList();
    }
  }

  /**
   * The temperature of the wax.
   *
   * @param celsius the temperature, in °C
   * @param measured whether a thermometer read it; else it is an estimate
   * @param basis the id of how it was got, for example {@code liquid-measured}
   * @param basisText how it was got, one phrase
   * @param marginToTargetKelvin how far it lies below the target, in K; negative above it
   * @param marginToHardCeilingKelvin how far it lies below the hard ceiling, in K; negative above
   */
  public record Wax(
      double celsius,
      boolean measured,
      String basis,
      String basisText,
      double marginToTargetKelvin,
      double marginToHardCeilingKelvin) {

    private static Wax of(HeatingReview review, BindingTemperature wax, Locale locale) {
      TemperatureDifference toTarget = review.target().minus(wax.value());
      TemperatureDifference toHardCeiling = review.hardCeiling().minus(wax.value());
      return new Wax(
          wax.value().celsius(),
          wax.isMeasured(),
          wax.basis().id(),
          wax.basis().text(locale),
          toTarget.kelvin(),
          toHardCeiling.kelvin());
    }
  }

  /**
   * The wetted floor of the pot at its hottest.
   *
   * @param celsius the temperature, in °C
   * @param known whether overshoot or a reading is stated; else the temperature is a lower bound
   */
  public record Floor(double celsius, boolean known) {

    private static Floor of(PotFloor floor) {
      return new Floor(floor.value().celsius(), floor.isKnown());
    }
  }

  /**
   * What one rule found.
   *
   * @param ruleId the id of the rule, for example {@code hard-ceiling}
   * @param severity the id of its severity, for example {@code danger}
   * @param severityWord the word as a sign prints it, for example "DANGER"
   * @param blocking whether the work must not go on until this is put right
   * @param summary what was found, one sentence
   * @param reason why it matters, one or two sentences
   * @param remedy what to do, one or two sentences
   * @param source what the rule rests on, one line
   */
  public record FindingData(
      String ruleId,
      String severity,
      String severityWord,
      boolean blocking,
      String summary,
      String reason,
      String remedy,
      String source) {

    private static FindingData of(Finding finding, Locale locale) {
      return new FindingData(
          finding.ruleId(),
          finding.severity().id(),
          finding.severity().word(locale),
          finding.isBlocking(),
          finding.summary(locale),
          finding.reason(locale),
          finding.remedy(locale),
          finding.source().citation());
    }
  }

  /**
   * What was not assessed; it ranks as a caution at least.
   *
   * @param property the id of what is missing, for example {@code flash-point}; {@code rule} for a
   *     rule that failed
   * @param material the id of the material that it is missing of; absent if it belongs to the plan
   * @param severity the id of its severity, for example {@code caution}
   * @param blocking whether the work must not go on until it is known
   * @param ruleIds the rules that wanted it
   * @param what what is missing, and of what, one sentence
   * @param remedy how to come by it, one sentence
   */
  public record NotAssessedData(
      String property,
      @Nullable String material,
      String severity,
      boolean blocking,
      List<String> ruleIds,
      String what,
      String remedy) {

    public NotAssessedData {
      ruleIds = List.copyOf(ruleIds);
    }

    private static NotAssessedData of(NotAssessed missing, Locale locale) {
      return new NotAssessedData(
          missing.property(),
          missing.material().map(Material::id).orElse(null),
          missing.severity().id(),
          missing.isBlocking(),
          missing.ruleIds(),
          missing.what(locale),
          missing.remedy(locale));
    }
  }

  /**
   * A rule that was switched off.
   *
   * @param ruleId the id of the rule
   * @param reason why, as it was stated
   */
  public record SwitchedOff(String ruleId, String reason) {}

  /**
   * A caution that always holds.
   *
   * @param id its id, for example {@code wax-fire}
   * @param text one or several sentences
   * @param source what it rests on, one line
   */
  public record AdviceData(String id, String text, String source) {

    private static AdviceData of(StandingAdvice advice, Locale locale) {
      return new AdviceData(advice.id(), advice.text(locale), advice.source().citation());
    }
  }

  public HeatingReviewData {
    readings = List.copyOf(readings);
    findings = List.copyOf(findings);
    notAssessed = List.copyOf(notAssessed);
    switchedOff = List.copyOf(switchedOff);
    standingAdvice = List.copyOf(standingAdvice);
  }

  /**
   * Returns a review as data.
   *
   * @param review the review
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return its temperatures, findings, what was not assessed, and the standing advice
   */
  public static HeatingReviewData of(HeatingReview review, Locale locale) {
    return new HeatingReviewData(
        review.isBlocked(),
        review.worstSeverity().map(Severity::id).orElse(null),
        LimitsData.of(review.limits(), locale),
        ReadingData.of(review.plan()),
        review.bindingTemperature().map(t -> Wax.of(review, t, locale)).orElse(null),
        review.potFloor().map(Floor::of).orElse(null),
        review.findings().stream().map(f -> FindingData.of(f, locale)).toList(),
        review.notAssessed().stream().map(n -> NotAssessedData.of(n, locale)).toList(),
        review.notAsked().isEmpty() ? null : NotAsked.line(review.notAsked(), locale),
        review.switchedOff().entrySet().stream()
            .sorted(Map.Entry.comparingByKey())
            .map(off -> new SwitchedOff(off.getKey(), off.getValue()))
            .toList(),
        review.standingAdvice().stream().map(a -> AdviceData.of(a, locale)).toList());
  }
}
