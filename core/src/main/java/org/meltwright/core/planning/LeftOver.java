// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import org.joda.money.Money;

/**
 * What remains of a material that is bought.
 *
 * <p>For example:
 *
 * <pre>{@code
 * PackageOffer bag = PackageOffer.of("north", "wax", Price.parse("18 EUR/1 kg"));
 * List<PackageOffer> sizes = List.of(bag);
 * List<SupplierTerms> terms = List.of(SupplierTerms.free("north", CurrencyUnit.EUR));
 * List<Need> needs = List.of(Need.of("wax", kilograms(1.25)));
 * PurchasePlan plan =
 *     PurchaseQuestion.of(needs, sizes, terms, LocalDate.of(2026, 9, 1)).cheapest();
 * LeftOver wax = plan.leftOver().get(0);
 * wax.boughtKilograms(); // 2.000 kg
 * wax.massKilograms(); // 0.750 kg
 * // three eighths of 36 EUR
 * wax.worth(); // EUR 13.50
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param material what it is
 * @param boughtKilograms the mass of all its packages, in kg
 * @param massKilograms what remains when the need is met, in kg
 * @param worth its part of what the packages of this material cost, without carriage
 */
public record LeftOver(
    String material, double boughtKilograms, double massKilograms, Money worth) {}
