// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The pages in {@code docs/rules} say what the rules do. To write them anew: {@code mvn -pl safety
 * -am test -Dtest=RulePagesTest -Dsurefire.failIfNoSpecifiedTests=false -Dpages.write=true}.
 */
class RulePagesTest {

  private static final Path DOCS = Path.of("..", "docs", "rules");

  private static final Map<String, String> PAGES = pages();

  /** What no rule says: written by hand. */
  private static final Set<String> BY_HAND = Set.of("left-out.md", "not-looked-at.md");

  private static Map<String, String> pages() {
    Map<String, String> pages = new TreeMap<>();
    pages.put("README.md", RulePages.index());
    RulePages.inOrder().forEach(r -> pages.put(r.info().id() + ".md", RulePages.page(r)));
    return pages;
  }

  @Test
  void pages_and_index_are_those_of_the_rules() throws IOException {
    if (Boolean.getBoolean("pages.write")) {
      Files.createDirectories(DOCS);
      for (Map.Entry<String, String> page : PAGES.entrySet()) {
        Files.writeString(DOCS.resolve(page.getKey()), page.getValue(), StandardCharsets.UTF_8);
      }
    }
    for (Map.Entry<String, String> page : PAGES.entrySet()) {
      assertThat(DOCS.resolve(page.getKey()))
          .content(StandardCharsets.UTF_8)
          .isEqualTo(page.getValue());
    }
  }

  @Test
  void no_page_stands_without_a_rule() throws IOException {
    try (Stream<Path> files = Files.list(DOCS)) {
      assertThat(files.map(f -> f.getFileName().toString()))
          .allMatch(name -> PAGES.containsKey(name) || BY_HAND.contains(name));
    }
  }
}
