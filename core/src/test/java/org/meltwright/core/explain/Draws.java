// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.explain;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Random;

/** The likely range by chance alone: every input drawn from its own distribution. */
final class Draws {

  private Draws() {}

  /** The ends that 2.5 % of so many seeded draws lie below and above. */
  static double[] likely(Drivers drivers, int count, int seed) {
    Random random = new Random(seed);
    double[] results = new double[count];
    for (int i = 0; i < count; i++) {
      Map<EstimateInput, Double> values = new HashMap<>();
      drivers.inputs().forEach(input -> values.put(input, drawn(input, random)));
      results[i] = drivers.model().of(input -> values.getOrDefault(input, input.central()));
    }
    Arrays.sort(results);
    return new double[] {results[count / 40], results[count - 1 - count / 40]};
  }

  /** Not by the code that is held to it: sums and rejection instead of inverse functions. */
  private static double drawn(EstimateInput input, Random random) {
    double position =
        switch (input.spread()) {
          case EVEN -> 2 * random.nextDouble() - 1;
          case TRIANGULAR -> random.nextDouble() + random.nextDouble() - 1;
          case NORMAL -> normal(random);
        };
    double half = (input.high() - input.low()) / 2;
    return input.low() + half * (1 + position);
  }

  private static double normal(Random random) {
    double drawn = random.nextGaussian() / 2;
    while (Math.abs(drawn) > 1) {
      drawn = random.nextGaussian() / 2;
    }
    return drawn;
  }
}
