// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
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
