// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning.blend;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.meltwright.core.numeric.LinearAnswer.Kind;

/**
 * Questions made up by a seed: conflicts that are none too large, and lots that all keep a wish.
 */
@Tag("random")
class RandomBlendsTest {

  private static final int CONFLICTS = Integer.getInteger("random.conflicts", 1000);
  private static final int LOTS = Integer.getInteger("random.lots", 20_000);
  private static final long SEED = Long.getLong("random.seed", 20260501);
  private static final int LOTS_OF_ONE = 200;

  /** Of every so many conflicts each way out is tried too, which takes longer. */
  private static final int WAYS_OUT = 20;

  private static List<Wish> all(RandomBlend random) {
    Stream<Wish> stocks =
        random.parts.stream()
            .filter(p -> p.stockKilograms().isPresent())
            .map(
                p ->
                    new Bounded(
                        new Figures.Amount(p.name()),
                        Double.NEGATIVE_INFINITY,
                        p.stockKilograms().getAsDouble(),
                        Bounded.HARD));
    return Stream.concat(stocks, random.wishes.stream()).distinct().toList();
  }

  @Test
  void wishesInConflict_areImpossible_andPossibleWithoutAnyOneOfThem() {
    int found = 0;
    int largest = 0;
    for (long seed = SEED * 1_000_003; found < CONFLICTS; seed++) {
      RandomBlend random = new RandomBlend(seed, 8, 9);
      BlendSearch search = new BlendSearch(new Coefficients(random.parts), seed % 2 == 0);
      List<Wish> wishes = all(random);
      if (search.feasibility(wishes) == Kind.INFEASIBLE) {
        Conflicts conflicts = new Conflicts(search, wishes);
        List<Wish> set = conflicts.set();
        assertThat(conflicts.isUndecided()).as("seed %d", seed).isFalse();
        assertThat(search.feasibility(set)).as("seed %d", seed).isEqualTo(Kind.INFEASIBLE);
        for (Wish wish : set) {
          assertThat(search.feasibility(without(set, wish)))
              .as("seed %d without %s", seed, wish)
              .isEqualTo(Kind.OPTIMAL);
          if (found % WAYS_OUT == 0) {
            isWayOut(seed, search, wishes, conflicts.concession(wish));
          }
        }
        found++;
        largest = Math.max(largest, set.size());
      }
    }
    System.out.println("conflicts: " + found + " of seed " + SEED + ", the largest of " + largest);
  }

  private static List<Wish> without(List<Wish> set, Wish wish) {
    return set.stream().filter(w -> !w.equals(wish)).toList();
  }

  /** A hair further than told it is possible, a little less far it is not; or never. */
  private static void isWayOut(
      long seed, BlendSearch search, List<Wish> wishes, Concession concession) {
    Bounded wish = (Bounded) concession.wish();
    if (!concession.isEnough()) {
      assertThat(search.feasibility(without(wishes, wish)))
          .as("seed %d, %s", seed, concession)
          .isNotEqualTo(Kind.OPTIMAL);
      return;
    }
    double way = concession.to() - concession.from();
    boolean isUpper = way > 0;
    if (Double.isInfinite(way)) {
      assertThat(search.feasibility(given(wishes, wish, isUpper, concession.to())))
          .as("seed %d, %s", seed, concession)
          .isEqualTo(Kind.OPTIMAL);
      return;
    }
    assertThat(search.feasibility(given(wishes, wish, isUpper, concession.from() + way * 1.000001)))
        .as("seed %d, %s", seed, concession)
        .isEqualTo(Kind.OPTIMAL);
    assertThat(search.feasibility(given(wishes, wish, isUpper, concession.from() + way * 0.999)))
        .as("seed %d, %s", seed, concession)
        .isEqualTo(Kind.INFEASIBLE);
  }

  private static List<Wish> given(List<Wish> wishes, Bounded wish, boolean isUpper, double to) {
    return wishes.stream().map(w -> w.equals(wish) ? wish.with(isUpper, to) : w).toList();
  }

  @Test
  void blendForEveryLot_keepsItsWishesWithEachLot() {
    int robust = 0;
    int plain = 0;
    int missed = 0;
    List<String> wrong = new ArrayList<>();
    Random lots = new Random(SEED);
    for (long seed = SEED * 1_000_033; robust < LOTS; seed++) {
      RandomBlend random = new RandomBlend(seed, 6, 6);
      BlendAnswer safe = random.question().forEveryLot().cheapest();
      if (safe instanceof BlendAnswer.Found found) {
        BlendAnswer.Found middle = (BlendAnswer.Found) found.inTheMiddle().orElseThrow();
        for (int i = 0; i < LOTS_OF_ONE; i++) {
          RandomBlend.Lot lot = random.lot(lots);
          robust++;
          plain++;
          missed += keeps(random, lot, middle) ? 0 : 1;
          if (!keeps(random, lot, found)) {
            wrong.add("seed " + seed + ", lot " + i);
          }
        }
      }
    }
    System.out.printf(
        "lots: %d of robust blends, %d missed a wish; of %d of plain blends %.1f %% did%n",
        robust, wrong.size(), plain, 100.0 * missed / plain);
    assertThat(wrong).isEmpty();
    assertThat(missed).isGreaterThan(plain / 20);
  }

  private static boolean keeps(RandomBlend random, RandomBlend.Lot lot, BlendAnswer.Found found) {
    double[] kilograms =
        random.parts.stream().mapToDouble(p -> found.line(p.name()).kilograms()).toArray();
    return random.wishes.stream().allMatch(w -> lot.keeps(w, kilograms));
  }
}
