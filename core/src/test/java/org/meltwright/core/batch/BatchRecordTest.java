// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.meltwright.core.laws.SampleMaterials.BLUE;
import static org.meltwright.core.laws.SampleMaterials.RESIN;
import static org.meltwright.core.laws.SampleMaterials.WAX;
import static org.meltwright.units.MetricUnits.grams;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.meltwright.core.laws.SampleMaterials;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialProblem;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityParser;
import tools.jackson.databind.json.JsonMapper;

class BatchRecordTest {

  private static final Instant NINE = Instant.parse("2026-03-14T09:00:00Z");

  private static final Recipe MEDIUM = Recipe.builder("medium").part(RESIN, 1).part(WAX, 8).build();

  private static final Recipe SKY = Recipe.builder("sky").part(BLUE, 1).part(MEDIUM, 9).build();

  private static final BatchRecord M1 =
      BatchRecord.of(
              "M-1",
              MEDIUM,
              NINE,
              List.of(
                  WeighedLine.of(WAX.withLot("W7"), grams(500), NINE),
                  WeighedLine.of(WAX.withLot("W8"), grams(230), NINE.plusSeconds(60)),
                  WeighedLine.of(RESIN.withLot("R2"), grams(92), NINE.plusSeconds(3600))))
          .withNote("strained twice");

  private static final BatchRecord S1 =
      BatchRecord.of(
              "S-1",
              SKY,
              NINE.plusSeconds(90_000),
              List.of(
                  WeighedLine.of(M1, grams(180), NINE.plusSeconds(90_000)),
                  WeighedLine.of(BLUE.withLot("B1"), grams(20), NINE.plusSeconds(90_060))))
          .withCakes(List.of("S-1-1", "S-1-2"));

  private static final BatchRecord M2 =
      BatchRecord.of(
              "M-2", MEDIUM, NINE, List.of(WeighedLine.of(WAX.withLot("W8"), grams(80), NINE)))
          .withCakes(List.of("M-2-1"));

  @Test
  void charge_weighedLines_isWhatReallyIsInThePot() {
    assertThat(M1.charge().massKilograms()).isCloseTo(0.822, within(1e-12));
    assertThat(M1.charge().composition().massFractionValue(RESIN))
        .isCloseTo(92.0 / 822, within(1e-12));
    assertThat(S1.charge().composition().massFractionValue(RESIN))
        .isCloseTo(0.9 * 92 / 822, within(1e-12));
  }

  @Test
  void deviations_lineByLine_fromTheRecipe() {
    List<LineDeviation> lines = M1.deviations();
    assertThat(lines).hasSize(2);
    assertThat(lines.get(0).plannedShare()).isCloseTo(1.0 / 9, within(1e-15));
    assertThat(lines.get(0).difference()).isCloseTo(92.0 / 822 - 1.0 / 9, within(1e-12));
    assertThat(lines.get(1).difference()).isCloseTo(730.0 / 822 - 8.0 / 9, within(1e-12));
    assertThat(S1.deviations())
        .allSatisfy(d -> assertThat(d.difference()).isCloseTo(0, within(1e-12)));
  }

  @Test
  void deviations_ingredientBesideTheRecipe_isListedToo() {
    BatchRecord blueMedium =
        BatchRecord.of(
            "M-3",
            MEDIUM,
            NINE,
            List.of(
                WeighedLine.of(WAX.withLot("W8"), grams(90), NINE),
                WeighedLine.of(BLUE.withLot("B1"), grams(10), NINE)));
    assertThat(blueMedium.deviations())
        .extracting(d -> d.ingredient().name() + " " + Math.round(d.difference() * 1000))
        .containsExactly("resin -111", "wax 11", "blue (lot B1) 100");
  }

  @Test
  void lotsIn_cake_goesThroughNestedBatches() {
    BatchLedger ledger = BatchLedger.of(List.of(S1, M2));
    assertThat(ledger.batches()).containsOnlyKeys("S-1", "M-2", "M-1");
    assertThat(ledger.lotsIn("S-1-2"))
        .containsExactlyInAnyOrder(
            WAX.withLot("W7"), WAX.withLot("W8"), RESIN.withLot("R2"), BLUE.withLot("B1"));
    assertThat(ledger.lotsIn("none")).isEmpty();
    assertThat(ledger.batchOfCake("M-2-1")).contains(M2);
  }

