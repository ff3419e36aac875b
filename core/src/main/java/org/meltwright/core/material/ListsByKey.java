// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Maps of lists, in the order of adding. */
final class ListsByKey {

  private ListsByKey() {}

  /** Fills a map with immutable copies of the lists of another. */
  static <K, V> Map<K, List<V>> copy(Map<K, List<V>> target, Map<K, List<V>> source) {
    for (Map.Entry<K, List<V>> entry : source.entrySet()) {
      target.put(entry.getKey(), List.copyOf(entry.getValue()));
    }
    return target;
  }

  /** Adds to a list; without a lambda: thousands are added before the compiler warms up. */
  static <K, V> void add(Map<K, List<V>> map, K key, V value) {
    List<V> list = map.get(key);
    if (list == null) {
      list = new ArrayList<>();
      map.put(key, list);
    }
    list.add(value);
  }
}
