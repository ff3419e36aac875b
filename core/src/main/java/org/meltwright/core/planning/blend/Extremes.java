// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning.blend;

import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.meltwright.core.material.Constituent;
import org.meltwright.core.material.Material;
import org.meltwright.core.mixture.Composition;

/** The extremes of a sum over materials, and over constituents whose shares are ranges. */
final class Extremes {

  private Extremes() {}

  /** The mean over the lines of a mix; of what is not there nothing need be known. */
  static double of(Composition mix, ToDoubleFunction<Material> each) {
    return mix.mean(
        i -> mix.massFractionValue(i) > 0 ? each.applyAsDouble(mix.materials().get(i)) : 0);
  }

  /**
   * The sum over the constituents, with the shares within their ranges that make it most or least
   * and together make up the whole: first the low ends, then what is worth most is filled up.
   */
  static double ofConstituents(Material material, ToDoubleFunction<Material> each, Figure.End end) {
    List<Constituent> parts = material.constituents();
    double[] worth = parts.stream().mapToDouble(p -> each.applyAsDouble(p.material())).toArray();
    if (end == Figure.End.MIDDLE) {
      return middle(parts, worth);
    }
    double sign = end == Figure.End.LARGEST ? -1 : 1;
    double sum = 0;
    double rest = 1;
    for (int i = 0; i < worth.length; i++) {
      double low = parts.get(i).share().low().value();
      sum += low * worth[i];
      rest -= low;
    }
    for (int i : bestFirst(sign, worth)) {
      double room = parts.get(i).share().high().value() - parts.get(i).share().low().value();
      double taken = Math.min(room, Math.max(0, rest));
      sum += taken * worth[i];
      rest -= taken;
    }
    return sum;
  }

  private static int[] bestFirst(double sign, double... worth) {
    return IntStream.range(0, worth.length)
        .boxed()
        .sorted(Comparator.comparingDouble(i -> sign * worth[i]))
        .mapToInt(Integer::intValue)
        .toArray();
  }

  private static double middle(List<Constituent> parts, double... worth) {
    double sum = 0;
    double whole = 0;
    for (int i = 0; i < worth.length; i++) {
      double share = parts.get(i).share().middle().value();
      sum += share * worth[i];
      whole += share;
    }
    return sum / whole;
  }
}
