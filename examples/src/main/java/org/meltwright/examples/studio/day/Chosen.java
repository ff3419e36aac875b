// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.day;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.cost.ExactMoney;
import org.meltwright.core.planning.blend.BlendAnswer;
import org.meltwright.core.planning.blend.BlendLine;
import org.meltwright.examples.studio.page.Say;

/**
 * A recipe that was found for wishes.
 *
 * @param recipe the recipe, its parts the grams that are weighed
 * @param blend the blend, proved best
 * @param usual the recipe that it stands in for; null if none was named
 * @param saved what it costs less than the same mass of the usual one, all of it new; null if that
 *     cannot be told
 */
public record Chosen(
    Recipe recipe, BlendAnswer.Found blend, @Nullable Recipe usual, @Nullable ExactMoney saved) {

  /**
   * Returns how much is made, as it is weighed.
   *
   * @return the mass in kg
   */
  public double kilograms() {
    return blend.lines().stream().mapToDouble(BlendLine::weighedKilograms).sum();
  }

  /**
   * Returns what it saves.
   *
   * @param say the language
   * @return the words; empty if that cannot be told, or it saves nothing
   */
  public Optional<String> saving(Say say) {
    return usual == null || saved == null || saved.isNegative()
        ? Optional.empty()
        : Optional.of(
            say.words("chosen.saves", "money", say.money(saved.toMoney()), "recipe", usual.name()));
  }

  /**
   * Returns why so much of each: what binds, what more would be worth, and the proof.
   *
   * @param say the language
   * @return the sentences
   */
  public List<String> reasons(Say say) {
    List<String> all = new ArrayList<>();
    saving(say).ifPresent(all::add);
    blend.sentences().forEach(s -> all.add(say.in(s)));
    all.add(say.words("chosen.how"));
    return all;
  }
}
