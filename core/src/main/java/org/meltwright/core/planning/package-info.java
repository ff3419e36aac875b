// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * How much of what: from areas and people to masses, and from masses to packages.
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
 *   <li>{@link org.meltwright.core.planning.blend} — which parts make a blend that meets wishes.
 *   <li>{@link org.meltwright.core.planning.CoverageDraft} and {@link
 *       org.meltwright.core.planning.ClassPlanDraft} — how a coverage and a class are written down.
 * </ol>
 *
 * <p>Plans leave as plain data in {@link org.meltwright.core.planning.ClassPlanData} and {@link
 * org.meltwright.core.planning.PurchasePlanData}: masses as full numbers in kilograms, money as
 * digits and currency.
 */
@NullMarked
package org.meltwright.core.planning;

import org.jspecify.annotations.NullMarked;
