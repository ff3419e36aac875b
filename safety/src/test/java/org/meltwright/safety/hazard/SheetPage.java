// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.List;

/** The page of all spellings and words that a copied sheet is read by. */
final class SheetPage {

  private SheetPage() {}

  static String text() {
    StringBuilder page = new StringBuilder("# Copied sheets: every spelling and word\n\n");
    page.append(HazardPagesTest.WRITTEN)
        .append("How they are read: [copied-sheets](copied-sheets.md).\n\n## Spellings\n\n")
        .append(
            "From data sheets that were seen, or as is common practice. ↵ is the end of a line, ⇥ a tab. ")
        .append("Each is read anew at each build (`CopiedSheetTest`).\n\n")
        .append("| number | known | language | text | what is read |\n|---|---|---|---|---|\n");
    for (CopiedSheetTest.Spelling s : CopiedSheetTest.Spelling.all()) {
      row(page, s.number(), s.known(), s.language(), code(s.text()), shown(s.reading()));
    }
    page.append("\n## Words\n\nCase, dots, hyphens, commas and brackets do not matter.\n\n")
        .append("| sort | means | English | German | other |\n|---|---|---|---|---|\n");
    for (List<String> cells : SheetWords.rows()) {
      row(page, cells.get(0), cells.get(1), cells.get(2), cells.get(3), cells.get(4));
    }
    return page.toString();
  }

  private static String code(String text) {
    return "`" + text.replace("\n", "↵").replace("\t", "⇥").replace("|", "\\|") + "`";
  }

  private static String shown(String text) {
    return text.replace("|", "\\|").replace("*", "\\*").replace("<", "&lt;");
  }

  private static void row(StringBuilder page, String... cells) {
    page.append("| ").append(String.join(" | ", cells).strip()).append(" |\n");
  }
}
