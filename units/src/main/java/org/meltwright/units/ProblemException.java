// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.util.List;
import java.util.stream.Collectors;

/**
 * The one unchecked exception of the library that speaks of what a person gave: it carries one or
 * many problems, all that were found.
 *
 * <p>Defects of ours (a {@code null}, an index out of bounds) are reported as the JDK does.
 * Message, stack trace and serialised form hold all problems, whatever codes an app reports.
 *
 * <p>For example:
 *
 * <pre>{@code
 * List<Problem> problems = new ArrayList<>();
 * try {
 *   QuantityParser.localeFree().parseMass("730");
 * } catch (ProblemException e) {
 *   problems.addAll(e.under("/wax").problems());
 * }
 * problems.get(0).path(); // /wax
 * problems.get(0).what(Locale.ENGLISH); // The number has no unit.
 * problems.get(0).remedy(Locale.ENGLISH); // Write the unit behind the number.
 * }</pre>
 *
 * @serial exclude
 */
@SuppressWarnings("InvalidBlockTag") // the serialised form is no API
public final class ProblemException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final List<Problem> problems;

  /**
   * Creates an exception that carries one problem.
   *
   * @param problem the problem
   */
  public ProblemException(Problem problem) {
    this(List.of(problem));
  }

  /**
   * Creates an exception that carries all problems found.
   *
   * @param problems one or many problems, in the order found
   * @throws IllegalArgumentException if there is none
   */
  public ProblemException(List<Problem> problems) {
    if (problems.isEmpty()) {
      throw new IllegalArgumentException("an exception needs at least one problem");
    }
    this.problems = List.copyOf(problems);
  }

  /**
   * Returns the problems.
   *
   * @return one or many, in the order found
   */
  public List<Problem> problems() {
    return problems;
  }

  /** {@return the English texts of all problems, one a line, built when asked for} */
  @Override
  public String getMessage() {
    return problems.stream().map(Problem::toString).collect(Collectors.joining("\n"));
  }

  /**
   * Returns the same problems, each below a path.
   *
   * @param pointer the JSON pointer (RFC 6901) of the enclosing value
   * @return the new exception
   */
  public ProblemException under(String pointer) {
    return new ProblemException(problems.stream().map(p -> p.under(pointer)).toList());
  }
}
