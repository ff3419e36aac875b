// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import static org.meltwright.safety.hazard.PlainParts.NEVER;
import static org.meltwright.safety.hazard.PlainParts.reached;

import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.meltwright.safety.hazard.PlainMixture.Category;
import org.meltwright.safety.hazard.PlainMixture.Known;
import org.meltwright.safety.hazard.PlainParts.Part;

/** 3.1 Acute toxicity, stated a second time. */
final class PlainAcute {

  private PlainAcute() {}

  /** Table 3.1.1: a category is reached up to its bound; 3.1.2: the estimate of a bare category. */
  private static final Map<String, double[][]> ACUTE =
      Map.of(
          "oral", new double[][] {{5, 50, 300, 2000}, {0.5, 5, 100, 500}},
          "dermal", new double[][] {{50, 200, 1000, 2000}, {5, 50, 300, 1100}},
          "gas", new double[][] {{100, 500, 2500, 20000}, {10, 100, 700, 4500}},
          "vapour", new double[][] {{0.5, 2, 10, 20}, {0.05, 0.5, 3, 11}},
          "dust", new double[][] {{0.05, 0.5, 1, 5}, {0.005, 0.05, 0.5, 1.5}});

  private static final Map<String, Set<String>> ROUTE =
      Map.of(
          "oral", Set.of("H300", "H301", "H302"),
          "dermal", Set.of("H310", "H311", "H312"),
          "gas", Set.of("H330", "H331", "H332"),
          "vapour", Set.of("H330", "H331", "H332"),
          "dust", Set.of("H330", "H331", "H332"));

  /** The upper ends of categories 1 to 4. */
  static double[] bounds(String form) {
    return ACUTE.get(form)[0].clone();
  }

  /** Whether an estimate of it falls in a category. */
  static boolean isEstimated(Known known) {
    return known.estimates.entrySet().stream()
        .anyMatch(e -> acuteCategory(e.getKey(), e.getValue()) <= 4);
  }

  /** Whether the air can hold as much vapour as the estimate of a category. */
  static boolean held(double saturated, int category) {
    return saturated >= ACUTE.get("vapour")[1][category - 1];
  }

  private static int acuteCategory(String form, double estimate) {
    double[] bounds = ACUTE.get(form)[0];
    for (int i = 0; i < 4; i++) {
      if (estimate <= bounds[i] * (1 + 1e-9)) {
        return i + 1;
      }
    }
    return 5;
  }

  /** Its estimate by a form: as stated, else that of its category; never if it has neither. */
  private static double estimate(Known known, String form) {
    Double stated = known.estimates.get(form);
    if (stated != null) {
      return stated;
    }
    boolean inhaled = !form.equals("oral") && !form.equals("dermal");
    boolean otherForm =
        inhaled && Stream.of("gas", "vapour", "dust").anyMatch(f -> known.estimates.containsKey(f));
    for (Category c : known.categories) {
      boolean route = c.name().equals("Acute Tox.") && ROUTE.get(form).contains(c.statement());
      if (route && !otherForm && speaksOf(c.form(), form)) {
        return ACUTE.get(form)[1][Integer.parseInt(c.category()) - 1];
      }
    }
    return NEVER;
  }

  /** Without a form both vapour and dust are reckoned, and the worse is taken. */
  private static boolean speaksOf(String stated, String form) {
    return form.equals("oral")
        || form.equals("dermal")
        || stated.equals(form)
        || (stated.isEmpty() && !form.equals("gas"));
  }

  /**
   * Table 1.1; a gas of category 1 from 0.05 %, which alone makes category 4 (3.1.3.3(a): where
   * there is reason to suspect that less matters).
   */
  private static double relevantFrom(String form, int category) {
    if (category == 1 && form.equals("gas")) {
      return 0.05;
    }
    return category <= 3 ? 0.1 : 1;
  }

  /** 3.1.3.6.1, and from more than 10 % of unknown on 3.1.3.6.2.3. */
  static int category(PlainParts parts, String hazardClass, String form) {
    double sum = 0;
    for (Part p : parts.all()) {
      double estimate = estimate(p.known(), form);
      int category = acuteCategory(form, estimate);
      boolean relevant = category <= 4 && reached(p.share(), relevantFrom(form, category));
      sum += relevant ? p.share() / estimate : 0;
    }
    double unknown =
        parts.all().stream()
            .filter(p -> p.isOpen(hazardClass) && reached(p.share(), 1))
            .mapToDouble(Part::share)
            .sum();
    double whole = unknown > 10 * (1 + 1e-9) ? 100 - unknown : 100;
    return sum == 0 ? 5 : acuteCategory(form, whole / sum);
  }
}
