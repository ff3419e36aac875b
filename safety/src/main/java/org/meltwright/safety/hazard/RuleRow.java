// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.time.LocalDate;
import java.util.List;
import org.meltwright.core.source.Knowledge;

/**
 * One row of a rule file: a figure with its paragraph and the days that it holds for.
 *
 * @param line its number in the file, from 1
 * @param kind what the row states
 * @param cells the columns between the kind and the paragraph
 * @param paragraph where the law says so
 * @param knowledge how that is known
 * @param days the days that it holds for
 */
record RuleRow(
    int line, Kind kind, List<String> cells, String paragraph, Knowledge knowledge, Days days) {

  /** What a row states, and how many columns it has before the paragraph. */
  enum Kind {
    CLASS(4),
    LIMIT(4),
    LIMIT_GAS(4),
    NON_ADDITIVE(4),
    CUT_OFF(3),
    ELICITATION(3),
    EUH210(3),
    ON_REQUEST(3),
    ACUTE(5),
    BOUND(2);

    private final int columns;

    Kind(int columns) {
      this.columns = columns;
    }

    int columns() {
      return columns;
    }

    String id() {
      return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }

    /** Whether it is a limit of a class, and so a key of {@link LimitKey}. */
    boolean isLimit() {
      return this != CLASS && this != ACUTE && this != BOUND;
    }
  }

  boolean holdsOn(LocalDate day) {
    return days.holdOn(day);
  }

  boolean overlaps(RuleRow other) {
    return days.overlap(other.days);
  }

  String cell(int index) {
    return cells.get(index);
  }

  String lastCell() {
    return cells.get(cells.size() - 1);
  }

  double number(int index) {
    return Double.parseDouble(cells.get(index));
  }

  /** The limit that it states. */
  LimitKey limitKey() {
    Category of = Category.of(cell(1));
    Category reached = kind.columns() == 4 ? Category.of(cell(2)) : of;
    return new LimitKey(LimitKey.Kind.valueOf(kind.name()), of, reached);
  }

  /** What may stand once on any one day. */
  String key() {
    int named = kind == Kind.CLASS ? 1 : kind == Kind.ACUTE ? 2 : cells.size() - 1;
    return kind.id() + " " + String.join(" ", cells.subList(0, named));
  }
}
