// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import static org.meltwright.examples.studio.file.StudioProblem.CHECK;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.meltwright.examples.json.JsonProblem;
import org.meltwright.examples.studio.day.Sheet;
import org.meltwright.examples.studio.day.Studio;
import org.meltwright.examples.studio.file.StudioFile;
import org.meltwright.examples.studio.file.StudioProblem;
import org.meltwright.examples.studio.page.Edition;
import org.meltwright.examples.studio.page.HtmlPage;
import org.meltwright.examples.studio.page.Page;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.examples.studio.page.TextPage;
import org.meltwright.examples.studio.sheet.ClassSheetPage;
import org.meltwright.examples.studio.sheet.SheetPage;
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
 * defect of ours, 74 the sheet could not be printed.
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
          + " defect of ours; 74 the sheet could not be printed."
    },
    sortOptions = false)
public final class StudioSheet implements Callable<Integer> {

  static final int DONE = 0;
  static final int BLOCKED = 1;
  static final int BAD_INPUT = 2;
  static final int DEFECT = 70;
  static final int UNWRITABLE = 74;

  private final PrintStream out;
  private final PrintStream err;

  @Parameters(paramLabel = "STUDIO_FILE", description = "The studio file, JSON in UTF-8.")
  private Path file = Path.of("");

  @Option(
      names = "--page",
      paramLabel = "FILE",
      description =
          "Where to write the HTML page (default: studio-sheet-DATE.html, or nowhere with --out)."
              + " A page that is named is overwritten.")
  private @Nullable Path page;

  @Option(
      names = "--class-sheet",
      paramLabel = "FILE",
      description =
          "Where to write the class sheet, an HTML page to print, tick and sign; the studio file"
              + " has to describe a class.")
  private @Nullable Path classSheet;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description =
          "A folder, made if there is none, for the sheet as page and as text, a page for each card,"
              + " the class sheet if there is a class, and all results as JSON.")
  private @Nullable Path folder;

  @Option(
      names = "--date",
      paramLabel = "DATE",
      description =
          "The day that the sheet is for, such as 2026-12-05 (default: the date in the file, or else"
              + " today).")
  private @Nullable LocalDate date;

  @Option(
      names = "--language",
      paramLabel = "CODE",
      converter = Language.class,
      description = "The language of all of it: en or de (default: en).")
  private Say language = Say.ENGLISH;

  @SuppressWarnings("UnusedVariable") // the command line sets and reads it
  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Prints this text.")
  private boolean help;

  /** Reads the code of a language that the pages have words in. */
  static final class Language implements CommandLine.ITypeConverter<Say> {

    @Override
    public Say convert(String code) {
      return Say.find(code)
          .orElseThrow(
              () ->
                  new CommandLine.TypeConversionException(
                      "there are no words in \"" + code + "\"; choose en or de"));
    }
  }

  /**
   * Runs the program.
   *
   * @param args the studio file and options; see {@code --help}
   */
  public static void main(String[] args) {
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
      Studio studio = read();
      Edition edition = new Edition(language, day(studio), name());
      Sheet sheet = Sheet.of(studio, language);
      Page written = SheetPage.of(sheet, edition);
      String text = TextPage.of(written);
      SheetFiles files = new SheetFiles(file);
      page(edition).ifPresent(place -> files.add(place, HtmlPage.of(written)));
      Optional.ofNullable(classSheet)
          .ifPresent(
              place ->
                  files.add(place, forClass(sheet, edition).orElseThrow(StudioSheet::noClass)));
      if (folder != null) {
        addAll(files, SheetFiles.folder(folder), sheet, edition, text);
      }
      files.write();
      out.print(text);
      out.println();
      sayWhere(edition);
      return isPrinted() ? sheet.isBlocked() ? BLOCKED : DONE : UNWRITABLE;
    } catch (ProblemException e) {
      report(e.problems());
      return BAD_INPUT;
    }
  }

  private LocalDate day(Studio studio) {
    return Optional.ofNullable(date)
        .or(() -> studio.about().date())
        .orElseGet(() -> LocalDate.now(ZoneId.systemDefault()));
  }

  /**
   * A full disk or a closed pipe is no defect, and a sheet that is cut off is not to be trusted.
   */
  private boolean isPrinted() {
    if (out.checkError()) {
      err.println(language.words("unprinted"));
      return false;
    }
    return true;
  }

  private String name() {
    Path name = file.getFileName();
    return name == null ? file.toString() : name.toString();
  }

  /** Where the sheet goes by itself; with a folder for all, only where that is asked for too. */
  private Optional<Path> page(Edition edition) {
    return page == null && folder == null
        ? Optional.of(Path.of("studio-sheet-" + edition.day() + ".html"))
        : Optional.ofNullable(page);
  }

  private Studio read() {
    try (InputStream in = Files.newInputStream(file)) {
      return StudioFile.read(in);
    } catch (IOException e) {
      throw new ProblemException(Problem.of(JsonProblem.FILE_UNREADABLE, file.toString()));
    }
  }

  private static Optional<String> forClass(Sheet sheet, Edition edition) {
    return sheet.forClass().map(c -> HtmlPage.forPaper(ClassSheetPage.of(sheet, c, edition)));
  }

  private static ProblemException noClass() {
    return new ProblemException(
        Problem.of(StudioProblem.CLASS_MISSING, CHECK.name("nothing")).under("/classDay"));
  }

  /** Sheet, cards, class sheet and results, each under a name of its own. */
  private static void addAll(
      SheetFiles files, Path folder, Sheet sheet, Edition edition, String text) {
    files.add(folder.resolve("sheet.html"), HtmlPage.of(SheetPage.of(sheet, edition)));
    files.add(folder.resolve("sheet.txt"), text);
    for (int i = 0; i < sheet.jobs().size(); i++) {
      files.add(
          folder.resolve("card-" + (i + 1) + ".html"),
          HtmlPage.of(SheetPage.card(sheet, edition, i)));
    }
    forClass(sheet, edition).ifPresent(c -> files.add(folder.resolve("class-sheet.html"), c));
    files.add(folder.resolve("results.json"), Results.of(sheet, edition).json());
  }

  private void sayWhere(Edition edition) {
    Optional.ofNullable(classSheet).ifPresent(place -> say("written.class-sheet", place));
    Optional.ofNullable(folder).ifPresent(place -> say("written.folder", place));
    page(edition).ifPresent(place -> say("written.page", place));
  }

  private void say(String key, Path place) {
    out.println(language.words(key, "place", place.toAbsolutePath().normalize()));
  }

  private void report(List<Problem> problems) {
    Locale reader = language.locale();
    err.println(
        language.words(
            "problems", "count", language.count("problems.count", problems.size()), "file", file));
    for (Problem problem : problems) {
      err.println();
      err.println(problem.path().isEmpty() ? language.words("problems.file") : problem.path());
      err.println("  " + problem.what(reader) + " [" + problem.code().id() + "]");
      if (!problem.found(reader).isEmpty()) {
        err.println("  " + language.words("problems.found", "found", problem.found(reader)));
      }
      if (!problem.allowed(reader).isEmpty()) {
        err.println("  " + language.words("problems.allowed", "allowed", problem.allowed(reader)));
      }
      err.println("  " + language.words("problems.do", "remedy", problem.remedy(reader)));
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
