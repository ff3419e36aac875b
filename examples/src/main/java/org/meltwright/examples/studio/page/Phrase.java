// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.page;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Something to be said, by the key of its words and by what stands in their places; the words come
 * from the reader's own file.
 *
 * <p>Immutable and thread-safe.
 *
 * @param key the key of the words
 * @param places what stands in them, by name: texts, numbers, materials, phrases, or lists of these
 */
public record Phrase(String key, Map<String, Object> places) {

  /**
   * Copies the places.
   *
   * @param key the key of the words
   * @param places what stands in them, by name
   */
  public Phrase {
    places = Map.copyOf(places);
  }

  /**
   * Returns a phrase.
   *
   * @param key the key of the words
   * @param places the name of a place, what stands in it, the name of the next, and so on
   * @return the phrase
   */
  public static Phrase of(String key, Object... places) {
    Map<String, Object> all = new LinkedHashMap<>();
    for (int i = 0; i + 1 < places.length; i += 2) {
      all.put((String) places[i], places[i + 1]);
    }
    return new Phrase(key, all);
  }
}
