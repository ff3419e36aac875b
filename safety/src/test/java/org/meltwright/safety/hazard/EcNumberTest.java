// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.meltwright.core.material.IdentifierScheme;
import org.meltwright.units.ProblemException;

/**
 * EC numbers of a copied sheet: read, checked, and held against the entries of the law.
 *
 * <p>The pairs of EC and CAS numbers are those of the published table of Regulation (EC) No
 * 1272/2008, Annex VI, Part 3, restated.
 */
class EcNumberTest {

  private static final RuleSet RULES = RuleSet.clpOn(LocalDate.of(2026, 6, 1));

  private static HazardReview review(SubstanceHazards s, double percent) {
    return HazardReview.of(
        HazardMixture.builder(RULES).substance(s, percent).restNotClassified().build(), RULES);
  }

  private static boolean isMilder(SubstanceHazards s) {
    return review(s, 50).assumptions().stream()
        .anyMatch(a -> a.kind() == Assumption.Kind.DATA_SHEET_MILDER);
  }

  private static SubstanceHazards read(String text) {
    CopiedSheet sheet = CopiedSheet.read(text);
    assertThat(sheet.problems()).isEmpty();
    assertThat(sheet.lines()).hasSize(1);
    return sheet.lines().get(0).hazards();
  }

  @Test
  void everyNumberOfTheTable_hasItsCheckDigitAndAnEntry() {
    List<List<String>> rows =
        TextTable.rows("harmonised-entries.txt").stream()
            .filter(r -> r.get(0).equals("ec"))
            .toList();
    assertThat(rows).hasSizeGreaterThan(100);
    assertThat(rows).extracting(r -> r.get(1)).doesNotHaveDuplicates();
    RuleSet later = RuleSet.clpOn(LocalDate.of(2027, 2, 1));
    for (List<String> row : rows) {
      assertThat(IdentifierScheme.EC.accepts(row.get(1))).as(row.get(1)).isTrue();
      for (String cas : TextTable.items(row.get(2), ",")) {
        assertThat(later.find(cas).orElseThrow().indexNumber()).as(cas).isPresent();
      }
      assertThat(later.find(row.get(1))).as(row.get(1)).isPresent();
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Solvent EC 203-905-0 5 - 10 % Flam. Liq. 3 H226",
        "Solvent\tEC No. 203-905-0\t5 - 10 %\tFlam. Liq. 3; H226",
        "Lösemittel EG-Nr.: 203–905–0, 5 - 10 %, Entzündbare Flüssigkeiten, Kat. 3, H226",
        "Solvent\nEINECS: 203-905-0\n5 - 10 %\nFlam. Liq. 3, H226",
        "203-905-0 | Solvent | 5 - 10 % | Flam. Liq. 3 H226"
      })
  void numberOfASheet_isReadAndTellsThatTheSheetIsMilder(String text) {
    SubstanceHazards s = read(text);
    assertThat(s.ecNumbers()).containsExactly("203-905-0");
    assertThat(s.casNumbers()).isEmpty();
    assertThat(isMilder(s)).isTrue();
  }

  @Test
  void sheetThatSaysAllThatTheEntrySays_isNotMilder() {
    SubstanceHazards entry = RULES.find("203-905-0").orElseThrow();
    assertThat(entry.casNumbers()).containsExactly("111-76-2");
    SubstanceHazards s =
        read(
            "Solvent EC 203-905-0 5 % Acute Tox. 3 H331 (ATE = 3 mg/l vapour); Acute Tox. 4 H302"
                + " (ATE oral = 1200 mg/kg); Skin Irrit. 2 H315; Eye Irrit. 2 H319");
    assertThat(isMilder(s)).isFalse();
  }

  /** A made-up number; its check digit is right: 7 + 14 + 21 + 0 + 0 + 6 = 48 = 4 × 11 + 4. */
  @Test
  void numberThatNoEntryHas_isKeptAndNothingIsGuessed() {
    SubstanceHazards s = read("Solvent EC 777-001-4 5 % Flam. Liq. 3 H226");
    assertThat(s.ecNumbers()).containsExactly("777-001-4");
    assertThat(RULES.find("777-001-4")).isEmpty();
    assertThat(isMilder(s)).isFalse();
  }

