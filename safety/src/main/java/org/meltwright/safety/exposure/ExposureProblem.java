// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.exposure;

import org.meltwright.units.Bilingual;
import org.meltwright.units.Check;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemCode;
import org.meltwright.units.ProblemException;

/**
 * The problems that exposure arithmetic reports.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Agent fume = new Agent("fume of hot wax", 300, Set.of(Agent.Trait.FUME));
 * ExposureLimit limit =
 *     new ExposureLimit(fume, 2, ExposureLimit.Unit.MILLIGRAMS_PER_CUBIC_METRE,
 *         ExposureLimit.Averaging.EIGHT_HOURS, "as entered", LocalDate.of(2026, 5, 4));
 * List<Problem> problems = new ArrayList<>();
 * try {
 *   new DilutionVentilation(limit, 1, 3);
 * } catch (ProblemException e) {
 *   problems.addAll(e.problems());
 * }
 * problems.get(0).code(); // NOT_FOR_DILUTION
 * problems.get(0).remedy(Locale.ENGLISH); // Use local exhaust at the source, …
 * }</pre>
 */
public enum ExposureProblem implements ProblemCode {
  /** Dilution is not for this agent: local exhaust is. */
  NOT_FOR_DILUTION("exposure.not-for-dilution"),
  /** A limit without the place where it holds. */
  LIMIT_WITHOUT_JURISDICTION("exposure.limit-without-jurisdiction"),
  /** Limits of two kinds or units were to be compared. */
  LIMITS_DIFFER("exposure.limits-differ"),
  /** A mixture was to be added up in which an agent causes cancer. */
  NOT_ADDITIVE("exposure.not-additive"),
  /** There is nothing to add up. */
  NOTHING_GIVEN("exposure.nothing-given");

  /** The guards of this package. */
  static final Check CHECK = Check.beside(ExposureProblem.class);

  private final String id;

  ExposureProblem(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }

  static ProblemException of(ExposureProblem code, String found, String reason) {
    return of(code, Bilingual.of(found), CHECK.name(reason));
  }

  static ProblemException of(ExposureProblem code, Bilingual found, Bilingual reason) {
    return new ProblemException(Problem.of(code, found).with("reason", reason));
  }
}
