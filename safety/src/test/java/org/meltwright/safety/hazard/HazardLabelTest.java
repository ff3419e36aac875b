// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.meltwright.safety.heating.Severity;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.TemperaturePoint;

class HazardLabelTest {

  private static final RuleSet RULES = RuleSet.clpOn(LocalDate.of(2026, 5, 1));

  private static LabelDetails.Builder details() {
    return LabelDetails.builder()
        .productName("Zinc white cake", "Zinkweiß-Block")
        .nominalMass(QuantityKind.MASS.ofSi(0.04))
        .batch("2026-11-A")
        .ufi("MWA1-C2D3-E4F5-G6H7")
        .supplier(
            LabelSupplier.of("Studio Fern", "Mill Lane 1, Oldtown", "+00 123")
                .withElectronicAddress("fern@example.org"))
        .maximumTemperature(TemperaturePoint.ofCelsius(90))
        .disposal("a collection point for hazardous waste", "einer Schadstoffsammelstelle");
  }

  private static HazardReview cake(String pigmentCas, double percent) {
    return HazardReview.of(
        HazardMixture.builder(RULES)
            .cas("8012-89-3", 100 - percent)
            .cas(pigmentCas, percent)
            .state(PhysicalState.SOLID)
            .build(),
        RULES);
  }

  @Test
  void completeLabel_saysWhatTheLawAndACarefulMakerSay() {
    HazardLabel label = HazardLabel.of(cake("1314-13-2", 30), details().build());
    assertThat(label.isComplete()).isTrue();
    assertThat(label.text(Locale.ENGLISH).lines())
        .contains(
            "Product: Zinc white cake",
            "Net mass: 40 g",
            "Batch: 2026-11-A",
            "Pictograms: GHS09 (environment)",
            "Warning",
            "H410 Very toxic to aquatic life with long lasting effects.",
            "P102 Keep out of reach of children.",
            "P273 Avoid release to the environment.",
            "P391 Collect spillage.",
            "P501 Dispose of contents and container to a collection point for hazardous waste.",
            "Composition by mass: beeswax 70 %, zinc oxide 30 %",
            "Heat to 90 °C at most, with a thermometer in the wax.",
            "Not a toy. Not for children under 14 years. Not for food or skin.");
  }

  @Test
  void germanLabel_isGermanThroughout() {
    HazardLabel label = HazardLabel.of(cake("1314-13-2", 30), details().build());
    assertThat(label.text(Locale.GERMAN).lines())
        .contains(
            "Produkt: Zinkweiß-Block",
            "Achtung",
            "H410 Sehr giftig für Wasserorganismen mit langfristiger Wirkung.",
            "P501 Inhalt und Behälter einer Schadstoffsammelstelle zuführen.",
            "Auf höchstens 90 °C erhitzen, mit einem Thermometer im Wachs.");
  }

  @Test
  void everyLabel_listsWhatIsNotAssessed() {
    for (HazardReview review : List.of(cake("1314-13-2", 30), cake("9000-16-2", 10))) {
      String text = HazardLabel.of(review, details().build()).text(Locale.ENGLISH);
      assertThat(text).contains("Not assessed:").contains("flammable solids").contains("closure");
      assertThat(text).contains("poison centres").contains("125 ml").contains("cosmetics");
      assertThat(text).contains("A screening aid, not a legal classification.");
    }
  }

  @Test
  void balmForTheSkin_isSaidFirstToBeACosmetic() {
    HazardLabel label =
        HazardLabel.of(cake("8012-89-3", 30), details().use(ProductUse.ON_THE_SKIN).build());
    assertThat(label.isComplete()).isFalse();
    assertThat(label.text(Locale.ENGLISH).lines().limit(2))
        .last(org.assertj.core.api.InstanceOfAssertFactories.STRING)
        .contains("not for this product")
        .contains("cosmetic");
    assertThat(label.text(Locale.GERMAN)).contains("gilt nicht für dieses Produkt");
    assertThat(label.text(Locale.ENGLISH)).doesNotContain("falls under the law of cosmetics");
  }

  @Test
  void paint_isNotToldOfCosmetics() {
    HazardLabel label =
        HazardLabel.of(cake("1314-13-2", 30), details().use(ProductUse.NOT_ON_THE_SKIN).build());
    assertThat(label.gaps()).doesNotContain(LabelGap.OTHER_LAW);
    assertThat(label.text(Locale.ENGLISH)).doesNotContain("cosmetic");
  }

