// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import static org.assertj.core.api.Assertions.fail;

import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.meltwright.safety.heating.ReviewLaw.Comparison;

/** Each law of the heating review, for random plans; a law that fails prints a small plan. */
@Tag("random")
class ReviewLawsTest {

  /** How many comparisons of two plans all laws make together. */
  private static final int COMPARISONS = Integer.getInteger("random.comparisons", 20_000);

  /** One law looks at each plan alone; what it looks at comes on top. */
  private static final int LAWS_OF_TWO_PLANS = ReviewLaw.values().length - 1;

  private static final int PLANS_AT_ONCE = 200;

  @ParameterizedTest
  @EnumSource
  void law_holds_for_random_plans(ReviewLaw law) {
    int wanted = COMPARISONS / LAWS_OF_TWO_PLANS;
    long made = 0;
    for (long seed = 0; made < wanted; seed += PLANS_AT_ONCE) {
      made +=
          LongStream.range(seed, seed + PLANS_AT_ONCE)
              .parallel()
              .map(each -> compare(law, new RandomPlans(each).next()))
              .sum();
    }
    System.out.printf("%,d comparisons: %s%n", made, law);
  }

  private static long compare(ReviewLaw law, Clauses plan) {
    List<Comparison> comparisons = law.compare(plan).toList();
    if (broken(comparisons.stream()).isPresent()) {
      fail(report(law, smallest(law, plan)));
    }
    return comparisons.size();
  }

  private static Optional<Comparison> broken(Stream<Comparison> comparisons) {
    return comparisons.filter(comparison -> !comparison.holds()).findFirst();
  }

  /** The plan without each clause and each part that the failure does not need. */
  private static Clauses smallest(ReviewLaw law, Clauses plan) {
    return plan.smaller()
        .filter(smaller -> broken(law.compare(smaller)).isPresent())
        .findFirst()
        .map(smaller -> smallest(law, smaller))
        .orElse(plan);
  }

  private static String report(ReviewLaw law, Clauses plan) {
    return "%s%n  plan: %s%n  %s%n  %s"
        .formatted(law, plan, plan.review(), broken(law.compare(plan)).orElseThrow());
  }
}
