// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.meltwright.safety.heating.HeatingLimits;
import org.meltwright.units.ProblemException;
import org.meltwright.units.TemperaturePoint;

/** What a label says beside the classes: of heat, of names, of what a test has still to tell. */
class LabelCareTest {

  private static final RuleSet RULES = RuleSet.clpOn(LocalDate.of(2026, 6, 1));
  private static final String WAX = "8012-89-3";

  private static HazardMixtureBuilder mixture() {
    return HazardMixture.builder(RULES);
  }

  private static HazardLabel label(HazardMixtureBuilder b, LabelDetails.Builder details) {
    return HazardLabel.of(HazardReview.of(b.build(), RULES), details.build());
  }

  private static LabelDetails.Builder heatedTo(double celsius) {
    return LabelDetails.builder().maximumTemperature(TemperaturePoint.ofCelsius(celsius));
  }

  private static SubstanceHazards sheet(String classes) {
    return SubstanceHazards.builder("Stuff").classified(classes).build();
  }

  private static String english(HazardLabel label) {
    return label.text(Locale.ENGLISH);
  }

  private static void assertNoHeating(HazardLabel label, String instead) {
    assertThat(english(label))
        .contains(instead)
        .doesNotContain("at most, with a thermometer")
        .doesNotContain("Melt on a plate");
    assertThat(label.text(Locale.GERMAN)).doesNotContain("auf höchstens", "Auf höchstens");
    assertThat(HazardLabelData.of(label, Locale.ENGLISH).maximumCelsius()).isNull();
  }

  // Heat

  @Test
  void heatingFigures_areThoseOfTheHeatingRules() {
    assertThat(RULES.bound(Bound.HEATING_FLASH_MARGIN_KELVIN))
        .isEqualTo(HeatingLimits.standard().flashMargin().kelvin());
    assertThat(RULES.bound(Bound.HEATING_CEILING_CELSIUS))
        .isEqualTo(HeatingLimits.standard().hardCeiling().celsius());
  }

  /** The margin is 50 K: below it nothing is advised, at it neither. */
  @ParameterizedTest
  @CsvSource({
    "35, 90, from 35 °C on. Use it cold",
    "100, 60, less than 50 °C only",
    "140, 90, less than 90 °C only"
  })
  void heatTooNearTheFlashPoint_isNotAdvised(double flash, double heat, String instead) {
    HazardLabel label =
        label(
            mixture()
                .cas(WAX, 100)
                .state(PhysicalState.SOLID)
                .flashPoint(TemperaturePoint.ofCelsius(flash)),
            heatedTo(heat));
    assertNoHeating(label, instead);
    assertThat(label.gaps()).contains(LabelGap.TEMPERATURE_TOO_HIGH);
  }

  @ParameterizedTest
  @CsvSource({"140.1, 90", "200, 90", "100, 49.9"})
  void heatWithTheMargin_isAdvised(double flash, double heat) {
    HazardLabel label =
        label(
            mixture()
                .cas(WAX, 100)
                .state(PhysicalState.SOLID)
                .flashPoint(TemperaturePoint.ofCelsius(flash)),
            heatedTo(heat));
    assertThat(english(label)).contains("at most, with a thermometer");
    assertThat(label.gaps()).doesNotContain(LabelGap.TEMPERATURE_TOO_HIGH);
  }

  @ParameterizedTest
  @ValueSource(strings = {"Flam. Liq. 3 H226", "Flam. Liq. 1 H224"})
  void waxWithAFlammableLiquidOfUnknownFlashPoint_isNotToBeHeated(String classes) {
    for (PhysicalState state : List.of(PhysicalState.SOLID, PhysicalState.SOLID_AT_40)) {
      HazardMixtureBuilder b = mixture().cas(WAX, 90).substance(sheet(classes), 10).state(state);
      assertNoHeating(label(b, heatedTo(70)), "its flash point is not known");
    }
    HazardMixtureBuilder unstated = mixture().cas(WAX, 90).substance(sheet(classes), 10);
    assertNoHeating(label(unstated, LabelDetails.builder()), "its flash point is not known");
    HazardMixtureBuilder liquid =
        mixture().cas(WAX, 10).substance(sheet(classes), 90).state(PhysicalState.LIQUID);
    assertNoHeating(label(liquid, heatedTo(70)), "its flash point is not known");
  }

