// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.source;

import java.time.LocalDate;
import java.util.Optional;
import org.meltwright.units.Check;

/**
 * What a reader can look up: a title, where in it, and when it appeared.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Source sheet =
 *     Source.of("wax-sheet", "Data sheet of our beeswax", SourceKind.DATA_SHEET)
 *         .at("2nd ed.")
 *         .ofYear("2026");
 * sheet.at("table 4").citation(); // Data sheet of our beeswax, 2nd ed., table 4 (2026)
 * Source.COMMON_PRACTICE.citation(); // Common practice of the trade
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param id the stable id in the bibliography, lower case and hyphens
 * @param title the title, with its author or publisher
 * @param locator edition, table, section or page; empty if not stated
 * @param year the year of publication; empty if not stated
 * @param kind what kind of publication it is
 */
public record Source(
    String id, String title, Optional<String> locator, Optional<String> year, SourceKind kind) {

  /** The guards of this package. */
  static final Check CHECK = Check.beside(Source.class);

  /** A rule of the trade, with no publication behind it. */
  public static final Source COMMON_PRACTICE =
      of("common-practice", "Common practice of the trade", SourceKind.COMMON_PRACTICE);

  /** Our own arithmetic on other figures. */
  public static final Source CALCULATED =
      of("calculated", "Calculated from other figures, as the note says", SourceKind.CALCULATED);

  /** What the user stated: a measurement, a price, a data sheet of their own. */
  public static final Source USER = of("user", "Stated by the user", SourceKind.DATA_SHEET);

  /** The id of every measurement of one's own that is made in code. */
  private static final String OWN = "own-measurement";

  /**
   * Returns a source of which neither place nor year is stated.
   *
   * @param id the stable id in the bibliography, lower case and hyphens
   * @param title the title, with its author or publisher
   * @param kind what kind of publication it is
   * @return the source
   * @throws org.meltwright.units.ProblemException if a text is blank
   */
  public static Source of(String id, String title, SourceKind kind) {
    return new Source(id, title, Optional.empty(), Optional.empty(), kind);
  }

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
    return of(OWN, title, SourceKind.OWN_MEASUREMENT).at(how).ofYear(on.toString());
  }

  /** Draws a problem if one of the texts is blank. */
  public Source {
    CHECK.named(id, "id of a source");
    CHECK.named(title, "title of a source");
    if (locator.isPresent()) {
      CHECK.named(locator.get(), "locator of a source");
    }
    if (year.isPresent()) {
      CHECK.named(year.get(), "year of a source");
    }
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
    String longer = locator.isEmpty() ? place : String.join(", ", locator.get(), place);
    return new Source(id, title, Optional.of(longer), year, kind);
  }

  /**
   * Returns this source with the year in which it appeared.
   *
   * @param published the year, or a day
   * @return the source of that year
   * @throws org.meltwright.units.ProblemException if the text is blank
   */
  public Source ofYear(String published) {
    return new Source(id, title, locator, Optional.of(published), kind);
  }

  /**
   * Returns the source on one line.
   *
   * @return title, locator and year, without the parts that are not stated
   */
  public String citation() {
    return title
        + locator.map(place -> ", " + place).orElse("")
        + year.map(published -> " (" + published + ")").orElse("");
  }
}
