// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.meltwright.core.material.MassFractionRange;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.mixture.Composition;
import org.meltwright.units.MassFraction;
import org.meltwright.units.ProblemException;

class HazardMixtureTest {

  private static final RuleSet RULES = RuleSet.clpOn(LocalDate.of(2026, 5, 1));

  private static final Material BEESWAX =
      Material.builder("beeswax-bleached").names("Beeswax", "Bienenwachs").cas("8012-89-3").build();
  private static final Material ZINC_WHITE =
      Material.builder("zinc-white")
          .names("Zinc white", "Zinkweiß")
          .cas("1314-13-2")
          .colourIndexName("PW4")
          .build();
  private static final Material LINSEED =
      Material.builder("linseed-oil").names("Linseed oil", "Leinöl").cas("8001-26-1").build();
  private static final Material PAINT =
      Material.builder("zinc-paint")
          .names("Zinc white oil paint", "Zinkweiß-Ölfarbe")
          .constituent(
              ZINC_WHITE,
              new MassFractionRange(MassFraction.ofPercent(80), MassFraction.ofPercent(84)))
          .constituent(
              LINSEED,
              new MassFractionRange(MassFraction.ofPercent(16), MassFraction.ofPercent(20)))
          .build();

  @Test
  void materialThatIsAMix_isTakenApartAtTheUpperEnds() {
    HazardMixture mixture =
        HazardMixture.builder(Composition.ofParts(List.of(BEESWAX, PAINT), 90, 10), RULES).build();
    assertThat(mixture.ingredients())
        .extracting(i -> i.name(Locale.ENGLISH))
        .containsExactlyInAnyOrder("Beeswax", "Zinc white", "Linseed oil");
    assertThat(mixture.ingredients())
        .filteredOn(i -> i.name(Locale.GERMAN).equals("Zinkweiß"))
        .singleElement()
        .satisfies(i -> assertThat(i.percent()).isCloseTo(8.4, within()));
    assertThat(mixture.declared()).hasSize(2);
  }

  private static org.assertj.core.data.Offset<Double> within() {
    return org.assertj.core.data.Offset.offset(1e-9);
  }

  /** The category stands against a milder estimate; one that fits it, or is stricter, is taken. */
  @ParameterizedTest
  @CsvSource({"5000, 200, 3", "301, 200, 3", "300, 600, 4", "150, 300, 3", "20, 40, 2"})
  void estimateMilderThanTheCategoryOfItsSheet_doesNotThinTheCategory(
      double stated, double estimate, String category) {
    SubstanceHazards half =
        SubstanceHazards.builder("x")
            .classified("Acute Tox. 3 H301")
            .estimate(UptakeForm.ORAL, stated)
            .build();
    HazardMixture mixture =
        HazardMixture.builder(RULES).substance(half, 50).cas("8012-89-3", 50).build();
    HazardFinding swallowed = HazardReview.of(mixture, RULES).finding(HazardClass.ACUTE_ORAL);
    assertThat(swallowed.workings().get(0).value()).isCloseTo(estimate, within());
    assertThat(swallowed.category()).contains(Category.of(category));
  }

  @Test
  void sharesThatLeaveARest_areRefused() {
    HazardMixtureBuilder b = HazardMixture.builder(RULES).cas("8012-89-3", 99);
    assertThatThrownBy(b::build).isInstanceOf(ProblemException.class).hasMessageContaining("99");
  }

  @Test
  void sharesBeyondTheWhole_areRefused() {
    HazardMixtureBuilder b = HazardMixture.builder(RULES).cas("8012-89-3", 99).cas("1314-13-2", 2);
    assertThatThrownBy(b::build).isInstanceOf(ProblemException.class);
  }

  @Test
  void negativeShare_isRefused() {
    HazardMixtureBuilder b =
        HazardMixture.builder(RULES).cas("8012-89-3", 101).cas("1314-13-2", -1);
    assertThatThrownBy(b::build).isInstanceOf(ProblemException.class);
  }

  /** Regulation (EC) No 1272/2008, Annex VI, entry 649-254-00-X: Carc. 1B, note N. */
  @Test
  void petrolatum_isACarcinogenUntilTheSupplierStatesThatNoteNIsMet() {
    Material petrolatum = MaterialCatalogue.standard().require("petrolatum");
    Composition balm = Composition.ofParts(List.of(BEESWAX, petrolatum), 20, 80);
    HazardReview asked = HazardReview.of(HazardMixture.builder(balm, RULES).build(), RULES);
    assertThat(asked.finding(HazardClass.CARCINOGENICITY).category()).contains(Category.of("1B"));
    assertThat(asked.assumptions())
        .extracting(Assumption::kind)
        .contains(Assumption.Kind.NOTE_NOT_LIFTED);

    SubstanceHazards refined = RULES.find("8009-03-8").orElseThrow().withConditionMet("N");
    HazardReview stated =
        HazardReview.of(
            HazardMixture.builder(balm, RULES).dataSheet("petrolatum", refined).build(), RULES);
    assertThat(stated.finding(HazardClass.CARCINOGENICITY).category()).isEmpty();
  }

