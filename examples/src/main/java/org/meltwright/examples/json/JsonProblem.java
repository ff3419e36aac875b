// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.json;

import org.meltwright.units.Check;
import org.meltwright.units.ProblemCode;

/** The problems of a JSON text as such, before anyone asks what its values mean. */
public enum JsonProblem implements ProblemCode {
  /** The file cannot be read. */
  FILE_UNREADABLE("json.file-unreadable"),
  /** The text is longer than allowed. */
  TOO_LARGE("json.too-large"),
  /** The text is not JSON; the problem names line and column. */
  SYNTAX("json.syntax"),
  /** A text in which nothing stands. */
  EMPTY("json.empty"),
  /** Bytes that are not UTF-8. */
  ENCODING("json.encoding"),
  /** A comment, which JSON has not. */
  COMMENT("json.comment"),
  /** Quotation marks other than the straight double ones. */
  QUOTATION_MARKS("json.quotation-marks"),
  /** A word without quotation marks that is none of true, false and null. */
  BARE_WORD("json.bare-word"),
  /** Two values with no comma between them. */
  COMMA_MISSING("json.comma-missing"),
  /** A comma that nothing follows. */
  COMMA_TOO_MANY("json.comma-too-many"),
  /** A text that ends before all that it opens is closed. */
  ENDS_EARLY("json.ends-early"),
  /** Objects and arrays are nested deeper than allowed. */
  TOO_DEEP("json.too-deep"),
  /** A key stands twice in one object. */
  DUPLICATE_KEY("json.duplicate-key"),
  /** A field that nobody reads. */
  UNKNOWN_FIELD("json.unknown-field"),
  /** A value of another JSON type than asked for. */
  WRONG_TYPE("json.wrong-type"),
  /** A field that is needed is not there. */
  MISSING_FIELD("json.missing-field"),
  /** A value that its field does not allow. */
  INVALID_VALUE("json.invalid-value");

  /** The German of what this package says itself. */
  static final Check CHECK = Check.beside(JsonProblem.class);

  private final String id;

  JsonProblem(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
