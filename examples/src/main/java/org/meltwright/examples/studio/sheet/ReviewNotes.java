// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.meltwright.core.source.Source;
import org.meltwright.core.thermal.melting.WorkingWindow;
import org.meltwright.examples.studio.day.JobSheet;
import org.meltwright.examples.studio.day.NotKnown;
import org.meltwright.examples.studio.page.Block.Fact;
import org.meltwright.examples.studio.page.Block.Notice;
import org.meltwright.examples.studio.page.Block.Tone;
import org.meltwright.examples.studio.page.Page;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.safety.heating.BindingTemperature;
import org.meltwright.safety.heating.BindingTemperature.Basis;
import org.meltwright.safety.heating.Finding;
import org.meltwright.safety.heating.HeatingReview;
import org.meltwright.safety.heating.HeatingRules;
import org.meltwright.safety.heating.NotAssessed;
import org.meltwright.safety.heating.PotFloor;
import org.meltwright.safety.heating.Severity;
import org.meltwright.units.TemperaturePoint;

/** What a heating review says, as notices and facts: findings, what is open, temperatures. */
final class ReviewNotes {

  private final Page.Builder page;
  private final Say say;

  ReviewNotes(Page.Builder page) {
    this.page = page;
    this.say = page.say();
  }

  Notice notice(Finding finding, HeatingReview review) {
    return new Notice(
        tone(finding),
        finding.severity().word(say.locale())
            + (finding.isBlocking() ? " · " + say.words("blocked") : ""),
        finding.summary(say.locale()) + " " + page.cite(finding.source().citation()),
        Stream.concat(
                lowerBound(review, finding, say).stream(),
                Stream.of(finding.reason(say.locale()), finding.remedy(say.locale())))
            .toList());
  }

  private static Tone tone(Finding finding) {
    if (finding.isBlocking()) {
      return Tone.STOP;
    }
    return finding.severity().isAtLeast(Severity.CAUTION) ? Tone.CARE : Tone.NOTE;
  }

  Notice notice(NotAssessed open) {
    return new Notice(
        Tone.OPEN,
        say.words("not-assessed.label"),
        open.what(say.locale()),
        List.of(open.remedy(say.locale())));
  }

  /** The temperatures of a pot, its limits, and how full it is where that is not known. */
  List<Fact> temperatures(JobSheet sheet) {
    HeatingReview review = sheet.review();
    List<Fact> facts = new ArrayList<>();
    review
        .bindingTemperature()
        .ifPresent(
            t ->
                facts.add(
                    new Fact(
                        say.words("degrees.wax"),
                        say.temperature(t.value()) + ", " + t.basis().text(say.locale()))));
    setAside(review)
        .ifPresent(
            r ->
                facts.add(
                    new Fact(
                        say.words("degrees.read"),
                        say.words("degrees.set-aside", "read", say.temperature(r)))));
    facts.add(
        limit(
            "degrees.target",
            "above-target",
            say.temperature(review.target())
                + review.marginToTarget().map(m -> "; " + say.margin(m)).orElse("")));
    facts.add(
        limit(
            "degrees.hard",
            "hard-ceiling",
            say.temperature(review.hardCeiling())
                + review.marginToHardCeiling().map(m -> "; " + say.margin(m)).orElse("")));
    review.potFloor().ifPresent(f -> facts.add(new Fact(say.words("degrees.floor"), floor(f))));
    facts.add(
        new Fact(
            say.words("degrees.window") + " " + page.cite(Source.COMMON_PRACTICE.citation()),
            sheet.window().map(this::window).orElseGet(() -> noWindow(review))));
    sheet
        .pot()
        .room()
        .reason()
        .ifPresent(u -> facts.add(new Fact(say.words("degrees.fill"), u.value(say))));
    return facts;
  }

  /** A limit rests on what its rule rests on. */
  private Fact limit(String name, String rule, String value) {
    String citation = HeatingRules.standard().find(rule).orElseThrow().info().source().citation();
    return new Fact(say.words(name) + " " + page.cite(citation), value);
  }

  private String floor(PotFloor floor) {
    return floor.isKnown() ? say.temperature(floor.value()) : say.atLeast(floor.value());
  }

  private String noWindow(HeatingReview review) {
    return NotKnown.because(NotKnown.whyNoClearPoint(review.plan().mix()), say);
  }

  private String window(WorkingWindow window) {
    return say.words(
        "degrees.window.said",
        "from",
        say.temperature(window.lowerBound()),
        "top",
        say.celsius(window.upperBound()),
        "state",
        say.words(
            switch (window.state()) {
              case OPEN -> "window.open";
              case MAY_BE_CLOSED -> "window.may-be-closed";
              case CLOSED -> "window.closed";
            }));
  }

  /** The reading in the wax, where a review goes by another temperature or by none. */
  static Optional<TemperaturePoint> setAside(HeatingReview review) {
    return review.bindingTemperature().filter(ReviewNotes::isReadInWax).isPresent()
        ? Optional.empty()
        : review.plan().liquidReading();
  }

  private static boolean isReadInWax(BindingTemperature wax) {
    return wax.basis() == Basis.LIQUID_MEASURED || wax.basis() == Basis.LIQUID_ON_PALETTE;
  }

  /** What a finding on the floor of a pot does not say: that the floor may be hotter. */
  static Optional<String> lowerBound(HeatingReview review, Finding finding, Say say) {
    return review
        .potFloor()
        .filter(floor -> !floor.isKnown() && finding.ruleId().startsWith("pot-floor"))
        .map(floor -> say.words("finding.at-least", "low", say.atLeast(floor.value())));
  }

  /** What a review goes by in place of the reading, in words. */
  static String inItsPlace(HeatingReview review, Say say) {
    return review
        .bindingTemperature()
        .map(t -> say.temperature(t.value()) + ", " + t.basis().text(say.locale()))
        .orElseGet(() -> say.words("none"));
  }
}
