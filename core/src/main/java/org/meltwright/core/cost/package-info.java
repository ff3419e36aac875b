// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * What things cost: prices with their tax, exact sums, cents that add up, own against ready-made,
 * and what to charge.
 *
 * <ol>
 *   <li>{@link org.meltwright.core.cost.Price} and {@link org.meltwright.core.cost.UnitPrice} —
 *       money per package, money per mass.
 *   <li>{@link org.meltwright.core.cost.ExactMoney} — an amount before it is rounded.
 *   <li>{@link org.meltwright.core.cost.CostRollUp} — the cost of a batch, down to its lines.
 *   <li>{@link org.meltwright.core.cost.LandedCost} — what an order costs at the door.
 *   <li>{@link org.meltwright.core.cost.MakeOrBuy} — own against ready-made, on one basis.
 *   <li>{@link org.meltwright.core.cost.SellingPrice} — what to charge, and what of it stays.
 *   <li>{@link org.meltwright.core.cost.PriceDraft} and {@link
 *       org.meltwright.core.cost.ReadyMadeDraft} — how a price and an offer are written down.
 * </ol>
 *
 * <p>Results leave as plain data in {@link org.meltwright.core.cost.CostTreeData} and {@link
 * org.meltwright.core.cost.MakeOrBuyData}: money as digits and currency ({@link
 * org.meltwright.core.cost.MoneyData}), masses as full numbers in kilograms; what is absent is
 * null.
 *
 * <p>Money is joda-money and never a {@code double}. Sums are exact fractions and are rounded once;
 * the cents then go down to the lines by {@link org.meltwright.core.cost.LargestRemainder}.
 */
@NullMarked
package org.meltwright.core.cost;

import org.jspecify.annotations.NullMarked;
