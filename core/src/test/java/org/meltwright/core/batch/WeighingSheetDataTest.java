// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.meltwright.core.laws.SampleMaterials.RESIN;
import static org.meltwright.core.laws.SampleMaterials.WAX;
import static org.meltwright.core.laws.SampleMaterials.WHITE;
import static org.meltwright.units.MetricUnits.grams;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.meltwright.core.equipment.Balance;
import org.meltwright.units.MassFraction;
import org.meltwright.units.MixingRatio;

class WeighingSheetDataTest {

  private static final List<Balance> BOTH =
      List.of(
          Balance.of("kitchen", grams(5000), grams(1)), Balance.of("fine", grams(200), grams(0.1)));

  private static final Recipe MEDIUM = Recipe.builder("medium").part(RESIN, 1).part(WAX, 8).build();
  private static final Recipe WHITE_CAKE =
      Recipe.builder("white").part(MEDIUM, 9).part(WHITE, 1).build();

  private static final Losses LOSSES = Losses.NONE.withFilm(grams(15), MassFraction.ofPercent(2));

  @ParameterizedTest
  @ValueSource(strings = {"en", "de"})
  void of_sheet_hasItsLinesInTheOrderOfWeighing(String language) {
    Locale locale = Locale.forLanguageTag(language);
    WeighingSheet sheet = WeighingSheet.of(Batch.ofTotal(WHITE_CAKE, grams(821.25), LOSSES), BOTH);
    WeighingSheetData data = WeighingSheetData.of(sheet, locale);

    assertThat(data.recipe()).isEqualTo("white");
    assertThat(data.lines()).hasSameSizeAs(sheet.lines());
    for (int i = 0; i < data.lines().size(); i++) {
      WeighingLine line = sheet.inOrder().get(i);
      assertThat(data.lines().get(i))
          .isEqualTo(
              new WeighingSheetData.Line(
                  line.ingredient().name(),
                  line.ingredient().material().map(m -> m.name(locale)).orElse("medium"),
                  line.rounded().exactKilograms(),
                  line.rounded().printedKilograms(),
                  line.balance().name(),
                  line.balance().intervalKilograms(),
                  1,
                  false,
                  false,
                  line.hint().id(),
                  line.hint().text(locale)));
    }
    assertThat(data.lines().get(0).balance()).isEqualTo("kitchen");
    assertThat(data.lines().get(1).balance()).isEqualTo("fine");
  }

  @Test
  void of_sheet_hasItsTotals() {
    WeighingSheet sheet = WeighingSheet.of(Batch.ofTotal(WHITE_CAKE, grams(821.25), LOSSES), BOTH);
    WeighingSheetData data = WeighingSheetData.of(sheet, Locale.ENGLISH);

    assertThat(data.exactTotalKilograms()).isEqualTo(sheet.exactTotalKilograms());
    assertThat(data.printedTotalKilograms()).isEqualTo(sheet.printedTotalKilograms());
    assertThat(data.exactNetKilograms()).isEqualTo(sheet.batch().net().massKilograms());
    assertThat(data.exactNetKilograms()).isLessThan(data.exactTotalKilograms());
  }

  @Test
  void of_usingUp_marksTheLineThatIsNotWeighed() {
    WeighingSheet sheet =
        WeighingSheet.of(Batch.usingUp(MEDIUM, WAX, grams(730.6), Losses.NONE), BOTH);

    assertThat(WeighingSheetData.of(sheet, Locale.ENGLISH).lines())
        .extracting(WeighingSheetData.Line::ingredient, WeighingSheetData.Line::usedUp)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("wax", true),
            org.assertj.core.groups.Tuple.tuple("resin", false));
  }

  @Test
  void of_usingUp450GramsAtOneToSeven_printsWhatTheBalanceShowsToTheDigit() {
    MixingRatio ratio = new MixingRatio(1, 7, "resin", "wax");
    Recipe medium = Recipe.ofRatio("medium", ratio, Map.of("resin", RESIN, "wax", WAX));
    Batch batch = Batch.usingUp(medium, WAX, grams(450), Losses.NONE);
    WeighingSheetData data = WeighingSheetData.of(WeighingSheet.of(batch, BOTH), Locale.ENGLISH);

    assertThat(data.lines())
        .extracting(WeighingSheetData.Line::printedKilograms)
        .containsExactly(0.45, 0.0643);
    assertThat(data.lines().get(0).exactKilograms()).isEqualTo(0.45);
    assertThat(data.printedTotalKilograms()).isEqualTo(0.5143);
  }

  @Test
  void of_batchTooSmallForItsBalance_marksTheLineAndStillHasTotals() {
    List<Balance> coarse = List.of(Balance.of("coarse", grams(5000), grams(50)));
    WeighingSheet sheet = WeighingSheet.of(Batch.ofTotal(MEDIUM, grams(20), Losses.NONE), coarse);
    WeighingSheetData data = WeighingSheetData.of(sheet, Locale.ENGLISH);

    assertThat(data.lines()).extracting(WeighingSheetData.Line::belowInterval).containsOnly(true);
    assertThat(data.lines()).extracting(WeighingSheetData.Line::portions).containsOnly(0L);
    assertThat(data.exactNetKilograms()).isEqualTo(0.02);
  }
}
