// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.meltwright.core.laws.SampleMaterials.BLUE;
import static org.meltwright.core.laws.SampleMaterials.RESIN;
import static org.meltwright.core.laws.SampleMaterials.WAX;
import static org.meltwright.core.laws.SampleMaterials.WHITE;
import static org.meltwright.core.laws.SampleMaterials.withDensity;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.units.ProblemException;

class RecipeTest {

  private static final Recipe MEDIUM = Recipe.named("medium").part(RESIN, 1).part(WAX, 8).build();

  @Test
  void composition_nested_flattensToMaterials() {
    Recipe white = Recipe.named("white").part(WHITE, 20).part(MEDIUM, 80).build();
    Recipe pale = Recipe.named("pale").part(white, 1).part(MEDIUM, 1).part(BLUE, 2).build();
    assertThat(pale.composition().massFractionValue(WHITE)).isCloseTo(0.05, within(1e-15));
    assertThat(pale.composition().massFractionValue(WAX))
        .isCloseTo((0.8 + 1) * 8 / 9 / 4, within(1e-15));
    assertThat(pale.lineShare(Ingredient.of(white))).isEqualTo(0.25);
    assertThat(pale.lineShare(Ingredient.of(WAX))).isZero();
    assertThat(pale).hasToString("pale = 1.0 white + 1.0 medium + 2.0 blue");
  }

  @Test
  void ofVolumeParts_concentrateLetDown_isByMassInTheEnd() {
    // common practice: one volume of a 25 % concentrate and four of medium make 5 %
    Recipe concentrate =
        Recipe.ofVolumeParts(
            "concentrate",
            List.of(
                new RecipePart(Ingredient.of(WHITE), 25),
                new RecipePart(Ingredient.of(MEDIUM), 75)),
            DensityBasis.SOLID);
    Recipe paint =
        Recipe.ofVolumeParts(
            "paint",
            List.of(
                new RecipePart(Ingredient.of(concentrate), 1),
                new RecipePart(Ingredient.of(MEDIUM), 4)),
            DensityBasis.SOLID);
    assertThat(paint.composition().volumeView(DensityBasis.SOLID).volumeFraction(WHITE).percent())
        .isCloseTo(5, within(1e-9));
  }

  @Test
  @Timeout(5)
  void composition_fiftyLevelsOfSharedSubRecipes_takesFiftySteps() {
    Recipe level = MEDIUM;
    for (int i = 0; i < 50; i++) {
      level = Recipe.named("level " + i).part(level, 1).part(level, 2).part(WAX, 0.1).build();
    }
    assertThat(level.composition().size()).isEqualTo(2);
    assertThat(level.tree(1000)).hasSizeLessThan(160);
    assertThat(level.equals(Recipe.named("level 49").part(WAX, 1).build())).isFalse();
    assertThat(level.hashCode()).isNotZero();
  }

  @Test
  @Timeout(10)
  void composition_tenThousandPartsAndLevels_overflowsNothing() {
    Recipe.Builder wide = Recipe.named("wide");
    for (int i = 0; i < 10_000; i++) {
      wide.part(withDensity("m" + i, 1000), i + 1);
    }
    assertThat(wide.build().composition().size()).isEqualTo(10_000);
    assertThat(wide.build().tree(20)).hasSize(20).last().isEqualTo("…");
    Recipe deep = MEDIUM;
    for (int i = 0; i < 10_000; i++) {
      deep = Recipe.named("level " + i).part(deep, 1).build();
    }
    assertThat(deep.composition().massFractionValue(RESIN)).isCloseTo(1.0 / 9, within(1e-9));
    assertThat(deep.tree(50)).hasSize(50);
  }

  @Test
  void tree_sharedSubRecipe_isSpelledOutOnce() {
    Recipe two = Recipe.named("two").part(MEDIUM, 1).part(MEDIUM, 2).build();
    assertThat(two.tree(10))
        .containsExactly(
            "two", "  1.0 medium", "    1.0 resin", "    8.0 wax", "  2.0 medium (see above)");
    assertThat(two.tree(3)).containsExactly("two", "  1.0 medium", "…");
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY, 1e13})
  void part_partsThatCannotBe_areRefused(double parts) {
    assertThatThrownBy(() -> Recipe.named("bad").part(WAX, parts))
        .isInstanceOf(ProblemException.class)
        .hasMessageContaining("wax");
  }

  @Test
  void build_nothingInIt_isRefused() {
    assertThatThrownBy(() -> Recipe.named("empty").build())
        .isInstanceOf(ProblemException.class)
        .hasMessageContaining("no parts");
    assertThatThrownBy(() -> Recipe.named("zero").part(WAX, 0).build())
        .isInstanceOf(ProblemException.class);
    assertThatThrownBy(() -> Recipe.named(" ").part(WAX, 1).build())
        .isInstanceOf(ProblemException.class)
        .hasMessageContaining("no name");
  }
}
