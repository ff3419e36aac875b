// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemCode;
import org.meltwright.units.ProblemException;

class RuleFileTest {

  private static final LocalDate DAY = LocalDate.of(2026, 6, 1);
  private static final String CLP = TextTable.text("clp-2026-05-01.txt");

  private static final String SMALL =
      """
      # An invented rule set of one class.
      rule-set | my-rules | Rules of my guild | 2026-12-31
      class | skin-sensitisation | highest | 1 | 0.1 | page 3 | READ | 2020-01-01 |
      limit | skin-sensitisation | 1 | 1 | 1 | page 4 | READ | 2020-01-01 |
      limit | skin-sensitisation | 1A | 1 | 0.1 | page 4 | READ | 2020-01-01 |
      limit | skin-sensitisation | 1B | 1 | 1 | page 4 | READ | 2020-01-01 |
      """;

  private static HazardReview rosin(RuleSet rules, double percent) {
    SubstanceHazards rosin =
        SubstanceHazards.builder("rosin").classified("Skin Sens. 1 H317").build();
    return HazardReview.of(
        HazardMixture.builder(rules).substance(rosin, percent).restNotClassified().build(), rules);
  }

  @Test
  void fileOfAnApp_classifiesWithoutALabel() {
    RuleSet rules = RuleSet.read(SMALL, DAY);
    assertThat(rules.id()).isEqualTo("my-rules");
    assertThat(rules.hasLabels()).isFalse();
    assertThat(rosin(rules, 1).categories()).hasSize(1);
    assertThat(rosin(rules, 0.99).categories()).isEmpty();
    assertThat(rosin(rules, 0.99).classesNotAssessed())
        .contains(HazardClass.CARCINOGENICITY)
        .doesNotContain(HazardClass.SKIN_SENSITISATION);
    assertThat(rosin(rules, 0.99).toString()).contains("classes not assessed");
    assertThat(HazardReviewData.of(rosin(rules, 0.99), Locale.ENGLISH).notAssessed())
        .contains("Carcinogenicity");
    assertThatThrownBy(() -> HazardLabel.of(rosin(rules, 1), LabelDetails.builder().build()))
        .isInstanceOf(ProblemException.class);
  }

  @Test
  void dayAfterTheLastLookedAt_isSaidByAnswerAndLabel() {
    assertThat(rosin(RuleSet.read(SMALL, LocalDate.of(2026, 12, 31)), 1).toString())
        .doesNotContain("may have changed");
    assertThat(rosin(RuleSet.read(SMALL, LocalDate.of(2027, 1, 1)), 1).toString())
        .contains("the rules may have changed");
    RuleSet late = RuleSet.clpOn(LocalDate.of(2099, 1, 1));
    assertThat(late.mayHaveChanged()).isTrue();
    HazardLabel label = HazardLabel.of(rosin(late, 1), LabelDetails.builder().build());
    assertThat(label.text(Locale.ENGLISH))
        .contains("up to 2026-11-30")
        .contains("may have changed");
    assertThat(label.text(Locale.GERMAN)).contains("2026-11-30").contains("geändert");
    assertThat(HazardReviewData.of(rosin(late, 1), Locale.ENGLISH).mayHaveChanged()).isNotNull();
  }

  /** Nobody can have looked at a day to come: the day is not after the last change of the file. */
  @Test
  void dayLookedUpTo_isTheDayOfTheLook() {
    assertThat(RuleSet.clpOn(DAY).lookedUpTo()).isEqualTo(LocalDate.of(2026, 11, 30));
    assertThat(RuleSet.unGhsOn(DAY).lookedUpTo()).isEqualTo(LocalDate.of(2026, 11, 30));
    assertThat(RuleSet.clpOn(LocalDate.of(2026, 12, 1)).mayHaveChanged()).isTrue();
  }

