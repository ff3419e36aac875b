// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/** What stands on a data sheet is read or refused, never dropped. */
class HazardNotationTest {

  private static final RuleSet RULES = RuleSet.clpOn(LocalDate.of(2026, 6, 1));

  /** The names of the law and what may stand with them, written out by hand. */
  private static final String PAIRS =
      """
      Acute Tox. | 1 | H300 H310 H330
      Acute Tox. | 2 | H300 H310 H330
      Acute Tox. | 3 | H301 H311 H331
      Acute Tox. | 4 | H302 H312 H332
      Acute Tox. | 5 | H303 H313 H333
      Skin Corr. | 1 | H314
      Skin Corr. | 1A | H314
      Skin Corr. | 1B | H314
      Skin Corr. | 1C | H314
      Skin Irrit. | 2 | H315
      Skin Irrit. | 3 | H316
      Eye Dam. | 1 | H318
      Eye Irrit. | 2 | H319
      Eye Irrit. | 2A | H319
      Eye Irrit. | 2B | H320
      Resp. Sens. | 1 | H334
      Resp. Sens. | 1A | H334
      Resp. Sens. | 1B | H334
      Skin Sens. | 1 | H317
      Skin Sens. | 1A | H317
      Skin Sens. | 1B | H317
      Muta. | 1 | H340
      Muta. | 1A | H340
      Muta. | 1B | H340
      Muta. | 2 | H341
      Carc. | 1 | H350 H350i
      Carc. | 1A | H350 H350i
      Carc. | 1B | H350 H350i
      Carc. | 2 | H351
      Repr. | 1 | H360 H360D H360F H360FD H360Df H360Fd
      Repr. | 1A | H360 H360D H360F H360FD H360Df H360Fd
      Repr. | 1B | H360 H360D H360F H360FD H360Df H360Fd
      Repr. | 2 | H361 H361d H361f H361fd
      Lact. | | H362
      STOT SE | 1 | H370
      STOT SE | 2 | H371
      STOT SE | 3 | H335 H336
      STOT RE | 1 | H372
      STOT RE | 2 | H373
      Asp. Tox. | 1 | H304
      Asp. Tox. | 2 | H305
      Aquatic Acute | 1 | H400
      Aquatic Acute | 2 | H401
      Aquatic Acute | 3 | H402
      Aquatic Chronic | 1 | H410
      Aquatic Chronic | 2 | H411
      Aquatic Chronic | 3 | H412
      Aquatic Chronic | 4 | H413
      Ozone | 1 | H420
      ED HH | 1 | EUH380
      ED HH | 2 | EUH381
      ED ENV | 1 | EUH430
      ED ENV | 2 | EUH431
      PBT | | EUH440
      vPvB | | EUH441
      PMT | | EUH450
      vPvM | | EUH451
      Flam. Liq. | 1 | H224
      Flam. Liq. | 2 | H225
      Flam. Liq. | 3 | H226
      Flam. Liq. | 4 | H227
      Flam. Sol. | 1 | H228
      Flam. Sol. | 2 | H228
      Ox. Sol. | 1 | H271
      Ox. Sol. | 2 | H272
      Ox. Sol. | 3 | H272
      Ox. Liq. | 1 | H271
      Ox. Liq. | 2 | H272
      Ox. Liq. | 3 | H272
      Water-react. | 1 | H260
      Water-react. | 2 | H261
      Water-react. | 3 | H261
      Met. Corr. | 1 | H290
      Aerosol | 1 | H222
      Aerosol | 2 | H223
      Aerosol | 3 | H229
      """;

  private static final List<String> CATEGORIES =
      List.of("", "0", "1", "1A", "1B", "1C", "1D", "2", "2A", "2B", "3", "4", "5", "6", "10");

  static List<String> valid() {
    List<String> all = new ArrayList<>();
    for (String line : PAIRS.lines().toList()) {
      List<String> cells = TextTable.items(line.replace("| |", "| - |"), "\\|");
      for (String statement : cells.get(2).split(" ", -1)) {
        all.add(written(cells.get(0), cells.get(1).replace("-", ""), statement));
      }
    }
    return all;
  }

  private static String written(String name, String category, String statement) {
    return name + (category.isEmpty() ? " " : " " + category + " ") + statement;
  }

