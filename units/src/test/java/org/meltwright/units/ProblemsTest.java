// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class ProblemsTest {

  private final Problems problems = new Problems();

  private static Problem at(String path) {
    return Problem.of(UnitsProblem.TEXT_EMPTY, "").under(path);
  }

  @SuppressWarnings("TypeParameterUnusedInFormals") // it never returns
  private static <T> T fail(Problem... found) {
    throw new ProblemException(List.of(found));
  }

  @Test
  void attempt_givesTheValue_whenItHasNoProblem() {
    assertThat(problems.attempt("/a", () -> 7)).contains(7);
    assertThat(problems.isEmpty()).isTrue();
    assertThatCode(problems::throwIfAny).doesNotThrowAnyException();
  }

  @Test
  void attempt_putsTheProblemsBelowThePath() {
    assertThat(problems.<String>attempt("/a", () -> fail(at("/b"), at("/c")))).isEmpty();
    assertThat(problems.toList()).extracting(Problem::path).containsExactly("/a/b", "/a/c");
  }

  @Test
  void attempt_keepsSeveralProblemsOfOnePlace_whenOneCheckFoundThem() {
    problems.attempt("/a", () -> fail(at(""), at("")));
    assertThat(problems.toList()).hasSize(2);
  }

  @Test
  void attempt_leavesOutWhatFollowsFromAProblemAtThePlaceOrDeeper() {
    problems.add(at("/a/b"));
    problems.attempt("/a/b", () -> fail(at("")));
    problems.attempt("/a", () -> fail(at("")));
    assertThat(problems.toList()).extracting(Problem::path).containsExactly("/a/b");
  }

  @Test
  void attempt_tellsAPlaceWhoseNameOnlyBeginsAlike() {
    problems.add(at("/a/10"));
    problems.attempt("/a/1", () -> fail(at("")));
    assertThat(problems.toList()).extracting(Problem::path).containsExactly("/a/10", "/a/1");
  }

  @Test
  void add_keepsOneProblemOfAPlace() {
    problems.add(at("/a"));
    problems.add(at("/a"));
    assertThat(problems.toList()).hasSize(1);
  }

  @Test
  void read_takesNothing_forNoText() {
    assertThat(problems.read("/a", null, Integer::valueOf)).isEmpty();
    assertThat(problems.read("/a", " ", Integer::valueOf)).isEmpty();
    assertThat(problems.isEmpty()).isTrue();
  }

  @Test
  void throwIfAny_throwsAllOfThem() {
    problems.add(at("/a"));
    problems.addAll(List.of(at("/b"), at("/b")));
    assertThatThrownBy(problems::throwIfAny)
        .isInstanceOfSatisfying(
            ProblemException.class, e -> assertThat(e.problems()).isEqualTo(problems.toList()));
  }

  @Test
  void attempt_letsADefectThrough() {
    assertThatThrownBy(() -> problems.attempt("/a", () -> List.of().get(0)))
        .isInstanceOf(IndexOutOfBoundsException.class);
  }
}
