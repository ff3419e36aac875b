// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/** What stands on a data sheet is read or shown back, never dropped. */
class CopiedSheetTest {

  /** One spelling and what it says. */
  record Spelling(String number, String known, String language, String text, String reading) {

    static List<Spelling> all() {
      return TextTable.rows("sheet-spellings.txt").stream()
          .map(r -> new Spelling(r.get(0), r.get(1), r.get(2), copied(r.get(3)), r.get(4)))
          .toList();
    }

    private static String copied(String text) {
      return text.replace("↵", "\n").replace("⇥", "\t");
    }
  }

  static List<Spelling> spellings() {
    return Spelling.all();
  }

  @Timeout(20)
  @ParameterizedTest
  @MethodSource("spellings")
  void spelling_isReadAsTheTableSays(Spelling spelling) {
    assertThat(reading(CopiedSheet.read(spelling.text()))).isEqualTo(spelling.reading());
  }

  /** A name of a class in some language, and one of the categories that it may stand with. */
  record Named(String name, HazardCategory category) {}

  static List<Named> namesOfClasses() {
    List<Named> all = new ArrayList<>();
    for (List<String> row : SheetWords.rows()) {
      if (row.get(0).equals("class")) {
        List<HazardCategory> categories =
            categoriesOf(new SheetWords.Meaning(SheetWords.Sort.CLASS, row.get(1)));
        row.subList(2, row.size())
            .forEach(
                cell ->
                    TextTable.items(cell, ";")
                        .forEach(name -> categories.forEach(c -> all.add(new Named(name, c)))));
      }
    }
    return all;
  }

  private static List<HazardCategory> categoriesOf(SheetWords.Meaning meaning) {
    return meaning.names().stream()
        .flatMap(n -> ClassName.find(n).orElseThrow().categories().stream())
        .filter(
            c -> meaning.route().map(r -> c.hazardClass().id().equals("acute-" + r)).orElse(true))
        .distinct()
        .toList();
  }

  /** How category and statement follow a name, "1B" and "H314" in their places. */
  private static final List<String> FORMS =
      List.of(
          "%s %s; %s",
          "%s %s, %s",
          "%s %s %s",
          "%s %s - %s",
          "%s %s (%s)",
          "%s %s: %s",
          "%s, Kat. %s; %s",
          "%s, Kategorie %s %s",
          "%s - Category %s, %s",
          "%s (Category %s), %s",
          "%s Cat.%s %s",
          "%s\t%s\t%s",
          "%s, Kategorie %s\n%s",
          "%s | %s | %s",
          "%s, hazard category %s (%s)");

  @ParameterizedTest
  @MethodSource("namesOfClasses")
  void nameOfAClass_isReadWithEachOfItsCategoriesInEachForm(Named named) {
    HazardCategory c = named.category();
    for (String form : FORMS) {
      String text =
          String.format(Locale.ROOT, form, named.name(), c.category().id(), c.statement());
      CopiedSheet sheet = CopiedSheet.read(text);
      assertThat(sheet.problems()).as(text).isEmpty();
      assertThat(sheet.lines()).as(text).hasSize(1);
      assertThat(sheet.lines().get(0).hazards().categories())
          .as(text)
          .extracting(HazardCategory::toString)
          .containsExactly(c.toString());
    }
  }

  /** A block as it is copied, and what is read of it, line by line. */
  record Block(String title, String text, String reading) {

    static List<Block> all() {
      return Stream.of(resource("copied-sections.txt").split("(?m)^=== ", -1))
          .skip(1)
          .map(Block::of)
          .toList();
    }

    private static Block of(String block) {
      String[] parts = block.split("\n---\n", -1);
      int title = parts[0].indexOf('\n');
      return new Block(
          parts[0].substring(0, title), parts[0].substring(title + 1), parts[1].strip());
    }