  /** Every name with every category and every statement that any class knows, and some of none. */
  private static List<String> allThatCanBeWritten() {
    Set<String> names = new TreeSet<>();
    Set<String> statements = new TreeSet<>(Set.of("H300i", "H350d", "H351i", "H360fD", "EUH066"));
    Statements.codes().stream()
        .filter(c -> c.matches("(EU)?H\\d{3}[a-zA-Z]*"))
        .forEach(statements::add);
    PAIRS.lines().forEach(line -> names.add(TextTable.items(line, "\\|").get(0)));
    List<String> all = new ArrayList<>();
    for (String name : names) {
      for (String category : CATEGORIES) {
        statements.forEach(statement -> all.add(written(name, category, statement)));
      }
    }
    return all;
  }

  private static HazardReview whole(String text, PhysicalState state) {
    return HazardReview.of(
        HazardMixture.builder(RULES)
            .substance(SubstanceHazards.builder("pigment").classified(text).build(), 100)
            .state(state)
            .viscosityAt40(1)
            .build(),
        RULES);
  }

  @ParameterizedTest
  @MethodSource("valid")
  void pairOfTheLaw_reachesItsClassOrLeavesItOpen(String text) {
    HazardReview review = whole(text, PhysicalState.LIQUID);
    HazardClass c = HazardCategory.parse(text).hazardClass();
    HazardFinding finding = review.finding(c);
    if (isOfTheUnAlone(text) && c != HazardClass.FLAMMABLE_LIQUID) {
      assertThat(finding.remarks()).containsExactly(HazardRemark.CATEGORY_NOT_KNOWN);
    } else if (finding.isClassified()) {
      assertThat(rank(c, finding.category().orElseThrow()))
          .as(
              "%s: the point estimate of an acute category may be the bound of the one above",
              finding)
          .isLessThanOrEqualTo(rank(c, HazardCategory.parse(text).category()));
    } else {
      assertThat(finding.status()).isEqualTo(HazardStatus.INSUFFICIENT_DATA);
      assertThat(review.open()).contains(finding);
      assertThat(c).isIn(openWithoutATest());
    }
  }

  /** Save 2A and 2B of the eye, which are 2 here. */
  private static boolean isOfTheUnAlone(String text) {
    HazardCategory read = HazardCategory.parse(text);
    return LabelElements.ofUnAlone().contains(read) && read.hazardClass() != HazardClass.EYE;
  }

  private static int rank(HazardClass c, Category category) {
    ClassRule rule = RULES.rule(c).orElseThrow();
    return rule.rank(rule.asKnown(category));
  }

  private static List<HazardClass> openWithoutATest() {
    return List.of(
        HazardClass.FLAMMABLE_LIQUID,
        HazardClass.FLAMMABLE_SOLID,
        HazardClass.OXIDISING,
        HazardClass.WATER_REACTIVE,
        HazardClass.METAL_CORROSION,
        HazardClass.AEROSOL);
  }