  @ParameterizedTest
  @ValueSource(strings = {"203-905-1", "232-350-8"})
  void wrongCheckDigit_isAProblemAndLeavesTheClassesOpen(String number) {
    CopiedSheet sheet = CopiedSheet.read("Solvent EC " + number + " 5 % Flam. Liq. 3 H226");
    assertThat(sheet.problems()).hasSize(1);
    assertThat(sheet.problems().get(0).found()).isEqualTo(number);
    SubstanceHazards s = sheet.lines().get(0).hazards();
    assertThat(s.ecNumbers()).isEmpty();
    assertThat(s.isOpenFor(HazardClass.CARCINOGENICITY)).isTrue();
    assertThatThrownBy(() -> SubstanceHazards.builder("x").ec(number))
        .isInstanceOf(ProblemException.class)
        .hasMessageContaining(number);
  }

  /** One substance, once by each of its numbers: 0.06 + 0.06 reach the 0.1 % of Table 3.6.2. */
  @Test
  void linesOfOneSubstance_areAddedThoughOneHasTheOtherNumber() {
    HazardReview review =
        HazardReview.of(
            HazardMixture.builder(RULES)
                .substance(read("Lye EC 215-185-5 0.06 % Carc. 1B H350"), 0.06)
                .substance(read("Lye CAS 1310-73-2 0.06 % Carc. 1B H350"), 0.06)
                .restNotClassified()
                .build(),
            RULES);
    assertThat(review.finding(HazardClass.CARCINOGENICITY).isClassified()).isTrue();
  }

  /** The Union's limits for workplaces stand in a list by CAS number. */
  @Test
  void numberOfTheEntry_isKnownToTheListsThatGoByTheOther() {
    SubstanceHazards s = read("Solvent EC 200-662-2 2 % Flam. Liq. 2 H225; Eye Irrit. 2 H319");
    assertThat(review(s, 2).dataSheetOnRequestFor()).hasSize(1);
  }

  /** Copper sulphate with and without its water share a number: each is held against the sheet. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "EC 231-847-6 | Acute Tox. 4 H302; Eye Dam. 1 H318; Aquatic Acute 1 H400 (M=10);"
            + " Aquatic Chronic 1 H410 (M=1) | true",
        "EC 231-847-6 | Acute Tox. 4 H302; Skin Irrit. 2 H315; Eye Irrit. 2 H319; Aquatic Acute 1"
            + " H400 (M=10); Aquatic Chronic 1 H410 (M=1) | true",
        "EC 231-847-6 | Acute Tox. 4 H302 (ATE 481 mg/kg); Skin Irrit. 2 H315; Eye Dam. 1 H318;"
            + " Aquatic Acute 1 H400 (M=10); Aquatic Chronic 1 H410 (M=1) | false",
        "CAS 7758-99-8 EC 231-847-6 | Acute Tox. 4 H302 (ATE 481 mg/kg); Eye Dam. 1 H318; Aquatic"
            + " Acute 1 H400 (M=10); Aquatic Chronic 1 H410 (M=1) | false"
      })
  void numberOfSeveralSubstances_isHeldAgainstEach(String numbers, String said, boolean milder) {
    assertThat(isMilder(read("Salt " + numbers + " 5 % " + said))).isEqualTo(milder);
  }

  /** Zinc and cobalt 2-ethylhexanoates are members of one group by CAS number (note 12). */
  @Test
  void indexNumberThatNoEntryHas_doesNotHideTheGroupOfTheCasNumber() {
    SubstanceHazards own =
        SubstanceHazards.builder("drier")
            .cas("136-52-7")
            .entry("999-999-00-9")
            .classified("Repr. 1B H360D")
            .build();
    HazardReview review =
        HazardReview.of(
            HazardMixture.builder(RULES)
                .substance(own, 0.15)
                .cas("149-57-5", 0.15)
                .restNotClassified()
                .build(),
            RULES);
    assertThat(review.finding(HazardClass.REPRODUCTION).isClassified()).isTrue();
  }

  private static String lines(CopiedSheet sheet) {
    return sheet.lines().stream()
        .map(
            l ->
                l.hazards().name()
                    + " "
                    + l.hazards().casNumbers()
                    + l.hazards().ecNumbers()
                    + l.hazards().indexNumber().map(i -> "[" + i + "]").orElse("")
                    + l.hazards().categories())
        .collect(Collectors.joining("; "));
  }

