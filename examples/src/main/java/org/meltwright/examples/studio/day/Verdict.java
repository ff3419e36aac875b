// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.day;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.safety.heating.Finding;
import org.meltwright.safety.heating.HeatingReview;
import org.meltwright.safety.heating.Severity;

/** What a review comes to, in a line or a word; neither ever says that all is well. */
public final class Verdict {

  private final HeatingReview review;
  private final boolean isFillUnknown;
  private final Say say;

  /**
   * Creates the verdict on a job; a pot of unknown fill is not assessed too.
   *
   * @param job the job
   * @param say the language
   */
  public Verdict(JobSheet job, Say say) {
    this(job.review(), job.pot().room().reason().isPresent(), say);
  }

  /**
   * Creates the verdict on a review.
   *
   * @param review the review
   * @param say the language
   */
  public Verdict(HeatingReview review, Say say) {
    this(review, false, say);
  }

  private Verdict(HeatingReview review, boolean isFillUnknown, Say say) {
    this.review = review;
    this.isFillUnknown = isFillUnknown;
    this.say = say;
  }

  /**
   * Returns the verdict in one line, which never says that something is safe.
   *
   * @return the line
   */
  public String line() {
    List<String> parts = new ArrayList<>();
    parts.add(review.isBlocked() ? say.words("verdict.blocked") : findings());
    int open = review.notAssessed().size() + (isFillUnknown ? 1 : 0);
    if (open > 0) {
      parts.add(say.count("verdict.open", open));
    }
    parts.add(say.words("verdict.advice"));
    return String.join("; ", parts);
  }

  private String findings() {
    List<String> counts = new ArrayList<>();
    for (Severity severity : Severity.values()) {
      long count = review.findings().stream().filter(f -> f.severity() == severity).count();
      if (count > 0) {
        counts.add(count + " × " + severity.word(say.locale()));
      }
    }
    return counts.isEmpty() ? say.words("verdict.none") : String.join(", ", counts);
  }

  /**
   * Returns the gravest finding; what was not assessed ranks as a caution.
   *
   * @return its words
   */
  public String gravest() {
    if (review.isBlocked()) {
      return say.words("blocked");
    }
    boolean isOpen = isFillUnknown || !review.notAssessed().isEmpty();
    Optional<Severity> worst =
        review.findings().stream().map(Finding::severity).min(Comparator.naturalOrder());
    return worst
        .filter(s -> !isOpen || s.isAtLeast(Severity.CAUTION))
        .map(s -> s.word(say.locale()))
        .orElseGet(() -> say.words(isOpen ? "not-assessed" : "none"));
  }
}
