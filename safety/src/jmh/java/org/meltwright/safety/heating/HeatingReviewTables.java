// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.lang.management.ManagementFactory;
import java.util.function.Supplier;

/**
 * Reviews in a second of one core's own time, which a busy machine does not lengthen: the same that
 * {@link HeatingReviewBenchmark} measures by the clock.
 */
public final class HeatingReviewTables {

  private static final int ROUNDS = 8;
  private static final long NANOSECONDS_A_ROUND = 3_000_000_000L;

  private HeatingReviewTables() {}

  /** Prints one line for each round; the first ones warm up. */
  public static void main(String[] args) {
    HeatingReviewBenchmark benchmark = new HeatingReviewBenchmark();
    for (int round = 1; round <= ROUNDS; round++) {
      System.out.printf(
          "round %d: plain pot %,d, random plans %,d reviews a second%n",
          round, perSecond(benchmark::plainPot), perSecond(benchmark::randomPlan));
    }
  }

  private static long perSecond(Supplier<HeatingReview> work) {
    long start = used();
    long reviews = 0;
    int findings = 0;
    while (used() - start < NANOSECONDS_A_ROUND) {
      for (int i = 0; i < 1000; i++) {
        findings += work.get().findings().size();
      }
      reviews += 1000;
    }
    if (findings == 0) {
      throw new IllegalStateException("nothing was reviewed");
    }
    return reviews * 1_000_000_000L / (used() - start);
  }

  /** Processor time of this thread, in ns. */
  private static long used() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }
}
