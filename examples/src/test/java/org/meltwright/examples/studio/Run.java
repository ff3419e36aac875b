// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** One run of the program: exit code and what it printed. */
record Run(int exitCode, String out, String err) {

  static final Path STUDIOS = Path.of("src", "main", "studio");

  static Run of(String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int code = StudioSheet.run(stream(out), stream(err), args);
    return new Run(
        code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  private static PrintStream stream(ByteArrayOutputStream bytes) {
    return new PrintStream(bytes, true, StandardCharsets.UTF_8);
  }

  /** The chapter of a recipe on the printed sheet, from its heading to the next. */
  String chapter(String title) {
    int from = out.indexOf("\n" + title + "\n-");
    int to = out.indexOf("\n---", out.indexOf("\nCost\n", from));
    return out.substring(from, to < 0 ? out.length() : to);
  }
}
