// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.meltwright.units.TemperaturePoint;

/** Every limit of every class, generated from the rule file: at it, just below and just above. */
class LimitTableTest {

  private static final RuleSet RULES = RuleSet.clpOn(LocalDate.of(2026, 5, 1));
  private static final double STEP = 1e-6;

  /** One line of the rule file with a share from which something is due. */
  record Row(String kind, HazardClass hazardClass, Category category, double percent) {}

  private static List<Row> rows(String kind) {
    return RULES.rows().stream()
        .filter(r -> r.kind().id().equals(kind))
        .map(
            r ->
                new Row(
                    kind,
                    HazardClass.ofId(r.cell(0)),
                    r.limitKey().of(),
                    Double.parseDouble(r.lastCell())))
        .toList();
  }

  static List<Row> elicitation() {
    return rows("elicitation");
  }

  static Stream<Row> dataSheets() {
    return Stream.of("euh210", "on-request").flatMap(kind -> rows(kind).stream());
  }

  static List<Row> cutOffs() {
    return rows("cut-off");
  }

  private static SubstanceSheet classified(HazardClass c, Category category) {
    return LimitCase.sheet(c, category);
  }

  private static HazardReview review(SubstanceHazards s, double percent, PhysicalState state) {
    return LimitCase.review(s, percent, state);
  }

  static List<LimitCase> cases() {
    return LimitCase.all();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  void limit_isReachedAtItsValueNotBelow(LimitCase one) {
    assertThat(one.found()).isEqualTo(one.expected());
  }

  @Test
  void everyLimit_hasItsCases() {
    List<LimitCase> cases = LimitCase.all();
    assertThat(cases).hasSizeGreaterThan(500);
    long limits =
        RULES.rows().stream()
            .filter(
                r ->
                    List.of(RuleRow.Kind.LIMIT, RuleRow.Kind.LIMIT_GAS, RuleRow.Kind.NON_ADDITIVE)
                        .contains(r.kind()))
            .count();
    assertThat(cases.stream().map(c -> c.kind() + c.hazardClass() + c.limit()).distinct())
        .hasSizeGreaterThan((int) limits);
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
  @MethodSource("dataSheets")
  void dataSheet_isDueFromItsLimitNotBelow(Row row) {
    SubstanceHazards s = classified(row.hazardClass(), row.category()).build();
    assertThat(due(row, s, row.percent())).hasSize(1);
    assertThat(due(row, s, row.percent() * (1 + STEP))).hasSize(1);
    assertThat(due(row, s, row.percent() * (1 - STEP))).isEmpty();
  }

  private static List<HazardIngredient> due(Row row, SubstanceHazards s, double percent) {
    DataSheetDuty duty =
        new DataSheetDuty(review(s, percent, PhysicalState.SOLID).mixture(), RULES);
    return row.kind().equals("euh210") ? duty.announced() : duty.onRequest();
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
    HazardMixtureBuilder b =
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
