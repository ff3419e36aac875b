// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.meltwright.units.TemperaturePoint;

/** Every limit of every class, generated from the rule file: at it, just below and just above. */
class LimitTableTest {

  private static final RuleSet RULES = RuleSet.clpOn(LocalDate.of(2026, 5, 1));
  private static final double STEP = 1e-6;

  /** One line of the rule file with a concentration limit. */
  record Row(
      String kind, HazardClass hazardClass, Category category, Category level, double percent) {}

  static List<Row> rows(String kind) {
    List<Row> rows = new ArrayList<>();
    for (List<String> r : TextTable.rows("clp-2026-05-01.txt")) {
      if (r.get(0).equals(kind)) {
        rows.add(
            new Row(
                kind,
                HazardClass.ofId(r.get(1)),
                Category.of(r.get(2)),
                Category.of(r.get(r.size() - 2)),
                Double.parseDouble(r.get(r.size() - 1))));
      }
    }
    return rows;
  }

  static List<Row> limits() {
    return rows("limit");
  }

  static List<Row> gasLimits() {
    return rows("limit-gas");
  }

  static List<Row> nonAdditive() {
    return rows("non-additive");
  }

  static List<Row> elicitation() {
    return rows("elicitation");
  }

  static List<Row> onRequest() {
    return rows("on-request");
  }

  static List<Row> cutOffs() {
    return rows("cut-off");
  }

  private static SubstanceSheet classified(HazardClass c, Category category) {
    return SubstanceHazards.builder("substance")
        .classified(notation(c, category))
        .acuteFactor(1)
        .chronicFactor(1);
  }

  private static String notation(HazardClass c, Category category) {
    String statement = LabelElements.statement(c, category);
    String name =
        switch (c) {
          case SKIN -> category == Category.TWO ? "Skin Irrit." : "Skin Corr.";
          case EYE -> category == Category.TWO ? "Eye Irrit." : "Eye Dam.";
          case RESPIRATORY_SENSITISATION -> "Resp. Sens.";
          case SKIN_SENSITISATION -> "Skin Sens.";
          case MUTAGENICITY -> "Muta.";
          case CARCINOGENICITY -> "Carc.";
          case REPRODUCTION -> "Repr.";
          case LACTATION -> "Lact.";
          case STOT_SINGLE, STOT_SINGLE_IRRITATION, STOT_SINGLE_NARCOSIS -> "STOT SE";
          case STOT_REPEATED -> "STOT RE";
          case ASPIRATION -> "Asp. Tox.";
          case AQUATIC_ACUTE -> "Aquatic Acute";
          case AQUATIC_CHRONIC -> "Aquatic Chronic";
          case OZONE -> "Ozone";
          case ENDOCRINE_HUMAN -> "ED HH";
          case ENDOCRINE_ENVIRONMENT -> "ED ENV";
          case PBT -> "PBT";
          case VPVB -> "vPvB";
          case PMT -> "PMT";
          case VPVM -> "vPvM";
          default -> throw new IllegalArgumentException(c.id());
        };
    return (name + " " + category.id()).strip() + " " + statement;
  }

  private static HazardReview review(SubstanceHazards s, double percent, PhysicalState state) {
    HazardMixture.Builder b =
        HazardMixture.builder(RULES)
            .substance(s, percent)
            .substance(SubstanceHazards.presumedNone("rest"), 100 - percent)
            .state(state);
    if (state == PhysicalState.LIQUID) {
      b.viscosityAt40(1);
    }
    return HazardReview.of(b.build(), RULES);
  }

  /** The most severe level whose limit, for this category of ingredient, is not above a share. */
  private static Optional<Category> expected(List<Row> table, Row row, double percent) {
    ClassRule rule = RULES.rule(row.hazardClass()).orElseThrow();
    Optional<Row> reached =
        table.stream()
            .filter(r -> r.hazardClass() == row.hazardClass())
            .filter(r -> r.category() == row.category())
            .filter(r -> r.percent() <= percent)
            .min(Comparator.comparingInt(r -> rule.rank(r.level())));
    return reached.map(Row::level);
  }

