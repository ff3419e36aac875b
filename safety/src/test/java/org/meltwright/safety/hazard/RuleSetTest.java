// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.units.ProblemException;

class RuleSetTest {

  private static final RuleSet RULES = RuleSet.clpOn(LocalDate.of(2026, 5, 1));

  @Test
  void dayBeforeTheData_isRefusedWithTheReason() {
    assertThatThrownBy(() -> RuleSet.clpOn(LocalDate.of(2026, 4, 30)))
        .isInstanceOfSatisfying(
            ProblemException.class,
            e -> {
              assertThat(e.problems().get(0).code()).isEqualTo(HazardProblem.DAY_TOO_EARLY);
              assertThat(e.problems().get(0).allowed(Locale.GERMAN)).contains("2026-05-01");
            });
  }

  @Test
  void everyProblem_hasTextsInBothLanguages() {
    for (HazardProblem code : HazardProblem.values()) {
      for (Locale locale : new Locale[] {Locale.ENGLISH, Locale.GERMAN}) {
        var problem = org.meltwright.units.Problem.of(code, "x");
        assertThat(problem.what(locale)).isNotBlank();
        assertThat(problem.allowed(locale)).isNotBlank();
        assertThat(problem.remedy(locale)).isNotBlank();
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "8048-07-5, NO_ENTRY",
    "58339-34-7, NO_ENTRY",
    "12656-57-4, NO_ENTRY",
    "1344-48-5, NO_ENTRY",
    "14808-60-7, NO_ENTRY",
    "1306-23-6, HARMONISED",
    "8012-89-3, PRESUMED_NONE"
  })
  void absenceOfAnEntry_isAResultOfItsOwn(String cas, HazardEvidence evidence) {
    assertThat(RULES.find(cas)).map(SubstanceHazards::evidence).hasValue(evidence);
  }

  @Test
  void numberThatNobodyLookedUp_isNotTheAbsenceOfAnEntry() {
    assertThat(RULES.find("50-78-2")).isEmpty();
    assertThat(RULES.of(Material.builder("moon-dust").cas("50-78-2").build()).evidence())
        .isEqualTo(HazardEvidence.NOT_LOOKED_UP);
  }

  @ParameterizedTest
  @ValueSource(strings = {"8048-07-5", "58339-34-7", "12656-57-4", "1344-48-5", "14808-60-7"})
  void pigmentWithoutEntry_hasAdviceOnItsDust(String cas) {
    HazardReview review =
        HazardReview.of(
            HazardMixture.builder(RULES)
                .cas(cas, 10)
                .cas("8012-89-3", 90)
                .state(PhysicalState.SOLID)
                .build(),
            RULES);
    assertThat(review.dusts()).hasSize(1);
    assertThat(review.dusts().get(0).dust()).isNotEqualTo(DustClass.FINE);
    assertThat(review.categories()).isEmpty();
    assertThat(review.open()).isNotEmpty();
  }

  @Test
  void pureCadmiumSulphide_isCarcinogenic() {
    assertThat(RULES.find("1306-23-6").orElseThrow().categories())
        .extracting(HazardCategory::statement)
        .contains("H350");
  }

  @Test
  void undecidedCadmiumYellow_takesTheWorse() {
    Material undecided = Material.builder("cadmium-yellow").build();
    Material byColourIndex = Material.builder("my-yellow").colourIndexName("PY35").build();
    Material decided =
        Material.builder("my-yellow").colourIndexName("PY35").cas("8048-07-5").build();
    assertThat(RULES.of(undecided).indexNumber()).hasValue("048-010-00-4");
    assertThat(RULES.of(byColourIndex).indexNumber()).hasValue("048-010-00-4");
    assertThat(RULES.of(decided).evidence()).isEqualTo(HazardEvidence.NO_ENTRY);
  }

  @Test
  void materialWithTwoNumbers_takesTheGraver() {
    Material spirits =
        Material.builder("odourless-mineral-spirits").cas("64742-47-8").cas("64742-48-9").build();
    assertThat(RULES.of(spirits).indexNumber()).hasValue("649-327-00-6");
  }

  @Test
  void entryThatAppliesLater_isNotThereYet() {
    RuleSet later = RuleSet.clpOn(LocalDate.of(2027, 2, 1));
    assertThat(RULES.find("26172-54-3")).isEmpty();
    assertThat(later.find("26172-54-3")).isPresent();
    assertThat(RULES.find("10294-40-3").orElseThrow().indexNumber()).hasValue("056-002-00-7");
    assertThat(later.find("10294-40-3").orElseThrow().indexNumber()).hasValue("056-006-00-9");
  }

  @Test
  void everyEntry_citesItsAct() {
    assertThat(RULES.entries())
        .hasSizeGreaterThan(100)
        .allSatisfy(e -> assertThat(e.source().title()).matches(".*CELEX 3\\d{4}R\\d{4}"));
  }

  @Test
  void conditionOfNoteP_liftsCancerAndGeneticDefects() {
    SubstanceHazards naphtha = RULES.find("64742-48-9").orElseThrow();
    SubstanceHazards refined = naphtha.withConditionMet("P");
    assertThat(refined.categories()).extracting(HazardCategory::statement).containsExactly("H304");
    assertThat(refined.remark()).hasValueSatisfying(text -> assertThat(text).contains("note P"));
    assertThatThrownBy(() -> naphtha.withConditionMet("N")).isInstanceOf(ProblemException.class);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Skin Sens H317",
        "Magic 1 H317",
        "Acute Tox. 4",
        "H350",
        "Acute Tox. 4 H999",
        "Carc. 7 H350"
      })
  void notationThatCannotBeRead_isAProblem(String text) {
    assertThatThrownBy(() -> HazardCategory.parse(text)).isInstanceOf(ProblemException.class);
  }

