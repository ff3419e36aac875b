// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import java.util.List;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/** One of some words, the one that warns most first; any text if there are none. */
record TextType(List<String> words) implements PropertyType<String> {

  @Override
  public String parse(String text) {
    if (text.isEmpty() || !(words.isEmpty() || words.contains(text))) {
      throw new ProblemException(
          Problem.of(MaterialProblem.WORD, text).with("words", String.join(", ", words)));
    }
    return text;
  }

  @Override
  public void require(String value) {
    parse(value);
  }

  @Override
  public String format(String value) {
    return value;
  }

  @Override
  public String span(String one, String other) {
    if (one.equals(other)) {
      return one;
    }
    return words.isEmpty()
        ? one + "; " + other
        : words.get(Math.min(words.indexOf(one), words.indexOf(other)));
  }
}
