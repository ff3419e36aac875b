// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.Messages;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * A block copied from section 2 or 3 of a safety data sheet, read line by line.
 *
 * <p>Classes and categories in the words and abbreviations of English and German sheets, codes of
 * statements, limits, M-factors, shares and estimates. The reference has a page of what is read,
 * with every spelling (copied-sheets).
 *
 * <pre>{@code
 * CopiedSheet sheet =
 *     CopiedSheet.read(
 *         """
 *         Terpentinöl  CAS-Nr.: 8006-64-2  25 - < 50 %
 *           Entzündbare Flüssigkeiten, Kat. 3; H226
 *           Aspirationsgefahr, Kat. 1; H304
 *         1,2-Benzisothiazol-3(2H)-on  CAS-Nr.: 2634-33-5  < 0,05 %
 *           Skin Sens. 1A; H317: C ≥ 0,036 %
 *           Aquatic Acute 1, H400 (M=1)
 *           Krebserz. 1B; H350
 *         """);
 * sheet.lines().get(0).hazards(); // Terpentinöl [flammable-liquid 3 H226, aspiration 1 H304]
 * sheet.lines().get(0).highPercent(); // 50 %
 * sheet.lines().get(1).hazards().specificLimits().get(0).fromPercent(); // 0.036 %
 * sheet.problems().get(0).found(); // Krebserz. 1B; H350
 * sheet.problems().get(0).details().get("line"); // 7
 * CopiedSheet.read("Skin Sens. 1; H317 - n.a.").problems(); // []
 * CopiedSheet.read("x".repeat(200_001)); // throws ProblemException
 * }</pre>
 *
 * <p>What is not understood is never dropped: it stands among the {@link #problems} with its place,
 * and leaves every class of its line open that the rest of the line does not name. "n.a.", "no
 * data" and a bare "-" are no word of harmlessness: a line that says no more leaves all classes
 * open; only "not classified" says that there is none.
 *
 * <p>Immutable and thread-safe.
 */
public final class CopiedSheet {

  /** The longest text that is read, in characters: a whole data sheet is shorter. */
  public static final int LONGEST = 200_000;

  /**
   * One substance, or the whole mixture where a section 2 was copied.
   *
   * @param hazards what the sheet says of it
   * @param lowPercent the low end of its share by mass, in per cent; empty if no share is said
   * @param highPercent the high end, in per cent; empty if no share is said
   */
  public record Line(
      SubstanceHazards hazards, OptionalDouble lowPercent, OptionalDouble highPercent) {}

  /**
   * Something that was read by a choice, or passed over as text; shown so that a person can look.
   *
   * @param kind what was done
   * @param found the words of the sheet
   * @param line their line, from 1
   * @param column their column, from 1
   */
  public record Remark(Kind kind, String found, int line, int column) {

    /** What was done with the words. */
    public enum Kind {
      /** A category of the UN system that the European law takes as another, or does not have. */
      UN_CATEGORY("un-category"),
      /** A class that only a test of the mixture can tell. */
      NOT_WORKED_OUT("not-worked-out"),
      /** A statement that follows from class and category, and was not printed. */
      STATEMENT_IMPLIED("statement-implied"),
      /** An M-factor without "acute" or "chronic": taken for both. */
      FACTOR_FOR_BOTH("factor-for-both"),
      /** Stars behind a statement: a route or an effect that the older law did not settle. */
      STARS("stars"),
      /** An acute toxicity estimate above a share or dose, which is no point. */
      NO_POINT("no-point"),
      /** A point between thousands of an estimate, as its category says. */
      THOUSANDS("thousands"),
      /** Words without a class, a code or a number, passed over. */
      TEXT("text");

      private final String id;

      Kind(String id) {
        this.id = id;
      }

      /**
       * Returns the stable id.
       *
       * @return lower case and hyphens, for example {@code un-category}
       */
      public String id() {
        return id;
      }
    }

    /**
     * Says what was done.
     *
     * @param locale the reader's language: German for {@code de}, English for all others
     * @return a sentence with the words and their place
     */
    public String text(Locale locale) {
      Map<String, String> details =
          Map.of("found", found, "line", String.valueOf(line), "column", String.valueOf(column));
      return Messages.beside(CopiedSheet.class).text("sheet." + kind.id, locale, details);
    }
  }

  private final List<Line> lines;
  private final List<Problem> problems;
  private final List<Remark> remarks;

  /**
   * Reads a copied text.
   *
   * @param text one substance or many, as copied; lines, tabs and table cells may be lost
   * @return what it says, and what of it was not understood
   * @throws ProblemException if the text is longer than {@link #LONGEST}
   */
  public static CopiedSheet read(String text) {
    return new SheetReader(text, false).read();
  }

  CopiedSheet(List<Line> lines, List<Problem> problems, List<Remark> remarks) {
    this.lines = List.copyOf(lines);
    this.problems = List.copyOf(problems);
    this.remarks = List.copyOf(remarks);
  }

  /**
   * Returns the substances, in the order of the sheet.
   *
   * @return the lines; empty if the text names none
   */
  public List<Line> lines() {
    return lines;
  }

  /**
   * Returns what was not understood, each with its line and column.
   *
   * @return the problems; empty if all was understood
   */
  public List<Problem> problems() {
    return problems;
  }

  /**
   * Returns what was read by a choice or passed over.
   *
   * @return the remarks, in the order of the text; empty if there is none
   */
  public List<Remark> remarks() {
    return remarks;
  }

  /**
   * Returns the sheet on one line, locale-free.
   *
   * @return the lines with their shares, and how much was not understood
   */
  @Override
  public String toString() {
    return lines.stream().map(Line::hazards).toList() + ", " + problems.size() + " not understood";
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof CopiedSheet that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(lines, problems, remarks);
  }
}
