// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.util.List;
import java.util.Locale;

/**
 * A problem as plain data, as an app answers with it: any JSON library writes it.
 *
 * <pre>{@code
 * Problem problem = Problem.of(UnitsProblem.TEXT_EMPTY, "").under("/amount");
 * ProblemData data = ProblemData.of(problem, Locale.ENGLISH);
 * data.code(); // text.empty
 * data.path(); // /amount
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param code the stable code, for example {@code quantity.wrong-kind}
 * @param path where it is, as a JSON pointer (RFC 6901); empty for the whole of what was given
 * @param what what is wrong, one sentence
 * @param found what was found, as the person wrote it; a value that was not text in the reader's
 *     notation
 * @param allowed what is allowed, one phrase
 * @param remedy what to do, one sentence
 */
public record ProblemData(
    String code, String path, String what, String found, String allowed, String remedy) {

  /**
   * Returns a problem as data.
   *
   * @param problem the problem
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return its code, path and texts
   */
  public static ProblemData of(Problem problem, Locale locale) {
    return new ProblemData(
        problem.code().id(),
        problem.path(),
        problem.what(locale),
        problem.found(locale),
        problem.allowed(locale),
        problem.remedy(locale));
  }

  /**
   * Returns problems as data.
   *
   * @param problems the problems, for example those of a {@link ProblemException}
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return one entry for each, in the same order
   */
  public static List<ProblemData> allOf(List<Problem> problems, Locale locale) {
    return problems.stream().map(problem -> of(problem, locale)).toList();
  }
}
