// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.meltwright.core.numeric.LinearAnswer.Kind;

class LinearProgramTest {

  private static final double NONE = Double.POSITIVE_INFINITY;

  static List<PublishedProgramme> published() {
    return PublishedProgramme.all();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("published")
  void publishedProgramme_comesToThePublishedOptimum_exactlyProved(PublishedProgramme published) {
    LinearAnswer answer = published.programme().solve();
    assertThat(answer.kind()).isEqualTo(Kind.OPTIMAL);
    assertThat(published.value(answer)).isCloseTo(published.published, within(published.tolerance));
    assertThat(ExactProof.of(published.programme(), answer).isOptimal()).isTrue();
  }

  @Test
  void dietOf77Foods_usesFiveOfThem_andCosts39_66AYear() {
    PublishedProgramme diet =
        published().stream().filter(p -> p.name.equals("stigler")).findFirst().orElseThrow();
    LinearAnswer answer = diet.programme().solve();
    assertThat(Arrays.stream(answer.values()).filter(x -> x > 1e-9)).hasSize(5);
    assertThat(answer.objective() * 365).isCloseTo(39.66, within(0.005));
  }

  @Test
  void contradiction_isProved() {
    LinearAnswer answer =
        LinearProgram.minimising(1, 1).row(3, NONE, 1, 1).row(-NONE, 2, 1, 1).solve();
    assertThat(answer.kind()).isEqualTo(Kind.INFEASIBLE);
    assertThat(LinearProgram.minimising(1).row(2, 1, 1).solve().kind()).isEqualTo(Kind.INFEASIBLE);
  }

  @Test
  void noBound_isSaid() {
    assertThat(LinearProgram.minimising(-1, 0).row(0, NONE, 1, -1).solve().kind())
        .isEqualTo(Kind.UNBOUNDED);
  }

  @Test
  void rowsThatRepeatEachOther_doNoHarm() {
    LinearAnswer answer =
        LinearProgram.minimising(1, 2).row(1, 1, 1, 1).row(2, 2, 2, 2).row(1, 1, 1, 1).solve();
    assertThat(answer.values()).containsExactly(new double[] {1, 0}, within(1e-12));
  }

  /** Beale's example, on which the steepest column alone goes round for ever. */
  @Test
  void programmeThatCycles_comesToItsEnd() {
    LinearAnswer answer =
        LinearProgram.minimising(-0.75, 150, -0.02, 6)
            .row(-NONE, 0, 0.25, -60, -0.04, 9)
            .row(-NONE, 0, 0.5, -90, -0.02, 3)
            .row(-NONE, 1, 0, 0, 1)
            .solve();
    assertThat(answer.objective()).isCloseTo(-0.05, within(1e-12));
  }

  /** Klee and Minty's cube: the long way round its corners in eight dimensions. */
  @Test
  void cubeOfKleeAndMinty_comesToItsEnd() {
    int n = 8;
    double[] cost = new double[n];
    for (int i = 0; i < n; i++) {
      cost[i] = -Math.pow(10, n - 1 - i);
    }
    LinearProgram cube = LinearProgram.minimising(cost);
    for (int i = 0; i < n; i++) {
      double[] row = new double[n];
      for (int j = 0; j < i; j++) {
        row[j] = 2 * Math.pow(10, i - j);
      }
      row[i] = 1;
      cube.row(-NONE, Math.pow(100, i), row);
    }
    assertThat(cube.solve().objective()).isCloseTo(-Math.pow(100, n - 1), within(1e-3));
  }

  @Test
  void freeColumn_mayLieBelowZero() {
    LinearAnswer answer =
        LinearProgram.minimising(1, 0)
            .column(0, -NONE, NONE)
            .row(-5, NONE, 1, 1)
            .column(1, 0, 3)
            .solve();
    assertThat(answer.value(0)).isCloseTo(-8, within(1e-12));
  }

  @Test
  void price_isWhatOneMoreOfTheBoundCosts_asFarAsItHolds() {
    LinearProgram feed = feed(30);
    LinearAnswer answer = feed.solve();
    double[] range = answer.range(1);
    for (double way : new double[] {0.999 * range[0], 0.999 * range[1]}) {
      assertThat(feed(30 + way).solve().objective())
          .isCloseTo(answer.objective() + way * answer.price(1), within(1e-9));
    }
    double beyond = range[1] * 1.5;
    assertThat(feed(30 + beyond).solve().kind()).isEqualTo(Kind.INFEASIBLE);
  }

  private static LinearProgram feed(double protein) {
    return LinearProgram.minimising(0.3, 0.9)
        .row(1, 1, 1, 1)
        .row(protein, NONE, 9, 60)
        .row(-NONE, 5, 2, 6);
  }

  @Test
  void whatIsNoNumber_isRefused() {
    LinearProgram programme = LinearProgram.minimising(1);
    assertThatThrownBy(() -> LinearProgram.minimising(Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> programme.row(0, 1, NONE))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> programme.row(Double.NaN, 1, 1))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> programme.row(0, 1, 1, 1))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> programme.column(0, NONE, NONE))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
