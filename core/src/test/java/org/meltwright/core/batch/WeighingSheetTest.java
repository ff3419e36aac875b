// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.meltwright.core.laws.SampleMaterials.HARD_WAX;
import static org.meltwright.core.laws.SampleMaterials.RESIN;
import static org.meltwright.core.laws.SampleMaterials.WAX;
import static org.meltwright.core.laws.SampleMaterials.WHITE;
import static org.meltwright.units.MetricUnits.grams;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.meltwright.core.equipment.Balance;
import org.meltwright.units.MassFraction;
import org.meltwright.units.ProblemException;

class WeighingSheetTest {

  private static final Balance KITCHEN = Balance.of("kitchen", grams(5000), grams(1));
  private static final Balance FINE = Balance.of("fine", grams(200), grams(0.1));
  private static final List<Balance> BOTH = List.of(KITCHEN, FINE);

  private static final Recipe MEDIUM = Recipe.builder("medium").part(RESIN, 1).part(WAX, 8).build();

  private static final Recipe HARD =
      Recipe.builder("hard colour")
          .part(WHITE, 8)
          .part(RESIN, 10)
          .part(HARD_WAX, 5)
          .part(WAX, 77)
          .build();

  @Test
  void of_twoBalances_roundsEachLineToItsOwn() {
    // common practice: 1 g for the base, 0.1 g for small lines
    WeighingSheet sheet = WeighingSheet.of(Batch.ofTotal(MEDIUM, grams(821.25), Losses.NONE), BOTH);
    WeighingLine resin = sheet.lines().get(0);
    WeighingLine wax = sheet.lines().get(1);
    assertThat(resin.balance()).isEqualTo(FINE);
    assertThat(resin.rounded().printedKilograms()).isEqualTo(0.0913);
    assertThat(wax.rounded().printedKilograms()).isEqualTo(0.730);
    assertThat(sheet.printedTotalKilograms()).isEqualTo(0.8213);
    assertThat(sheet.exactTotalKilograms()).isCloseTo(0.82125, within(1e-12));
  }

  @Test
  void charge_printedLines_saysWhatIsReallyReached() {
    WeighingSheet sheet = WeighingSheet.of(Batch.ofTotal(MEDIUM, grams(821.25), Losses.NONE), BOTH);
    assertThat(sheet.charge().composition().massFractionValue(RESIN))
        .isCloseTo(91.3 / 821.3, within(1e-12));
    assertThat(sheet.net().massKilograms()).isEqualTo(sheet.charge().massKilograms());
  }

  @ParameterizedTest
  @ValueSource(doubles = {50, 99.99, 333.33, 821.25, 4000.5, 12345.678})
  void printedTotal_anyBatch_staysWithinHalfTheCoarsestInterval(double total) {
    WeighingSheet sheet = WeighingSheet.of(Batch.ofTotal(HARD, grams(total), Losses.NONE), BOTH);
    assertThat(sheet.printedTotalKilograms())
        .isCloseTo(sheet.exactTotalKilograms(), within(0.0005 * (1 + 1e-9)));
  }

  @Test
  void of_usingUpWhatIsLeft_neverAsksForMore() {
    Batch batch = Batch.usingUp(MEDIUM, WAX, grams(730.6), Losses.NONE);
    WeighingSheet sheet = WeighingSheet.of(batch, BOTH);
    assertThat(sheet.lines().get(1).rounded().printedKilograms()).isCloseTo(0.7306, within(1e-12));
    assertThat(sheet.lines().get(0).rounded().printedKilograms()).isEqualTo(0.0913);
  }

  @Test
  void inOrder_hardColour_baseFirstHardestWithItDissolvedThenStirredIn() {
    WeighingSheet sheet = WeighingSheet.of(Batch.ofTotal(HARD, grams(500), Losses.NONE), BOTH);
    assertThat(sheet.inOrder())
        .extracting(l -> l.ingredient().name())
        .containsExactly("wax", "hard-wax", "resin", "white");
    assertThat(sheet.inOrder())
        .extracting(WeighingLine::hint)
        .containsExactly(
            AdditionHint.FIRST,
            AdditionHint.WITH_FIRST_THIRD,
            AdditionHint.SPRINKLE,
            AdditionHint.STIR_IN);
    assertThat(AdditionHint.WITH_FIRST_THIRD.text(Locale.ENGLISH)).contains("first third");
    assertThat(AdditionHint.SPRINKLE.text(Locale.GERMAN)).contains("streuen");
  }

  @Test
  void inOrder_subRecipe_meltsFirst() {
    Recipe colour = Recipe.builder("white").part(WHITE, 27).part(MEDIUM, 73).build();
    WeighingSheet sheet = WeighingSheet.of(Batch.ofTotal(colour, grams(500), Losses.NONE), BOTH);
    assertThat(sheet.inOrder())
        .extracting(WeighingLine::hint)
        .containsExactly(AdditionHint.FIRST, AdditionHint.STIR_IN);
  }

  @Test
  void belowInterval_lineSmallerThanAStep_isNamed() {
    WeighingSheet sheet =
        WeighingSheet.of(Batch.ofTotal(MEDIUM, grams(5), Losses.NONE), List.of(KITCHEN));
    assertThat(sheet.belowInterval())
        .extracting(l -> l.ingredient().name())
        .containsExactly("resin");
  }

  @Test
  void portions_moreThanTheBalanceCarries_areCounted() {
    WeighingSheet sheet = WeighingSheet.of(Batch.ofTotal(MEDIUM, grams(18000), Losses.NONE), BOTH);
    assertThat(sheet.lines().get(1).portions()).isEqualTo(4);
    assertThat(sheet.lines().get(0).portions()).isEqualTo(1);
  }

  @Test
  void net_printedLines_takesTheLossesOfTheBatch() {
    Losses losses = Losses.NONE.withFilm(grams(18), MassFraction.ofPercent(2));
    WeighingSheet sheet = WeighingSheet.of(Batch.ofTotal(MEDIUM, grams(450), losses), BOTH);
    assertThat(sheet.net().massKilograms()).isCloseTo(0.432, within(1e-12));
  }

  @Test
  void of_noBalance_isRefused() {
    assertThatThrownBy(
            () -> WeighingSheet.of(Batch.ofTotal(MEDIUM, grams(1), Losses.NONE), List.of()))
        .isInstanceOf(ProblemException.class)
        .hasMessageContaining("no balance");
  }
}
