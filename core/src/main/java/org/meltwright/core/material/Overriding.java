// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Puts what a user states of a material on top of what the catalogue knows. */
final class Overriding {

  private Overriding() {}

  /** The fresh material with the figures, names and parts of the old one behind its own. */
  static Material over(Material fresh, Material old) {
    Material.Builder builder = old.toBuilder();
    MaterialContent merged = builder.content;
    MaterialContent own = fresh.content().changeable();
    merged.lot = own.lot;
    names(merged, own);
    merged.family = own.family == null ? merged.family : own.family;
    merged.role = own.role == null ? merged.role : own.role;
    own.identifiers.forEach((k, list) -> inFront(merged.identifiers, k, list));
    own.figures.forEach((k, list) -> inFront(merged.figures, k, list));
    merged.absences.putAll(own.absences);
    merged.constituents = own.constituents.isEmpty() ? merged.constituents : own.constituents;
    merged.alternatives = own.alternatives.isEmpty() ? merged.alternatives : own.alternatives;
    return builder.build();
  }

  private static void names(MaterialContent merged, MaterialContent own) {
    merged.englishName = own.englishName == null ? merged.englishName : own.englishName;
    merged.germanName = own.germanName == null ? merged.germanName : own.germanName;
    own.otherNames.stream()
        .filter(n -> !merged.otherNames.contains(n))
        .forEach(merged.otherNames::add);
  }

  /** A figure that both state stands once. */
  private static <K, V> void inFront(Map<K, List<V>> map, K key, List<V> figures) {
    List<V> all = new ArrayList<>(figures);
    map.getOrDefault(key, List.of()).stream().filter(f -> !figures.contains(f)).forEach(all::add);
    map.put(key, all);
  }
}
