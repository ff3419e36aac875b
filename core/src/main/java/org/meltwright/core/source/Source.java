// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.source;

import java.time.LocalDate;
import org.meltwright.units.Check;

/**
 * What a reader can look up: a title, where in it, and when it appeared.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Source sheet =
 *     new Source(
 *         "wax-sheet", "Data sheet of our beeswax", "2nd ed.", "2026", SourceKind.DATA_SHEET);
 * sheet.at("table 4").citation(); // Data sheet of our beeswax, 2nd ed., table 4 (2026)
 * Source.COMMON_PRACTICE.citation(); // Common practice of the trade
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param id the stable id in the bibliography, lower case and hyphens
 * @param title the title, with its author or publisher
 * @param locator edition, table, section or page; "not stated" where unknown
 * @param year the year of publication; "not stated" where unknown
 * @param kind what kind of publication it is
 */
public record Source(String id, String title, String locator, String year, SourceKind kind) {

  /** The guards of this package. */
  static final Check CHECK = Check.beside(Source.class);

  /** What stands for a locator or a year that is unknown. */
  public static final String NOT_STATED = "not stated";

  /** A rule of the trade, with no publication behind it. */
  public static final Source COMMON_PRACTICE =
      new Source(
          "common-practice",
          "Common practice of the trade",
          NOT_STATED,
          NOT_STATED,
          SourceKind.COMMON_PRACTICE);

  /** Our own arithmetic on other figures. */
  public static final Source CALCULATED =
      new Source(
          "calculated",
          "Calculated from other figures, as the note says",
          NOT_STATED,
          NOT_STATED,
          SourceKind.CALCULATED);

  /** What the user stated: a measurement, a price, a data sheet of their own. */
  public static final Source USER =
      new Source("user", "Stated by the user", NOT_STATED, NOT_STATED, SourceKind.DATA_SHEET);

  /** The id of every measurement of one's own that is made in code. */
  private static final String OWN = "own-measurement";

  /**
   * Returns a measurement of one's own as a source.
   *
   * @param by who measured
   * @param on when
   * @param how how it was measured
   * @return for example "Own measurement by Ada, full cup of melt (2026-03-14)"
   * @throws org.meltwright.units.ProblemException if a text is blank
   */
  public static Source ownMeasurement(String by, LocalDate on, String how) {
    String title = "Own measurement by " + CHECK.named(by, "who measured");
    return new Source(OWN, title, how, on.toString(), SourceKind.OWN_MEASUREMENT);
  }

  /** Draws a problem if one of the texts is blank; what is unknown is {@link #NOT_STATED}. */
  public Source {
    CHECK.named(id, "id of a source");
    CHECK.named(title, "title of a source");
    CHECK.named(locator, "locator of a source");
    CHECK.named(year, "year of a source");
  }

  /**
   * Returns this source with a place in it, behind the edition if one is stated.
   *
   * <p>For example, "3rd ed." at "table 4" is "3rd ed., table 4".
   *
   * @param place table, section or page
   * @return the source with its longer locator
   */
  public Source at(String place) {
    String longer = locator.equals(NOT_STATED) ? place : String.join(", ", locator, place);
    return new Source(id, title, longer, year, kind);
  }

  /**
   * Returns the source on one line.
   *
   * @return title, locator and year, without the parts that are not stated
   */
  public String citation() {
    return title
        + (locator.equals(NOT_STATED) ? "" : ", " + locator)
        + (year.equals(NOT_STATED) ? "" : " (" + year + ")");
  }
}
