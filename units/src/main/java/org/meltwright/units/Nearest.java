// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** The known word nearest to a misspelt one, by the number of letters to change. */
final class Nearest {

  private static final int LONGEST = 24;

  private Nearest() {}

  /** The nearest word; null if all lie further than a third of the letters, or two. */
  static @Nullable String of(String word, Collection<String> known) {
    if (word.length() > LONGEST) {
      return null;
    }
    String lower = word.toLowerCase(Locale.ROOT);
    int limit = Math.min(2, 1 + word.length() / 4);
    int best = limit + 1;
    String nearest = null;
    for (String candidate : known) {
      if (Math.abs(candidate.length() - word.length()) <= limit) {
        int distance = distance(lower, candidate.toLowerCase(Locale.ROOT));
        boolean tie = distance == best && nearest != null;
        if (distance < best || (tie && isBefore(candidate, nearest))) {
          best = distance;
          nearest = candidate;
        }
      }
    }
    return nearest;
  }

  /** Equally near words in a fixed order: the shorter first. */
  private static boolean isBefore(String candidate, @Nullable String nearest) {
    return nearest != null
        && Comparator.comparingInt(String::length)
                .thenComparing(Comparator.naturalOrder())
                .compare(candidate, nearest)
            < 0;
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
