// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.meltwright.core.mixture.Composition;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.TemperaturePoint;

/** Points of the law that a limit table does not show: names, groups, forms, pH, unknown shares. */
class HazardLawTest {

  private static final RuleSet RULES = RuleSet.clpOn(LocalDate.of(2026, 6, 1));

  private static SubstanceHazards sheet(String name, String classified) {
    return SubstanceHazards.builder(name).classified(classified).build();
  }

  private static HazardMixtureBuilder mixture() {
    return HazardMixture.builder(RULES).restNotClassified();
  }

  private static HazardReview review(HazardMixtureBuilder b) {
    return HazardReview.of(b.build(), RULES);
  }

  private static List<String> names(HazardMixtureBuilder b) {
    return HazardLabel.of(review(b), LabelDetails.builder().build()).namedIngredients().stream()
        .map(i -> i.name(Locale.ENGLISH))
        .toList();
  }

  @Test
  void twoSolventsThatTogetherMakeDrowsy_areBothNamedTheLargerFirst() {
    assertThat(
            names(
                mixture()
                    .substance(sheet("small", "STOT SE 3 H336"), 8)
                    .substance(sheet("large", "STOT SE 3 H336"), 15)))
        .containsExactly("large", "small");
  }

  @Test
  void solventThatMakesDrowsyAlone_isNamedAlone() {
    assertThat(
            names(
                mixture()
                    .substance(sheet("small", "STOT SE 3 H336"), 8)
                    .substance(sheet("large", "STOT SE 3 H336"), 25)))
        .containsExactly("large");
  }

  @Test
  void irritant_isNotNamed() {
    assertThat(names(mixture().substance(sheet("soap", "Skin Irrit. 2 H315"), 12))).isEmpty();
  }

  @Test
  void moreThanFourNames_areThoseOfWhichEachCounts() {
    HazardMixtureBuilder b = mixture().substance(sheet("solvent", "STOT SE 3 H336"), 25);
    for (int i = 1; i <= 5; i++) {
      b.substance(sheet("sensitiser " + i, "Skin Sens. 1 H317"), 2);
    }
    assertThat(names(b)).hasSize(5).allMatch(name -> name.startsWith("sensitiser"));
  }

  @Test
  void gravestCategory_isNamedFirst() {
    assertThat(
            names(
                mixture()
                    .substance(sheet("suspected", "Carc. 2 H351"), 20)
                    .substance(sheet("known", "Carc. 1A H350"), 0.2)))
        .startsWith("known");
  }

  @ParameterizedTest
  @CsvSource({"0.1, true", "0.0999, false"})
  void sheetThatNamesTheEntry_isAddedWithItsSalts(double percent, boolean reached) {
    SubstanceHazards own =
        SubstanceHazards.builder("drier")
            .classified("Repr. 1B H360D")
            .entry("607-230-00-6")
            .build();
    HazardReview review = review(mixture().substance(own, percent).cas("136-52-7", 0.2));
    assertThat(review.finding(HazardClass.REPRODUCTION).isClassified()).isEqualTo(reached);
  }

  @Test
  void sheetWithTheNumberOfASalt_isAMemberWithoutSayingSo() {
    SubstanceHazards own =
        SubstanceHazards.builder("zirconium drier")
            .cas("22464-99-9")
            .classified("Repr. 1B H360D")
            .build();
    HazardReview review = review(mixture().substance(own, 0.15).cas("149-57-5", 0.15));
    assertThat(review.finding(HazardClass.REPRODUCTION).isClassified()).isTrue();
  }

  @Test
  void members_areAddedForReproductionAlone() {
    SubstanceHazards own =
        SubstanceHazards.builder("a")
            .classified("Repr. 1B H360D; Skin Sens. 1 H317")
            .notes("12")
            .build();
    SubstanceHazards other = own.toBuilder().cas("136-52-7").build();
    HazardReview review = review(mixture().substance(own, 0.6).substance(other, 0.6));
    assertThat(review.finding(HazardClass.SKIN_SENSITISATION).isClassified()).isFalse();
  }