  @Test
  void waxWithTurpentine_isNotToBeHeatedByTheFlashPointOfTheCatalogue() {
    HazardLabel label =
        label(mixture().cas(WAX, 90).cas("8006-64-2", 10).state(PhysicalState.SOLID), heatedTo(80));
    assertNoHeating(label, "Use it cold");
  }

  @Test
  void substanceThatNobodyKnows_isNotToBeHeated() {
    HazardMixtureBuilder b =
        mixture()
            .cas(WAX, 90)
            .substance(SubstanceHazards.unknown("a liquid from the attic"), 10)
            .state(PhysicalState.SOLID);
    assertNoHeating(label(b, heatedTo(80)), "its flash point is not known");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Org. Perox. D H242", "Self-heat. 1 H251", "Expl. 1.1 H201", "Pyr. Sol. 1 H250",
        "Flam. Gas 1 H220", "Press. Gas H280", "Ox. Sol. 2 H272", "Aerosol 1 H222",
        "Self-react. C H242"
      })
  void whatBurstsOrFeedsAFire_isNotToBeHeated(String classes) {
    HazardMixtureBuilder b =
        mixture().cas(WAX, 99).substance(sheet(classes), 1).state(PhysicalState.SOLID);
    assertNoHeating(label(b, heatedTo(80)), "(Stuff)");
  }

  @ParameterizedTest
  @ValueSource(doubles = {93.3, 120})
  void heatAboveTheCeiling_isNotAdvised(double celsius) {
    HazardLabel label =
        label(mixture().cas(WAX, 100).state(PhysicalState.SOLID), heatedTo(celsius));
    assertNoHeating(label, "wax stays below 93.3 °C");
  }

  @Test
  void ordinaryWax_isMeltedAsBefore() {
    HazardLabel label = label(mixture().cas(WAX, 100).state(PhysicalState.SOLID), heatedTo(90));
    assertThat(english(label)).contains("Heat to 90 °C at most").contains("Melt on a plate");
  }

  // What is said at least until it is tested

  @ParameterizedTest
  @ValueSource(strings = {"LIQUID", ""})
  void neatTurpentineWithoutFigures_saysAtLeastWhatItsEntrySays(String state) {
    HazardMixtureBuilder b = mixture().cas("8006-64-2", 100);
    if (!state.isEmpty()) {
      b.state(PhysicalState.valueOf(state));
    }
    HazardLabel label = label(b, LabelDetails.builder());
    assertThat(label.untilTested()).contains("H226", "H304", "P210", "P301+P310", "P331");
    assertThat(english(label).lines())
        .contains("At least, until the open classes below are settled:")
        .anyMatch(l -> l.startsWith("P210 "))
        .anyMatch(l -> l.startsWith("P331 "));
    assertThat(HazardLabelData.of(label, Locale.GERMAN).untilTested()).isNotEmpty();
  }

  // Supplements of ingredients

  @ParameterizedTest
  @ValueSource(
      strings = {
        "EUH014", "EUH018", "EUH019", "EUH029", "EUH031", "EUH032", "EUH044", "EUH071", "EUH202",
        "EUH206"
      })
  void supplementOfAnIngredient_isAppliedOrToBeLookedInto(String code) {
    SubstanceHazards s =
        SubstanceHazards.builder("Stuff").classified("Acute Tox. 4 H302").supplements(code).build();
    HazardMixtureBuilder b = mixture().cas(WAX, 99.5).substance(s, 0.5).state(PhysicalState.SOLID);
    HazardLabel open = label(b, LabelDetails.builder());
    assertThat(open.gaps()).contains(LabelGap.SUPPLEMENTS);
    assertThat(english(open)).contains("  - " + code + " ").contains("(Stuff)");
    assertThat(HazardReviewData.of(open.review(), Locale.GERMAN).supplementsToCheck()).hasSize(1);
    HazardLabel applied = label(b.supplement(code), LabelDetails.builder());
    assertThat(applied.supplementalStatements()).contains(code);
    assertThat(applied.gaps()).doesNotContain(LabelGap.SUPPLEMENTS);
  }

  @Test
  void supplementThatAnIngredientCarriesInVain_isSettledByATest() {
    SubstanceHazards s =
        SubstanceHazards.builder("Stuff")
            .classified("Acute Tox. 4 H302")
            .supplements("EUH031")
            .build();
    HazardMixtureBuilder b = mixture().cas(WAX, 99).substance(s, 1).withoutSupplement("EUH031");
    HazardLabel label = label(b, LabelDetails.builder());
    assertThat(label.gaps()).doesNotContain(LabelGap.SUPPLEMENTS);
    assertThat(label.supplementalStatements()).doesNotContain("EUH031");
  }

  @Test
  void dryingIngredientBelowTheConvention_isAnAssumptionOnShow() {
    SubstanceHazards s =
        SubstanceHazards.builder("Stuff")
            .classified("Acute Tox. 4 H302")
            .supplements("EUH066")
            .build();
    HazardReview review = HazardReview.of(mixture().cas(WAX, 81).substance(s, 19).build(), RULES);
    assertThat(review.assumptions())
        .extracting(Assumption::kind)
        .contains(Assumption.Kind.DRYNESS_BELOW_CONVENTION);
  }

  // A sheet against the entry

  private static List<Assumption.Kind> assumed(SubstanceSheet sheet) {
    return HazardReview.of(mixture().cas(WAX, 50).substance(sheet.build(), 50).build(), RULES)
        .assumptions()
        .stream()
        .map(Assumption::kind)
        .toList();
  }

  @Test
  void copiedSheet_isFoundByEntryNumberAndByName() {
    String mild = "Skin Irrit. 2 H315";
    assertThat(assumed(SubstanceHazards.builder("Mine").entry("650-002-00-6").classified(mild)))
        .contains(Assumption.Kind.DATA_SHEET_MILDER);
    assertThat(assumed(SubstanceHazards.builder("Turpentine, oil").classified(mild)))
        .contains(Assumption.Kind.DATA_SHEET_MILDER);
    CopiedSheet copied = CopiedSheet.read("Terpentine 8006-64-2 50 % Skin Irrit. 2 H315");
    assertThat(assumed(copied.lines().get(0).hazards().toBuilder()))
        .contains(Assumption.Kind.DATA_SHEET_MILDER);
    assertThat(assumed(SubstanceHazards.builder("Mine").classified(mild)))
        .doesNotContain(Assumption.Kind.DATA_SHEET_MILDER);
  }

  /** Each entry copied as it stands is as grave as itself. */
  @Test
  void entryCopiedAsItStands_isNotMilder() {
    for (SubstanceHazards entry : RULES.entries()) {
      SubstanceSheet copy =
          SubstanceHazards.builder(entry.name()).entry(entry.indexNumber().orElseThrow());
      entry.categories().forEach(copy::classified);
      entry.specificLimits().forEach(copy::limit);
      entry.acuteFactor().ifPresent(copy::acuteFactor);
      entry.chronicFactor().ifPresent(copy::chronicFactor);
      for (UptakeForm form : UptakeForm.values()) {
        OptionalDouble estimate = entry.estimate(form);
        estimate.ifPresent(e -> copy.estimate(form, e));
      }
      entry.supplements().forEach(copy::supplements);
      assertThat(assumed(copy))
          .as(entry.toString())
          .doesNotContain(Assumption.Kind.DATA_SHEET_MILDER);
    }
  }

  // Names

  @Test
  void corrosionByPhAlone_namesWhatIsCorrosiveInIt() {
    HazardLabel label =
        label(
            mixture()
                .cas("7732-18-5", 99.6)
                .cas("1310-73-2", 0.4)
                .ph(13)
                .state(PhysicalState.LIQUID),
            LabelDetails.builder());
    assertThat(label.hazardStatements()).contains("H314");
    assertThat(label.namedIngredients())
        .extracting(i -> i.name(Locale.ENGLISH))
        .containsExactly("sodium hydroxide");
    assertThat(label.gaps()).doesNotContain(LabelGap.INGREDIENT_OF_CLASS);
  }

  @Test
  void corrosionByPhWithoutAnyIngredientInTheClass_isAGap() {
    HazardLabel label = label(mixture().cas("7732-18-5", 100).ph(13), LabelDetails.builder());
    assertThat(label.gaps()).contains(LabelGap.INGREDIENT_OF_CLASS);
    assertThat(english(label)).contains("makes it acid or alkaline");
  }

  @Test
  void nameOfAGroup_isPrintedOnce() {
    HazardLabel label =
        label(
            mixture().cas("8001-26-1", 99).cas("136-52-7", 0.5).cas("149-57-5", 0.5),
            LabelDetails.builder());
    assertThat(label.namedIngredients()).hasSize(2);
    for (Locale locale : new Locale[] {Locale.ENGLISH, Locale.GERMAN}) {
      String name = label.namedIngredients().get(0).name(locale);
      assertThat(label.text(locale).lines().filter(l -> l.contains(": " + name + ", " + name)))
          .isEmpty();
      assertThat(HazardLabelData.of(label, locale).contains()).doesNotHaveDuplicates();
    }
  }

  @Test
  void germanLabel_bearsGermanNamesOrSaysThatItHasNone() {
    HazardLabel label =
        label(
            mixture().cas(WAX, 50).substance(sheet("Skin Irrit. 2 H315"), 50),
            LabelDetails.builder());
    assertThat(label.text(Locale.GERMAN))
        .doesNotContainIgnoringCase("beeswax")
        .contains("Bienenwachs")
        .contains("Ohne deutschen Namen gedruckt:\n  - Stuff");
    assertThat(english(label)).doesNotContain("without a German form");
  }

  // Duties

  @ParameterizedTest
  @ValueSource(strings = {"8001-26-1", "8002-11-7"})
  void dryingOil_bringsTheWordOnRags(String cas) {
    HazardLabel label = label(mixture().cas(WAX, 80).cas(cas, 20), LabelDetails.builder());
    assertThat(english(label)).contains("heat themselves");
    assertThat(label.text(Locale.GERMAN)).contains("erhitzen sich selbst");
    assertThat(english(label(mixture().cas(WAX, 100), LabelDetails.builder())))
        .doesNotContain("heat themselves");
  }

  @Test
  void notifiedMixture_asksForItsIdentifier() {
    HazardMixtureBuilder b = mixture().cas(WAX, 50).cas("8050-09-7", 50);
    assertThat(label(b, LabelDetails.builder()).gaps()).contains(LabelGap.UFI);
    HazardLabel with = label(b, LabelDetails.builder().ufi("MWA1-C2D3-E4F5-G6H7"));
    assertThat(with.gaps()).doesNotContain(LabelGap.UFI);
    assertThat(english(with)).contains("UFI: MWA1-C2D3-E4F5-G6H7");
    assertThat(HazardLabelData.of(with, Locale.ENGLISH).ufi()).isEqualTo("MWA1-C2D3-E4F5-G6H7");
    assertThat(label(mixture().cas(WAX, 100), LabelDetails.builder()).gaps())
        .doesNotContain(LabelGap.UFI);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "MWA1-C2D3-E4F5",
        "mwa1-c2d3-e4f5-g6h7",
        "MWA1C2D3E4F5G6H7",
        "MWA1-C2D3-E4F5-G6HO"
      })
  void identifierThatIsNotWrittenSo_isRefused(String code) {
    assertThatThrownBy(() -> LabelDetails.builder().ufi(code)).isInstanceOf(ProblemException.class);
  }

  /** REACH, Annex XVII, entries 28 to 30 (remembered). */
  @Test
  void carcinogenOfCategoryOne_isRestrictedToProfessionals() {
    HazardMixtureBuilder b =
        mixture().cas(WAX, 90).substance(sheet("Carc. 1B H350"), 10).state(PhysicalState.SOLID);
    HazardLabel label = label(b, LabelDetails.builder().forProfessionals());
    assertThat(english(label).lines()).contains("Restricted to professional users.");
    assertThat(label.text(Locale.GERMAN).lines()).contains("Nur für gewerbliche Anwender.");
    assertThat(label(b, LabelDetails.builder()).restriction(Locale.ENGLISH)).isEmpty();
    HazardMixtureBuilder suspected = mixture().cas(WAX, 90).substance(sheet("Carc. 2 H351"), 10);
    assertThat(
            label(suspected, LabelDetails.builder().forProfessionals()).restriction(Locale.GERMAN))
        .isEmpty();
  }
}
