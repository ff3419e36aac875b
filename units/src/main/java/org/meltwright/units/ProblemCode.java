// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

/**
 * A stable name for one kind of problem, such as {@code quantity.unknown-unit}.
 *
 * <p>Each package that reports problems has one enum of codes; the texts stand in the message
 * bundle beside that enum, in English and German, under {@code problem.<id>.what}, {@code
 * problem.<id>.allowed} and {@code problem.<id>.remedy}.
 *
 * <p>For example:
 *
 * <pre>{@code
 * enum KilnProblem implements ProblemCode {
 *   DOOR_OPEN;
 *
 *   public String id() {
 *     return "kiln.door-open";
 *   }
 * }
 * Problem ajar = Problem.of(KilnProblem.DOOR_OPEN, "ajar");
 * ajar.code().id(); // kiln.door-open
 * // without a bundle the id speaks for itself
 * ajar.inWords(Locale.ENGLISH); // kiln.door-open. Found: ajar.
 * }</pre>
 */
public interface ProblemCode {

  /**
   * Returns the stable id, lower case, words joined by hyphens and dots.
   *
   * @return the id, for example {@code quantity.unknown-unit}; never changes once released
   */
  String id();
}
