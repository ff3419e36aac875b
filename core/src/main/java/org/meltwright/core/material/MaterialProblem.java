// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import org.meltwright.units.Check;
import org.meltwright.units.ProblemCode;

/**
 * The problems that materials report.
 *
 * <p>For example:
 *
 * <pre>{@code
 * List<Problem> problems = new ArrayList<>();
 * try {
 *   MaterialCatalogue.standard().require("PBr7");
 * } catch (ProblemException e) {
 *   problems.addAll(e.problems());
 * }
 * problems.get(0).code(); // AMBIGUOUS
 * problems.get(0).what(Locale.ENGLISH); // Several materials answer to "PBr7".
 * }</pre>
 */
public enum MaterialProblem implements ProblemCode {
  /** A figure that nobody knows is needed. */
  PROPERTY_MISSING("material.property-missing"),
  /** The source asked for gives no figure of the property. */
  NO_FIGURE_OF_SOURCE("material.no-figure-of-source"),
  /** No material has this name. */
  UNKNOWN("material.unknown"),
  /** Several materials share this name or number. */
  AMBIGUOUS("material.ambiguous"),
  /** An identifier that is not well formed or whose check digit is wrong. */
  IDENTIFIER("material.identifier"),
  /** A line of a materials file that is not "key: value", or stands in the wrong place. */
  LINE("material.line"),
  /** A key that is neither a property nor a word of the format. */
  KEY("material.key"),
  /** A text that does not start with a number. */
  VALUE("material.value"),
  /** A temperature of which only the high end is stated. */
  LOW_END("material.low-end"),
  /** A unit that does not fit the property. */
  UNIT("material.unit"),
  /** A word that is none of those allowed. */
  WORD("material.word"),
  /** A figure without value, source and knowledge. */
  FIGURE("material.figure"),
  /** A source that the bibliography does not have. */
  SOURCE("material.source"),
  /** An id that a file gives twice. */
  TWICE("material.twice"),
  /** A part or an alternative that is no material. */
  PART("material.part"),
  /** Parts whose shares cannot sum to one. */
  PARTS_SUM("material.parts-sum"),
  /** A material that contains itself. */
  CYCLE("material.cycle"),
  /** Two values for one material, or for one lot of it. */
  STATED_TWICE("material.stated-twice"),
  /** Two materials of one id and lot, or a material and a recipe of one name, in one draft. */
  REFERENCE_SHARED("material.reference-shared"),
  /** A material that a materials file cannot hold. */
  NOT_WRITABLE("material.not-writable"),
  /** A file that cannot be read. */
  FILE("material.file"),
  /** A flash point or another figure of fire as a measurement of one's own. */
  NOT_AT_HOME("material.not-at-home"),
  /** A figure of one state of matter where the property is that of another. */
  STATE("material.state");

  /** The guards of this package. */
  static final Check CHECK = Check.beside(MaterialProblem.class);

  private final String id;

  MaterialProblem(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
