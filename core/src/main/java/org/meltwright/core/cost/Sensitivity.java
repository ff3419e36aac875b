// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import java.util.OptionalDouble;

/**
 * How much the answer of {@link MakeOrBuy} hangs on one input.
 *
 * <p>For example:
 *
 * <pre>{@code
 * CostItem batch =
 *     CostItem.of(CostKind.MATERIAL, "wax and resin", ExactMoney.of(Money.parse("EUR 20")));
 * ReadyMade offer = ReadyMade.of("ready-made cakes", Money.parse("EUR 30"), grams(500));
 * MakeOrBuy question = MakeOrBuy.of(CostRollUp.of(batch), kilograms(0.8), List.of(offer));
 * Sensitivity most = question.sensitivity(Rate.ofPercent("10")).get(0);
 * most.input(); // ready-made cakes
 * most.savingChange(); // 6 EUR
 * // at 25 instead of 60 EUR/kg nothing is saved any more
 * most.turnsAtFactor(); // 0.4167
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param input the name of the input
 * @param perKilogram its part in a kilogram of net product
 * @param savingChange by how much the saving per kilogram changes when the input rises by the
 *     stated rate; below zero for what goes into the own product
 * @param turnsAtFactor the factor of the input at which making and buying cost the same; empty if
 *     no factor of zero or more does that
 */
public record Sensitivity(
    String input, ExactMoney perKilogram, ExactMoney savingChange, OptionalDouble turnsAtFactor) {}
