// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The known word nearest to a misspelt one, by the number of letters to change.
 *
 * <p>No hint is better than a false one: symbols get none, since one letter of theirs is a power of
 * ten; a prefix must be right, and so must the first letters of a word without one; and words that
 * are equally near must mean one unit.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Nearest.distance("gramms", "grams"); // 1
 * Nearest.distance("beewsax", "beeswax"); // 1
 * }</pre>
 *
 * <p>Not instantiable; thread-safe.
 */
public final class Nearest {

  private static final int SHORTEST = 5;
  private static final int LONGEST = 24;
  private static final int HEAD = 2;

  private static final List<String> PREFIXES =
      List.of(
          "giga", "mega", "kilo", "hecto", "hekto", "deca", "deka", "deci", "dezi", "centi",
          "zenti", "milli", "micro", "mikro", "nano");

  private Nearest() {}

  /**
   * Returns the known word that was probably meant.
   *
   * @param word the word as it was written, of 5 to 24 letters; a shorter or longer one has none
   * @param known the words that are known, in lower case where a case does not matter
   * @return the nearest; empty if it lies further than a fourth of the letters, or may be false
   */
  public static Optional<String> of(String word, Collection<String> known) {
    if (word.length() < SHORTEST || word.length() > LONGEST) {
      return Optional.empty();
    }
    String lower = word.toLowerCase(Locale.ROOT);
    List<String> nearest = nearest(lower, known);
    boolean sure =
        !nearest.isEmpty() && nearest.stream().allMatch(candidate -> sameHead(lower, candidate));
    return sure ? Optional.of(nearest.get(0)) : Optional.empty();
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

  /**
   * Counts the letters in which two words differ.
   *
   * @param a a word
   * @param b another
   * @return how many letters to put in, leave out, exchange, or swap with their neighbour
   */
  public static int distance(String a, String b) {
    int[][] cost = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        cost[i][j] = i == 0 || j == 0 ? i + j : step(a, b, cost, i, j);
      }
    }
    return cost[a.length()][b.length()];
  }

  private static int step(String a, String b, int[][] cost, int i, int j) {
    int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
    int least = Math.min(cost[i - 1][j - 1] + change, 1 + Math.min(cost[i - 1][j], cost[i][j - 1]));
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(least, cost[i - 2][j - 2] + 1) : least;
  }
}
