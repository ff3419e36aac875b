// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** A good or a bad case of a rule, as tests hold it and the page of the rule shows it. */
record RuleCase(String rule, boolean isBad, String plan, String words) {

  static List<RuleCase> all() {
    return lines("rule-cases.txt").stream().map(RuleCase::parse).toList();
  }

  static List<RuleCase> of(String rule) {
    return all().stream().filter(c -> c.rule.equals(rule)).toList();
  }

  private static RuleCase parse(String line) {
    String[] cells = line.split(" \\| ", -1);
    return new RuleCase(cells[0].strip(), cells[1].equals("bad"), cells[2], cells[3].strip());
  }

  /** Reads the lines of a file beside the tests, without comments. */
  static List<String> lines(String file) {
    try (InputStream stream = RuleCase.class.getResourceAsStream(file)) {
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> !line.startsWith("#") && !line.isBlank())
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public String toString() {
    return rule + (isBad ? " finds: " : " does not find: ") + words;
  }
}
