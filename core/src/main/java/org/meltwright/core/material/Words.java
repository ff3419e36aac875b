// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/** Words of a materials file that stand for the constants of an enum. */
final class Words {

  private static final Map<Class<?>, Map<String, Object>> KNOWN = new ConcurrentHashMap<>();

  private Words() {}

  /** The word of a constant: lower case, hyphens. */
  static String of(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The constant that a word stands for. */
  static <E extends Enum<E>> E parse(Class<E> type, String word) {
    Map<String, Object> words = known(type);
    E constant = type.cast(words.get(word));
    if (constant == null) {
      throw new ProblemException(
          Problem.of(MaterialProblem.WORD, word).with("words", String.join(", ", words.keySet())));
    }
    return constant;
  }

  private static <E extends Enum<E>> Map<String, Object> known(Class<E> type) {
    Map<String, Object> words = KNOWN.get(type);
    if (words == null) {
      words = new TreeMap<>();
      for (E constant : type.getEnumConstants()) {
        words.put(of(constant), constant);
      }
      KNOWN.put(type, words);
    }
    return words;
  }
}