  @Test
  void ownDataSheet_overridesAndStaysVisible() {
    SubstanceHazards sheet =
        SubstanceHazards.builder("Zinc white, coated")
            .cas("1314-13-2")
            .classified("Aquatic Chronic 3 H412")
            .build();
    HazardReview review =
        HazardReview.of(
            HazardMixture.builder(Composition.ofParts(List.of(BEESWAX, ZINC_WHITE), 70, 30), RULES)
                .dataSheet("zinc-white", sheet)
                .state(PhysicalState.SOLID)
                .build(),
            RULES);
    assertThat(review.finding(HazardClass.AQUATIC_CHRONIC).category()).contains(Category.of("3"));
    assertThat(review.assumptions())
        .extracting(Assumption::kind)
        .contains(Assumption.Kind.DATA_SHEET_MILDER);
    assertThat(review.mixture().ingredients())
        .anySatisfy(
            i ->
                assertThat(i.overridden())
                    .map(SubstanceHazards::evidence)
                    .hasValue(HazardEvidence.HARMONISED));
  }

  @Test
  void sheetForWhatHasNoEntry_closesTheClasses() {
    HazardReview open =
        HazardReview.of(
            HazardMixture.builder(RULES).cas("58339-34-7", 10).cas("8012-89-3", 90).build(), RULES);
    HazardReview closed =
        HazardReview.of(
            HazardMixture.builder(RULES)
                .cas("58339-34-7", 10)
                .cas("8012-89-3", 90)
                .dataSheet(
                    "58339-34-7", SubstanceHazards.builder("Cadmium red").notClassified().build())
                .build(),
            RULES);
    assertThat(open.finding(HazardClass.CARCINOGENICITY).status())
        .isEqualTo(HazardStatus.INSUFFICIENT_DATA);
    assertThat(closed.finding(HazardClass.CARCINOGENICITY).status())
        .isEqualTo(HazardStatus.NOT_CLASSIFIED);
  }

  @Test
  void missingFactor_isAnAssumptionOnShow() {
    HazardReview review =
        HazardReview.ofCake(Composition.ofParts(List.of(BEESWAX, ZINC_WHITE), 90, 10), RULES);
    assertThat(review.assumptions())
        .filteredOn(a -> a.kind() == Assumption.Kind.MISSING_FACTOR)
        .singleElement()
        .satisfies(a -> assertThat(a.text(Locale.GERMAN)).contains("Zinkweiß"));
  }

  @Test
  void explanation_showsTheArithmeticAndTheParagraph() {
    HazardReview review =
        HazardReview.of(
            HazardMixture.builder(RULES).cas("8006-64-2", 25).cas("8001-26-1", 75).build(), RULES);
    assertThat(review.finding(HazardClass.ACUTE_ORAL).explanation().text(Locale.ENGLISH))
        .contains("Acute toxicity, oral: category 4 (H302)")
        .contains("= 25 % ÷ 500\n", "= 0.05 %")
        .contains("acute toxicity estimate of the mixture = 100 ÷", "= 2000\n")
        .contains("3.1.3.6");
  }

  @Test
  void explanation_countsTheMetal() {
    HazardReview review =
        HazardReview.of(
            HazardMixture.builder(RULES).cas("1319-46-6", 10).cas("8012-89-3", 90).build(), RULES);
    assertThat(review.finding(HazardClass.STOT_REPEATED).explanation().text(Locale.ENGLISH))
        .contains("% of Pb", "÷ 0.5 %\n");
  }

  @Test
  void classComputedFromIngredients_isNotTakenFromATest() {
    HazardMixtureBuilder b = HazardMixture.builder(RULES);
    assertThatThrownBy(() -> b.tested("Carc. 1B H350")).isInstanceOf(ProblemException.class);
  }

  @Test
  void paint_isDeclaredWithTheColourIndexNameOfItsPigment() {
    HazardMixture mixture =
        HazardMixture.builder(Composition.ofParts(List.of(BEESWAX, PAINT), 90, 10), RULES).build();
    assertThat(mixture.declared())
        .extracting(share -> share.name(Locale.GERMAN))
        .contains("Zinkweiß-Ölfarbe (PW4)");
  }

  @ParameterizedTest
  @ValueSource(strings = {"zinc-whit", "1314-13-3", "zinc-paint", ""})
  void sheetForNoIngredient_isAProblemThatNamesTheIngredients(String id) {
    HazardMixtureBuilder b =
        HazardMixture.builder(Composition.ofParts(List.of(BEESWAX, PAINT), 70, 30), RULES)
            .dataSheet(id, SubstanceHazards.builder("x").classified("Carc. 1B H350").build());
    assertThatThrownBy(b::build)
        .isInstanceOfSatisfying(
            ProblemException.class,
            e -> {
              assertThat(e.problems().get(0).code()).isEqualTo(HazardProblem.NO_SUCH_INGREDIENT);
              assertThat(e.problems().get(0).found()).isEqualTo(id);
              assertThat(e.problems().get(0).allowed(Locale.ENGLISH))
                  .contains("beeswax-bleached", "zinc-white", "linseed-oil", "1314-13-2");
            });
  }

