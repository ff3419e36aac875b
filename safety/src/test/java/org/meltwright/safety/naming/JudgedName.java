// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.naming;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * A name with the answer that a person gave before it was asked.
 *
 * @param name the name
 * @param answer entries of the list, "?" before one of several things, "~" before a substitute
 */
record JudgedName(String name, Set<String> answer) {

  static List<JudgedName> all() {
    return lines().filter(l -> !l.isBlank() && !l.startsWith("#")).map(JudgedName::of).toList();
  }

  static long sections() {
    return lines().filter(l -> l.startsWith("## ")).count();
  }

  private static java.util.stream.Stream<String> lines() {
    try (InputStream in = JudgedName.class.getResourceAsStream("judged-names.txt")) {
      return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8).lines();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static JudgedName of(String line) {
    String[] cells = line.split("\\|", -1);
    String answer = cells[1].strip();
    return new JudgedName(
        cells[0].strip(),
        answer.equals("-") ? Set.of() : new TreeSet<>(Arrays.asList(answer.split(";", -1))));
  }

  /** What was answered, as the file writes it. */
  static Set<String> written(Collection<NamedHazard> answer) {
    return answer.stream().map(JudgedName::written).collect(Collectors.toCollection(TreeSet::new));
  }

  private static String written(NamedHazard named) {
    String mark =
        switch (named.standing()) {
          case NAMED -> "";
          case AMBIGUOUS -> "?";
          case SUBSTITUTE -> "~";
        };
    return mark + named.hazard().id();
  }

  @Override
  public String toString() {
    return name;
  }
}
