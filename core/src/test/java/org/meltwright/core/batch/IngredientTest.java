// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.meltwright.units.MetricUnits.grams;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.meltwright.core.material.Material;
import org.meltwright.units.MassFraction;

/** What is lost in making an ingredient is lost once, wherever the ingredient goes. */
class IngredientTest {

  private static final Material RESIN = Material.builder("resin").build();
  private static final Material WAX = Material.builder("wax").build();
  private static final Losses DIRT = Losses.NONE.withInsolubles(RESIN, MassFraction.of(0.04));
  private static final Recipe MEDIUM = Recipe.builder("medium").part(RESIN, 1).part(WAX, 8).build();

  private static Recipe cakes(Ingredient ingredient) {
    return Recipe.builder("cakes").part(ingredient, 1).build();
  }

  @Test
  void composition_isWithoutWhatStaysBehind() {
    // 0.96 of resin to 8 of wax
    assertThat(Ingredient.of(MEDIUM, DIRT).composition().massFractionValue(RESIN))
        .isCloseTo(0.96 / 8.96, within(1e-15));
    assertThat(Ingredient.of(MEDIUM).composition()).isEqualTo(MEDIUM.composition());
  }

  @Test
  void strainedMedium_leavesNothingBehindAgain() {
    Batch batch = Batch.ofTotal(cakes(Ingredient.of(MEDIUM, DIRT)), grams(900), DIRT);
    assertThat(batch.insolublesKilograms()).isZero();
    assertThat(batch.net().massKilograms()).isEqualTo(0.9);
  }

  /** One part of resin in nine, 4 % of it: 4 g of 900 g. */
  @Test
  void mediumThatWasNotStrained_leavesItsDirtInTheNextPot() {
    Batch batch = Batch.ofTotal(cakes(Ingredient.of(MEDIUM)), grams(900), DIRT);
    assertThat(batch.insolublesKilograms()).isCloseTo(0.004, within(1e-15));
  }

  /** 100 g from the shelf leave 4 g; the resin of 896 g strained medium leaves none. */
  @Test
  void freshResinBesideStrainedMedium_leavesItsOwnDirtAlone() {
    Recipe richer =
        Recipe.builder("richer").part(Ingredient.of(MEDIUM, DIRT), 896).part(RESIN, 100).build();
    Batch batch = Batch.ofTotal(richer, grams(996), DIRT);
    assertThat(batch.insolublesKilograms()).isCloseTo(0.004, within(1e-15));
    assertThat(batch.net().massKilograms(RESIN)).isCloseTo(0.096 + 0.096, within(1e-15));
  }

  @Test
  void twoStrainings_eachTakeWhatIsNew() {
    Losses grit = Losses.NONE.withInsolubles(WAX, MassFraction.of(0.01));
    Ingredient twice =
        Ingredient.of(
            cakes(Ingredient.of(MEDIUM, DIRT)), DIRT.withInsolubles(WAX, MassFraction.of(0.01)));
    Ingredient apart = Ingredient.of(cakes(Ingredient.of(MEDIUM, DIRT)), grit);
    assertThat(twice.composition().massFractionValue(RESIN))
        .isEqualTo(apart.composition().massFractionValue(RESIN))
        .isCloseTo(0.96 / (0.96 + 7.92), within(1e-15));
  }

  @Test
  void aRecipe_isAskedForWhateverIsLostInMakingIt() {
    Ingredient strained = Ingredient.of(MEDIUM, DIRT);
    assertThat(strained.isMeantBy(Ingredient.of(MEDIUM))).isTrue();
    assertThat(strained).isNotEqualTo(Ingredient.of(MEDIUM));
    Batch batch =
        Batch.ofIngredient(cakes(strained), Ingredient.of(MEDIUM), grams(50), Losses.NONE);
    assertThat(batch.charge().massKilograms()).isEqualTo(0.05);
  }

  /** Of the same shares, one has left its dirt already: a batch of the other loses more. */
  @Test
  void recipesOfTheSameShares_areEqualOnlyIfAsMuchIsStrained() {
    Ingredient strained = Ingredient.of(MEDIUM, DIRT);
    Recipe raw = Recipe.builder("cakes").parts(strained.composition()).build();
    assertThat(raw.composition()).isEqualTo(cakes(strained).composition());
    assertThat(raw).isNotEqualTo(cakes(strained));
    assertThat(raw).isEqualTo(Recipe.builder("cakes").parts(strained.composition()).build());
  }

  @Property(tries = 300)
  void orderOfLines_makesNoDifferenceToTheLastBit(
      @ForAll @DoubleRange(min = 0.01, max = 100) double strained,
      @ForAll @DoubleRange(min = 0.01, max = 100) double raw,
      @ForAll @DoubleRange(min = 0.01, max = 100) double resin) {
    RecipePart a = new RecipePart(Ingredient.of(MEDIUM, DIRT), strained);
    RecipePart b = new RecipePart(Ingredient.of(MEDIUM), raw);
    RecipePart c = new RecipePart(Ingredient.of(RESIN), resin);
    assertThat(Recipe.of("mix", List.of(a, b, c))).isEqualTo(Recipe.of("mix", List.of(c, a, b)));
  }

  /** However often it goes through the strainer, what is left is what one straining leaves. */
  @Property(tries = 100)
  void strainingAgain_changesNothing(
      @ForAll @IntRange(min = 1, max = 50) int times,
      @ForAll @DoubleRange(min = 0, max = 0.9) double dirt) {
    Losses losses = Losses.NONE.withInsolubles(RESIN, MassFraction.of(dirt));
    Ingredient ingredient = Ingredient.of(MEDIUM, losses);
    for (int i = 0; i < times; i++) {
      ingredient = Ingredient.of(cakes(ingredient), losses);
    }
    assertThat(ingredient.composition().massFractionValue(RESIN))
        .isCloseTo((1 - dirt) / (9 - dirt), within(1e-12));
  }
}
