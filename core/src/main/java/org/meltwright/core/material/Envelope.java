// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.Sourced;

/** The figures of a name that fits several materials: each spans those of all of them. */
final class Envelope {

  private static final Source SOURCE = Source.CALCULATED.at("span of the materials it may be");

  private Envelope() {}

  static Map<PropertyKey<?>, Sourced<?>> of(List<Material> candidates) {
    Map<PropertyKey<?>, Sourced<?>> figures = new LinkedHashMap<>();
    if (!candidates.isEmpty()) {
      PropertyKey.all().forEach(key -> span(key, candidates).ifPresent(f -> figures.put(key, f)));
    }
    return figures;
  }

  static boolean made(Sourced<?> figure) {
    return figure.source().equals(SOURCE);
  }

  /** A word that warns counts even if one candidate alone has it; a number must be known of all. */
  private static <V> Optional<Sourced<V>> span(PropertyKey<V> key, List<Material> candidates) {
    List<Sourced<V>> known = candidates.stream().flatMap(m -> m.find(key).stream()).toList();
    if (known.isEmpty() || (known.size() < candidates.size() && !key.isText())) {
      return Optional.empty();
    }
    V value = known.stream().map(Sourced::value).reduce(key::span).orElseThrow();
    Sourced<V> figure =
        Sourced.of(value, SOURCE, weakest(known))
            .withNote(candidates.stream().map(Material::id).collect(Collectors.joining(" or ")));
    return Optional.of(
        known.stream()
            .flatMap(f -> f.barredBecause().stream())
            .findFirst()
            .map(figure::barredFromRules)
            .orElse(figure));
  }

  private static Knowledge weakest(List<? extends Sourced<?>> figures) {
    return figures.stream().map(Sourced::knowledge).anyMatch(Knowledge.REMEMBERED::equals)
        ? Knowledge.REMEMBERED
        : Knowledge.DERIVED;
  }
}
