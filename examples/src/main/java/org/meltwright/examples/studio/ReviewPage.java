// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.meltwright.core.source.Source;
import org.meltwright.core.thermal.melting.WorkingWindow;
import org.meltwright.examples.studio.page.Block.Fact;
import org.meltwright.examples.studio.page.Block.Facts;
import org.meltwright.examples.studio.page.Block.Heading;
import org.meltwright.examples.studio.page.Block.Notice;
import org.meltwright.examples.studio.page.Block.Tone;
import org.meltwright.examples.studio.page.Page;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.examples.studio.picture.TemperatureScale;
import org.meltwright.safety.heating.Finding;
import org.meltwright.safety.heating.HeatingReview;
import org.meltwright.safety.heating.HeatingRules;
import org.meltwright.safety.heating.NotAssessed;
import org.meltwright.safety.heating.PotFloor;
import org.meltwright.safety.heating.Severity;

/** The heating review of one job: temperatures, findings, what was not assessed. */
final class ReviewPage {

  private static final Locale READER = Locale.ENGLISH;

  private final JobSheet sheet;
  private final HeatingReview review;
  private final Page.Builder page;

  ReviewPage(JobSheet sheet, Page.Builder page) {
    this.sheet = sheet;
    this.review = sheet.review();
    this.page = page;
  }

  void add() {
    page.add(new Heading(3, "Heating review"));
    page.add(new Facts(temperatures()));
    review.findings().forEach(f -> page.add(notice(f)));
    review.notAssessed().forEach(n -> page.add(notice(n)));
    sheet.pot().unknownShares().map(NotKnown::notice).ifPresent(page::add);
    unknownRoom().map(NotKnown::notice).ifPresent(page::add);
    page.add(
        sheet
            .window()
            .map(window -> TemperatureScale.of(review, window))
            .orElseGet(() -> TemperatureScale.of(review)));
  }

  /** What must not be heated, or cannot be weighed, needs no advice on how to fill the pot. */
  private Optional<NotKnown> unknownRoom() {
    return sheet.allowed().flatMap(batch -> sheet.pot().room().reason());
  }

  private List<Fact> temperatures() {
    List<Fact> facts = new ArrayList<>();
    review
        .bindingTemperature()
        .ifPresent(
            t ->
                facts.add(
                    new Fact(
                        "wax, " + Words.of(t.basis()).replace('-', ' '),
                        Say.temperature(t.value()))));
    Readings.setAside(review)
        .ifPresent(
            r ->
                facts.add(
                    new Fact(
                        "read in the wax", Say.temperature(r) + "; not what the review goes by")));
    facts.add(
        new Fact(
            "target, not above " + cited("above-target"),
            Say.temperature(review.target())
                + review.marginToTarget().map(m -> "; " + Say.margin(m)).orElse("")));
    facts.add(
        new Fact(
            "hard ceiling " + cited("hard-ceiling"),
            Say.temperature(review.hardCeiling())
                + review.marginToHardCeiling().map(m -> "; " + Say.margin(m)).orElse("")));
    review.potFloor().ifPresent(f -> facts.add(new Fact("floor of the pot", floor(f))));
    facts.add(
        new Fact(
            "working window " + practice(),
            sheet.window().map(ReviewPage::window).orElseGet(this::noWindow)));
    sheet
        .pot()
        .room()
        .reason()
        .ifPresent(u -> facts.add(new Fact("how full the pot is", u.value())));
    return facts;
  }

  /** A limit rests on what its rule rests on. */
  private String cited(String rule) {
    return page.cite(HeatingRules.standard().find(rule).orElseThrow().info().source().citation());
  }

  private String practice() {
    return page.cite(Source.COMMON_PRACTICE.citation());
  }

  private static String floor(PotFloor floor) {
    return floor.isKnown() ? Say.temperature(floor.value()) : Say.atLeast(floor.value());
  }

  private String noWindow() {
    return NotKnown.because(NotKnown.whyNoClearPoint(review.plan().mix()));
  }

  private static String window(WorkingWindow window) {
    return "from "
        + Say.temperature(window.lowerBound())
        + " up to "
        + Say.celsius(window.upperBound())
        + "; "
        + Words.of(window.state()).replace('-', ' ');
  }

  private Notice notice(Finding finding) {
    return new Notice(
        tone(finding),
        finding.severity().word(READER) + (finding.isBlocking() ? " · BLOCKED" : ""),
        finding.summary(READER) + " " + page.cite(finding.source().citation()),
        Stream.concat(
                Readings.lowerBound(review, finding).stream(),
                Stream.of(finding.reason(READER), finding.remedy(READER)))
            .toList());
  }

  private static Tone tone(Finding finding) {
    if (finding.isBlocking()) {
      return Tone.STOP;
    }
    return finding.severity().isAtLeast(Severity.CAUTION) ? Tone.CARE : Tone.NOTE;
  }

  private static Notice notice(NotAssessed open) {
    return new Notice(Tone.OPEN, "NOT ASSESSED", open.what(READER), List.of(open.remedy(READER)));
  }
}
