// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * From a recipe to what to weigh, what is lost and what to cast.
 *
 * <ol>
 *   <li>{@link org.meltwright.core.batch.Recipe} — named lines of materials and of what other
 *       recipes make, each {@linkplain org.meltwright.core.batch.StatedAmount as stated}.
 *   <li>{@link org.meltwright.core.batch.Batch} — a recipe in an amount, from any one known; {@link
 *       org.meltwright.core.batch.Losses} — insolubles, film and straining.
 *   <li>{@link org.meltwright.core.batch.Stock} — what is there; what a batch {@linkplain
 *       org.meltwright.core.batch.Withdrawal takes} from it, and {@linkplain
 *       org.meltwright.core.batch.LargestBatch the largest} that it allows.
 *   <li>{@link org.meltwright.core.batch.WeighingSheet} — what each balance is to show, and in
 *       which order it goes into the pot.
 *   <li>{@link org.meltwright.core.batch.Casting} and {@link org.meltwright.core.batch.VesselRoom}
 *       — cakes, and room in the pot.
 *   <li>{@link org.meltwright.core.batch.BatchRecord} and {@link
 *       org.meltwright.core.batch.BatchLedger} — what was really weighed, and which lots are in
 *       which cake.
 * </ol>
 *
 * <p>What to weigh leaves as plain data in {@link org.meltwright.core.batch.WeighingSheetData}.
 * Masses there are full numbers in kilograms, as the names say; what is absent is null.
 *
 * <p>Beside recipes, losses and records stand their drafts, as files hold them; {@link
 * org.meltwright.core.batch.RecipeBook} and the ledger check them, all problems at once.
 */
@NullMarked
package org.meltwright.core.batch;

import org.jspecify.annotations.NullMarked;
