// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * How much of what: from areas and people to masses, and from masses to packages.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Coverage panel = Coverage.of(millimetres(0.3), 10, gramsPerMillilitre(0.97)).withLoss(0.2);
 * QuantityKind.MASS.toSi(panel.mass(squareCentimetres(1200))); // 0.4365 kg
 * }</pre>
 *
 * <p>Read in this order:
 *
 * <ol>
 *   <li>{@link org.meltwright.core.planning.Coverage} — area, film and layers to mass, and back.
 *   <li>{@link org.meltwright.core.planning.ClassPlan} — what a class needs, costs and must bring
 *       in.
 *   <li>{@link org.meltwright.core.planning.PurchaseQuestion} — needs, stock, offers, suppliers.
 *   <li>{@link org.meltwright.core.planning.PurchasePlan} — the packages to buy, and how sure it is
 *       that no other choice is better.
 *   <li>{@link org.meltwright.core.planning.BlendQuestion} — which parts make a blend that meets
 *       {@linkplain org.meltwright.core.planning.Wish wishes}, from what is left.
 *   <li>{@link org.meltwright.core.planning.BlendAnswer} — the amounts, proved best, or the wishes
 *       that contradict each other.
 * </ol>
 *
 * <p>Plans leave as plain data in {@link org.meltwright.core.planning.ClassPlanData} and {@link
 * org.meltwright.core.planning.PurchasePlanData}: masses as full numbers in kilograms, money as
 * digits and currency.
 */
@NullMarked
package org.meltwright.core.planning;

import org.jspecify.annotations.NullMarked;
