// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Plans that were judged by a reader who had not seen the rules: no dangerous one is judged milder,
 * and a careful one draws hardly anything.
 */
class PlanFilesTest {

  /** Of so many careful plans, so many at most draw anything. */
  private static final int OF_CAREFUL = 60;

  private static final int MOST_FOUND = 15;

  /** How badly a plan is judged, worst first: what blocks outranks each severity. */
  enum Judgement {
    BLOCKS,
    DANGER,
    WARNING,
    CAUTION,
    NOTICE,
    NOTHING;

    static Judgement of(String word) {
      return valueOf(word.strip().toUpperCase(Locale.ROOT));
    }

    static Judgement of(HeatingReview review) {
      return review.isBlocked()
          ? BLOCKS
          : review.worstSeverity().map(s -> valueOf(s.name())).orElse(NOTHING);
    }

    boolean isAtLeast(Judgement other) {
      return compareTo(other) <= 0;
    }
  }

  /**
   * A line of a file.
   *
   * @param plan the plan, in the grammar of {@link Plans}
   * @param words what it is
   * @param judged what the reader said
   * @param by the rules that must find it, and "?" before what must be left unassessed
   * @param differs what is found where a policy says otherwise; the reason follows it
   */
  record JudgedPlan(
      String plan, String words, String judged, List<String> by, Optional<String> differs) {

    private static final int BY = 4;

    private static JudgedPlan of(String line, int differsAt) {
      String[] cells = line.split(" \\| ", -1);
      Optional<String> differs =
          cells.length > differsAt
              ? Optional.of(cells[differsAt].replaceFirst("^differs: ", ""))
              : Optional.empty();
      List<String> by =
          differsAt > BY && !cells[BY].equals("-") ? List.of(cells[BY].split(" ")) : List.of();
      return new JudgedPlan(cells[0], cells[1], cells[2].strip(), by, differs);
    }

    /** What stands before the reason. */
    Optional<String> instead() {
      return differs.map(text -> text.substring(0, text.indexOf(':')));
    }

    HeatingReview review() {
      return Plans.review(plan);
    }

    @Override
    public String toString() {
      return words;
    }
  }

  static List<JudgedPlan> dangerous() {
    return RuleCase.lines("dangerous-plans.txt").stream().map(l -> JudgedPlan.of(l, 5)).toList();
  }

  static List<JudgedPlan> careful() {
    return RuleCase.lines("careful-plans.txt").stream().map(l -> JudgedPlan.of(l, 3)).toList();
  }

  @ParameterizedTest
  @MethodSource("dangerous")
  void dangerous_plan_is_not_judged_milder_than_by_its_reader(JudgedPlan plan) {
    HeatingReview review = plan.review();
    Judgement judgement = Judgement.of(review);
    if (plan.instead().isPresent()) {
      assertThat(judgement).as(said(review)).isEqualTo(Judgement.of(plan.instead().get()));
    } else {
      assertThat(judgement.isAtLeast(Judgement.of(plan.judged())))
          .as("%s is milder than %s: %s", judgement, plan.judged(), said(review))
          .isTrue();
    }
  }

  @ParameterizedTest
  @MethodSource("dangerous")
  void dangerous_plan_is_found_by_the_rules_that_are_meant(JudgedPlan plan) {
    HeatingReview review = plan.review();
    List<String> found =
        Stream.concat(
                review.findings().stream().map(Finding::ruleId),
                review.notAssessed().stream().map(n -> "?" + n.property()))
            .toList();
    assertThat(found).as(said(review)).containsAll(plan.by());
    if (!plan.instead().equals(Optional.of("nothing"))) {
      assertThat(plan.by()).isNotEmpty();
    }
  }

  @ParameterizedTest
  @MethodSource("dangerous")
  void policy_that_differs_differs_from_the_judgement_and_says_why(JudgedPlan plan) {
    plan.differs()
        .ifPresent(
            text -> {
              assertThat(Judgement.of(plan.instead().get()))
                  .isNotEqualTo(Judgement.of(plan.judged()));
              assertThat(text.substring(text.indexOf(':') + 1).strip()).isNotEmpty();
            });
  }

  @ParameterizedTest
  @MethodSource("careful")
  void careful_plan_draws_one_line_at_most(JudgedPlan plan) {
    HeatingReview review = plan.review();
    int expected = plan.instead().map(words -> Integer.parseInt(words.split(" ")[0])).orElse(1);
    if (plan.differs().isPresent()) {
      assertThat(lines(review)).as(said(review)).isEqualTo(expected);
    } else {
      assertThat(lines(review)).as(said(review)).isLessThanOrEqualTo(expected);
    }
  }

  @ParameterizedTest
  @MethodSource("careful")
  void careful_plan_does_not_block_and_draws_no_more_than_a_caution(JudgedPlan plan) {
    HeatingReview review = plan.review();
    Judgement judgement = Judgement.of(review);
    Optional<Judgement> worse =
        plan.instead().filter(w -> w.contains(", ")).map(w -> Judgement.of(w.split(", ")[1]));
    if (worse.isPresent()) {
      assertThat(judgement).as(said(review)).isEqualTo(worse.get());
    } else {
      assertThat(Judgement.CAUTION.isAtLeast(judgement)).as(said(review)).isTrue();
    }
  }

  @Test
  void at_most_fifteen_of_sixty_careful_plans_draw_anything() {
    List<JudgedPlan> plans = careful();
    List<String> found =
        plans.stream().filter(p -> lines(p.review()) > 0).map(JudgedPlan::words).toList();
    assertThat(found.size() * OF_CAREFUL)
        .as("%s of %s: %s", found.size(), plans.size(), found)
        .isLessThanOrEqualTo(MOST_FOUND * plans.size());
  }

  @Test
  void files_hold_as_many_plans_as_they_promise() {
    assertThat(dangerous()).hasSizeGreaterThanOrEqualTo(300);
    assertThat(careful()).hasSizeGreaterThanOrEqualTo(100);
    assertThat(Stream.concat(dangerous().stream(), careful().stream()).map(JudgedPlan::plan))
        .doesNotHaveDuplicates();
  }

  /** Findings and what is not assessed, as a sheet shows them. */
  private static int lines(HeatingReview review) {
    return review.findings().size() + review.notAssessed().size();
  }

  private static String said(HeatingReview review) {
    return Stream.concat(
            review.findings().stream().map(f -> f.severity() + " " + f.ruleId()),
            review.notAssessed().stream()
                .map(
                    n ->
                        n.severity()
                            + " not assessed "
                            + n.property()
                            + n.material().map(m -> " of " + m.id()).orElse("")))
        .toList()
        .toString();
  }
}