  @Test
  void cakesWith_lot_findsAllCakesThatHoldIt() {
    BatchLedger ledger = BatchLedger.of(List.of(S1, M2));
    assertThat(ledger.cakesWith(WAX.withLot("W8")))
        .containsExactlyInAnyOrder("S-1-1", "S-1-2", "M-2-1");
    assertThat(ledger.cakesWith(RESIN.withLot("R2"))).containsExactly("S-1-1", "S-1-2");
    assertThat(ledger.cakesWith(RESIN.withLot("R9"))).isEmpty();
  }

  @Test
  void cakesWith_materialWithoutALot_findsEveryLotOfIt() {
    BatchLedger ledger = BatchLedger.of(List.of(S1, M2));
    assertThat(ledger.cakesWith(WAX)).containsExactlyInAnyOrder("S-1-1", "S-1-2", "M-2-1");
    BatchRecord unnoted =
        BatchRecord.of("M-9", MEDIUM, NINE, List.of(WeighedLine.of(WAX, grams(80), NINE)))
            .withCakes(List.of("M-9-1"));
    assertThat(BatchLedger.of(List.of(unnoted)).cakesWith(WAX)).containsExactly("M-9-1");
    assertThat(BatchLedger.of(List.of(unnoted)).cakesWith(WAX.withLot("W8"))).isEmpty();
    assertThat(unnoted.toDraft().lines().get(0).lot()).isNull();
  }

  @Test
  void charge_lots_areLinesThatAddUpByMaterial() {
    assertThat(M1.charge().composition().materials())
        .containsExactly(WAX.withLot("W7"), WAX.withLot("W8"), RESIN.withLot("R2"));
    assertThat(M1.charge().massKilograms(WAX)).isCloseTo(0.73, within(1e-12));
    assertThat(M1.charge().massKilograms(WAX.withLot("W8"))).isCloseTo(0.23, within(1e-12));
  }

  @Test
  void deviations_recipeThatNamesALot_goesByIt() {
    Recipe twoLots =
        Recipe.builder("two lots").part(WAX.withLot("W7"), 1).part(WAX.withLot("W8"), 1).build();
    BatchRecord record =
        BatchRecord.of(
            "L-1",
            twoLots,
            NINE,
            List.of(
                WeighedLine.of(WAX.withLot("W7"), grams(30), NINE),
                WeighedLine.of(WAX.withLot("W8"), grams(10), NINE)));
    assertThat(record.deviations())
        .extracting(LineDeviation::difference)
        .containsExactly(0.25, -0.25);
    BatchRecord ofAny =
        BatchRecord.of("L-2", twoLots, NINE, List.of(WeighedLine.of(WAX, grams(30), NINE)));
    assertThat(ofAny.deviations()).extracting(LineDeviation::difference).containsExactly(0.0);
  }

  @Test
  void of_sameNumberTwice_isRefused() {
    BatchRecord other = BatchRecord.of("M-2", MEDIUM, NINE, M1.lines());
    assertThatThrownBy(() -> BatchLedger.of(List.of(M2, other)))
        .isInstanceOf(ProblemException.class)
        .hasMessageContaining("M-2");
    assertThatThrownBy(() -> BatchLedger.of(List.of(S1, M2.withCakes(List.of("S-1-1")))))
        .hasMessageContaining("S-1-1");
  }

  @Test
  void toDraft_throughJsonAndBack_isTheSameRecord() {
    JsonMapper json = JsonMapper.builder().build();
    List<BatchRecordDraft> drafts =
        List.of(S1, M1, M2).stream()
            .map(r -> json.writeValueAsString(r.toDraft()))
            .map(text -> json.readValue(text, BatchRecordDraft.class))
            .toList();
    BatchLedger back =
        BatchLedger.ofDrafts(
            drafts,
            QuantityParser.localeFree(),
            BatchRecordTest::recipe,
            BatchRecordTest::material);
    BatchRecord sky = back.batches().get("S-1");
    assertThat(sky).isEqualTo(S1);
    assertThat(sky.lines()).isEqualTo(S1.lines());
    assertThat(sky.cakes()).isEqualTo(S1.cakes());
    assertThat(sky.startedAt()).isEqualTo(S1.startedAt());
    assertThat(sky.charge()).isEqualTo(S1.charge());
    assertThat(back.batches().get("M-1").note()).hasValue("strained twice");
    assertThat(sky.toDraft()).isEqualTo(S1.toDraft());
  }

