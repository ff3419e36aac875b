// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.meltwright.safety.hazard.HazardReviewData.Coded;
import org.meltwright.units.MetricUnits;
import org.meltwright.units.TemperaturePoint;

class HazardLabelDataTest {

  private static final RuleSet RULES = RuleSet.clpOn(LocalDate.of(2026, 11, 25));

  private static final LabelDetails DETAILS =
      LabelDetails.builder()
          .productName("Cake", "Block")
          .nominalMass(MetricUnits.grams(40))
          .batch("2026-11-A")
          .ufi("MWA1-C2D3-E4F5-G6H7")
          .supplier(
              LabelSupplier.of("Studio Fern", "Mill Lane 1, Oldtown", "+00 123")
                  .withElectronicAddress("fern.example"))
          .maximumTemperature(TemperaturePoint.ofCelsius(90))
          .disposal("a collection point for hazardous waste", "einer Schadstoffsammelstelle")
          .build();

  private static HazardLabel label(String cas, double percent, LabelDetails details) {
    HazardMixture mix =
        HazardMixture.builder(RULES)
            .cas("8012-89-3", 100 - percent)
            .cas(cas, percent)
            .state(PhysicalState.SOLID)
            .build();
    return HazardLabel.of(HazardReview.of(mix, RULES), details);
  }

  /** Zinc oxide, rosin, cadmium sulphide, calcium carbonate. */
  @ParameterizedTest
  @CsvSource({"1314-13-2, 30", "8050-09-7, 15", "1306-23-6, 20", "471-34-1, 10", "8050-09-7, 0.05"})
  void of_anyLabel_everyTextStandsOnThePrintedLabel(String cas, double percent) {
    for (LabelDetails details : List.of(DETAILS, LabelDetails.builder().build())) {
      HazardLabel label = label(cas, percent, details);
      for (Locale locale : new Locale[] {Locale.ENGLISH, Locale.GERMAN}) {
        List<String> texts = texts(HazardLabelData.of(label, locale));

        assertThat(label.text(locale)).contains(texts);
      }
    }
  }

  private static List<String> texts(HazardLabelData data) {
    HazardReviewData review = data.review();
    Stream<String> statements =
        Stream.of(
                data.hazardStatements(),
                data.supplementalStatements(),
                data.precautionaryStatements())
            .flatMap(List::stream)
            .map(s -> s.code() + " " + s.text());
    Stream<String> coded =
        Stream.of(data.gaps(), data.pictograms(), review.notices(), review.assumptions())
            .flatMap(List::stream)
            .map(Coded::text);
    Stream<String> plain =
        Stream.of(data.contains(), data.remarks(), data.advice(), review.notAssessed())
            .flatMap(List::stream);
    return Stream.of(statements, coded, plain, Stream.of(review.screening()))
        .flatMap(s -> s)
        .toList();
  }

  @Test
  void of_completeLabel_hasElementsAndDetails() {
    HazardLabelData data = HazardLabelData.of(label("1314-13-2", 30, DETAILS), Locale.GERMAN);

    assertThat(data.complete()).isTrue();
    assertThat(data.gaps()).isEmpty();
    assertThat(data.productName()).isEqualTo("Block");
    assertThat(data.nominalKilograms()).isEqualTo(0.04);
    assertThat(data.maximumCelsius()).isEqualTo(90);
    assertThat(data.supplier())
        .isEqualTo(
            new HazardLabelData.SupplierData(
                "Studio Fern", "Mill Lane 1, Oldtown", "+00 123", "fern.example"));
    assertThat(data.signalWord()).isEqualTo(new Coded("warning", "Achtung"));
    assertThat(data.pictograms()).containsExactly(new Coded("GHS09", "Umwelt"));
    assertThat(data.hazardStatements()).extracting(Coded::code).containsExactly("H410");
    assertThat(data.precautionaryStatements()).extracting(Coded::code).contains("P273", "P501");
    assertThat(data.composition())
        .extracting(HazardLabelData.Share::highPercent)
        .containsExactly(70.0, 30.0);
  }

