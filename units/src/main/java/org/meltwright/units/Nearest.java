// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * The known word nearest to a misspelt one, by the number of letters to change.
 *
 * <p>No hint is better than a false one: symbols get none, since one letter of theirs is a power of
 * ten; a prefix must be right, and so must the first letters of a word without one; and words that
 * are equally near must mean one unit.
 */
final class Nearest {

  private static final int SHORTEST = 5;
  private static final int LONGEST = 24;
  private static final int HEAD = 2;

  private static final List<String> PREFIXES =
      List.of(
          "giga", "mega", "kilo", "hecto", "hekto", "deca", "deka", "deci", "dezi", "centi",
          "zenti", "milli", "micro", "mikro", "nano");

  private Nearest() {}

  /** The nearest word; null if it lies further than a fourth of the letters, or may be false. */
  static @Nullable String of(String word, Collection<String> known) {
    if (word.length() < SHORTEST || word.length() > LONGEST) {
      return null;
    }
    String lower = word.toLowerCase(Locale.ROOT);
    List<String> nearest = nearest(lower, known);
    boolean sure =
        !nearest.isEmpty() && nearest.stream().allMatch(candidate -> sameHead(lower, candidate));
    return sure ? nearest.get(0) : null;
  }

  /** The words at the least distance, the shortest first. */
  private static List<String> nearest(String lower, Collection<String> known) {
    int best = Math.min(2, 1 + lower.length() / 4);
    List<String> nearest = new ArrayList<>();
    for (String candidate : known) {
      boolean mayBe =
          candidate.length() >= SHORTEST - 1
              && Math.abs(candidate.length() - lower.length()) <= best;
      int distance = mayBe ? distance(lower, candidate) : best + 1;
      if (distance < best) {
        nearest.clear();
      }
      if (distance <= best) {
        best = distance;
        nearest.add(candidate);
      }
    }
    nearest.sort(Comparator.comparingInt(String::length).thenComparing(Comparator.naturalOrder()));
    return nearest;
  }

  /** Whether both have the same prefix, and begin alike if they have none. */
  private static boolean sameHead(String word, String candidate) {
    String prefix = prefix(candidate);
    return prefix.equals(prefix(word))
        && (!prefix.isEmpty() || word.startsWith(candidate.substring(0, HEAD)));
  }

  private static String prefix(String word) {
    return PREFIXES.stream().filter(word::startsWith).findFirst().orElse("");
  }

  /** Letters to insert, delete or replace. */
  private static int distance(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j < row.length; j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j < row.length; j++) {
        int change = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(change, 1 + Math.min(row[j], row[j - 1]));
      }
    }
    return row[b.length()];
  }
}
