// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.meltwright.examples.json.JsonProblem;
import org.meltwright.examples.page.HtmlPage;
import org.meltwright.examples.page.Page;
import org.meltwright.examples.page.TextPage;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/**
 * The main job: reads a studio file, prints the studio sheet and writes it as an HTML page.
 *
 * <p>Exit codes: 0 done, 1 a recipe is blocked, 2 bad input (nothing is written), 70 a defect of
 * ours.
 */
@Command(
    name = "studio-sheet",
    description = {
      "Prints what to weigh today, whether it may be heated as planned, how many cakes it gives and"
          + " what it costs; writes the same as one HTML page.",
      ""
    },
    footer = {
      "",
      "Exit codes: 0 done; 1 a recipe is blocked; 2 bad input, nothing written; 70 a defect of"
          + " ours."
    },
    sortOptions = false)
public final class StudioSheet implements Callable<Integer> {

  static final int DONE = 0;
  static final int BLOCKED = 1;
  static final int BAD_INPUT = 2;
  static final int DEFECT = 70;

  /** Held, so that its level is kept: the validator would greet on every start. */
  private static final Logger VALIDATOR_LOG = Logger.getLogger("org.hibernate.validator");

  private final PrintStream out;
  private final PrintStream err;

  @Parameters(paramLabel = "STUDIO_FILE", description = "The studio file, JSON in UTF-8.")
  private Path file = Path.of("");

  @Option(
      names = "--page",
      paramLabel = "FILE",
      description = "Where to write the HTML page (default: ${DEFAULT-VALUE}).")
  private Path page = Path.of("studio-sheet.html");

  @SuppressWarnings("UnusedVariable") // the command line sets and reads it
  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Prints this text.")
  private boolean help;

  /**
   * Runs the program.
   *
   * @param args the studio file and options; see {@code --help}
   */
  public static void main(String[] args) {
    VALIDATOR_LOG.setLevel(Level.WARNING);
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
    System.exit(run(out, err, args));
  }

  /**
   * Runs the program and returns its exit code.
   *
   * @param out where the sheet goes
   * @param err where problems go
   * @param args the studio file and options
   * @return the exit code
   */
  static int run(PrintStream out, PrintStream err, String... args) {
    return new CommandLine(new StudioSheet(out, err))
        .setOut(writer(out))
        .setErr(writer(err))
        .setExecutionExceptionHandler((e, command, parsed) -> defect(err, e))
        .execute(args);
  }

  private static PrintWriter writer(PrintStream stream) {
    return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8), true);
  }

  private StudioSheet(PrintStream out, PrintStream err) {
    this.out = out;
    this.err = err;
  }

  @Override
  public Integer call() {
    try {
      Sheet sheet = Sheet.of(read());
      Page written = SheetPage.of(sheet);
      write(HtmlPage.of(written));
      out.print(TextPage.of(written));
      out.println();
      out.println("The same as a page for screen and paper: " + page.toAbsolutePath().normalize());
      return sheet.isBlocked() ? BLOCKED : DONE;
    } catch (ProblemException e) {
      report(e.problems());
      return BAD_INPUT;
    }
  }

  private Studio read() {
    try (InputStream in = Files.newInputStream(file)) {
      return StudioFile.read(in);
    } catch (IOException e) {
      throw new ProblemException(Problem.of(JsonProblem.FILE_UNREADABLE, file.toString()));
    }
  }

  private void write(String html) {
    try {
      if (Files.exists(page) && Files.isSameFile(page, file)) {
        throw new ProblemException(
            Problem.of(StudioProblem.PAGE_UNWRITABLE, page + ", the studio file itself"));
      }
      Files.writeString(page, html, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new ProblemException(Problem.of(StudioProblem.PAGE_UNWRITABLE, page.toString()));
    }
  }

  private void report(List<Problem> problems) {
    err.println(
        (problems.size() == 1 ? "1 problem" : problems.size() + " problems")
            + " in "
            + file
            + "; nothing was written.");
    for (Problem problem : problems) {
      err.println();
      err.println((problem.path().isEmpty() ? "(whole file)" : problem.path()));
      err.println("  " + problem.what(Locale.ENGLISH) + " [" + problem.code().id() + "]");
      err.println("  found:   " + problem.found());
      err.println("  allowed: " + problem.allowed(Locale.ENGLISH));
      err.println("  do:      " + problem.remedy(Locale.ENGLISH));
    }
  }

  private static int defect(PrintStream err, Exception e) {
    err.println("This is a defect of Meltwright, not of your file. Please report it with");
    err.println("  - the lines below,");
    err.println("  - the studio file, or the part of it that you may share,");
    err.println(
        "  - Java "
            + System.getProperty("java.version")
            + " on "
            + System.getProperty("os.name")
            + ".");
    e.printStackTrace(err);
    return DEFECT;
  }
}