  /** An amendment of a text is a last day for the old row and a new row. */
  @Test
  void everyText_hasDays_andOneTextADay() {
    Statements.days()
        .forEach(
            texts ->
                texts.forEach(
                    (code, all) -> {
                      for (int i = 1; i < all.size(); i++) {
                        assertThat(all.get(i - 1).overlap(all.get(i))).as(code).isFalse();
                      }
                      assertThat(all.get(0).from().or(() -> all.get(0).until()))
                          .as(code)
                          .isPresent();
                    }));
    assertThat(TextTable.rows("precautions.txt"))
        .allSatisfy(row -> assertThat(Days.of(row).from()).as("%s", row).isPresent());
  }

  @Test
  void mixtureInNoClass_isNotCalledSafe() {
    String text = HazardLabel.of(cake("9000-16-2", 10), details().build()).text(Locale.ENGLISH);
    assertThat(text).contains("No hazard class was reached").contains("not a word of safety");
    assertThat(text).contains("taken as not classified");
  }

  @Test
  void missingDisposal_leavesTheStatementOutAndSaysByWhom() {
    HazardLabel label = HazardLabel.of(cake("1314-13-2", 30), details().disposal("", "").build());
    assertThat(label.isComplete()).isFalse();
    assertThat(label.gaps()).containsExactly(LabelGap.DISPOSAL);
    assertThat(label.precautionaryStatements()).doesNotContain("P501");
    assertThat(label.text(Locale.ENGLISH))
        .startsWith("THIS LABEL IS INCOMPLETE")
        .contains("by the supplier, by local rules");
  }

  @Test
  void nothingStated_listsEveryGap() {
    HazardLabel label = HazardLabel.of(cake("1314-13-2", 30), LabelDetails.builder().build());
    assertThat(label.gaps())
        .containsExactly(
            LabelGap.PRODUCT_NAME,
            LabelGap.NOMINAL_MASS,
            LabelGap.SUPPLIER_NAME,
            LabelGap.SUPPLIER_ADDRESS,
            LabelGap.SUPPLIER_TELEPHONE,
            LabelGap.BATCH,
            LabelGap.MAXIMUM_TEMPERATURE,
            LabelGap.DISPOSAL);
  }

  @Test
  void ingredientWithoutData_leavesTheLabelIncomplete() {
    HazardLabel label = HazardLabel.of(cake("58339-34-7", 10), details().build());
    assertThat(label.gaps()).contains(LabelGap.CLASSIFICATION);
    assertThat(label.review().unknownStatements(Locale.ENGLISH))
        .containsExactly(
            "10 % of the mixture consists of ingredients of unknown acute toxicity.",
            "Contains 10 % of components with unknown hazards to the aquatic environment.");
    assertThat(label.text(Locale.ENGLISH))
        .doesNotContain("unknown acute toxicity")
        .contains("Cadmium red: Do not breathe or swallow the dust")
        .contains("Carcinogenicity: no data of cadmium sulphoselenide red (PR108)");
  }

  @Test
  void leadWhite_isNamedWithItsLaw() {
    HazardLabel label = HazardLabel.of(cake("1319-46-6", 10), details().build());
    assertThat(label.text(Locale.ENGLISH))
        .contains("Danger")
        .contains("EUH201 Contains lead.")
        .contains("Contains: lead compounds (group)")
        .contains("REACH, Annex XVII, entries 16 and 17")
        .contains("Lead: never heated.");
  }

  @Test
  void elicitingRosin_isNamedInItsStatement() {
    HazardLabel label = HazardLabel.of(cake("8050-09-7", 0.5), details().build());
    assertThat(label.supplementalStatements()).containsExactly("EUH208");
    assertThat(label.text("EUH208", Locale.GERMAN))
        .isEqualTo("Enthält Kolophonium. Kann allergische Reaktionen hervorrufen.");
  }

  @Test
  void sensitisingMixture_namesFurtherSensitisersWithoutTheStatement() {
    HazardLabel label = HazardLabel.of(rosinWithMethylisothiazolinone(0.00015), details().build());
    assertThat(label.hazardStatements()).contains("H317");
    assertThat(label.supplementalStatements()).doesNotContain("EUH208");
    assertThat(label.namedIngredients()).hasSize(2);
    HazardReview below = rosinWithMethylisothiazolinone(0.00014);
    assertThat(HazardLabel.of(below, details().build()).namedIngredients()).hasSize(1);
  }

  private static HazardReview rosinWithMethylisothiazolinone(double percent) {
    return HazardReview.of(
        HazardMixture.builder(RULES)
            .cas("8012-89-3", 87.5 - percent)
            .cas("8050-09-7", 12.5)
            .cas("2682-20-4", percent)
            .state(PhysicalState.SOLID)
            .build(),
        RULES);
  }

  @Test
  void dataSheetOnRequest_isPrintedForProfessionalsOnly() {
    HazardReview review = cake("136-52-7", 0.29);
    assertThat(HazardLabel.of(review, details().build()).supplementalStatements()).isEmpty();
    assertThat(
            HazardLabel.of(review, details().forProfessionals().build()).supplementalStatements())
        .containsExactly("EUH210");
  }

