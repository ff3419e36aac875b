// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * What is needed, what is there, and who sells it: the question that a {@link PurchasePlan}
 * answers.
 *
 * <p>All money is in one currency, counted to a millionth of its unit; masses are counted to a
 * microgram, and a need is met within 1e-9 of it. All terms are weighed, {@linkplain FlatDuty flat
 * duties} too; limits of value up to which a duty or a relief holds are not: state the terms of one
 * side and check the plan by its landed cost.
 *
 * <p>For example:
 *
 * <pre>{@code
 * List<PackageOffer> sizes = new ArrayList<>();
 * for (String price : List.of("10 EUR/500 g", "18 EUR/1 kg", "70 EUR/5 kg", "120 EUR/10 kg")) {
 *   sizes.add(PackageOffer.of("north", "wax", Price.parse(price)));
 * }
 * List<SupplierTerms> terms = List.of(SupplierTerms.free("north", CurrencyUnit.EUR));
 * List<Need> needs = List.of(Need.of("wax", kilograms(6.7)));
 * PurchaseQuestion question =
 *     PurchaseQuestion.of(needs, sizes, terms, LocalDate.of(2026, 9, 1));
 * PurchasePlan plan = question.cheapest();
 * plan.total(); // EUR 106.00
 * plan.count(sizes.get(1)); // 2
 * plan.count(sizes.get(2)); // 1
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class PurchaseQuestion {

  /** How long a search may take unless said otherwise. */
  public static final Duration DEFAULT_TIME_LIMIT = Duration.ofSeconds(5);

  private final List<Need> needs;
  private final List<PackageOffer> offers;
  private final List<SupplierTerms> terms;
  private final CurrencyUnit currency;
  private final Duration timeLimit;

  /**
   * Returns the question.
   *
   * @param needs what is needed, each material once
   * @param offers what is sold; offers that do not hold on the day, and of other materials, are
   *     left out
   * @param terms the terms of each supplier, at least one
   * @param day the day of the purchase
   * @return the question
   * @throws ProblemException if a material has no offer, a supplier no terms, something is stated
   *     twice, or the currencies differ
   */
  public static PurchaseQuestion of(
      List<Need> needs, List<PackageOffer> offers, List<SupplierTerms> terms, LocalDate day) {
    List<Need> missing = needs.stream().filter(n -> n.missingKilograms() > 0).toList();
    Set<String> materials = new HashSet<>(missing.stream().map(Need::material).toList());
    List<PackageOffer> usable =
        offers.stream()
            .filter(o -> o.validity().contains(day) && materials.contains(o.material()))
            .toList();
    List<Problem> problems = new ArrayList<>();
    problems.addAll(PlanningProblem.repeated(needs.stream().map(Need::material)));
    problems.addAll(PlanningProblem.repeated(terms.stream().map(SupplierTerms::supplier)));
    lacking(
        PlanningProblem.NO_OFFER,
        missing.stream().map(Need::material),
        usable.stream().map(PackageOffer::material),
        problems);
    lacking(
        PlanningProblem.TERMS_MISSING,
        usable.stream().map(PackageOffer::supplier),
        terms.stream().map(SupplierTerms::supplier),
        problems);
    if (!problems.isEmpty()) {
      throw new ProblemException(problems);
    }
    return new PurchaseQuestion(missing, usable, terms, currency(terms), DEFAULT_TIME_LIMIT);
  }

  private static CurrencyUnit currency(List<SupplierTerms> terms) {
    if (terms.isEmpty()) {
      throw PlanningProblem.exception(PlanningProblem.TERMS_MISSING, "");
    }
    return terms.get(0).freight().currency();
  }

  private static void lacking(
      PlanningProblem code, Stream<String> wanted, Stream<String> there, List<Problem> problems) {
    Set<String> known = new HashSet<>(there.toList());
    wanted
        .distinct()
        .filter(n -> !known.contains(n))
        .forEach(n -> problems.add(Problem.of(code, n)));
  }

  private PurchaseQuestion(
      List<Need> needs,
      List<PackageOffer> offers,
      List<SupplierTerms> terms,
      CurrencyUnit currency,
      Duration timeLimit) {
    this.needs = needs;
    this.offers = offers;
    this.terms = List.copyOf(terms);
    this.currency = currency;
    this.timeLimit = timeLimit;
  }

  /**
   * Returns a copy with another time limit.
   *
   * @param limit how long one search may take; a plan is found however short it is, but it may not
   *     be proved
   * @return the new question
   */
  public PurchaseQuestion withTimeLimit(Duration limit) {
    return new PurchaseQuestion(needs, offers, terms, currency, limit);
  }

  /**
   * Returns the plan of least landed cost, and among these one with least left over.
   *
   * @return the plan
   * @throws ProblemException if a currency differs or the amounts are beyond measure
   */
  public PurchasePlan cheapest() {
    return plan(false);
  }

  /**
   * Returns the plan with least left over by mass, and among these the cheapest.
   *
   * @return the plan
   * @throws ProblemException if a currency differs or the amounts are beyond measure
   */
  public PurchasePlan leastLeftOver() {
    return plan(true);
  }

  private PurchasePlan plan(boolean isMassFirst) {
    PurchaseBook book = new PurchaseBook(needs, offers, terms, currency);
    long deadline = System.nanoTime() + timeLimit.toNanos();
    Incumbent best = new Incumbent(book.model(), isMassFirst, deadline);
    return book.plan(new PurchaseSearch(best).run());
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof PurchaseQuestion that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(needs, offers, terms, currency, timeLimit);
  }

  @Override
  public String toString() {
    return "what to buy for " + needs + " in " + currency;
  }
}
