// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/** Any text but none. */
record TextType() implements PropertyType<String> {

  @Override
  public String parse(String text) {
    if (text.isEmpty()) {
      throw new ProblemException(Problem.of(MaterialProblem.WORD, text).with("words", ""));
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
    return one.equals(other) ? one : one + "; " + other;
  }
}