    private static String resource(String name) {
      try (InputStream in = CopiedSheetTest.class.getResourceAsStream(name)) {
        return new String(in.readAllBytes(), StandardCharsets.UTF_8);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    @Override
    public String toString() {
      return title;
    }
  }

  static List<Block> blocks() {
    return Block.all();
  }

  @ParameterizedTest
  @MethodSource("blocks")
  void block_isSplitIntoItsLines(Block block) {
    CopiedSheet sheet = CopiedSheet.read(block.text());
    List<String> said = new ArrayList<>();
    for (CopiedSheet.Line line : sheet.lines()) {
      SubstanceHazards s = line.hazards();
      String numbers = String.join(", ", s.casNumbers());
      said.add(s.name() + " | " + numbers + " | " + String.join("; ", SheetWording.words(line)));
    }
    sheet.remarks().forEach(r -> said.add("remark " + r.kind().id() + ": " + r.found()));
    sheet.problems().forEach(p -> said.add("problem " + p.code().id() + ": " + p.found()));
    assertThat(String.join("\n", said)).isEqualTo(block.reading());
  }

  /** As the reference page shows it. */
  @Test
  void linesOfASheet_makeAMixture() {
    RuleSet rules = RuleSet.clpOn(LocalDate.of(2026, 6, 1));
    String text =
        """
        Limonene 5989-27-5 5 - < 10 % Skin Sens. 1B; H317
        Beeswax 8012-89-3 50 - 80 % not classified
        """;
    CopiedSheet sheet = CopiedSheet.read(text);
    HazardMixtureBuilder mixture = HazardMixture.builder(rules);
    for (CopiedSheet.Line line : sheet.lines()) {
      mixture.substance(
          line.hazards(), line.lowPercent().orElseThrow(), line.highPercent().orElseThrow());
    }
    HazardReview review = HazardReview.of(mixture.restNotClassified().build(), rules);
    assertThat(review.finding(HazardClass.SKIN_SENSITISATION).category()).contains(Category.ONE_B);
  }

  @Test
  void unionWorkplaceLimit_isKept() {
    CopiedSheet sheet =
        CopiedSheet.read(
            "2-butoxyethanol 111-76-2 5 % substance with a Union workplace exposure limit"
                + " Eye Irrit. 2; H319");
    assertThat(sheet.problems()).isEmpty();
    assertThat(sheet.lines().get(0).hazards().hasUnionWorkplaceLimit()).isTrue();
  }

  @Test
  void notUnderstood_leavesTheOtherClassesOpen_andTellsItsPlace() {
    CopiedSheet sheet = CopiedSheet.read("Skin Sens. 1; H317\n  Brandgefahr 3; H226");
    Problem problem = sheet.problems().get(0);
    assertThat(problem.path()).isEqualTo("/2/3");
    assertThat(problem.inWords(Locale.GERMAN)).startsWith("Zeile 2, Spalte 3:");
    assertThat(sheet.lines().get(0).hazards().isOpenFor(HazardClass.FLAMMABLE_LIQUID)).isTrue();
  }

  @ParameterizedTest
  @ValueSource(strings = {"harmless", "-", "n.a.", "keine Daten", "H317", "Skin Sens. H317", "5 %"})
  void builder_takesNothingThatIsNotUnderstoodForHarmless(String text) {
    SubstanceSheet sheet = SubstanceHazards.builder("x");
    try {
      sheet.classified(text);
    } catch (ProblemException e) {
      return;
    }
    assertThat(sheet.build().isOpenFor(HazardClass.CARCINOGENICITY)).isTrue();
  }

  @Test
  void builder_readsAWholeCopy_orRefusesAllThatIsWrong() {
    SubstanceHazards sheet =
        SubstanceHazards.builder("biocide")
            .classified(
                "Acute Tox. 3; H301 (ATE = 100 mg/kg) Skin Sens. 1A; H317: C ≥ 0,0015 % Aquatic Acute"
                    + " 1; H400 (M = 100) EUH071")
            .build();
    assertThat(sheet.estimate(UptakeForm.ORAL)).hasValue(100);
    assertThat(sheet.acuteFactor()).hasValue(100);
    assertThat(sheet.supplements()).containsExactly("EUH071");
    assertThatThrownBy(() -> SubstanceHazards.builder("x").classified("Magic 1 H317; Carc. 3 H351"))
        .isInstanceOfSatisfying(ProblemException.class, e -> assertThat(e.problems()).hasSize(2));
  }

  /** All that was read, in the words of the table. */
  static String reading(CopiedSheet sheet) {
    List<String> words = new ArrayList<>();
    sheet.lines().forEach(line -> words.addAll(SheetWording.words(line)));
    sheet.remarks().forEach(r -> words.add("remark " + r.kind().id()));
    for (Problem p : sheet.problems()) {
      words.add("problem " + p.code().id() + ": " + p.found());
    }
    return words.isEmpty() ? "empty" : String.join("; ", words);
  }

  /** "Not classified" is a word of harmlessness only where nothing says of what, or why. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "not classified due to lack of data",
        "not classified (insufficient data)",
        "not classified / data lacking",
        "nicht eingestuft (keine Daten)",
        "No classification available",
        "Not classified for transport",
        "IARC: not classified",
        "Not classified as carcinogenic",
        "possibly not classified",
        "cannot be regarded as not classified"
      })
  void notClassified_withAnotherWord_leavesTheClassesOpen(String words) {
    for (String named : new String[] {"Foo 5 % ", "Foo 8050-09-7 5 % ", "8050-09-7 5 % "}) {
      CopiedSheet sheet = CopiedSheet.read(named + words);
      SubstanceHazards read = sheet.lines().get(0).hazards();
      assertThat(HazardClass.values()).as(named).allMatch(read::isOpenFor);
    }
    SubstanceHazards plain = CopiedSheet.read("Foo 5 % not classified").lines().get(0).hazards();
    assertThat(HazardClass.values()).noneMatch(plain::isOpenFor);
  }

  @Test
  void oneClass_notClassifiedForLackOfData_isOpen() {
    String open = "Foo 5 %\nCarcinogenicity: not classified due to lack of data";
    String none = "Foo 5 %\nCarcinogenicity: not classified";
    assertThat(CopiedSheet.read(open).lines().get(0).hazards())
        .matches(read -> read.isOpenFor(HazardClass.CARCINOGENICITY));
    assertThat(CopiedSheet.read(none).lines().get(0).hazards())
        .matches(read -> !read.isOpenFor(HazardClass.CARCINOGENICITY));
  }
}
