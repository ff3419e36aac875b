// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.meltwright.core.laws.SampleMaterials.RESIN;
import static org.meltwright.core.laws.SampleMaterials.WAX;
import static org.meltwright.core.laws.SampleMaterials.WHITE;
import static org.meltwright.units.MetricUnits.grams;
import static org.meltwright.units.MetricUnits.kilograms;

import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.meltwright.core.material.Material;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.units.MassFraction;
import org.meltwright.units.MixingRatio;
import org.meltwright.units.ProblemException;

class BatchTest {

  private static final Recipe MEDIUM =
      Recipe.ofRatio(
          "medium", new MixingRatio(1, 8, "resin", "wax"), Map.of("resin", RESIN, "wax", WAX));

  private static final Losses LOSSES =
      Losses.NONE
          .withInsolubles(RESIN, MassFraction.ofPercent(4))
          .withFilm(MassFraction.ofPercent(2));

  @Test
  void ofIngredient_730GramsAtOneToEight_calls91GramsOfTheOther() {
    // arithmetic
    Batch batch = Batch.ofIngredient(MEDIUM, WAX, grams(730), Losses.NONE);
    assertThat(batch.massOf(RESIN).getValue().doubleValue()).isCloseTo(0.09125, within(1e-15));
    assertThat(batch.charge().massKilograms()).isCloseTo(0.82125, within(1e-15));
    assertThat(batch.net().massKilograms()).isCloseTo(0.82125, within(1e-15));
  }

  @Test
  void usingUp_whatIsLeft_keepsTheMassAsItWasGiven() {
    for (int grams = 1; grams <= 2000; grams++) {
      Batch batch = Batch.usingUp(MEDIUM, WAX, grams(grams), Losses.NONE);
      assertThat(batch.lines().get(1).massKilograms()).isEqualTo(grams / 1000.0);
      assertThat(batch.massOf(WAX).getValue().doubleValue()).isEqualTo(grams / 1000.0);
    }
  }

  @Test
  void net_insolublesAndFilm_leaves801Grams() {
    // arithmetic: 821.25 - 3.65 - 16.425
    Batch batch = Batch.ofIngredient(MEDIUM, WAX, grams(730), LOSSES);
    assertThat(batch.net().massKilograms()).isCloseTo(0.801175, within(1e-12));
    assertThat(batch.insolublesKilograms()).isCloseTo(0.00365, within(1e-12));
    assertThat(batch.filmKilograms()).isCloseTo(0.016425, within(1e-12));
    assertThat(batch.strainingKilograms()).isZero();
  }

  @Test
  void net_insolubles_leaveTheComposition() {
    Batch batch = Batch.ofIngredient(MEDIUM, WAX, grams(730), LOSSES);
    double resin = 91.25 * 0.96;
    assertThat(batch.charge().composition().massFractionValue(RESIN)).isEqualTo(1.0 / 9);
    assertThat(batch.net().composition().massFractionValue(RESIN))
        .isCloseTo(resin / (resin + 730), within(1e-12));
    assertThat(
            batch.net().composition().volumeView(DensityBasis.SOLID).volumeFraction(RESIN).value())
        .isLessThan(
            batch
                .charge()
                .composition()
                .volumeView(DensityBasis.SOLID)
                .volumeFraction(RESIN)
                .value());
  }

  @ParameterizedTest
  @ValueSource(doubles = {1e-3, 20, 801.175, 5e5})
  void ofNet_anyAmount_leavesIt(double net) {
    Losses losses =
        LOSSES
            .withFilm(grams(18), MassFraction.ofPercent(2))
            .withStraining(MassFraction.ofPercent(1));
    assertThat(Batch.ofNet(MEDIUM, grams(net), losses).net().massKilograms())
        .isCloseTo(net / 1000, within(1e-12 * Math.max(1, net)));
  }

  @Test
  void ofNet_801Grams_calls730GramsOfTheBase() {
    Batch batch = Batch.ofNet(MEDIUM, grams(801.175), LOSSES);
    assertThat(batch.massOf(WAX).getValue().doubleValue()).isCloseTo(0.730, within(1e-9));
  }

  @Test
  void ofCakes_elevenCakes_leavesTheirMass() {
    Batch batch = Batch.ofCakes(MEDIUM, 11, grams(71.208), LOSSES);
    assertThat(batch.net().massKilograms()).isCloseTo(0.783288, within(1e-12));
  }

  @Test
  void usingUp_allThatIsLeft_isKnownToTheBatch() {
    Batch batch = Batch.usingUp(MEDIUM, WAX, grams(730), Losses.NONE);
    assertThat(batch.usedUp()).contains(Ingredient.of(WAX));
    assertThat(Batch.ofTotal(MEDIUM, grams(900), Losses.NONE).usedUp()).isEmpty();
  }

  @Test
  void filmKilograms_smallBatch_isTheFixedMass() {
    Losses losses = Losses.NONE.withFilm(grams(18), MassFraction.ofPercent(2));
    assertThat(losses.filmKilograms(0.5)).isEqualTo(0.018);
    assertThat(losses.filmKilograms(2)).isEqualTo(0.04);
  }

