// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.mixture.Composition;
import org.meltwright.units.TemperaturePoint;

/**
 * A studio puts its data sheet on top of the catalogue, while a recipe from before still holds the
 * catalogue's wax: the review takes the worse of the two, whatever stands first.
 */
class TwoVersionsOfOneMaterialTest {

  private static final MaterialCatalogue STANDARD = MaterialCatalogue.standard();
  private static final Material RESIN = STANDARD.require("damar");
  private static final Material WAX = STANDARD.require("beeswax-yellow");

  /** The same wax with a flash point that forbids 88 °C: 120 °C less 50 K. */
  private static final Material OWN_WAX =
      STANDARD
          .plus(
              """
              material: beeswax-yellow
                flash-point: 120 °C, flash-closed-cup | user | read
              """)
          .require("beeswax-yellow");

  private static final Recipe MEDIUM = Recipe.builder("medium").part(RESIN, 1).part(WAX, 8).build();

  private static HeatingReview review(Composition mix) {
    return HeatingRules.standard()
        .review(HeatingPlan.builder(mix).liquidReading(TemperaturePoint.ofCelsius(88)).build());
  }

  @Test
  void review_bothVersions_blocksInEitherOrder() {
    Recipe oldFirst = Recipe.builder("pot").part(MEDIUM, 1).part(OWN_WAX, 99).build();
    Recipe ownFirst = Recipe.builder("pot").part(OWN_WAX, 99).part(MEDIUM, 1).build();

    for (Recipe pot : List.of(oldFirst, ownFirst)) {
      HeatingReview review = review(pot.composition());
      assertThat(review.isBlocked()).isTrue();
      Finding flash = review.finding("flash-margin").orElseThrow();
      assertThat(flash.severity()).isEqualTo(Severity.DANGER);
      assertThat(flash.isBlocking()).isTrue();
    }
    assertThat(review(oldFirst.composition()).lowestFlashPoint())
        .hasValue(TemperaturePoint.ofCelsius(120));
    assertThat(oldFirst.composition()).isEqualTo(ownFirst.composition());
    assertThat(inWords(oldFirst)).isEqualTo(inWords(ownFirst));
  }

  /** A trace of the own wax is enough: a share decides nothing about a flash point. */
  @Test
  void review_traceOfTheWorseVersion_blocksToo() {
    Recipe pot = Recipe.builder("pot").part(MEDIUM, 999).part(OWN_WAX, 1).build();
    assertThat(review(pot.composition()).finding("flash-margin")).isPresent();
    assertThat(review(MEDIUM.composition()).finding("flash-margin")).isEmpty();
  }

  @Test
  void review_lotsOfTheSameFigures_saysWhatItSaysOfTheMaterial() {
    Composition lots =
        Composition.ofParts(List.of(RESIN, WAX.withLot("7"), WAX.withLot("8")), 1, 4, 4);
    assertThat(review(lots).findings())
        .extracting(Finding::ruleId)
        .isEqualTo(review(MEDIUM.composition()).findings().stream().map(Finding::ruleId).toList());
  }

  /** What a cache of reviews would serve. */
  @Test
  void review_keptByComposition_isThatOfItsOwnMaterial() {
    Map<Composition, HeatingReview> kept = new HashMap<>();
    kept.put(Composition.of(WAX), review(Composition.of(WAX)));
    assertThat(kept).doesNotContainKey(Composition.of(OWN_WAX));
    assertThat(kept).containsKey(Composition.of(WAX));
    kept.put(Composition.of(OWN_WAX), review(Composition.of(OWN_WAX)));
    assertThat(kept.get(Composition.of(WAX)).isBlocked()).isFalse();
    assertThat(kept.get(Composition.of(OWN_WAX)).isBlocked()).isTrue();
  }

  private static List<String> inWords(Recipe recipe) {
    return review(recipe.composition()).findings().stream()
        .map(f -> f.severity() + " " + f.ruleId() + " " + f.summary(Locale.ENGLISH))
        .toList();
  }
}
