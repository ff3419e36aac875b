// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.material.Material;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * The materials of a mix, all different, and the one place that finds those that a question means.
 *
 * <p>A few are searched one by one, many by their ids. Immutable and thread-safe.
 */
final class Lines {

  private static final int SEARCHED_ONE_BY_ONE = 8;

  private final List<Material> materials;

  /** For each id its first line, and for each line the next of the same id, or −1. */
  private final @Nullable Map<String, Integer> firsts;

  private final int[] nexts;

  /** Makes lines of materials that {@link #areDifferent}. */
  Lines(List<Material> materials) {
    this.materials = List.copyOf(materials);
    this.firsts = materials.size() > SEARCHED_ONE_BY_ONE ? new HashMap<>() : null;
    this.nexts = new int[materials.size()];
    for (int i = nexts.length - 1; i >= 0; i--) {
      Integer later = firsts == null ? null : firsts.put(materials.get(i).id(), i);
      nexts[i] = firsts == null ? i + 1 : later == null ? -1 : later;
    }
    if (firsts == null && nexts.length > 0) {
      nexts[nexts.length - 1] = -1;
    }
  }

  static boolean areDifferent(List<Material> materials) {
    if (materials.size() > SEARCHED_ONE_BY_ONE) {
      return new HashSet<>(materials).size() == materials.size();
    }
    for (int i = 1; i < materials.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (materials.get(i).equals(materials.get(j))) {
          return false;
        }
      }
    }
    return true;
  }

  List<Material> materials() {
    return materials;
  }

  /** Returns these lines, if any of them is meant by what is asked for. */
  Lines requireHeld(Material asked) {
    if (meant(asked, first(asked)) < 0) {
      throw new ProblemException(
          Problem.of(MixtureProblem.NOT_IN_MIX, asked.toString()).with("materials", names()));
    }
    return this;
  }

  /** Returns the sum of the values of all lines that are meant by what is asked for. */
  double sumOver(Material asked, double[] values) {
    ExactSum sum = new ExactSum();
    for (int i = meant(asked, first(asked)); i >= 0; i = meant(asked, nexts[i])) {
      sum.add(values[i]);
    }
    return sum.value();
  }

  /** Reduces the values of all lines that are meant, in proportion, to a sum. */
  void reduce(double[] values, Material asked, double sum) {
    double there = sumOver(asked, values);
    for (int i = meant(asked, first(asked)); i >= 0; i = meant(asked, nexts[i])) {
      values[i] = values[i] == there ? sum : values[i] * (sum / there);
    }
  }

  /** Returns the line of a material with all its figures; below zero if there is none. */
  int lineOf(Material material) {
    int i = first(material);
    while (i >= 0 && !materials.get(i).equals(material)) {
      i = nexts[i];
    }
    return i;
  }

  /** Returns the first line from a place on that is meant; below zero if there is none. */
  private int meant(Material asked, int from) {
    int i = from;
    while (i >= 0 && !materials.get(i).isMeantBy(asked)) {
      i = nexts[i];
    }
    return i;
  }

  private int first(Material material) {
    return firsts == null ? 0 : firsts.getOrDefault(material.id(), -1);
  }

  private String names() {
    StringJoiner names = new StringJoiner(", ");
    materials.stream().limit(SEARCHED_ONE_BY_ONE).forEach(m -> names.add(m.toString()));
    return names + (materials.size() > SEARCHED_ONE_BY_ONE ? ", …" : "");
  }
}
