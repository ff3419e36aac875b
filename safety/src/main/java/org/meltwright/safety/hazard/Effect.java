// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.EnumMap;
import java.util.Map;

/** What a class harms where the law holds each against limits of its own: reproduction alone. */
enum Effect {
  /** The unborn child: D, d. */
  DEVELOPMENT("D"),
  /** Fertility: F, f. */
  FERTILITY("F"),
  /** A statement that does not say which of the two. */
  NOT_SAID(""),
  /** The class as a whole. */
  WHOLE("");

  private final String letter;

  Effect(String letter) {
    this.letter = letter;
  }

  /** The letter that a statement carries for it: small where it is only suspected. */
  String letter(boolean suspected) {
    return suspected ? letter.toLowerCase(java.util.Locale.ROOT) : letter;
  }

  /** The effects of a category of reproduction, each with the category that its letter says. */
  static Map<Effect, Category> of(Category category, String statement) {
    Map<Effect, Category> effects = new EnumMap<>(Effect.class);
    for (char letter : statement.substring("H360".length()).toCharArray()) {
      Effect effect = Character.toUpperCase(letter) == 'D' ? DEVELOPMENT : FERTILITY;
      effects.put(effect, Character.isUpperCase(letter) ? category : Category.TWO);
    }
    return effects.isEmpty() ? Map.of(NOT_SAID, category) : effects;
  }
}
