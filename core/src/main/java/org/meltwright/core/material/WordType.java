// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import java.util.List;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * One of some values, each with its word; the one that warns most stands first.
 *
 * @param values the values
 * @param words the word of each value, as a materials file writes it
 */
record WordType<V>(List<V> values, List<String> words) implements PropertyType<V> {

  @Override
  public V parse(String text) {
    int place = words.indexOf(text);
    if (place < 0) {
      throw unknown(text);
    }
    return values.get(place);
  }

  @Override
  public void require(V value) {
    if (!values.contains(value)) {
      throw unknown(value.toString());
    }
  }

  private ProblemException unknown(String found) {
    return new ProblemException(
        Problem.of(MaterialProblem.WORD, found).with("words", String.join(", ", words)));
  }

  @Override
  public String format(V value) {
    return words.get(values.indexOf(value));
  }

  @Override
  public V span(V one, V other) {
    return values.get(Math.min(values.indexOf(one), values.indexOf(other)));
  }
}
