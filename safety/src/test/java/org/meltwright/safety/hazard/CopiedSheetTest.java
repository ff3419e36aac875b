// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.meltwright.units.Problem;

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
        List<HazardCategory> categories = categoriesOf(row.get(1));
        row.subList(2, row.size())
            .forEach(
                cell ->
                    TextTable.items(cell, ";")
                        .forEach(name -> categories.forEach(c -> all.add(new Named(name, c)))));
      }
    }
    return all;
  }

  private static List<HazardCategory> categoriesOf(String names) {
    return Stream.of(names.split(" / ", -1))
        .flatMap(n -> ClassName.find(n).orElseThrow().categories().stream())
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
      String text = String.format(Locale.ROOT, form, named.name(), c.category().id(), c.statement());
      CopiedSheet sheet = CopiedSheet.read(text);
      assertThat(sheet.problems()).as(text).isEmpty();
      assertThat(sheet.lines()).as(text).hasSize(1);
      assertThat(sheet.lines().get(0).hazards().categories())
          .as(text)
          .extracting(HazardCategory::toString)
          .containsExactly(c.toString());
    }
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
}
