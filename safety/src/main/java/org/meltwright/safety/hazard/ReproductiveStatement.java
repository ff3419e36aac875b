// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;

/** Puts the categories of fertility and development together into one statement. */
final class ReproductiveStatement {

  private final Map<String, String> levels = new HashMap<>();

  /** Takes the category that a strand (D, F or U) reaches. */
  void reach(String strand, String level) {
    levels.put(strand, level);
  }

  /** The most severe category and the statement that speaks of all strands. */
  HazardCategory category() {
    String worst = Stream.of("1A", "1B", "2").filter(levels::containsValue).findFirst().orElse("2");
    return HazardCategory.of(HazardClass.REPRODUCTION, worst, statement(!worst.equals("2")));
  }

  private String statement(boolean presumed) {
    String code = presumed ? "H360" : "H361";
    String unspecified = levels.get("U");
    if (unspecified != null && unspecified.startsWith("1") == presumed) {
      return code;
    }
    String fertility = letter("F");
    String development = letter("D");
    boolean fertilityFirst = !(fertility.equals("f") && development.equals("D"));
    return code + (fertilityFirst ? fertility + development : development + fertility);
  }

  private String letter(String strand) {
    String level = levels.get(strand);
    if (level == null) {
      return "";
    }
    return level.startsWith("1") ? strand : strand.toLowerCase(java.util.Locale.ROOT);
  }
}
