// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Holds the reference pages to the data.
 *
 * <p>After a change of the data, write the pages anew with
 *
 * <pre>{@code
 * mvn -pl core -am test -Dtest=MaterialPagesTest -Dsurefire.failIfNoSpecifiedTests=false \
 *     -Dpages.write=true
 * }</pre>
 *
 * and look at the difference before you commit it.
 */
class MaterialPagesTest {

  private static final Path REFERENCE = Path.of("..", "docs", "reference");
  private static final boolean WRITE = Boolean.getBoolean("pages.write");

  private final MaterialPages pages = new MaterialPages(MaterialCatalogue.standard());

  @Test
  void materialsPage_isWhatTheDataSay() throws IOException {
    Map<String, String> sections = new LinkedHashMap<>();
    sections.put("counts", pages.counts());
    sections.put("properties", pages.properties());
    sections.put("materials", pages.materials());
    assertPage("materials.md", sections);
  }

  @Test
  void bibliography_isWhatTheDataSay() throws IOException {
    assertPage("bibliography.md", Map.of("bibliography", pages.bibliography()));
  }

  private static void assertPage(String name, Map<String, String> sections) throws IOException {
    Path file = REFERENCE.resolve(name);
    String page = Files.readString(file);
    String expected = page;
    for (Map.Entry<String, String> section : sections.entrySet()) {
      expected = replaced(expected, section.getKey(), section.getValue());
    }
    if (WRITE) {
      Files.writeString(file, expected);
    } else {
      assertThat(page)
          .as("%s is older than the data; see this test's documentation", name)
          .isEqualTo(expected);
    }
  }

  /** The page with new text between the marks of a section. */
  private static String replaced(String page, String section, String text) {
    String begin = "<!-- begin " + section + ", written from the data -->";
    String end = "<!-- end " + section + " -->";
    int from = page.indexOf(begin);
    int to = page.indexOf(end);
    assertThat(from).as(begin).isNotNegative();
    assertThat(to).as(end).isGreaterThan(from);
    return page.substring(0, from + begin.length()) + "\n" + text + "\n" + page.substring(to);
  }
}
