// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import java.time.LocalDate;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * The days on which a price, a duty or an offer holds, both ends included.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Validity summer = new Validity(LocalDate.of(2026, 6, 1), LocalDate.of(2026, 8, 31));
 * summer.contains(LocalDate.of(2026, 8, 31)); // true
 * summer.contains(LocalDate.of(2026, 9, 1)); // false
 * Validity.ALWAYS.contains(LocalDate.of(1999, 1, 1)); // true
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param from the first day
 * @param until the last day, not before the first
 */
public record Validity(LocalDate from, LocalDate until) {

  /** Any day. */
  public static final Validity ALWAYS = new Validity(LocalDate.MIN, LocalDate.MAX);

  /** Draws a problem if the last day comes before the first. */
  public Validity {
    if (until.isBefore(from)) {
      throw new ProblemException(
          Problem.of(
              CostProblem.DATES_REVERSED,
              Bilingual.range(Bilingual.of(from.toString()), Bilingual.of(until.toString()))));
    }
  }

  /**
   * Returns the days from one on.
   *
   * @param day the first day
   * @return that day and all after it
   */
  public static Validity from(LocalDate day) {
    return new Validity(day, LocalDate.MAX);
  }

  /**
   * Returns the days up to one.
   *
   * @param day the last day
   * @return that day and all before it
   */
  public static Validity until(LocalDate day) {
    return new Validity(LocalDate.MIN, day);
  }

  /**
   * Tells whether a day is among them.
   *
   * @param day the day
   * @return whether it lies between both ends or on one
   */
  public boolean contains(LocalDate day) {
    return !day.isBefore(from) && !day.isAfter(until);
  }
}