  /** An amendment that nobody made: from 2027-07-01 a sensitiser counts from 0.5 %. */
  @Test
  void amendment_isAChangeOfDataAlone() {
    String old =
        CLP.lines()
            .filter(l -> l.startsWith("limit | skin-sensitisation | 1 | 1 | 1 |"))
            .findFirst()
            .orElseThrow();
    String amended =
        CLP.replace(
            old,
            "limit | skin-sensitisation | 1 | 1 | 1 | Table 3.4.5 | READ | 2015-06-01 | 2027-06-30\n"
                + "limit | skin-sensitisation | 1 | 1 | 0.5 | Table 3.4.5 as amended | READ |"
                + " 2027-07-01 |");
    assertThat(amended).isNotEqualTo(CLP);
    RuleSet before = RuleSet.read(amended, LocalDate.of(2027, 6, 30));
    RuleSet after = RuleSet.read(amended, LocalDate.of(2027, 7, 1));
    HazardClass c = HazardClass.SKIN_SENSITISATION;
    assertThat(rosin(before, 0.6).finding(c).category()).isEmpty();
    assertThat(rosin(after, 0.6).finding(c).category()).isEqualTo(Optional.of(Category.ONE));
    assertThat(rosin(after, 0.49).finding(c).category()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "limit | skin-sensitisation | 1 | 1 | 1 |  | READ | |; RULE_COLUMNS",
        "limit | skin-sensitisation | 1 | 1 | 1; RULE_COLUMNS",
        "limit | skin-sensitisation | 1 | 1 | 1 | p | READ | | | |; RULE_COLUMNS",
        "limit | skin | 1 | 9 | 1 | p | READ | |; RULE_WORD",
        "limit | magic | 1 | 1 | 1 | p | READ | |; RULE_WORD",
        "magic | skin | 1; RULE_WORD",
        "limit | skin-sensitisation | 1B | 1B | 1 | p | HEARD | |; RULE_WORD",
        "limit | skin-sensitisation | 1B | 1B | 0 | p | READ | |; RULE_NUMBER",
        "limit | skin-sensitisation | 1B | 1B | -1 | p | READ | |; RULE_NUMBER",
        "limit | skin-sensitisation | 1B | 1B | 101 | p | READ | |; RULE_NUMBER",
        "limit | skin-sensitisation | 1B | 1B | NaN | p | READ | |; RULE_NUMBER",
        "limit | skin-sensitisation | 1B | 1B | 1e-9 | p | READ | |; RULE_NUMBER",
        "limit | skin-sensitisation | 1B | 1B | 0,1 | p | READ | |; RULE_NUMBER",
        "limit | skin-sensitisation | 1B | 1B | 1 | p | READ | 2026-13-01 |; RULE_DATE",
        "limit | skin-sensitisation | 1B | 1B | 1 | p | READ | 2026-02-01 | 2026-01-31; RULE_DATE",
        "limit | skin-sensitisation | 1 | 1 | 2 | p | READ | 2026-01-01 |; RULE_TWICE",
        "rule-set | other | Other | 2027-01-01; RULE_TWICE",
        "class | skin | acute | 1, 2 | 1 | p | READ | |; RULE_WORD",
        "class | eye | highest | | 1 | p | READ | |; RULE_WORD",
        "limit | eye | 1 | 1 | 1 | p | READ | |; RULE_MISSING"
      })
  void lineThatCannotBeUsed_isAProblemWithItsNumber(String line, String code) {
    ProblemCode expected = HazardProblem.valueOf(code);
    assertThatThrownBy(() -> RuleSet.read(SMALL + line + "\n", DAY))
        .isInstanceOfSatisfying(
            ProblemException.class,
            e -> {
              assertThat(e.problems()).extracting(Problem::code).contains(expected);
              if (!code.equals("RULE_MISSING")) {
                assertThat(e.problems().get(0).what(Locale.ENGLISH)).contains("Line 7");
                assertThat(e.problems().get(0).what(Locale.GERMAN)).contains("Zeile 7");
              }
            });
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "limit",
        "|||||||",
        "rule-set",
        "\u0000\u0001",
        "rule-set | a | b | 2026-01-01",
        "rule-set | a | b | 2026-01-01\nclass | lactation | highest | only | 1 | p | READ | |"
            + " 2026-05-31\nlimit | lactation | only | only | 1 | p | READ | | 2026-05-31",
        "rule-set | a | b | 2026-01-01\nclass | acute-oral | acute | 1 | 1 | p | READ | |",
        "rule-set | a | b | 2026-01-01\nclass | skin | additive | 1, 2 | 1 | p | READ | |"
      })
  void fileThatSaysTooLittle_isAProblem(String text) {
    assertThatThrownBy(() -> RuleSet.read(text, DAY)).isInstanceOf(ProblemException.class);
  }

  /** Without the figure of one category its ingredients would look harmless. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "limit | skin-sensitisation | 1A |; limit | skin-sensitisation | 1A | …",
        "limit | stot-repeated | 2 |; limit | stot-repeated | 2 | …",
        "limit | aquatic-chronic | 4 |; limit | aquatic-chronic | 4 | …",
        "acute | oral | 4 |; acute | oral | 4",
        "acute | gas | 2 |; acute | gas | 2"
      })
  void fileThatLacksACategoryOfIngredients_isRefusedWithItsName(String start, String missing) {
    String text =
        CLP.lines()
            .filter(l -> !l.startsWith(start))
            .collect(java.util.stream.Collectors.joining("\n"));
    assertThat(text).hasSizeLessThan(CLP.length() - 10);
    assertThatThrownBy(() -> RuleSet.read(text, DAY))
        .isInstanceOfSatisfying(
            ProblemException.class,
            e ->
                assertThat(e.problems())
                    .extracting(Problem::found)
                    .extracting(Object::toString)
                    .contains(missing));
  }

  /** A class row that leaves a category of the law out says nothing of what is in it. */
  @Test
  void classThatLeavesOutACategoryOfTheLaw_isRefused() {
    String text =
        """
        rule-set | a | b | 2026-01-01
        class | aquatic-chronic | additive | 1, 2 | 1 | p | READ | |
        limit | aquatic-chronic | 1 | 1 | 25 | p | READ | |
        limit | aquatic-chronic | 2 | 2 | 25 | p | READ | |
        """;
    assertThatThrownBy(() -> RuleSet.read(text, DAY))
        .isInstanceOf(ProblemException.class)
        .hasMessageContaining("limit | aquatic-chronic | 3");
  }

  @Test
  void fileThatIsTooLong_isAProblem() {
    assertThatThrownBy(() -> RuleSet.read("x".repeat(2_000_000), DAY))
        .isInstanceOf(ProblemException.class);
    assertThatThrownBy(() -> RuleSet.read(SMALL + "limit | " + "x".repeat(5_000), DAY))
        .isInstanceOf(ProblemException.class);
    assertThatThrownBy(() -> RuleSet.read(SMALL + "magic\n".repeat(100_000), DAY))
        .isInstanceOfSatisfying(
            ProblemException.class, e -> assertThat(e.problems()).hasSizeLessThan(100));
  }

  /**
   * Takes each line of the law's file away and cuts each at each column: read or refused, never a
   * crash.
   */
  @Test
  void fileWithAnyLineCutShort_isReadOrRefused() {
    List<String> lines = CLP.lines().filter(l -> !l.startsWith("#")).toList();
    int refused = 0;
    for (int i = 0; i < lines.size(); i++) {
      for (String cut : List.of("", lines.get(i).substring(0, lines.get(i).lastIndexOf(" | ")))) {
        String text =
            String.join("\n", lines.subList(0, i))
                + "\n"
                + cut
                + "\n"
                + String.join("\n", lines.subList(i + 1, lines.size()));
        try {
          assertThat(RuleSet.read(text, DAY).rows()).isNotEmpty();
        } catch (ProblemException e) {
          refused++;
        }
      }
    }
    assertThat(refused).isPositive();
  }

  @Test
  void unSystem_knowsItsMilderCategories() {
    RuleSet un = RuleSet.unGhsOn(DAY);
    assertThat(category(un, "Skin Irrit. 3 H316", 10, HazardClass.SKIN)).contains(Category.THREE);
    assertThat(category(un, "Skin Irrit. 3 H316", 9.9, HazardClass.SKIN)).isEmpty();
    assertThat(category(un, "Skin Irrit. 2 H315", 1, HazardClass.SKIN)).contains(Category.THREE);
    assertThat(category(un, "Eye Irrit. 2B H320", 10, HazardClass.EYE)).contains(Category.TWO_B);
    assertThat(category(un, "Eye Irrit. 2 H319", 10, HazardClass.EYE)).contains(Category.TWO_A);
    assertThat(category(un, "Aquatic Acute 2 H401", 2.5, HazardClass.AQUATIC_ACUTE))
        .contains(Category.THREE);
    assertThat(category(un, "Asp. Tox. 2 H305", 10, HazardClass.ASPIRATION)).contains(Category.TWO);
    RuleSet clp = RuleSet.clpOn(DAY);
    assertThat(category(clp, "Eye Irrit. 2B H320", 10, HazardClass.EYE)).contains(Category.TWO);
    assertThat(category(clp, "Skin Irrit. 3 H316", 100, HazardClass.SKIN)).isEmpty();
  }

  private static Optional<Category> category(
      RuleSet rules, String known, double percent, HazardClass c) {
    SubstanceHazards s =
        SubstanceHazards.builder("x").classified(known).acuteFactor(1).chronicFactor(1).build();
    HazardMixture mixture =
        HazardMixture.builder(rules)
            .substance(s, percent)
            .restNotClassified()
            .state(PhysicalState.LIQUID)
            .viscosityAt40(14)
            .build();
    return HazardReview.of(mixture, rules).finding(c).category();
  }

  @ParameterizedTest
  @CsvSource({"60, 3", "60.1, 4", "93, 4", "93.1, ''"})
  void unSystem_knowsCombustibleLiquids(double flash, String category) {
    RuleSet un = RuleSet.unGhsOn(DAY);
    HazardMixture mixture =
        HazardMixture.builder(un)
            .restNotClassified()
            .state(PhysicalState.LIQUID)
            .flashPoint(org.meltwright.units.TemperaturePoint.ofCelsius(flash))
            .build();
    assertThat(
            HazardReview.of(mixture, un)
                .finding(HazardClass.FLAMMABLE_LIQUID)
                .category()
                .map(Category::id)
                .orElse(""))
        .isEqualTo(category);
  }
}