  @Test
  void rulesWithoutLabels_refuseOne() {
    RuleSet ghs = RuleSet.unGhsOn(LocalDate.of(2026, 6, 1));
    HazardReview review =
        HazardReview.of(
            HazardMixture.builder(ghs).substance(SubstanceHazards.presumedNone("x"), 100).build(),
            ghs);
    assertThatThrownBy(() -> HazardLabel.of(review, details().build()))
        .isInstanceOf(ProblemException.class);
  }

  /** Mixtures by their classes, with the core and, after a plus, what fills up. */
  static Stream<String[]> choices() {
    return TextTable.rows("label-choices.txt").stream().map(r -> r.toArray(new String[0]));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("choices")
  void precautions_keepWhatPreventsTheAccident(
      String mixture, String use, String categories, String core, String fill) {
    List<HazardCategory> all =
        TextTable.items(categories, ";").stream().map(HazardCategory::parse).toList();
    List<Precaution> chosen =
        new PrecautionChoice(
                all, LabelElements.of(all, RULES), Map.of(), use.equals("public"), false)
            .choose();
    assertThat(codes(chosen, p -> p.verdict() == Precaution.Verdict.FILL)).isEqualTo(sorted(fill));
    assertThat(
            codes(chosen, p -> p.verdict().isPrinted() && p.verdict() != Precaution.Verdict.FILL))
        .isEqualTo(sorted(core));
  }

  private static List<String> codes(List<Precaution> chosen, Predicate<Precaution> which) {
    return chosen.stream().filter(which).map(Precaution::code).sorted().toList();
  }

  private static List<String> sorted(String codes) {
    return TextTable.items(codes, " ").stream().sorted().toList();
  }

  @Test
  void labelOfTurpentine_saysWhyEachStatementIsThere() {
    HazardLabel label = turpentine(RULES.find("8006-64-2").orElseThrow());
    assertThat(label.explanation().text(Locale.ENGLISH))
        .contains("P210: never left out: Flammable liquids")
        .contains("P102: for the public")
        .contains("left out, the usual number was reached")
        .contains("Article 28(3)");
    assertThat(label.precautions()).extracting(Precaution::code).doesNotHaveDuplicates();
  }

  private static HazardLabel turpentine(SubstanceHazards solvent) {
    HazardMixture mixture =
        HazardMixture.builder(RULES)
            .substance(solvent, 100)
            .state(PhysicalState.LIQUID)
            .viscosityAt40(1.5)
            .flashPoint(TemperaturePoint.ofCelsius(35))
            .build();
    return HazardLabel.of(HazardReview.of(mixture, RULES), details().build());
  }

  @Test
  void noteWhoseConditionIsMet_bringsItsStatements() {
    SubstanceHazards naphtha = RULES.find("64742-48-9").orElseThrow();
    assertThat(turpentine(naphtha.withConditionMet("P")).precautionaryStatements())
        .contains("P102", "P260", "P262", "P301+P310", "P331");
    assertThat(turpentine(naphtha).precautionaryStatements()).doesNotContain("P262");
  }

  @Test
  void printedStatements_areAllInTheOrderOrTheCore() {
    assertThat(PrecautionChoice.named()).allSatisfy(c -> assertThat(Statements.has(c)).isTrue());
    assertThat(PrecautionChoice.order()).doesNotHaveDuplicates();
    assertThat(PrecautionChoice.order()).isSubsetOf(PrecautionChoice.named());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Acute Tox. 3 H301; Skin Irrit. 2 H315 | GHS06",
        "Skin Corr. 1 H314; Skin Irrit. 2 H315 | GHS05",
        "Eye Dam. 1 H318; Skin Irrit. 2 H315 | GHS05",
        "Eye Dam. 1 H318; Acute Tox. 4 H302 | GHS05,GHS07",
        "Eye Dam. 1 H318; STOT SE 3 H335 | GHS05,GHS07",
        "Resp. Sens. 1 H334; Skin Sens. 1 H317; Eye Irrit. 2 H319 | GHS08",
        "Resp. Sens. 1 H334; STOT SE 3 H336 | GHS07,GHS08",
        "Carc. 2 H351; Skin Sens. 1 H317 | GHS07,GHS08",
        "Aquatic Chronic 3 H412 | ''",
        "Flam. Sol. 1 H228; Carc. 1B H350 | GHS02,GHS08"
      })
  void pictograms_followThePrecedence(String categories, String expected) {
    List<HazardCategory> all =
        TextTable.items(categories, ";").stream().map(HazardCategory::parse).toList();
    assertThat(LabelElements.of(all, RULES).pictograms())
        .extracting(Enum::name)
        .isEqualTo(TextTable.items(expected, ","));
  }

