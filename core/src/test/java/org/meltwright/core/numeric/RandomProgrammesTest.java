// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.numeric;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.meltwright.core.numeric.LinearAnswer.Kind;

/**
 * The small solver beside two general ones, on programmes made up by a seed. Where one of them says
 * otherwise, arithmetic without rounding decides, and the case is named.
 */
@Tag("random")
class RandomProgrammesTest {

  private static final int COUNT = Integer.getInteger("random.programmes", 1500);
  private static final long SEED = Long.getLong("random.seed", 20260501);

  /** Every so many are reckoned exactly, whatever the others say. */
  private static final int EXACTLY = 50;

  private final List<String> differences = new ArrayList<>();
  private final List<String> wrong = new ArrayList<>();
  private final Map<Kind, Integer> kinds = new EnumMap<>(Kind.class);

  @Test
  void optimumIsThatOfTwoGeneralSolvers_orIsProvedExactly() {
    for (int i = 0; i < COUNT; i++) {
      compare(SEED * 1_000_003 + i, i % EXACTLY == 0);
    }
    System.out.println(
        "random programmes: "
            + COUNT
            + " of seed "
            + SEED
            + ", "
            + kinds
            + "; another solver differs "
            + differences.size()
            + " times");
    differences.forEach(System.out::println);
    assertThat(wrong).isEmpty();
    assertThat(kinds).containsOnlyKeys(Kind.OPTIMAL, Kind.INFEASIBLE);
    kinds.values().forEach(count -> assertThat(count).isGreaterThan(COUNT / 10));
  }

  private void compare(long seed, boolean alwaysExact) {
    RandomProgramme random = new RandomProgramme(seed);
    LinearAnswer answer = random.programme().solve();
    kinds.merge(answer.kind(), 1, Integer::sum);
    boolean agree =
        agrees(seed, "commons-math3", answer, OtherSolvers.commonsMath(random))
            & agrees(seed, "ojAlgo", answer, OtherSolvers.ojAlgo(random));
    if ((alwaysExact || !agree) && !isProved(random, answer)) {
      wrong.add("seed " + seed + ": " + answer);
    }
  }

  private boolean agrees(long seed, String solver, LinearAnswer answer, OptionalDouble other) {
    boolean agrees =
        answer.kind() == Kind.OPTIMAL
            ? other.isPresent() && isClose(answer.objective(), other.getAsDouble())
            : answer.kind() == Kind.INFEASIBLE && other.isEmpty();
    if (!agrees) {
      String own = answer.kind() == Kind.OPTIMAL ? "" + answer.objective() : "" + answer.kind();
      differences.add("  seed " + seed + ": " + solver + " " + other + ", here " + own);
    }
    return agrees;
  }

  private static boolean isClose(double one, double other) {
    return Math.abs(one - other) <= 1e-7 * Math.max(1e-3, Math.abs(one));
  }

  private static boolean isProved(RandomProgramme random, LinearAnswer answer) {
    ExactProof proof = ExactProof.of(random.programme(), answer);
    return answer.kind() == Kind.OPTIMAL
        ? proof.isOptimal() && isClose(answer.objective(), proof.objective())
        : answer.kind() == Kind.INFEASIBLE && proof.showsThatThereIsNothing();
  }
}
