// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.file;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/** The constants of an enum as a file writes them: lower case, words joined by hyphens. */
final class Words {

  private Words() {}

  /** Returns the word for a constant. */
  static String of(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Returns the constant for a word. */
  static <E extends Enum<E>> E read(Class<E> type, String word) {
    return Arrays.stream(type.getEnumConstants())
        .filter(c -> of(c).equals(word))
        .findFirst()
        .orElseThrow(
            () ->
                new ProblemException(
                    Problem.of(StudioProblem.UNKNOWN_WORD, word).with("words", all(type))));
  }

  /** Returns all words of an enum. */
  static <E extends Enum<E>> String all(Class<E> type) {
    return Arrays.stream(type.getEnumConstants()).map(Words::of).collect(Collectors.joining(", "));
  }
}
