// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The reference page shows the numbers that the rules use. */
class HazardRulesPageTest {

  private static final Path PAGE = Path.of("../docs/reference/hazard-rules.md");

  @Test
  void page_showsEveryLimitOfTheRuleFile() throws IOException {
    List<String> page = Files.readAllLines(PAGE);
    for (List<String> row : TextTable.rows("clp-2026-05-01.txt")) {
      if (!row.get(0).equals("rule-set")) {
        assertThat(page).contains(line(row));
      }
    }
  }

  private static String line(List<String> row) {
    boolean kindShown = Set.of("elicitation", "on-request").contains(row.get(0));
    int last = row.get(0).equals("class") ? row.size() - 1 : row.size();
    return "| " + String.join(" | ", row.subList(kindShown ? 0 : 1, last)) + " |";
  }
}
