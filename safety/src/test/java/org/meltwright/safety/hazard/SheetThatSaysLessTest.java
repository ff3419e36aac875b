// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.Locale;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.meltwright.units.ProblemException;

/** What a sheet leaves unsaid, or says in a class without figures here, is never "harmless". */
class SheetThatSaysLessTest {

  private static final RuleSet RULES = RuleSet.clpOn(LocalDate.of(2026, 6, 1));

  private static HazardReview half(SubstanceHazards s) {
    return HazardReview.of(
        HazardMixture.builder(RULES).substance(s, 50).restNotClassified().build(), RULES);
  }

  static Stream<Supplier<SubstanceSheet>> blank() {
    return Stream.of(
        () -> SubstanceHazards.builder("S"),
        () -> SubstanceHazards.builder("S").classified(""),
        () -> SubstanceHazards.builder("S").classified("  "),
        () -> SubstanceHazards.builder("S").limits(""),
        () -> SubstanceHazards.builder("S").cas("64-17-5").germanName("Stoff"),
        () -> SubstanceHazards.builder("S").supplements("EUH066"),
        () -> SubstanceHazards.builder("S").unionWorkplaceLimit(),
        () -> SubstanceHazards.builder("S").acuteFactor(10).notes("P"));
  }

  @ParameterizedTest
  @MethodSource("blank")
  void sheetThatSaysNothingOfAnyClass_leavesAllOpen(Supplier<SubstanceSheet> sheet) {
    SubstanceHazards blank = sheet.get().build();
    assertThat(HazardClass.values()).allMatch(blank::isOpenFor);
    assertThat(half(blank).finding(HazardClass.CARCINOGENICITY).status())
        .isEqualTo(HazardStatus.INSUFFICIENT_DATA);
    SubstanceHazards none = sheet.get().notClassified().build();
    assertThat(HazardClass.values()).noneMatch(none::isOpenFor);
  }

  @Test
  void sheetThatNamesAClass_closesTheOthers() {
    SubstanceHazards s = SubstanceHazards.builder("S").classified("Skin Sens. 1 H317").build();
    assertThat(s.isOpenFor(HazardClass.CARCINOGENICITY)).isFalse();
  }

  /** Names as Annex VI, Table 1.1 of the law abbreviates them. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Org. Perox. D H242; ORGANIC_PEROXIDE; Organic peroxides; Organische Peroxide",
        "Self-heat. 1 H251; SELF_HEATING; Self-heating; Selbsterhitzungsfähige",
        "Expl. 1.1 H201; EXPLOSIVE; Explosives; Explosive",
        "Unst. Expl. H200; EXPLOSIVE; Explosives; Explosive",
        "Desen. Expl. 1 H206; DESENSITISED_EXPLOSIVE; Desensitised; Desensibilisierte",
        "Pyr. Liq. 1 H250; PYROPHORIC; Pyrophoric; Pyrophore",
        "Pyr. Sol. 1 H250; PYROPHORIC; Pyrophoric; Pyrophore",
        "Flam. Gas 1 H220; FLAMMABLE_GAS; Flammable gases; Entzündbare Gase",
        "Ox. Gas 1 H270; OXIDISING_GAS; Oxidising gases; Oxidierende Gase",
        "Press. Gas H280; GAS_UNDER_PRESSURE; Gases under pressure; Gase unter Druck",
        "Self-react. D H242; SELF_REACTIVE; Self-reactive; Selbstzersetzliche",
        "Chem. Press. 1 H282; CHEMICAL_UNDER_PRESSURE; Chemicals under; Chemikalien unter",
        "Ox. Sol. 2 H272; OXIDISING; Oxidising solids; Oxidierende",
        "Ox. Liq. 1 H271; OXIDISING; Oxidising solids; Oxidierende"
      })
  void classThatOnlyATestTells_isKeptAndToldByName(
      String text, HazardClass c, String english, String german) {
    SubstanceHazards s = SubstanceHazards.builder("S").classified(text).build();
    assertThat(s.isClassifiedFor(c)).isTrue();
    assertThat(s.isOpenFor(HazardClass.CARCINOGENICITY)).isFalse();
    HazardReview review = half(s);
    assertThat(review.open()).extracting(HazardFinding::hazardClass).contains(c);
    assertThat(review.finding(c).explanation().text(Locale.ENGLISH)).contains("In this class: S");
    HazardLabel label = HazardLabel.of(review, LabelDetails.builder().build());
    assertThat(label.text(Locale.ENGLISH).lines())
        .anyMatch(l -> l.startsWith("  - " + english) && l.endsWith(": S"));
    assertThat(label.text(Locale.GERMAN).lines())
        .anyMatch(l -> l.startsWith("  - " + german) && l.endsWith(": S"));
    assertThat(label.gaps()).contains(LabelGap.CLASSIFICATION);
    assertThat(tested(s, c).open()).extracting(HazardFinding::hazardClass).doesNotContain(c);
  }

  private static HazardReview tested(SubstanceHazards s, HazardClass without) {
    return HazardReview.of(
        HazardMixture.builder(RULES)
            .substance(s, 50)
            .restNotClassified()
            .testedWithout(without)
            .build(),
        RULES);
  }

  @Test
  void classWhoseKindsAreNotHeld_isNoCategoryOfATest() {
    HazardMixtureBuilder b = HazardMixture.builder(RULES).restNotClassified();
    assertThatThrownBy(() -> b.tested("Org. Perox. D H242"))
        .isInstanceOf(ProblemException.class)
        .hasMessageContaining("Organic peroxides");
    assertThatThrownBy(() -> SubstanceHazards.builder("S").inClassByTest(HazardClass.SKIN))
        .isInstanceOf(ProblemException.class);
  }

  @Test
  void mixtureOfAnotherDay_isRefused() {
    RuleSet later = RuleSet.clpOn(LocalDate.of(2027, 2, 1));
    HazardMixture mixture = HazardMixture.builder(RULES).cas("64-17-5", 100).build();
    assertThatThrownBy(() -> HazardReview.of(mixture, later))
        .isInstanceOf(ProblemException.class)
        .hasMessageContaining("2026-06-01")
        .hasMessageContaining("2027-02-01");
    assertThat(HazardReview.of(mixture, RuleSet.clpOn(LocalDate.of(2026, 6, 1))).findings())
        .isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"Carc. 1B H350 -5", "Carc. 1B H350 \u22125", "Carc. 1B H350 \uff15"})
  void limitBelowZeroOrInOtherDigits_isRefused(String limit) {
    assertThatThrownBy(() -> SpecificLimit.parse(limit)).isInstanceOf(ProblemException.class);
  }
}
