// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.Sourced;

/** The figures of a name that fits several materials: each spans those of all of them. */
final class Envelope {

  private static final Source SOURCE = Source.CALCULATED.at("span of the materials it may be");

  private Envelope() {}

  /**
   * Adds a span for each property that has no figure of its own.
   *
   * <p>Without lambdas, as all that the standard catalogue runs through when it is first read.
   */
  static void add(List<Material> candidates, Map<PropertyKey<?>, List<Sourced<?>>> figures) {
    if (candidates.isEmpty()) {
      return;
    }
    for (PropertyKey<?> key : PropertyKey.all()) {
      Sourced<?> figure = figures.containsKey(key) ? null : span(key, candidates);
      if (figure != null) {
        figures.put(key, List.of(figure));
      }
    }
  }

  static boolean made(Sourced<?> figure) {
    return figure.source().equals(SOURCE);
  }

  /** A word that warns counts even if one candidate alone has it; a number must be known of all. */
  private static <V> @Nullable Sourced<V> span(PropertyKey<V> key, List<Material> candidates) {
    List<Sourced<V>> known = new ArrayList<>();
    for (Material candidate : candidates) {
      List<Sourced<V>> figures = candidate.figures(key);
      known.addAll(figures.subList(0, Math.min(1, figures.size())));
    }
    boolean enough = key.isInWords() || known.size() == candidates.size();
    return known.isEmpty() || !enough ? null : span(key, known, names(candidates));
  }

  private static <V> Sourced<V> span(PropertyKey<V> key, List<Sourced<V>> known, String names) {
    V value = known.get(0).value();
    Knowledge weakest = Knowledge.DERIVED;
    String barred = "";
    for (Sourced<V> figure : known) {
      value = key.span(value, figure.value());
      weakest = figure.knowledge() == Knowledge.REMEMBERED ? figure.knowledge() : weakest;
      barred = figure.barredBecause().orElse(barred);
    }
    Sourced<V> figure = Sourced.of(value, SOURCE, weakest).withNote(names);
    return barred.isEmpty() ? figure : figure.barredFromRules(barred);
  }

  private static String names(List<Material> candidates) {
    List<String> ids = new ArrayList<>();
    for (Material candidate : candidates) {
      ids.add(candidate.id());
    }
    return String.join(" or ", ids);
  }
}