  @Test
  void of_nothingStated_isIncompleteAndLeavesItOut() {
    HazardLabelData data =
        HazardLabelData.of(label("1314-13-2", 30, LabelDetails.builder().build()), Locale.ENGLISH);

    assertThat(data.complete()).isFalse();
    assertThat(data.gaps())
        .extracting(Coded::code)
        .contains("product-name", "nominal-mass", "batch", "supplier-name", "maximum-temperature");
    assertThat(data.productName()).isNull();
    assertThat(data.nominalKilograms()).isNull();
    assertThat(data.supplier()).isEqualTo(new HazardLabelData.SupplierData(null, null, null, null));
    assertThat(data.batch()).isNull();
    assertThat(data.maximumCelsius()).isNull();
  }

  @Test
  void review_classified_hasTheCategoriesOfTheReviewWithTheirParagraphs() {
    HazardReview review = label("1314-13-2", 30, DETAILS).review();
    HazardReviewData data = HazardReviewData.of(review, Locale.ENGLISH);

    assertThat(data.rules()).isEqualTo(RULES.id());
    assertThat(data.rulesDay()).isEqualTo("2026-11-25");
    assertThat(data.categories())
        .extracting(c -> c.hazardClass() + " " + c.category() + " " + c.statement())
        .isEqualTo(review.categories().stream().map(HazardCategory::toString).toList());
    assertThat(data.categories()).allMatch(c -> c.source() != null);
  }

  @Test
  void review_testedMixture_namesNoParagraph() {
    HazardMixture mix =
        HazardMixture.builder(RULES)
            .cas("8012-89-3", 100)
            .state(PhysicalState.SOLID)
            .tested("Flam. Sol. 2 H228")
            .build();
    HazardReviewData data = HazardReviewData.of(HazardReview.of(mix, RULES), Locale.ENGLISH);

    assertThat(data.categories()).hasSize(1);
    assertThat(data.categories().get(0).statement()).isEqualTo("H228");
    assertThat(data.categories().get(0).source()).isNull();
  }

  @Test
  void review_unknownIngredient_namesClassAndIngredientAsOpen() {
    HazardMixture mix =
        HazardMixture.builder(RULES)
            .cas("8012-89-3", 80)
            .cas("58339-34-7", 20)
            .state(PhysicalState.SOLID)
            .build();
    HazardReview review = HazardReview.of(mix, RULES);
    HazardReviewData data = HazardReviewData.of(review, Locale.ENGLISH);

    assertThat(data.open()).hasSameSizeAs(review.open()).isNotEmpty();
    assertThat(data.open()).allMatch(o -> !o.ingredients().isEmpty() || !o.remarks().isEmpty());
    assertThat(data.open())
        .anyMatch(o -> o.hazardClass().equals("carcinogenicity") && o.insufficientData());
    assertThat(data.dusts()).hasSameSizeAs(review.dusts()).isNotEmpty();
  }

  @ParameterizedTest
  @EnumSource(LabelGap.class)
  void gap_eachOne_hasItsNameAsId(LabelGap gap) {
    assertThat(gap.id()).isEqualTo(idOf(gap));
  }

  @ParameterizedTest
  @EnumSource(ChemicalSignalWord.class)
  void signalWord_eachOne_hasItsNameAsId(ChemicalSignalWord word) {
    assertThat(word.id()).isEqualTo(idOf(word));
    assertThat(Objects.requireNonNull(word.word(Locale.ENGLISH))).isEqualToIgnoringCase(word.id());
  }

  @ParameterizedTest
  @EnumSource(Assumption.Kind.class)
  void assumption_eachOne_hasItsNameAsId(Assumption.Kind kind) {
    assertThat(kind.id()).isEqualTo(idOf(kind));
  }

  private static String idOf(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
