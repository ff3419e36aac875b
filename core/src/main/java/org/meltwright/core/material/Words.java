// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import java.util.Arrays;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/** Words of a materials file that stand for the constants of an enum. */
final class Words {

  private Words() {}

  /** The word of a constant: lower case, hyphens. */
  static String of(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The constant that a word stands for. */
  static <E extends Enum<E>> E parse(Class<E> type, String word) {
    for (E constant : type.getEnumConstants()) {
      if (of(constant).equals(word)) {
        return constant;
      }
    }
    throw new ProblemException(
        Problem.of(MaterialProblem.WORD, word)
            .with("words", ids(type.getEnumConstants(), Words::of)));
  }

  static <E> String ids(E[] constants, Function<E, String> id) {
    return Arrays.stream(constants).map(id).collect(Collectors.joining(", "));
  }
}
