// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.explain;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.meltwright.core.laws.ExplanationLaws;

/** What holds for the working of every result of the library that explains itself. */
class EveryWorkingTest {

  private static final int DRAWS = Integer.getInteger("random.draws", 500);

  static List<Explained> results() {
    return Explained.all();
  }

  @ParameterizedTest
  @MethodSource("results")
  void every_step_can_be_worked_out_anew(Explained result) {
    Random random = new Random(7);
    for (int i = 0; i < DRAWS; i++) {
      ExplanationLaws.canBeWorkedOutAnew(result.draw(random));
    }
  }

  @ParameterizedTest
  @MethodSource("results")
  void the_working_speaks_both_languages(Explained result) {
    Random random = new Random(8);
    for (int i = 0; i < 20; i++) {
      ExplanationLaws.speaksBothLanguages(result.draw(random));
    }
  }
}
