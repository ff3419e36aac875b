// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import static org.meltwright.core.planning.PlanningProblem.CHECK;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.joda.money.BigMoneyProvider;
import org.meltwright.core.cost.ExactMoney;
import org.meltwright.units.ProblemException;

/**
 * Duty of one amount on an order that holds any goods of a kind, however much of them.
 *
 * <p>For example:
 *
 * <pre>{@code
 * PackageOffer damar = PackageOffer.of("far", "damar", Price.parse("16 EUR/500 g"));
 * PackageOffer rosin = PackageOffer.of("far", "rosin", Price.parse("4 EUR/500 g"));
 * FlatDuty resins = FlatDuty.of(Money.parse("EUR 3"), "damar", "rosin");
 * SupplierTerms far =
 *     SupplierTerms.free("far", CurrencyUnit.EUR).withFlatDuties(List.of(resins));
 * List<Need> needs = List.of(Need.of("damar", grams(500)), Need.of("rosin", grams(500)));
 * // 20 EUR of goods, and the duty once
 * PurchaseQuestion.of(needs, List.of(damar, rosin), List.of(far), LocalDate.of(2026, 9, 1))
 *     .cheapest().total(); // EUR 23.00
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param materials what the offers call the goods of this kind, at least one
 * @param amount what the buyer bears for them, tax on the duty included; zero or more
 */
public record FlatDuty(Set<String> materials, ExactMoney amount) {

  /** Draws a problem if there is no material, one is blank, or the amount is below zero. */
  public FlatDuty {
    materials = Collections.unmodifiableSet(new TreeSet<>(materials));
    CHECK.between(materials.size(), 1, 1e6, "materials of a flat duty");
    materials.forEach(m -> CHECK.named(m, "material of a flat duty"));
    if (amount.isNegative()) {
      throw PlanningProblem.exception(PlanningProblem.AMOUNT_NEGATIVE, amount);
    }
  }

  /**
   * Returns a duty on the goods of one kind.
   *
   * @param amount what the buyer bears for them, tax on the duty included
   * @param materials what the offers call the goods of this kind, at least one
   * @return the duty
   * @throws ProblemException if there is no material, one is blank, or the amount is below zero
   */
  public static FlatDuty of(BigMoneyProvider amount, String... materials) {
    return new FlatDuty(Set.copyOf(List.of(materials)), ExactMoney.of(amount));
  }
}
