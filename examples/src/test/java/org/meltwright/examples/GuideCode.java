// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Holds the code of a guide page to the example that it is taken from. */
final class GuideCode {

  private GuideCode() {}

  /** Every line of Java on the page stands in the example, in the same order. */
  static void assertMirrored(String page, String example) {
    List<String> source =
        lines(Path.of("src", "main", "java", "org", "meltwright", "examples", example));
    boolean code = false;
    int place = 0;
    int shown = 0;
    for (String line : lines(Path.of("..", "docs", "guide", page))) {
      if (line.startsWith("```")) {
        code = line.equals("```java");
      } else if (code && !line.isEmpty()) {
        int found = source.subList(place, source.size()).indexOf(line);
        assertThat(found).as("in %s: %s", example, line).isNotNegative();
        place += found + 1;
        shown++;
      }
    }
    assertThat(shown).as("lines of code in %s", page).isPositive();
  }

  private static List<String> lines(Path file) {
    try {
      return Files.readAllLines(file).stream().map(String::strip).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