  @Test
  void ofDrafts_manyMistakes_reportsAllOfThemWithTheirPlace() {
    String nine = NINE.toString();
    List<Problem> problems =
        problems(
            List.of(
                new BatchRecordDraft(
                    2, "a", "medium", nine, List.of(shelf("wax", "1 kg", nine)), null, null),
                new BatchRecordDraft(
                    1, "a", "medium", nine, List.of(shelf("wax", "1 kg", nine)), null, null),
                new BatchRecordDraft(
                    1, " ", "medium", nine, List.of(shelf("wax", "1 kg", nine)), null, null),
                new BatchRecordDraft(
                    1,
                    "b",
                    "pink",
                    "yesterday",
                    List.of(
                        shelf("waxx", "1 kg", nine),
                        shelf("wax", null, nine),
                        shelf("wax", "-1 kg", nine),
                        shelf("wax", "1", nine),
                        new BatchRecordDraft.LineDraft(null, null, "nowhere", "1 kg", nine),
                        new BatchRecordDraft.LineDraft("wax", null, "a", "1 kg", nine)),
                    null,
                    null),
                new BatchRecordDraft(1, "c", "medium", nine, null, null, null),
                new BatchRecordDraft(
                    1,
                    "d",
                    "medium",
                    nine,
                    List.of(new BatchRecordDraft.LineDraft(null, null, "d", "1 kg", nine)),
                    null,
                    null)));
    assertThat(problems)
        .extracting(p -> p.path() + " " + p.code().id())
        .containsExactlyInAnyOrder(
            "/0/version batch.version",
            "/1/id batch.name-twice",
            "/2/id field.missing",
            "/3/recipe batch.unknown-recipe",
            "/3/startedAt batch.time",
            "/3/lines/0/material material.unknown",
            "/3/lines/1/mass field.missing",
            "/3/lines/2/mass value.out-of-range",
            "/3/lines/3/mass quantity.missing-unit",
            "/3/lines/4/batch batch.unknown-batch",
            "/3/lines/5 batch.one-of-two",
            "/4/lines field.missing",
            "/5/lines batch.circle");
  }

  @Test
  @Timeout(10)
  void lotsIn_deepAndSharedBatches_takesNoExponentialTime() {
    BatchRecord level = M1;
    List<BatchRecord> all = new ArrayList<>();
    for (int i = 0; i < 2000; i++) {
      level =
          BatchRecord.of(
                  "level " + i,
                  MEDIUM,
                  NINE,
                  List.of(
                      WeighedLine.of(level, grams(1), NINE), WeighedLine.of(level, grams(2), NINE)))
              .withCakes(List.of("cake " + i));
      all.add(level);
    }
    BatchLedger ledger = BatchLedger.of(all);
    assertThat(ledger.lotsIn("cake 1999")).hasSize(3);
    assertThat(ledger.cakesWith(RESIN.withLot("R2"))).hasSize(2000);
  }

  private static List<Problem> problems(List<BatchRecordDraft> drafts) {
    return catchThrowableOfType(
            ProblemException.class,
            () ->
                BatchLedger.ofDrafts(
                    drafts,
                    QuantityParser.localeFree(),
                    BatchRecordTest::recipe,
                    BatchRecordTest::material))
        .problems();
  }

  private static BatchRecordDraft.LineDraft shelf(String material, String mass, String at) {
    return new BatchRecordDraft.LineDraft(material, "L1", null, mass, at);
  }

  private static Optional<Recipe> recipe(String name) {
    return List.of(MEDIUM, SKY).stream().filter(r -> r.name().equals(name)).findFirst();
  }

  private static Material material(String id) {
    return SampleMaterials.all().stream()
        .filter(m -> m.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new ProblemException(Problem.of(MaterialProblem.UNKNOWN, id)));
  }
}
