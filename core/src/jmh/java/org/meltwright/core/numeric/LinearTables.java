// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.numeric;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;

/** Prints the table of docs/reference/performance.md: the small solver beside two general ones. */
public final class LinearTables {

  private static final int PROGRAMMES = 300;
  private static final int ROUNDS = 40;

  private LinearTables() {}

  /**
   * Prints the table.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    System.out.println("| columns × rows | with an answer | here, µs | commons-math3, µs | ojAlgo, µs |");
    for (int[] size : new int[][] {{5, 4}, {10, 8}, {20, 15}, {40, 25}}) {
      List<RandomProgramme> all = new ArrayList<>();
      for (int seed = 1; seed <= PROGRAMMES; seed++) {
        all.add(RandomProgramme.blend(seed, size[0], size[1]));
      }
      double own = micros(all, p -> p.programme().solve());
      double math = micros(all, OtherSolvers::commonsMath);
      double algo = micros(all, OtherSolvers::ojAlgo);
      System.out.printf(
          Locale.ROOT,
          "| %d × %d | %d of %d | %.1f | %.1f (%.0f times) | %.1f (%.0f times) |%n",
          size[0],
          size[1],
          all.stream().filter(p -> OtherSolvers.commonsMath(p).isPresent()).count(),
          all.size(),
          own,
          math,
          math / own,
          algo,
          algo / own);
    }
  }

  /** Processor time of this thread, which a busy machine does not lengthen. */
  private static long now() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  /** The median of the rounds, a programme each. */
  private static double micros(List<RandomProgramme> all, Consumer<RandomProgramme> solver) {
    double[] rounds = new double[ROUNDS];
    for (int round = 0; round < ROUNDS; round++) {
      long start = now();
      all.forEach(solver);
      rounds[round] = (now() - start) / 1e3 / all.size();
    }
    double[] warm = Arrays.copyOfRange(rounds, ROUNDS / 2, ROUNDS);
    Arrays.sort(warm);
    return warm[warm.length / 2];
  }
}
