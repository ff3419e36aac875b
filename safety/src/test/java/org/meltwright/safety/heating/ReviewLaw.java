// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The laws of the heating review: what the review of a plan promises of the plan's neighbours. */
enum ReviewLaw {
  HOTTER(
      "from the window's lower bound upward hotter never loses a blocking finding, nor lowers the"
          + " worst severity among the upper limits",
      ReviewLaw::hotter),

  ONE_WRONG_MORE(
      "one tool or circumstance more never loses a blocking finding nor one of WARNING or above",
      ReviewLaw::oneWrongMore),

  LEFT_OUT(
      "with a datum left out every finding, save one about that datum itself, stays, gives way to a"
          + " worse one of its table, or becomes not assessed or not asked under the same rule; and"
          + " nothing is judged milder than at the mildest value that the datum could have",
      (plan, review) -> LeftOut.of(plan).flatMap(datum -> datum.compare(review))),

  IN_ORDER(
      "no review is empty; findings stand blocking first, then by severity and id, and a review"
          + " blocks if one of them does",
      (plan, review) -> Stream.of(new Comparison(disorder(review), plan, review))),

  SAID_OTHERWISE(
      "order and splitting of parts, and the names of recipes, vessels and tools, change nothing",
      (plan, review) -> SaidOtherwise.of(plan).map(other -> other.compare(review)));

  private final String sentence;
  private final BiFunction<Clauses, HeatingReview, Stream<Comparison>> compare;

  ReviewLaw(String sentence, BiFunction<Clauses, HeatingReview, Stream<Comparison>> compare) {
    this.sentence = sentence;
    this.compare = compare;
  }

  /** Compares a plan with its neighbours. */
  Stream<Comparison> compare(Clauses plan) {
    try {
      return compare.apply(plan, plan.review());
    } catch (RuntimeException e) {
      throw new IllegalStateException(this + ", of " + plan, e);
    }
  }

  /**
   * A plan and one of its neighbours.
   *
   * @param wrong what is wrong between them; empty if the law holds
   * @param neighbour the neighbour, in words
   * @param review its review
   */
  record Comparison(String wrong, Object neighbour, HeatingReview review) {

    boolean holds() {
      return wrong.isEmpty();
    }

    @Override
    public String toString() {
      return wrong + "\n  with: " + neighbour + "\n  " + review + "; " + review.notAsked();
    }
  }

  private static Stream<Comparison> hotter(Clauses plan, HeatingReview review) {
    return Hotter.of(plan, review)
        .map(
            hot -> {
              HeatingReview after = hot.review();
              boolean milder = rank(upperLimits(after)) > rank(upperLimits(review));
              String wrong = lost(review, after, Finding::isBlocking);
              return new Comparison(milder ? wrong + " milder" : wrong, hot, after);
            });
  }

  private static Stream<Comparison> oneWrongMore(Clauses plan, HeatingReview review) {
    return Stream.concat(RandomPlans.TOOLS.stream(), RandomPlans.circumstances().stream())
        .map(plan::with)
        .map(
            more -> {
              HeatingReview after = more.review();
              return new Comparison(lost(review, after, ReviewLaw::isGrave), more, after);
            });
  }

  private static String disorder(HeatingReview review) {
    List<Finding> found = review.findings();
    boolean sorted = found.equals(found.stream().sorted().toList());
    boolean blocks = !found.isEmpty() && found.get(0).isBlocking();
    boolean empty =
        found.isEmpty() && review.notAssessed().isEmpty() && review.notAsked().isEmpty();
    return sorted && blocks == review.isBlocked() && !empty ? "" : "out of order";
  }

  private static boolean isGrave(Finding finding) {
    return finding.isBlocking() || finding.severity().isAtLeast(Severity.WARNING);
  }

  /** The rules of which the finding is gone. */
  private static String lost(HeatingReview before, HeatingReview after, Predicate<Finding> wanted) {
    Set<String> lost = ids(before, wanted);
    lost.removeAll(ids(after, wanted));
    return lost.isEmpty() ? "" : "lost " + lost;
  }

  static Set<String> ids(HeatingReview review, Predicate<Finding> wanted) {
    return review.findings().stream()
        .filter(wanted)
        .map(Finding::ruleId)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Optional<Severity> upperLimits(HeatingReview review) {
    return review.findings().stream()
        .filter(f -> f.info().topic() == RuleInfo.Topic.UPPER_LIMIT)
        .map(Finding::severity)
        .min(Comparator.naturalOrder());
  }

  /** Worst first; nothing comes last. */
  static int rank(Optional<Severity> worst) {
    return worst.map(Severity::ordinal).orElse(Severity.values().length);
  }

  @Override
  public String toString() {
    return sentence;
  }
}
