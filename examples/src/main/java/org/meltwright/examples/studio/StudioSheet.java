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
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.jspecify.annotations.Nullable;
import org.meltwright.examples.json.JsonProblem;
import org.meltwright.examples.studio.page.HtmlPage;
import org.meltwright.examples.studio.page.Page;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.examples.studio.page.TextPage;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/**
 * The main job: reads a studio file, prints the studio sheet and writes it as an HTML page.
 *
 * <p>Exit codes: 0 done, 1 a recipe or the class is blocked, 2 bad input (nothing is written), 70 a
 * defect of ours.
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
      "Exit codes: 0 done; 1 a recipe or the class is blocked; 2 bad input, nothing written; 70 a"
          + " defect of ours."
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

  @Option(
      names = "--class-sheet",
      paramLabel = "FILE",
      description =
          "Where to write the class sheet, an HTML page to print, tick and sign; the studio file"
              + " has to describe a class.")
  private @Nullable Path classSheet;

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
      Sheet sheet = Sheet.of(read(), edition().say());
      Page written = SheetPage.of(sheet, edition());
      write(sheet, HtmlPage.of(written));
      out.print(TextPage.of(written));
      out.println();
      if (classSheet != null) {
        out.println("The class sheet, to be printed: " + classSheet.toAbsolutePath().normalize());
      }
      out.println("The same as a page for screen and paper: " + page.toAbsolutePath().normalize());
      return sheet.isBlocked() ? BLOCKED : DONE;
    } catch (ProblemException e) {
      report(e.problems());
      return BAD_INPUT;
    }
  }

  private Edition edition() {
    return new Edition(Say.ENGLISH, java.time.LocalDate.now(), file.getFileName().toString());
  }

  private Studio read() {
    try (InputStream in = Files.newInputStream(file)) {
      return StudioFile.read(in);
    } catch (IOException e) {
      throw new ProblemException(Problem.of(JsonProblem.FILE_UNREADABLE, file.toString()));
    }
  }

  /** Both pages are worked out, and both places looked at, before anything is written. */
  private void write(Sheet sheet, String html) {
    Optional<String> forClass =
        classSheet == null ? Optional.empty() : Optional.of(forClass(sheet));
    requireWritable(page, file, "the studio file itself");
    if (classSheet != null) {
      requireWritable(classSheet, file, "the studio file itself");
      requireWritable(classSheet, page, "the studio sheet itself");
    }
    write(page, html);
    forClass.ifPresent(text -> write(Objects.requireNonNull(classSheet), text));
  }

  private String forClass(Sheet sheet) {
    return sheet
        .forClass()
        .map(c -> HtmlPage.forPaper(ClassSheetPage.of(sheet, c, edition())))
        .orElseThrow(
            () ->
                new ProblemException(
                    Problem.of(StudioProblem.CLASS_MISSING, StudioProblem.CHECK.name("nothing"))
                        .under("/classDay")));
  }

  private static void requireWritable(Path place, Path other, String name) {
    if (place.toAbsolutePath().normalize().equals(other.toAbsolutePath().normalize())
        || isSame(place, other)) {
      throw new ProblemException(Problem.of(StudioProblem.PAGE_UNWRITABLE, place + ", " + name));
    }
    Path folder = place.toAbsolutePath().normalize().getParent();
    boolean isWritable = Files.exists(place) ? isFile(place) : folder != null && isFolder(folder);
    if (!isWritable) {
      throw new ProblemException(Problem.of(StudioProblem.PAGE_UNWRITABLE, place.toString()));
    }
  }

  private static boolean isFile(Path place) {
    return !Files.isDirectory(place) && Files.isWritable(place);
  }

  private static boolean isFolder(Path place) {
    return Files.isDirectory(place) && Files.isWritable(place);
  }

  private static boolean isSame(Path place, Path other) {
    try {
      return Files.exists(place) && Files.exists(other) && Files.isSameFile(place, other);
    } catch (IOException e) {
      return false; // the write itself will say that it cannot be reached
    }
  }

  private static void write(Path place, String html) {
    try {
      Files.writeString(place, html, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new ProblemException(Problem.of(StudioProblem.PAGE_UNWRITABLE, place.toString()));
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
