// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

/** A part of the form of a data sheet, as its headings begin it. */
enum SheetPart {
  /** Classes and substances. */
  ENTRIES,
  /** The elements of the label, which repeat statements. */
  LABEL,
  /** The text of precautions. */
  PRECAUTIONS,
  /** Other hazards, in prose. */
  PROSE;

  /** The part that a heading of the word list begins. */
  static SheetPart of(String heading) {
    return switch (heading) {
      case "label" -> LABEL;
      case "prose" -> PROSE;
      default -> ENTRIES;
    };
  }
}
