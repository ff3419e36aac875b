// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning.blend;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * What each part adds to each figure, looked up once for a list of parts: materials are asked a few
 * hundred times for one question, the search wants to know it some ten thousand times.
 *
 * <p>Thread-safe: what is found twice is the same.
 */
final class Coefficients {

  /** The most that is kept of bounds that only a search by halving asks for. */
  private static final int MOST = 200;

  private record Sum(Figure figure, Figure.End end) {}

  private record Excess(Figure figure, Figure.End end, double bound) {}

  private final List<BlendPart> parts;
  private final Map<Sum, double[]> sums = new ConcurrentHashMap<>();
  private final Map<Excess, double[]> excesses = new ConcurrentHashMap<>();

  Coefficients(List<BlendPart> parts) {
    this.parts = parts;
  }

  List<BlendPart> parts() {
    return parts;
  }

  /** What a kilogram of each part adds above; not to be written to. */
  double[] over(Figure figure, Figure.End end) {
    Sum key = new Sum(figure, end);
    double[] known = sums.get(key);
    if (known == null) {
      known = new double[parts.size()];
      for (int p = 0; p < known.length; p++) {
        known[p] = figure.over(parts.get(p), end);
      }
      sums.put(key, known);
    }
    return known;
  }

  /** What a kilogram of each part adds above, less the bound times what it adds below. */
  double[] excess(Figure figure, double bound, Figure.End end) {
    if (figure.per() != Figure.Per.OTHER) {
      double[] excess = over(figure, end).clone();
      for (int p = 0; p < excess.length && figure.per() == Figure.Per.BLEND; p++) {
        excess[p] -= bound;
      }
      return excess;
    }
    Excess key = new Excess(figure, end, bound);
    double[] known = excesses.get(key);
    if (known == null) {
      known = new double[parts.size()];
      for (int p = 0; p < known.length; p++) {
        known[p] = figure.excess(parts.get(p), bound, end);
      }
      if (excesses.size() < MOST) {
        excesses.put(key, known);
      }
    }
    return known;
  }
}
