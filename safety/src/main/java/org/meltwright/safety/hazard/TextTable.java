// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/** Reads the plain-text tables beside this class: columns between bars, remarks after a hash. */
final class TextTable {

  private TextTable() {}

  /** Returns the rows of a table, each cell trimmed. */
  static List<List<String>> rows(String name) {
    return text(name)
        .lines()
        .filter(line -> !line.isBlank() && !line.startsWith("#"))
        .map(TextTable::cells)
        .toList();
  }

  /** Returns a file beside this class. */
  static String text(String name) {
    try (InputStream in = TextTable.class.getResourceAsStream(name)) {
      return new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(name, e);
    }
  }

  /** Returns the items of a cell that holds a list. */
  static List<String> items(String cell, String separator) {
    return Arrays.stream(cell.split(separator, -1))
        .map(String::trim)
        .filter(item -> !item.isEmpty())
        .toList();
  }

  static List<String> cells(String line) {
    return Arrays.stream(line.split("\\|", -1)).map(String::trim).toList();
  }
}