  @Test
  void vapourPressure_decidesTheForm() {
    SubstanceHazards heavy =
        SubstanceHazards.builder("heavy")
            .classified("Acute Tox. 4 H332")
            .vapourPressure(0.001, 250)
            .build();
    SubstanceHazards light =
        SubstanceHazards.builder("light")
            .classified("Acute Tox. 4 H332")
            .vapourPressure(500, 136)
            .build();
    assertThat(light.saturatedVapourMilligramsPerLitre().orElseThrow())
        .isCloseTo(27.4, org.assertj.core.data.Offset.offset(0.1));
    HazardClass c = HazardClass.ACUTE_INHALATION;
    assertThat(review(mixture().substance(heavy, 30)).finding(c).isClassified()).isTrue();
    assertThat(review(mixture().substance(light, 30)).finding(c).isClassified()).isFalse();
    assertThat(review(mixture().substance(light, 55)).finding(c).isClassified()).isTrue();
  }

  @Test
  void formThatIsNotStated_isReckonedBothWaysAndSaid() {
    HazardReview review = review(mixture().substance(sheet("poison", "Acute Tox. 3 H331"), 45));
    HazardFinding inhaled = review.finding(HazardClass.ACUTE_INHALATION);
    assertThat(inhaled.category()).contains(Category.THREE);
    assertThat(inhaled.workings()).hasSize(2);
    assertThat(review.assumptions())
        .extracting(Assumption::kind)
        .contains(Assumption.Kind.FORM_NOT_STATED);
    assertThat(inhaled.explanation().text(Locale.ENGLISH)).contains("is not stated");
  }

  @Test
  void restThatIsHeldNotClassified_isShownByResultAndExplanation() {
    HazardReview review = review(mixture().cas("8050-09-7", 3));
    assertThat(review.assumptions())
        .extracting(Assumption::kind)
        .contains(Assumption.Kind.REST_NOT_CLASSIFIED);
    assertThat(review.finding(HazardClass.SKIN_SENSITISATION).explanation().text(Locale.ENGLISH))
        .contains("held to be in no class");
    assertThat(review.mixture().declared()).hasSize(2);
    assertThat(HazardMixture.builder(RULES).cas("8050-09-7", 100).restNotClassified().build())
        .satisfies(whole -> assertThat(whole.ingredients()).hasSize(1));
  }

  @Test
  void lowReserveAlone_liftsNothing() {
    HazardReview alone = review(mixture().ph(12).reserve(0.1));
    assertThat(alone.finding(HazardClass.SKIN).category()).contains(Category.ONE);
    assertThat(alone.finding(HazardClass.SKIN).remarks()).contains(HazardRemark.RESERVE_ALONE);
    HazardReview tested = review(mixture().ph(12).reserve(0.1).phRefutedByTest());
    assertThat(tested.finding(HazardClass.SKIN).isClassified()).isFalse();
  }

  @Test
  void extremePhBelowAnOwnLimit_isTakenAndTheConflictSaid() {
    HazardFinding skin = review(mixture().cas("1310-73-2", 0.4).ph(13)).finding(HazardClass.SKIN);
    assertThat(skin.category()).contains(Category.ONE);
    assertThat(skin.remarks()).contains(HazardRemark.EXTREME_PH, HazardRemark.PH_AGAINST_SHARES);
  }

  @ParameterizedTest
  @CsvSource({
    "SOLID, 8, CLASSIFIED",
    "LIQUID, 20.5, CLASSIFIED",
    "LIQUID, 20.51, NOT_CLASSIFIED",
    "SOLID, , INSUFFICIENT_DATA",
    "LIQUID, , INSUFFICIENT_DATA",
    "SOLID_AT_40, , NOT_CLASSIFIED"
  })
  void aspiration_isDecidedByViscosityNotByState(
      PhysicalState state, Double viscosity, HazardStatus status) {
    HazardMixtureBuilder b = mixture().substance(sheet("oil", "Asp. Tox. 1 H304"), 12).state(state);
    if (viscosity != null) {
      b.viscosityAt40(viscosity);
    }
    assertThat(review(b).finding(HazardClass.ASPIRATION).status()).isEqualTo(status);
  }

  @Test
  void viscosityOfWhatIsSolidAt40_isRefused() {
    HazardMixtureBuilder b = mixture().state(PhysicalState.SOLID_AT_40).viscosityAt40(8);
    assertThatThrownBy(b::build)
        .isInstanceOf(ProblemException.class)
        .hasMessageContaining("8 mm²/s");
  }

  static Stream<Consumer<HazardMixtureBuilder>> impossible() {
    return Stream.of(
        b -> b.ph(40),
        b -> b.ph(-2.1),
        b -> b.ph(Double.NaN),
        b -> b.viscosityAt40(-5),
        b -> b.viscosityAt40(0),
        b -> b.reserve(-1),
        b -> b.substance(SubstanceHazards.presumedNone("water"), -3).build(),
        b -> b.substance(SubstanceHazards.presumedNone("water"), 101).build());
  }