  @ParameterizedTest
  @ValueSource(strings = {"zinc-white", "1314-13-2"})
  void sheetByIdOrNumber_isUsedWhateverTheOrder(String id) {
    HazardMixture mixture =
        HazardMixture.builder(RULES)
            .dataSheet(id, SubstanceHazards.builder("x").classified("Carc. 1B H350").build())
            .material(ZINC_WHITE, 10)
            .material(BEESWAX, 90)
            .build();
    assertThat(HazardReview.of(mixture, RULES).finding(HazardClass.CARCINOGENICITY).category())
        .contains(Category.of("1B"));
  }

  @ParameterizedTest
  @CsvSource({"7, 3", "100, 0"})
  void shareWhoseLowEndLiesAbove_isRefused(double low, double high) {
    HazardMixtureBuilder b = HazardMixture.builder(RULES);
    assertThatThrownBy(() -> b.substance(SubstanceHazards.unknown("x"), low, high))
        .isInstanceOfSatisfying(
            ProblemException.class,
            e -> assertThat(e.problems().get(0).code()).isEqualTo(HazardProblem.SHARE_RANGE));
  }

  @ParameterizedTest
  @CsvSource({"-5, 7", "NaN, 7", "5, NaN"})
  void shareThatCannotBe_isRefused(double low, double high) {
    HazardMixtureBuilder b = HazardMixture.builder(RULES).cas("8012-89-3", 95);
    assertThatThrownBy(() -> b.substance(SubstanceHazards.unknown("x"), low, high).build())
        .isInstanceOf(ProblemException.class);
  }

  @Test
  void sheetsOfOneNameThatDiffer_areHeldEachByItself() {
    SubstanceHazards mild = SubstanceHazards.builder("Red").notClassified().build();
    SubstanceHazards severe = SubstanceHazards.builder("red").classified("Carc. 1B H350").build();
    HazardMixture mixture =
        HazardMixture.builder(RULES).substance(mild, 50).substance(severe, 50).build();
    assertThat(mixture.ingredients()).hasSize(2);
    assertThat(HazardReview.of(mixture, RULES).finding(HazardClass.CARCINOGENICITY).category())
        .contains(Category.of("1B"));
  }

  @Test
  void classThatOnlyATestCanTell_staysOpenUntilOneIsStated() {
    assertThat(HazardReview.of(aluminium().build(), RULES).open())
        .extracting(HazardFinding::hazardClass)
        .containsExactly(HazardClass.FLAMMABLE_SOLID, HazardClass.WATER_REACTIVE);
    HazardReview tested =
        HazardReview.of(
            aluminium()
                .tested("Flam. Sol. 2 H228")
                .testedWithout(HazardClass.WATER_REACTIVE)
                .build(),
            RULES);
    assertThat(tested.open()).isEmpty();
    assertThat(tested).hasToString("flammable-solid 2 H228");
    assertThatThrownBy(() -> aluminium().testedWithout(HazardClass.SKIN))
        .isInstanceOf(ProblemException.class);
  }

  private static HazardMixtureBuilder aluminium() {
    return HazardMixture.builder(RULES)
        .cas("7429-90-5", 5)
        .cas("8012-89-3", 95)
        .state(PhysicalState.SOLID);
  }

  @Test
  void reviewOnOneLine_namesTheNumberOfOpenClasses() {
    HazardMixture unknown =
        HazardMixture.builder(RULES)
            .cas("58339-34-7", 10)
            .cas("8012-89-3", 90)
            .state(PhysicalState.SOLID_AT_40)
            .build();
    assertThat(HazardReview.of(unknown, RULES))
        .hasToString("no class reached on the data given; 24 classes open");
    HazardMixture stateless =
        HazardMixture.builder(RULES).cas("8050-09-7", 10).cas("8012-89-3", 90).build();
    assertThat(HazardReview.of(stateless, RULES))
        .hasToString("skin-sensitisation 1 H317; 1 class open");
  }

  /** The code of the guide page on labels. */
  @Test
  void guide_entersADataSheet() {
    RuleSet rules = RULES;
    MaterialCatalogue catalogue = MaterialCatalogue.standard();
    Composition cake =
        Composition.ofParts(
            List.of(catalogue.require("beeswax-bleached"), catalogue.require("cadmium-red")),
            90,
            10);

    SubstanceHazards sheet =
        SubstanceHazards.builder("Cadmium red")
            .classified("Aquatic Chronic 4 H413")
            .openFor(HazardClass.CARCINOGENICITY)
            .build();
    HazardMixture mixture =
        HazardMixture.builder(cake, rules)
            .dataSheet("cadmium-red", sheet)
            .state(PhysicalState.SOLID_AT_40)
            .build();
    HazardReview review = HazardReview.of(mixture, rules);

    assertThat(review.open())
        .extracting(HazardFinding::hazardClass)
        .containsExactly(HazardClass.CARCINOGENICITY);
    assertThat(review.finding(HazardClass.SKIN_SENSITISATION).status())
        .isEqualTo(HazardStatus.NOT_CLASSIFIED);
  }
}
