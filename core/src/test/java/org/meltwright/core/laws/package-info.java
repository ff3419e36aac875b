// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * Laws of mixtures and batches for property tests of applications, and the values to run them on.
 *
 * <ol>
 *   <li>{@link org.meltwright.core.laws.SampleMaterials} — a handful of materials with round
 *       figures.
 *   <li>{@link org.meltwright.core.laws.MixtureArbitraries} — random compositions, mixtures and
 *       recipes.
 *   <li>{@link org.meltwright.core.laws.MixtureLaws} — what holds for all of them.
 *   <li>{@link org.meltwright.core.laws.ExplanationLaws} — what holds for the working of every
 *       result.
 * </ol>
 */
@NullMarked
package org.meltwright.core.laws;

import org.jspecify.annotations.NullMarked;