  /** Tables whose rows begin with one or another number, or lack one. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '#',
      value = {
        "203-905-0 | 111-76-2 | Butylglycol | 5 % | Skin Irrit. 2 H315\\n200-578-6 | 64-17-5 |"
            + " Ethanol | 10 % | Flam. Liq. 2 H225"
            + "#Butylglycol [111-76-2][203-905-0][skin 2 H315];"
            + " Ethanol [64-17-5][200-578-6][flammable-liquid 2 H225]",
        "203-905-0 | Butylglycol | 5 % | Skin Irrit. 2 H315\\n200-578-6 | Ethanol | 10 % |"
            + " Flam. Liq. 2 H225"
            + "#Butylglycol [][203-905-0][skin 2 H315];"
            + " Ethanol [][200-578-6][flammable-liquid 2 H225]",
        "203-905-0 | 111-76-2 | Butylglycol | 5 % | Skin Irrit. 2 H315\\n- | 64-17-5 | Ethanol |"
            + " 10 % | Flam. Liq. 2 H225\\n200-662-2 | 67-64-1 | Aceton | 1 % | Eye Irrit. 2 H319"
            + "#Butylglycol [111-76-2][203-905-0][skin 2 H315]; Ethanol"
            + " [64-17-5][][flammable-liquid 2 H225]; Aceton [67-64-1][200-662-2][eye 2 H319]",
        "64-17-5 | 200-578-6 | Ethanol | 10 % | Flam. Liq. 2 H225\\n- | 203-905-0 | Butylglycol |"
            + " 5 % | Skin Irrit. 2 H315\\n67-64-1 | - | Aceton | 1 % | Eye Irrit. 2 H319"
            + "#Ethanol [64-17-5][200-578-6][flammable-liquid 2 H225]; Butylglycol"
            + " [][203-905-0][skin 2 H315]; Aceton [67-64-1][][eye 2 H319]",
        "603-014-00-0 | 203-905-0 | 111-76-2 | Butylglycol | 5 % | Skin Irrit. 2 H315\\n"
            + "603-002-00-5 | 200-578-6 | 64-17-5 | Ethanol | 10 % | Flam. Liq. 2 H225"
            + "#Butylglycol [111-76-2][203-905-0][603-014-00-0][skin 2 H315];"
            + " Ethanol [64-17-5][200-578-6][603-002-00-5][flammable-liquid 2 H225]",
        "INDEX 603-014-00-0 CAS 111-76-2 EC 203-905-0 Butylglycol 5 % Skin Irrit. 2 H315\\nINDEX"
            + " 603-002-00-5 EC 200-578-6 CAS 64-17-5 Ethanol 10 % Flam. Liq. 2 H225"
            + "#Butylglycol [111-76-2][203-905-0][603-014-00-0][skin 2 H315];"
            + " Ethanol [64-17-5][200-578-6][603-002-00-5][flammable-liquid 2 H225]",
        "CAS 111-76-2 Butylglycol 5 % Skin Irrit. 2 H315\\nINDEX 603-002-00-5 CAS 64-17-5 Ethanol"
            + " 10 % Flam. Liq. 2 H225"
            + "#Butylglycol [111-76-2][][skin 2 H315];"
            + " Ethanol [64-17-5][][603-002-00-5][flammable-liquid 2 H225]",
        "Butylglycol CAS 111-76-2 5 % Skin Irrit. 2 H315\\nEC 203-905-0 Acute Tox. 4 H302\\n"
            + "Ethanol CAS 64-17-5 10 % Flam. Liq. 2 H225"
            + "#Butylglycol [111-76-2][203-905-0][skin 2 H315, acute-oral 4 H302];"
            + " Ethanol [64-17-5][][flammable-liquid 2 H225]",
        "Xylol CAS 95-47-6, 106-42-3 EC 202-422-2, 203-396-5 5 % Skin Irrit. 2 H315"
            + "#Xylol [95-47-6, 106-42-3][202-422-2, 203-396-5][skin 2 H315]"
      })
  void rowsOfATable_keepTheirOwnNumbers(String text, String expected) {
    CopiedSheet sheet = CopiedSheet.read(text.replace("\\n", "\n"));
    assertThat(lines(sheet)).isEqualTo(expected);
    assertThat(sheet.problems()).isEmpty();
  }
}