  @Test
  void acuteToxicityByTwoRoutes_isOneStatement() {
    assertThat(
            LabelElements.of(
                    List.of(
                        HazardCategory.parse("Acute Tox. 4 H302"),
                        HazardCategory.parse("Acute Tox. 4 H332")),
                    RULES)
                .hazardStatements())
        .containsExactly("H302+H332");
  }

  @Test
  void organs_arePrintedWhereAllContributorsNameThem() {
    HazardLabel label = HazardLabel.of(cake("68909-20-6", 12), details().build());
    assertThat(label.text("H373", Locale.ENGLISH))
        .isEqualTo(
            "May cause damage to organs (lungs) through prolonged or repeated exposure"
                + " by inhalation.");
    assertThat(label.text("H373", Locale.GERMAN)).contains("(Lunge)").contains("bei Einatmen");
  }

  static Stream<String> codes() {
    return Statements.codes().stream().sorted();
  }

  @ParameterizedTest
  @MethodSource("codes")
  void textWithAGap_hasAFinishedForm(String code) {
    for (Locale locale : new Locale[] {Locale.ENGLISH, Locale.GERMAN}) {
      String published = Statements.published(code, locale);
      boolean open = published.matches(".*[<…/\\[].*");
      assertThat(open ? Statements.hasForm(code) : !published.isBlank()).as(published).isTrue();
    }
  }

  @Test
  void everyOfferedPrecaution_hasAText() {
    for (List<String> row : TextTable.rows("label-elements.txt")) {
      assertThat(Statements.has(row.get(2))).as(row.get(2)).isTrue();
      TextTable.items(row.get(5), " ").stream()
          .filter(code -> !Set.of("P320", "P321").contains(code))
          .forEach(code -> assertThat(Statements.has(code)).as(code).isTrue());
    }
  }

  @Test
  void everyCategoryOfTheRules_hasLabelElements() {
    for (HazardClass c : HazardClass.values()) {
      RULES
          .rule(c)
          .ifPresent(
              rule ->
                  assertThat(rule.levels())
                      .allSatisfy(
                          level -> assertThat(LabelElements.statement(c, level)).isNotEmpty()));
    }
  }

  @Test
  void jar_holdsTheNoticeOfTheLawTexts() throws IOException {
    try (InputStream in = HazardLabel.class.getResourceAsStream("/META-INF/NOTICE")) {
      assertThat(new String(in.readAllBytes(), StandardCharsets.UTF_8))
          .contains("© European Union, eur-lex.europa.eu")
          .contains("CC BY 4.0");
    }
  }

  @Test
  void everyClassRemarkAndAssumption_hasTextsInBothLanguages() {
    for (Locale locale : new Locale[] {Locale.ENGLISH, Locale.GERMAN}) {
      assertThat(HazardClass.values()).allSatisfy(c -> assertThat(c.name(locale)).isNotBlank());
      assertThat(Pictogram.values()).allSatisfy(p -> assertThat(p.symbol(locale)).isNotBlank());
      assertThat(LabelGap.values()).allSatisfy(g -> assertThat(g.text(locale)).endsWith("."));
      assertThat(LegalNotice.values()).allSatisfy(n -> assertThat(n.text(locale)).endsWith("."));
      assertThat(Assumption.Kind.values())
          .allSatisfy(k -> assertThat(new Assumption(k, List.of()).text(locale)).isNotBlank());
    }
  }

  @Test
  void corrosiveIngredient_isNamedButAnIrritantIsNot() {
    HazardReview corrosive = cake("1310-73-2", 6);
    HazardReview irritant = cake("1310-73-2", 1);
    assertThat(HazardLabel.of(corrosive, details().build()).namedIngredients()).hasSize(1);
    assertThat(HazardLabel.of(irritant, details().build()).namedIngredients()).isEmpty();
  }

  @Test
  void categoryWithoutALabel_isAProblem() {
    List<HazardCategory> five = List.of(HazardCategory.parse("Acute Tox. 5 H303"));
    assertThatThrownBy(() -> LabelElements.of(five, RULES)).isInstanceOf(ProblemException.class);
  }

  @Test
  void signalWordsOfChemicalsAndOfSigns_doNotConvert() {
    for (Class<?> chemical : List.of(ChemicalSignalWord.class, LabelElements.class)) {
      assertThat(chemical.getMethods())
          .allSatisfy(
              m -> {
                assertThat(m.getReturnType()).isNotEqualTo(Severity.class);
                assertThat(m.getParameterTypes()).doesNotContain(Severity.class);
              });
    }
    assertThat(Severity.class.getMethods())
        .allSatisfy(
            m -> {
              assertThat(m.getReturnType()).isNotEqualTo(ChemicalSignalWord.class);
              assertThat(m.getParameterTypes()).doesNotContain(ChemicalSignalWord.class);
            });
  }
}
