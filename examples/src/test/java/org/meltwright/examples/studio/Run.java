// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** One run of the program: exit code and what it printed. */
record Run(int exitCode, String out, String err) {

  /** A line with a line of signs below it. */
  private static final Pattern HEADING = Pattern.compile("\n[^\n]+\n(?:-{3,}|={3,})\n");

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

  /** The card of a recipe on the printed sheet, from its heading to the next card or chapter. */
  String card(String title) {
    return after("\n" + title + "\n=");
  }

  /** What the card of a recipe rests on: shares, casting, cost. */
  String working(String title) {
    return after("\n" + title + ": ");
  }

  /** A chapter of the printed sheet, by its heading. */
  String chapter(String title) {
    return after("\n" + title + "\n-");
  }

  private String after(String heading) {
    int from = out.indexOf(heading);
    if (from < 0) {
      throw new AssertionError("no " + heading.strip());
    }
    Matcher next = HEADING.matcher(out);
    int underline = out.indexOf('\n', out.indexOf('\n', from + 1) + 1);
    return out.substring(from, next.find(underline) ? next.start() : out.length());
  }
}
