// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.meltwright.safety.hazard.PlainMixture.Known;
import org.meltwright.safety.hazard.PlainMixture.Limit;
import org.meltwright.safety.hazard.PlainMixture.Line;

/** Substances with their shares, once all lines of each are added; what several rules ask. */
record PlainParts(List<Part> all) {

  /** Larger than any limit. */
  static final double NEVER = Double.POSITIVE_INFINITY;

  /** A substance with its share by mass in per cent, the upper end of a range. */
  record Part(double share, Known known) {

    /** The share that limits count: under note 1 that of the metal. */
    double counted() {
      return share * known.metal;
    }

    boolean isOpen(String hazardClass) {
      return known.isOpen(hazardClass);
    }
  }

  static PlainParts of(PlainMixture mixture) {
    Map<String, Part> added = new LinkedHashMap<>();
    for (Line line : mixture.lines()) {
      added.merge(
          line.known().id,
          new Part(line.high(), line.known()),
          (a, b) -> new Part(a.share + b.share, a.known));
    }
    return new PlainParts(added.values().stream().filter(p -> p.share > 0).toList());
  }

  /** A limit is reached at its value, with a slack of 1e-9. */
  static boolean reached(double value, double limit) {
    return value >= limit * (1 - 1e-9);
  }

  boolean anyOpen(String hazardClass, double from) {
    return all.stream().anyMatch(p -> p.isOpen(hazardClass) && reached(p.share, from));
  }

  static double ownLimit(Known known, Set<String> names, Set<String> categories) {
    return known.limits.stream()
        .filter(l -> names.contains(l.name()) && categories.contains(l.category()))
        .mapToDouble(Limit::from)
        .min()
        .orElse(NEVER);
  }

  /** Article 10: the limit of its own in place of the general; a worse category counts as well. */
  static double limit(
      Known known, Set<String> names, Set<String> same, Set<String> worse, double general) {
    double own = ownLimit(known, names, same);
    return Math.min(own < NEVER ? own : general, ownLimit(known, names, worse));
  }

  /** Article 10 speaks of one category: a limit of its own of another leaves the general one. */
  static boolean ownOfItsCategory(Known known, Set<String> names) {
    return known.limits.stream()
        .filter(l -> names.contains(l.name()))
        .anyMatch(l -> known.has(l.name(), l.category()));
  }

  /** Where a range of its own ends, and the worse category begins. */
  static double endOfRange(Known known, Set<String> names) {
    return known.limits.stream()
        .filter(l -> names.contains(l.name()) && l.below() <= 100)
        .mapToDouble(Limit::below)
        .max()
        .orElse(NEVER);
  }

  /** Table 1.1, of the whole substance: from 1 %, or from a lower limit of its own (1.1.2.2.2). */
  static boolean relevant(Part p, Set<String> names) {
    double own =
        p.known.limits.stream()
            .filter(l -> names.contains(l.name()))
            .mapToDouble(Limit::from)
            .min()
            .orElse(NEVER);
    return reached(p.share(), Math.min(1, own));
  }
}