  @ParameterizedTest
  @MethodSource("impossible")
  void impossibleValue_isRefused(Consumer<HazardMixtureBuilder> value) {
    assertThatThrownBy(() -> value.accept(mixture())).isInstanceOf(ProblemException.class);
  }

  @Test
  void refusal_namesWhatWasFound() {
    assertThatThrownBy(() -> mixture().ph(40))
        .hasMessageContaining("40")
        .hasMessageContaining("16");
    assertThatThrownBy(() -> mixture().viscosityAt40(-5)).hasMessageContaining("-5");
    assertThatThrownBy(
            () ->
                mixture()
                    .substance(SubstanceHazards.presumedNone("water"), -3)
                    .substance(SubstanceHazards.presumedNone("oil"), -4)
                    .build())
        .isInstanceOfSatisfying(
            ProblemException.class,
            e -> {
              assertThat(e.problems()).extracting(Problem::found).containsExactly("-3 %", "-4 %");
              assertThat(e.problems().get(0).what(Locale.GERMAN)).startsWith("water");
            });
    assertThatThrownBy(() -> SubstanceHazards.builder("x").acuteFactor(0.5))
        .hasMessageContaining("0.5");
    assertThatThrownBy(() -> SubstanceHazards.builder("x").estimate(UptakeForm.ORAL, -1))
        .hasMessageContaining("-1");
    assertThatThrownBy(() -> SubstanceHazards.builder("x").supplements("EUH999"))
        .hasMessageContaining("EUH999");
  }

  @ParameterizedTest
  @CsvSource({"0.99, 0, 0", "1, 0, 1", "0.6, 0.6, 0", "0.9, 1, 1", "2, 1, 3"})
  void unknownShare_isTheSumOfThoseThatThemselvesCount(double first, double second, double stated) {
    HazardReview review =
        review(
            mixture()
                .substance(SubstanceHazards.unknown("one"), first)
                .substance(SubstanceHazards.unknown("two"), second));
    assertThat(review.unknownAcutePercent(UptakeForm.ORAL)).isEqualTo(stated);
    assertThat(review.unknownAcutePercent(UptakeForm.DUST)).isEqualTo(stated);
  }

  @Test
  void unknownByOneRoute_isStatedForThatRoute() {
    SubstanceHazards s =
        SubstanceHazards.builder("dust")
            .notClassified()
            .openFor(HazardClass.ACUTE_INHALATION)
            .build();
    assertThat(review(mixture().substance(s, 11)).unknownStatements(Locale.ENGLISH))
        .containsExactly(
            "11 % of the mixture consists of ingredients of unknown acute toxicity (inhalation).");
  }

  @Test
  void unknownShare_standsOnALabelOnlyWhereThereIsOne() {
    HazardMixtureBuilder none = mixture().substance(SubstanceHazards.unknown("x"), 5);
    HazardMixtureBuilder classified =
        mixture().substance(SubstanceHazards.unknown("x"), 5).cas("8050-09-7", 3);
    LabelDetails details = LabelDetails.builder().build();
    assertThat(HazardLabel.of(review(none), details).text(Locale.ENGLISH))
        .doesNotContain("unknown acute toxicity");
    assertThat(HazardLabel.of(review(classified), details).text(Locale.ENGLISH))
        .contains("5 % of the mixture consists of ingredients of unknown acute toxicity.");
  }

  @Test
  void workplaceLimit_announcesFromOnePercentAndIsGivenOnRequestAtAnyShare() {
    SubstanceHazards s =
        SubstanceHazards.builder("x").notClassified().unionWorkplaceLimit().build();
    HazardReview below = review(mixture().substance(s, 0.5));
    assertThat(below.dataSheetAnnouncedFor()).isEmpty();
    assertThat(below.dataSheetOnRequestFor()).hasSize(1);
    assertThat(review(mixture().substance(s, 1)).dataSheetAnnouncedFor()).hasSize(1);
  }

  @Test
  void workplaceLimitOfTheTable_isSaidToBeRemembered() {
    HazardReview review = review(mixture().cas("1305-62-0", 1));
    assertThat(review.assumptions())
        .extracting(Assumption::kind)
        .contains(Assumption.Kind.WORKPLACE_LIMIT_REMEMBERED);
  }