  private static void checkAround(
      List<Row> table, Row row, SubstanceHazards s, PhysicalState state) {
    double limit = row.percent();
    for (double share : new double[] {limit, limit * (1 - STEP), limit * (1 + STEP)}) {
      assertThat(review(s, share, state).finding(row.hazardClass()).category())
          .as("%s at %s %%", row, share)
          .isEqualTo(expected(table, row, share));
    }
    assertThat(expected(table, row, limit)).isNotEmpty();
  }

  @ParameterizedTest
  @MethodSource("limits")
  void generalLimit_isReachedAtItsValueNotBelow(Row row) {
    SubstanceHazards s = classified(row.hazardClass(), row.category()).build();
    checkAround(limits(), row, s, PhysicalState.LIQUID);
  }

  @ParameterizedTest
  @MethodSource("gasLimits")
  void gasLimit_isReachedAtItsValueNotBelow(Row row) {
    SubstanceHazards s = classified(row.hazardClass(), row.category()).build();
    checkAround(gasLimits(), row, s, PhysicalState.GAS);
  }

  @ParameterizedTest
  @MethodSource("nonAdditive")
  void nonAdditiveLimit_isReachedAtItsValueNotBelow(Row row) {
    SubstanceHazards s = classified(row.hazardClass(), row.category()).notAdditive().build();
    checkAround(nonAdditive(), row, s, PhysicalState.LIQUID);
  }

