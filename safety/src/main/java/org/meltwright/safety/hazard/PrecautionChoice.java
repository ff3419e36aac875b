// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Chooses the usual number of precautionary statements from all that the classes offer. */
final class PrecautionChoice {

  /** Normally no more than six (Article 28). */
  static final int USUAL_NUMBER = 6;

  /** They ask for a specific treatment, which the label would have to describe. */
  private static final Set<String> NEVER = Set.of("P320", "P321");

  private static final List<String> ORDER = column("order");
  private static final List<List<String>> BEATS =
      TextTable.rows("precautions.txt").stream().filter(r -> r.get(0).equals("beats")).toList();

  private PrecautionChoice() {}

  /** The chosen codes in the order of the law; for the public with children and disposal. */
  static List<String> choose(Set<String> offered, boolean forThePublic) {
    Set<String> left = new LinkedHashSet<>(offered);
    left.removeAll(NEVER);
    dropBeaten(left);
    List<String> chosen = new ArrayList<>();
    if (forThePublic && !offered.isEmpty()) {
      chosen.add("P102");
    }
    if (left.remove("P501")) {
      chosen.add("P501");
    }
    ORDER.stream().filter(left::contains).limit(USUAL_NUMBER - chosen.size()).forEach(chosen::add);
    return chosen.stream().sorted().toList();
  }

  private static void dropBeaten(Set<String> left) {
    for (List<String> row : BEATS) {
      if (left.contains(row.get(1))) {
        left.remove(row.get(2));
      }
    }
  }

  static Set<String> ranked() {
    return Set.copyOf(ORDER);
  }

  private static List<String> column(String kind) {
    return TextTable.rows("precautions.txt").stream()
        .filter(r -> r.get(0).equals(kind))
        .map(r -> r.get(1))
        .toList();
  }
}