  @Test
  void testedCorrosionOfMetals_reachesTheLabelWithoutItsPictogramForThePublic() {
    HazardReview review = review(mixture().tested("Met. Corr. 1 H290"));
    HazardLabel atHome = HazardLabel.of(review, LabelDetails.builder().build());
    HazardLabel atWork = HazardLabel.of(review, LabelDetails.builder().forProfessionals().build());
    assertThat(atHome.hazardStatements()).containsExactly("H290");
    assertThat(atHome.pictograms()).isEmpty();
    assertThat(atWork.pictograms()).containsExactly(Pictogram.GHS05);
    assertThat(atHome.precautionaryStatements()).contains("P234");
  }

  @ParameterizedTest
  @ValueSource(doubles = {20, 19.9})
  void dryingSkin_isPrintedFromAFifthOfWhatSaysIt(double percent) {
    SubstanceHazards s = SubstanceHazards.builder("solvent").supplements("EUH066").build();
    assertThat(review(mixture().substance(s, percent)).supplements())
        .hasSize(percent >= 20 ? 1 : 0);
  }

  @Test
  void corrosiveThatCanBeBreathed_corrodesTheAirways() {
    assertThat(review(mixture().cas("1310-73-2", 4).breathable()).supplements())
        .extracting(SupplementalStatement::code)
        .containsExactly("EUH071");
    assertThat(review(mixture().cas("1310-73-2", 4)).supplements()).isEmpty();
  }

  @Test
  void packForThePublic_needsWhatItsClassesAsk() {
    HazardReview lye = review(mixture().cas("1310-73-2", 4).state(PhysicalState.LIQUID));
    assertThat(HazardLabel.of(lye, LabelDetails.builder().build()).packaging())
        .containsExactly(PackagingDuty.CHILD_RESISTANT_CLOSURE, PackagingDuty.TACTILE_WARNING);
    assertThat(HazardLabel.of(lye, LabelDetails.builder().forProfessionals().build()).packaging())
        .isEmpty();
    HazardReview methanol = review(mixture().cas("67-56-1", 3));
    assertThat(HazardLabel.of(methanol, LabelDetails.builder().build()).packaging())
        .contains(PackagingDuty.CHILD_RESISTANT_CLOSURE);
    HazardReview rosin = review(mixture().cas("8050-09-7", 3));
    assertThat(HazardLabel.of(rosin, LabelDetails.builder().build()).packaging()).isEmpty();
  }

  @Test
  void mixtureInAClassForHealth_isNotified() {
    assertThat(review(mixture().cas("8050-09-7", 3)).notices()).contains(LegalNotice.NOTIFICATION);
    assertThat(review(mixture().cas("1314-13-2", 30)).notices())
        .doesNotContain(LegalNotice.NOTIFICATION);
  }

  @Test
  void sameSheetOnTwoLines_isAddedFirst() {
    SubstanceHazards s = sheet("x", "Skin Sens. 1 H317");
    HazardReview split = review(mixture().substance(s, 0.5).substance(s, 0.5));
    assertThat(split.finding(HazardClass.SKIN_SENSITISATION).isClassified()).isTrue();
  }

  @Test
  void equality_isThatOfWhatIsSaid() {
    assertThat(sheet("x", "Skin Sens. 1 H317"))
        .isEqualTo(sheet("x", "Skin Sens. 1 H317"))
        .hasSameHashCodeAs(sheet("x", "Skin Sens. 1 H317"))
        .isNotEqualTo(sheet("x", "Skin Sens. 1B H317"))
        .isNotEqualTo(sheet("y", "Skin Sens. 1 H317"));
    assertThat(review(mixture().cas("8050-09-7", 3)).findings())
        .isEqualTo(review(mixture().cas("8050-09-7", 3)).findings());
  }

  @Test
  void cake_isHeldToBeSolidAt40() {
    assertThat(
            HazardReview.ofCake(
                    Composition.of(
                        org.meltwright.core.material.MaterialCatalogue.standard()
                            .require("beeswax")),
                    RULES)
                .mixture()
                .state())
        .contains(PhysicalState.SOLID_AT_40);
  }

  @Test
  void flashPointOfAHotLabel_staysOnIt() {
    HazardMixtureBuilder spirit =
        mixture()
            .cas("64-17-5", 70)
            .state(PhysicalState.LIQUID)
            .flashPoint(TemperaturePoint.ofCelsius(14))
            .initialBoilingPoint(TemperaturePoint.ofCelsius(78));
    assertThat(
            HazardLabel.of(review(spirit), LabelDetails.builder().build())
                .precautionaryStatements())
        .contains("P210");
  }
}
