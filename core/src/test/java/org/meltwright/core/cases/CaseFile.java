// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cases;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

/**
 * A data file of cases: one a line, fields split by "|", lines that start with "#" left out.
 *
 * <p>Immutable and thread-safe.
 */
public final class CaseFile {

  private CaseFile() {}

  /**
   * Reads a file that lies beside a class.
   *
   * @param anchor the class
   * @param name the name of the file
   * @return the fields of each case, without space around them
   */
  public static List<List<String>> read(Class<?> anchor, String name) {
    try (InputStream in = anchor.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalArgumentException("no file " + name + " beside " + anchor);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> !line.startsWith("#") && !line.isBlank())
          .map(line -> Arrays.stream(line.split("\\|", -1)).map(String::strip).toList())
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Reads numbers split by spaces.
   *
   * @param text the numbers
   * @return the numbers, in order
   */
  public static double[] numbers(String text) {
    return Arrays.stream(text.strip().split("\\s+", -1)).mapToDouble(Double::parseDouble).toArray();
  }
}
