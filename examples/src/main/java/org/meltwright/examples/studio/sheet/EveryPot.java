// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.sheet;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.meltwright.examples.studio.day.JobSheet;
import org.meltwright.examples.studio.day.Sheet;
import org.meltwright.examples.studio.page.Block.Paragraph;
import org.meltwright.examples.studio.page.Page;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.safety.heating.Finding;
import org.meltwright.safety.heating.HeatingReview;
import org.meltwright.safety.heating.NotAssessed;

/**
 * What the reviews of all pots that may be heated today have in common: said in full once, and
 * named on each card. Of a single pot nothing is in common.
 *
 * @param findings the findings of every pot
 * @param open what was not assessed at any pot
 */
record EveryPot(List<Finding> findings, List<NotAssessed> open) {

  public EveryPot {
    findings = List.copyOf(findings);
    open = List.copyOf(open);
  }

  static EveryPot of(Sheet day) {
    List<HeatingReview> reviews =
        day.jobs().stream().filter(j -> !j.isBlocked()).map(JobSheet::review).toList();
    if (reviews.size() < 2) {
      return new EveryPot(List.of(), List.of());
    }
    HeatingReview first = reviews.get(0);
    return new EveryPot(
        first.findings().stream()
            .filter(f -> reviews.stream().allMatch(r -> r.findings().contains(f)))
            .toList(),
        first.notAssessed().stream()
            .filter(n -> reviews.stream().allMatch(r -> r.notAssessed().contains(n)))
            .toList());
  }

  boolean holds(Finding finding) {
    return findings.contains(finding);
  }

  boolean holds(NotAssessed entry) {
    return open.contains(entry);
  }

  /** All of it in a line for a card; empty if nothing is in common. */
  Optional<Paragraph> line(Say say) {
    List<String> parts =
        Stream.concat(
                findings.stream()
                    .map(f -> f.severity().word(say.locale()) + " " + f.summary(say.locale())),
                open.stream()
                    .map(n -> say.words("not-assessed.label") + " " + n.what(say.locale())))
            .toList();
    return parts.isEmpty()
        ? Optional.empty()
        : Optional.of(new Paragraph(say.words("card.every-pot", "what", String.join(" ", parts))));
  }

  /** All of it in full. */
  void add(Page.Builder page, HeatingReview any) {
    ReviewNotes notes = new ReviewNotes(page);
    findings.forEach(f -> page.add(notes.notice(f, any)));
    open.forEach(n -> page.add(notes.notice(n)));
  }
}