  @Test
  void lines_nestedRecipe_callForTheSubRecipe() {
    Recipe colour = Recipe.builder("white").part(WHITE, 27.2).part(MEDIUM, 72.8).build();
    Batch batch = Batch.ofTotal(colour, grams(250), Losses.NONE);
    assertThat(batch.lines())
        .extracting(l -> l.ingredient().name())
        .containsExactly("white", "medium");
    assertThat(batch.lines().get(1).massKilograms()).isCloseTo(0.182, within(1e-12));
    assertThat(batch.charge().massKilograms(WAX)).isCloseTo(0.182 * 8 / 9, within(1e-12));
    assertThat(
            Batch.ofIngredient(colour, Ingredient.of(MEDIUM), grams(182), Losses.NONE)
                .charge()
                .massKilograms())
        .isCloseTo(0.250, within(1e-12));
    assertThat(
            Batch.ofIngredient(colour, RESIN, grams(20), Losses.NONE).charge().massKilograms(RESIN))
        .isCloseTo(0.020, within(1e-12));
  }

  @Test
  void ofIngredient_notInTheRecipe_isRefusedByName() {
    assertThatThrownBy(() -> Batch.ofIngredient(MEDIUM, WHITE, grams(1), Losses.NONE))
        .isInstanceOf(ProblemException.class)
        .hasMessageContaining("medium")
        .hasMessageContaining("white");
  }

  @Test
  void net_filmLargerThanTheBatch_isRefused() {
    Losses losses = Losses.NONE.withFilm(grams(20), MassFraction.ZERO);
    assertThatThrownBy(() -> Batch.ofTotal(MEDIUM, grams(15), losses))
        .isInstanceOf(ProblemException.class)
        .hasMessageContaining("leave nothing");
  }

  @Test
  void ofNet_lossesOfEverything_areRefused() {
    Losses losses = Losses.NONE.withFilm(MassFraction.ONE);
    assertThatThrownBy(() -> Batch.ofNet(MEDIUM, grams(15), losses))
        .isInstanceOf(ProblemException.class);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, 1e-12, 1e12})
  void ofTotal_noAmount_isRefused(double value) {
    assertThatThrownBy(() -> Batch.ofTotal(MEDIUM, kilograms(value), Losses.NONE))
        .isInstanceOf(ProblemException.class);
  }

  @ParameterizedTest
  @ValueSource(doubles = {1e-9, 1e-6, 1e-3, 1, 1e5})
  void ofTotal_fromAMicrogramToAHundredTonnes_isRight(double value) {
    Batch batch = Batch.ofTotal(MEDIUM, kilograms(value), LOSSES);
    assertThat(batch.net().massKilograms() / value).isCloseTo(801.175 / 821.25, within(1e-12));
  }

  @Test
  void explanation_batch_addsUp() {
    assertThat(
            Batch.ofIngredient(MEDIUM, WAX, grams(730), LOSSES).explanation().text(Locale.ENGLISH))
        .contains("= 821.25 g − 3.65 g − 0 g − 16.425 g\n    = 801.18 g");
  }

  @Test
  void problems_everyCode_hasTextsInBothLanguages() {
    for (BatchProblem code : BatchProblem.values()) {
      for (Locale locale : new Locale[] {Locale.ENGLISH, Locale.GERMAN}) {
        var problem = org.meltwright.units.Problem.of(code, "x");
        assertThat(problem.what(locale)).isNotBlank();
        assertThat(problem.allowed(locale)).isNotBlank();
        assertThat(problem.remedy(locale)).isNotBlank();
      }
    }
  }

  @Test
  void usingUp_lotsAndVersions_areAskedByMaterialAndLot() {
    Material ownWax = Material.builder("wax").names("Own wax", "").build();
    Batch batch = Batch.usingUp(MEDIUM, ownWax, grams(730), Losses.NONE);
    assertThat(batch.lines().get(1)).isEqualTo(new BatchLine(Ingredient.of(WAX), 0.73));
    assertThat(batch.massOf(WAX)).isEqualTo(batch.massOf(ownWax));
    Recipe lots =
        Recipe.builder("lots").part(WAX.withLot("7"), 1).part(WAX.withLot("8"), 3).build();
    Batch ofLots = Batch.ofIngredient(lots, WAX.withLot("7"), grams(100), Losses.NONE);
    assertThat(ofLots.charge().massKilograms()).isCloseTo(0.4, within(1e-12));
    assertThat(Batch.ofIngredient(lots, WAX, grams(100), Losses.NONE).charge().massKilograms())
        .isCloseTo(0.1, within(1e-12));
    assertThatThrownBy(() -> Batch.ofIngredient(lots, WAX.withLot("9"), grams(1), Losses.NONE))
        .hasMessageContaining("wax (lot 9)");
    assertThat(lots).hasToString("lots = 1.0 wax (lot 7) + 3.0 wax (lot 8)");
  }

  @Test
  void losses_statedOfAMaterial_holdForItsLotsUnlessALotHasItsOwn() {
    Losses losses =
        Losses.NONE
            .withInsolubles(RESIN, MassFraction.ofPercent(4))
            .withInsolubles(RESIN.withLot("7"), MassFraction.ofPercent(10));
    assertThat(losses.insolubles(RESIN.withLot("8"))).hasValue(MassFraction.ofPercent(4));
    assertThat(losses.insolubles(RESIN.withLot("7"))).hasValue(MassFraction.ofPercent(10));
    Recipe two = Recipe.builder("two").part(RESIN.withLot("7"), 1).part(RESIN, 1).build();
    Batch batch = Batch.ofTotal(two, grams(200), losses);
    assertThat(batch.insolublesKilograms()).isCloseTo(0.014, within(1e-12));
    assertThat(batch.net().massKilograms(RESIN.withLot("7"))).isCloseTo(0.09, within(1e-12));
    assertThat(losses.toString()).startsWith("insolubles {resin=0.04, resin (lot 7)=0.1}");
  }
}
