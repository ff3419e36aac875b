// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * The days that a row of a table holds for.
 *
 * @param from the first day; empty if it always held
 * @param until the last day; empty if it is open
 */
record Days(Optional<LocalDate> from, Optional<LocalDate> until) {

  /** Reads the last two cells of a row. */
  static Days of(List<String> row) {
    return new Days(day(row.get(row.size() - 2)), day(row.get(row.size() - 1)));
  }

  private static Optional<LocalDate> day(String cell) {
    return cell.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(cell));
  }

  boolean holdOn(LocalDate day) {
    return from.filter(day::isBefore).isEmpty() && until.filter(day::isAfter).isEmpty();
  }

  boolean overlap(Days other) {
    return !endBefore(other) && !other.endBefore(this);
  }

  private boolean endBefore(Days other) {
    return until.isPresent()
        && other.from.isPresent()
        && until.orElseThrow().isBefore(other.from.orElseThrow());
  }
}