  @ParameterizedTest
  @CsvSource({
    "Skin Corr. 1B H314, SKIN, 1B, H314",
    "Repr. 1A H360Df, REPRODUCTION, 1A, H360Df",
    "Acute Tox. 4 * H302, ACUTE_ORAL, 4, H302",
    "STOT SE 3 H336, STOT_SINGLE_NARCOSIS, 3, H336",
    "STOT RE 2 * H373 **, STOT_REPEATED, 2, H373",
    "Lact. H362, LACTATION, only, H362",
    "Water-react. 2 H261, WATER_REACTIVE, 2, H261"
  })
  void notationOfTheLaw_isRead(String text, HazardClass c, String category, String statement) {
    HazardCategory read = HazardCategory.parse(text);
    assertThat(read.hazardClass()).isEqualTo(c);
    assertThat(read.category()).isEqualTo(Category.of(category));
    assertThat(read.statement()).isEqualTo(statement);
    assertThat(read.minimum()).isEqualTo(text.contains(" * "));
  }

  @Test
  void organsOfAnEntry_areRead() {
    assertThat(HazardCategory.parse("STOT RE 1 H372 (kidney, bone)").details())
        .containsExactly("kidney", "bone");
  }

  @ParameterizedTest
  @CsvSource({"GAS, 100, 50", "VAPOUR, 8, 4", "DUST, 8, 2"})
  void oneHourValue_becomesAFourHourValue(UptakeForm form, double one, double four) {
    assertThat(form.fourHoursFromOne(one)).isEqualTo(four);
  }

  @ParameterizedTest
  @CsvSource({
    "ORAL, 8, hazard.not-inhaled",
    "DUST, NaN, hazard.estimate",
    "GAS, 0, hazard.estimate",
    "VAPOUR, Infinity, hazard.estimate"
  })
  void oneHourValue_thatCannotBe_isAProblem(UptakeForm form, double one, String code) {
    assertThatExceptionOfType(ProblemException.class)
        .isThrownBy(() -> form.fourHoursFromOne(one))
        .satisfies(e -> assertThat(e.problems().get(0).code().id()).isEqualTo(code));
  }

  @Test
  void finding_ofAClassThatTheRulesDoNotCompute_isAProblem() {
    RuleSet ghs = RuleSet.unGhsOn(LocalDate.of(2026, 6, 1));
    HazardReview review =
        HazardReview.of(HazardMixture.builder(ghs).cas("8012-89-3", 100).build(), ghs);

    HazardClass none =
        Stream.of(HazardClass.values())
            .filter(c -> review.findings().stream().noneMatch(f -> f.hazardClass() == c))
            .findFirst()
            .orElseThrow();

    assertThatExceptionOfType(ProblemException.class)
        .isThrownBy(() -> review.finding(none))
        .satisfies(
            e ->
                assertThat(e.problems().get(0).code()).isEqualTo(HazardProblem.CLASS_NOT_COMPUTED));
  }

  @Test
  void everyMaterialOfTheCatalogue_hasAnAnswer() {
    assertThat(MaterialCatalogue.standard().all())
        .allSatisfy(m -> assertThat(RULES.of(m)).as(m.id()).isNotNull());
    assertThat(evidenceOf("zinc-white")).isEqualTo(HazardEvidence.HARMONISED);
    assertThat(evidenceOf("damar")).isEqualTo(HazardEvidence.PRESUMED_NONE);
    assertThat(evidenceOf("cadmium-red")).isEqualTo(HazardEvidence.NO_ENTRY);
    assertThat(evidenceOf("colophony")).isEqualTo(HazardEvidence.HARMONISED);
  }

  private static HazardEvidence evidenceOf(String id) {
    return RULES.of(MaterialCatalogue.standard().require(id)).evidence();
  }

  @Test
  void cadmiumYellowOfTheCatalogue_takesTheWorse() {
    MaterialCatalogue catalogue = MaterialCatalogue.standard();
    assertThat(RULES.of(catalogue.require("cadmium-yellow")).indexNumber())
        .hasValue("048-010-00-4");
    assertThat(RULES.of(catalogue.require("cadmium-yellow-zinc")).evidence())
        .isEqualTo(HazardEvidence.NO_ENTRY);
    assertThat(RULES.of(catalogue.require("cadmium-yellow-pure")).indexNumber())
        .hasValue("048-010-00-4");
  }
}