  @Test
  void pairThatTheLawDoesNotKnow_isRefused() {
    Set<String> known = Set.copyOf(valid());
    int refused = 0;
    for (String text : allThatCanBeWritten()) {
      if (!known.contains(text)) {
        refused++;
        assertThatThrownBy(() -> HazardCategory.parse(text))
            .as(text)
            .isInstanceOf(ProblemException.class);
        assertThatThrownBy(() -> SpecificLimit.parse(text + " 1"))
            .as(text)
            .isInstanceOf(ProblemException.class);
      }
    }
    assertThat(refused).isGreaterThan(20_000);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Carc. H350 | Carc. 1A (H350, H350i), 1B (H350, H350i), 2 (H351)",
        "Carc. 3 H351 | Carc. 1A (H350, H350i), 1B (H350, H350i), 2 (H351)",
        "Carc. 1B H317 | Carc. 1A (H350, H350i), 1B (H350, H350i), 2 (H351)",
        "Carc. 1B H351 | Carc. 1A (H350, H350i), 1B (H350, H350i), 2 (H351)",
        "Skin Sens. 4 H317 | Skin Sens. 1A (H317), 1B (H317), 1 (H317)",
        "STOT RE 3 H373 | STOT RE 1 (H372), 2 (H373)",
        "STOT SE 1 H335 | STOT SE 1 (H370), 2 (H371), 3 (H335, H336)",
        "Skin Irrit. 1 H314 | Skin Irrit. 2 (H315), 3 (H316)",
        "Lact. 1 H362 | Lact. (H362)",
        "PBT 1 EUH440 | PBT (EUH440)",
        "Muta. 2 H340 | Muta. 1A (H340), 1B (H340), 2 (H341)",
        "Aquatic Acute 4 H401 | Aquatic Acute 1 (H400), 2 (H401), 3 (H402)"
      })
  void mismatch_namesWhatTheClassKnows(String text, String pairs) {
    assertThatThrownBy(() -> SubstanceHazards.builder("x").classified(text))
        .isInstanceOfSatisfying(
            ProblemException.class,
            e -> {
              Problem problem = e.problems().get(0);
              assertThat(problem.code()).isEqualTo(HazardProblem.CATEGORY);
              assertThat(problem.found()).isEqualTo(text);
              assertThat(problem.allowed(Locale.ENGLISH)).endsWith(": " + pairs);
              assertThat(problem.allowed(Locale.GERMAN)).endsWith(": " + pairs);
            });
  }

  @Test
  void acuteStatementOfAnotherClass_isRefused() {
    assertThatThrownBy(() -> HazardCategory.parse("Acute Tox. 1 H400"))
        .isInstanceOf(ProblemException.class)
        .hasMessageContaining("1 (H300, H310, H330)");
  }

  @ParameterizedTest
  @CsvSource({
    "Carc. 1 H350, CARCINOGENICITY, H350",
    "Carc. 1 H350i, CARCINOGENICITY, H350i",
    "Muta. 1 H340, MUTAGENICITY, H340",
    "Repr. 1 H360, REPRODUCTION, H360",
    "Repr. 1 H360FD, REPRODUCTION, H360FD"
  })
  void undividedCategory1_isTakenAs1AAndSaidSo(String text, HazardClass c, String statement) {
    HazardReview review = whole(text, PhysicalState.SOLID);
    assertThat(HazardCategory.parse(text).undivided()).isTrue();
    assertThat(review.finding(c).categories())
        .extracting(HazardCategory::category, HazardCategory::statement)
        .containsExactly(org.assertj.core.groups.Tuple.tuple(Category.ONE_A, statement));
    assertThat(review.assumptions())
        .extracting(Assumption::kind)
        .contains(Assumption.Kind.UNDIVIDED_CATEGORY);
  }

  @Test
  void undividedCategory1OfALimit_holdsFor1A() {
    SubstanceHazards sheet =
        SubstanceHazards.builder("x")
            .classified("Repr. 1 H360D")
            .limits("Repr. 1 H360D 0.03")
            .build();
    assertThat(at(sheet, 0.03).finding(HazardClass.REPRODUCTION).category())
        .contains(Category.of("1A"));
    assertThat(at(sheet, 0.029).finding(HazardClass.REPRODUCTION).isClassified()).isFalse();
  }

  private static HazardReview at(SubstanceHazards sheet, double percent) {
    return HazardReview.of(
        HazardMixture.builder(RULES)
            .substance(sheet, percent)
            .substance(SubstanceHazards.presumedNone("rest"), 100 - percent)
            .state(PhysicalState.SOLID)
            .build(),
        RULES);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "carc. 1b h350 | carcinogenicity 1B H350",
        "CARC. 1B H350I | ",
        "Carc. Cat. 1B H350 | carcinogenicity 1B H350",
        "Carc. cat 1b H350 | carcinogenicity 1B H350",
        "Carc. Category 1B H350 | carcinogenicity 1B H350",
        "Carc.1B, H350 | carcinogenicity 1B H350",
        "  Skin   Sens.  1A    H317 | skin-sensitisation 1A H317",
        "Skin Sens. 1: H317 | skin-sensitisation 1 H317",
        "Skin Sens 1 H317 | skin-sensitisation 1 H317",
        "vpvb euh441 | vpvb EUH441",
        "Repr. 2 H361d | reproduction 2 H361d",
        "Repr. 1B H360FD | reproduction 1B H360FD",
        "Repr. 1B H360fd | ",
        "Repr. 2 H361FD | ",
        "Repr. 1B H361d | ",
        "Acute Tox. 4* H302 | acute-oral 4 H302",
        "STOT RE 2 H373 (lungs) (inhalation) | stot-repeated 2 H373",
        "EUH066 | ",
        "H350 | ",
        "Carc. 1B | carcinogenicity 1B H350",
        "Carc. 1B H350 and more | "
      })
  void writing_isReadOrRefused(String text, String read) {
    if (read == null) {
      assertThatThrownBy(() -> HazardCategory.parse(text)).isInstanceOf(ProblemException.class);
    } else {
      assertThat(HazardCategory.parse(text)).hasToString(read);
    }
  }

  @Test
  void constructor_refusesWhatDoesNotBelongTogether() {
    assertThatThrownBy(() -> category("1B", "H317")).isInstanceOf(ProblemException.class);
    assertThatThrownBy(() -> category("9", "H350")).isInstanceOf(ProblemException.class);
    assertThatThrownBy(() -> category("5", "")).isInstanceOf(ProblemException.class);
    assertThat(category("1B", "H350i").statement()).isEqualTo("H350i");
  }

  private static HazardCategory category(String category, String statement) {
    return new HazardCategory(
        HazardClass.CARCINOGENICITY, Category.of(category), statement, List.of(), false, false);
  }

  @Test
  void category5OfTheUnSystem_countsByItsRules() {
    RuleSet un = RuleSet.unGhsOn(LocalDate.of(2026, 6, 1));
    SubstanceHazards sheet =
        SubstanceHazards.builder("x").classified("Acute Tox. 5 H303; Acute Tox. 5 H313").build();
    HazardReview review =
        HazardReview.of(HazardMixture.builder(un).substance(sheet, 100).build(), un);
    assertThat(review.finding(HazardClass.ACUTE_ORAL).category()).contains(Category.of("5"));
    assertThat(review.finding(HazardClass.ACUTE_DERMAL).category()).contains(Category.of("5"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Carc. 1B H350 150",
        "Carc. 1B H350 100.1",
        "Carc. 1B H350 0",
        "Skin Corr. 1B H314 5 to 2",
        "Skin Corr. 1B H314 5 to 5",
        "Skin Corr. 1B H314 5 to 101"
      })
  void limitThatNoMixtureCanReach_isAProblem(String text) {
    assertThatThrownBy(() -> SpecificLimit.parse(text))
        .isInstanceOfSatisfying(
            ProblemException.class,
            e -> assertThat(e.problems().get(0).code()).isEqualTo(HazardProblem.LIMIT));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Carc. 1B H350 1.2.3",
        "Carc. 1B H350 .",
        "Carc. 1B H350 -1",
        "Carc. 1B H350 NaN",
        "Carc. 1B H350 Infinity",
        "Carc. 1B H350 1 to",
        "Carc. 1B H350",
        "Carc. 1B H350 1.000,5"
      })
  void limitThatCannotBeRead_isAProblem(String text) {
    assertThatThrownBy(() -> SubstanceHazards.builder("x").limits(text))
        .isInstanceOfSatisfying(
            ProblemException.class,
            e -> assertThat(e.problems().get(0).code()).isEqualTo(HazardProblem.NOTATION));
  }

  static Stream<double[]> badEnds() {
    return Stream.of(
        new double[] {Double.NaN, 5},
        new double[] {1, Double.NaN},
        new double[] {-1, 5},
        new double[] {0, 5},
        new double[] {5, 1},
        new double[] {1, 200},
        new double[] {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY},
        new double[] {200, Double.POSITIVE_INFINITY});
  }

  @ParameterizedTest
  @MethodSource("badEnds")
  void limitMadeOfNumbers_isGuarded(double[] ends) {
    assertThatThrownBy(
            () ->
                new SpecificLimit(
                    HazardClass.CARCINOGENICITY,
                    Category.ONE_B,
                    "H350",
                    ends[0],
                    ends[1] == Double.POSITIVE_INFINITY
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(ends[1])))
        .isInstanceOf(ProblemException.class);
  }

  @ParameterizedTest
  @ValueSource(strings = {"Carc. 1B H350 100", "Carc. 1B H350 50 to 100", "Carc. 1B H350 1 %"})
  void limitAboveTheGeneralOne_isTheSuppliers(String text) {
    SubstanceHazards sheet =
        SubstanceHazards.builder("x").classified("Carc. 1B H350").limits(text).build();
    assertThat(at(sheet, 100).finding(HazardClass.CARCINOGENICITY).category())
        .contains(Category.of("1B"));
    assertThat(at(sheet, 0.9).finding(HazardClass.CARCINOGENICITY).isClassified()).isFalse();
  }

  @Test
  void limitForAMilderCategoryAlone_takesNothingFromTheGeneralOne() {
    SubstanceHazards sheet =
        SubstanceHazards.builder("x")
            .classified("Carc. 1B H350")
            .limits("Carc. 2 H351 0.01")
            .build();
    assertThat(at(sheet, 0.1).finding(HazardClass.CARCINOGENICITY).category())
        .contains(Category.of("1B"));
    assertThat(at(sheet, 0.01).finding(HazardClass.CARCINOGENICITY).category())
        .contains(Category.of("2"));
  }

  @Test
  void sheetThatWouldHideAHazard_isRefused() {
    SubstanceSheet sheet = SubstanceHazards.builder("x").classified("Acute Tox. 1 H330");
    assertThatThrownBy(() -> sheet.inhaledAs(UptakeForm.ORAL)).isInstanceOf(ProblemException.class);
    assertThatThrownBy(() -> sheet.metal("Pb", 0)).isInstanceOf(ProblemException.class);
  }
}
