// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.EnumMap;
import java.util.Map;

/** Puts the categories of fertility and development together into one statement. */
final class ReproductiveStatement {

  private final Map<Effect, Category> reached = new EnumMap<>(Effect.class);

  /** Takes the category that an effect reaches. */
  void reach(Effect effect, Category category) {
    reached.put(effect, category);
  }

  /** The most severe category and the statement that speaks of all effects. */
  HazardCategory category() {
    Category worst = reached.values().stream().min(Category::compareTo).orElse(Category.TWO);
    return HazardCategory.of(HazardClass.REPRODUCTION, worst, statement(worst.isOne()));
  }

  private String statement(boolean presumed) {
    String code = presumed ? "H360" : "H361";
    Category notSaid = reached.get(Effect.NOT_SAID);
    if (notSaid != null && notSaid.isOne() == presumed) {
      return code;
    }
    String fertility = letter(Effect.FERTILITY);
    String development = letter(Effect.DEVELOPMENT);
    boolean fertilityFirst = !(fertility.equals("f") && development.equals("D"));
    return code + (fertilityFirst ? fertility + development : development + fertility);
  }

  private String letter(Effect effect) {
    Category category = reached.get(effect);
    return category == null ? "" : effect.letter(!category.isOne());
  }
}
