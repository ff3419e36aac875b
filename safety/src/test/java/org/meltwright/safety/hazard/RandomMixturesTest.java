// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The library and a second, plain statement of the rules give the same answers for random mixtures.
 *
 * <p>Some thousands in each build; half a million with {@code -P random}.
 */
@Tag("random")
class RandomMixturesTest {

  private static final LocalDate DAY = LocalDate.of(2027, 2, 1);
  private static final RuleSet RULES = RuleSet.clpOn(DAY);
  private static final int MIXTURES = Integer.getInteger("random.mixtures", 2000);
  private static final long SEED = Long.getLong("random.seed", 20260501L);

  @Test
  void eachRandomMixture_hasTheSameAnswersByBothStatementsOfTheRules() {
    RandomMixtures mixtures = new RandomMixtures(SEED, PlainBridge.entries(RULES));
    Map<String, String> differences = new TreeMap<>();
    int differing = 0;
    for (int i = 0; i < MIXTURES; i++) {
      PlainMixture mixture = mixtures.next();
      for (String found : differences(mixture).keySet()) {
        differing++;
        differences.computeIfAbsent(found, f -> smallest(mixture, f));
      }
    }
    List<String> lines = new ArrayList<>();
    differences.forEach((found, smallest) -> lines.add(found + " for " + smallest));
    assertThat(String.join("\n", lines))
        .as("%d differences in %d mixtures, seed %d", differing, MIXTURES, SEED)
        .isEmpty();
  }

  /** Which classes differ, with both answers, such as "skin: 2 for -". */
  private static Map<String, String> differences(PlainMixture mixture) {
    Map<String, String> found = new TreeMap<>();
    Map<String, String> plain = PlainRules.answers(mixture);
    Map<String, String> library = PlainBridge.answers(mixture, RULES);
    plain.forEach(
        (id, answer) -> {
          String given = String.valueOf(library.get(id));
          if (!agrees(id, answer, given)) {
            found.put(id + ": rules " + answer + ", library " + given, mixture.toString());
          }
        });
    return found;
  }

  /**
   * One of several answers that the rules allow; a category without its statement where that is
   * open.
   */
  private static boolean agrees(String id, String answer, String given) {
    boolean withoutStatement = id.equals("reproduction") && !answer.contains(" ");
    String compared = withoutStatement ? given.replaceAll(" .*", "") : given;
    return List.of(answer.split("\\|", -1)).contains(compared);
  }

  /** Leaves out what the difference does not need, for a line that a person can follow. */
  private static String smallest(PlainMixture mixture, String difference) {
    PlainMixture small = mixture;
    boolean smaller = true;
    while (smaller) {
      smaller = false;
      for (PlainMixture less : PlainBridge.withLess(small)) {
        if (differences(less).containsKey(difference)) {
          small = less;
          smaller = true;
          break;
        }
      }
    }
    return small.toString();
  }
}