  @ParameterizedTest
  @MethodSource("elicitation")
  void elicitationLimit_isReachedAtItsValueNotBelow(Row row) {
    SubstanceHazards s = classified(row.hazardClass(), row.category()).build();
    double limit = row.percent();
    assertThat(review(s, limit, PhysicalState.SOLID).elicitors()).hasSize(1);
    assertThat(review(s, limit * (1 + STEP), PhysicalState.SOLID).elicitors()).hasSize(1);
    assertThat(review(s, limit * (1 - STEP), PhysicalState.SOLID).elicitors()).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("onRequest")
  void dataSheetOnRequest_isDueFromItsLimitNotBelow(Row row) {
    SubstanceHazards s = classified(row.hazardClass(), row.category()).build();
    double limit = row.percent();
    assertThat(review(s, limit, PhysicalState.SOLID).dataSheetOnRequestFor()).hasSize(1);
    assertThat(review(s, limit * (1 - STEP), PhysicalState.SOLID).dataSheetOnRequestFor())
        .isEmpty();
  }

  @ParameterizedTest
  @MethodSource("cutOffs")
  void cutOff_countsTheIngredientFromItsValue(Row row) {
    SubstanceHazards s = classified(row.hazardClass(), row.category()).build();
    double cut = row.percent();
    assertThat(contributions(s, cut, row.hazardClass())).isEqualTo(1);
    assertThat(contributions(s, cut * (1 - STEP), row.hazardClass())).isZero();
  }

  private static long contributions(SubstanceHazards s, double percent, HazardClass c) {
    return review(s, percent, PhysicalState.LIQUID).finding(c).workings().stream()
        .mapToLong(w -> w.contributions().size())
        .sum();
  }

  static Stream<AcuteLimit> acuteLimits() {
    return Stream.of(UptakeForm.values()).flatMap(f -> RULES.acuteLimits(f).stream());
  }

  @ParameterizedTest
  @MethodSource("acuteLimits")
  void acuteBound_holdsUpToItsValueNotAbove(AcuteLimit limit) {
    assertThat(acute(limit.form(), limit.upTo())).contains(limit.category());
    assertThat(acute(limit.form(), limit.upTo() * (1 - STEP))).contains(limit.category());
    assertThat(acute(limit.form(), limit.upTo() * (1 + STEP))).isEqualTo(next(limit.category()));
  }

  private static Optional<Category> next(Category category) {
    return category == Category.FOUR
        ? Optional.empty()
        : Category.find(String.valueOf(Integer.parseInt(category.id()) + 1));
  }

  private static Optional<Category> acute(UptakeForm form, double estimate) {
    SubstanceHazards s = SubstanceHazards.builder("poison").estimate(form, estimate).build();
    return review(s, 100, PhysicalState.LIQUID).finding(form.hazardClass()).category();
  }

  @ParameterizedTest
  @MethodSource("acuteLimits")
  void acuteCutOff_countsTheIngredientFromItsValue(AcuteLimit limit) {
    SubstanceHazards s =
        SubstanceHazards.builder("poison").estimate(limit.form(), limit.upTo()).build();
    double cut = limit.cutOffPercent();
    assertThat(contributions(s, cut, limit.form().hazardClass())).isEqualTo(1);
    assertThat(contributions(s, cut * (1 - STEP), limit.form().hazardClass())).isZero();
  }

  /** A limit of its own, of the entry under a CAS number. */
  record Own(String cas, SpecificLimit limit) {}

  static Stream<Own> ownLimits() {
    return RULES.entries().stream()
        .flatMap(e -> e.casNumbers().stream().limit(1))
        .flatMap(
            cas ->
                RULES.find(cas).orElseThrow().specificLimits().stream().map(l -> new Own(cas, l)));
  }

  @ParameterizedTest
  @MethodSource("ownLimits")
  void ownLimit_isReachedAtItsValueNotBelow(Own own) {
    SubstanceHazards s = RULES.find(own.cas()).orElseThrow();
    double share =
        own.limit().fromPercent() / (s.notes().contains("1") ? s.metalShare().orElse(1) : 1);
    Category category = own.limit().category();
    HazardClass c = own.limit().hazardClass();
    assertThat(review(s, share, PhysicalState.LIQUID).finding(c).category()).contains(category);
    assertThat(review(s, share * (1 + STEP), PhysicalState.LIQUID).finding(c).category())
        .contains(category);
    assertThat(review(s, share * (1 - STEP), PhysicalState.LIQUID).finding(c).category())
        .isNotEqualTo(Optional.of(category));
  }

  @ParameterizedTest
  @CsvSource({"2, 1", "2.000001, ''", "1.9, 1", "11.5, 1", "11.499999, ''", "12, 1", "7, ''"})
  void extremePh_corrodesSkinAndEye(double ph, String category) {
    HazardReview review =
        HazardReview.of(
            HazardMixture.builder(RULES)
                .substance(SubstanceHazards.presumedNone("rest"), 100)
                .ph(ph)
                .build(),
            RULES);
    assertThat(review.finding(HazardClass.SKIN).category().map(Category::id).orElse(""))
        .isEqualTo(category);
    assertThat(review.finding(HazardClass.EYE).category().map(Category::id).orElse(""))
        .isEqualTo(category);
  }

  @ParameterizedTest
  @CsvSource({
    "22.99, 35, 1",
    "22.99, 35.01, 2",
    "22.99, , 1",
    "23, 35, 3",
    "60, 100, 3",
    "60.01, 100, ''"
  })
  void flashPoint_decidesTheFlammableLiquid(double flash, Double boiling, String category) {
    HazardMixture.Builder b =
        HazardMixture.builder(RULES)
            .substance(SubstanceHazards.presumedNone("rest"), 100)
            .state(PhysicalState.LIQUID)
            .flashPoint(TemperaturePoint.ofCelsius(flash));
    if (boiling != null) {
      b.initialBoilingPoint(TemperaturePoint.ofCelsius(boiling));
    }
    assertThat(
            HazardReview.of(b.build(), RULES)
                .finding(HazardClass.FLAMMABLE_LIQUID)
                .category()
                .map(Category::id)
                .orElse(""))
        .isEqualTo(category);
  }

  @ParameterizedTest
  @CsvSource({"0.15, 1", "0.149999, 0", "0.2, 1"})
  void leadStatement_isDueFromItsShareOfLead(double leadPercent, int statements) {
    SubstanceHazards s = RULES.find("1319-46-6").orElseThrow();
    assertThat(review(s, leadPercent / 0.8014, PhysicalState.SOLID).supplements())
        .hasSize(statements);
  }
}
