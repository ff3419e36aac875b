// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Check;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemCode;
import org.meltwright.units.ProblemException;

/**
 * The problems that plans report.
 *
 * <p>For example:
 *
 * <pre>{@code
 * List<Need> needs = List.of(Need.of("resin", grams(500)));
 * PackageOffer bag = PackageOffer.of("north", "wax", Price.parse("18 EUR/1 kg"));
 * List<PackageOffer> sizes = List.of(bag);
 * List<SupplierTerms> terms = List.of(SupplierTerms.free("north", CurrencyUnit.EUR));
 * List<Problem> problems = new ArrayList<>();
 * try {
 *   PurchaseQuestion.of(needs, sizes, terms, LocalDate.of(2026, 9, 1)).cheapest();
 * } catch (ProblemException e) {
 *   problems.addAll(e.problems());
 * }
 * problems.get(0).code(); // NO_OFFER
 * problems.get(0).what(Locale.ENGLISH); // No offer that holds on that day contains resin.
 * }</pre>
 */
public enum PlanningProblem implements ProblemCode {
  /** A material that no offer of the day holds. */
  NO_OFFER("planning.no-offer"),
  /** A supplier whose carriage nobody stated. */
  TERMS_MISSING("planning.terms-missing"),
  /** A material or a supplier that is stated twice. */
  TWICE("planning.twice"),
  /** Amounts beyond what a plan counts. */
  TOO_DEAR("planning.too-dear"),
  /** An amount of money below zero where none can be. */
  AMOUNT_NEGATIVE("planning.amount.negative"),
  /** Shares that make more than the whole. */
  SHARES("planning.shares"),
  /** A name that no part of a blend has. */
  NO_SUCH_PART("planning.no-such-part"),
  /** An amount that nothing limits, or all of what nobody stated how much there is. */
  NO_STOCK("planning.no-stock"),
  /** Few parts wished for out of too many. */
  TOO_MANY_CANDIDATES("planning.too-many-candidates"),
  /** A figure that does not add up by mass. */
  NOT_ADDITIVE("planning.not-additive"),
  /** A figure of which only a lower bound is known, where it is to be bounded. */
  OPEN_FIGURE("planning.open-figure"),
  /** A number of parts that was to give way. */
  NOT_RANKED("planning.not-ranked"),
  /** Wishes that no blend keeps. */
  WISHES_CONFLICT("planning.wishes-conflict"),
  /** A blend of which nothing could be proved. */
  UNDECIDED("planning.undecided");

  /** The guards of planning; their names stand in its bundle. */
  static final Check CHECK = Check.beside(PlanningProblem.class);

  private final String id;

  PlanningProblem(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }

  static ProblemException exception(PlanningProblem code, Object found) {
    String english = found.toString(); // money or a number: both print with a point
    return new ProblemException(
        Problem.of(code, new Bilingual(english, english.replace('.', ','))));
  }

  /** A problem for each name that stands more than once where it may stand once. */
  static List<Problem> repeated(Stream<String> names) {
    Set<String> seen = new HashSet<>();
    return names.filter(n -> !seen.add(n)).distinct().map(n -> Problem.of(TWICE, n)).toList();
  }
}
