// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * What is in the pot, and what to do to it: shares by mass, an amount of them, their view by
 * volume, and corrections.
 *
 * <ol>
 *   <li>{@link org.meltwright.core.mixture.Composition} — mass fractions that sum to one; no answer
 *       depends on the order of the parts.
 *   <li>{@link org.meltwright.core.mixture.Mixture} — an amount of a composition: blend, split,
 *       take.
 *   <li>{@link org.meltwright.core.mixture.DensityBasis} and {@link
 *       org.meltwright.core.mixture.VolumeView} — the state of matter that volumes are counted in,
 *       and what the composition is there; {@link org.meltwright.core.mixture.CompositionData} is
 *       both as plain data.
 *   <li>{@link org.meltwright.core.mixture.ShareOf} — shares that matter: oil paint, free oil,
 *       pigment, resin; by volume {@link org.meltwright.core.mixture.PigmentVolume}.
 *   <li>{@link org.meltwright.core.mixture.Correction} — what to add or to take out to reach a
 *       share; beside it {@link org.meltwright.core.mixture.Scrap}. Which parts to take is a
 *       question of planning.
 *   <li>{@link org.meltwright.core.mixture.CompositionDraft} and {@link
 *       org.meltwright.core.mixture.MixtureDraft} — how both are written down.
 * </ol>
 */
@NullMarked
package org.meltwright.core.mixture;

import org.jspecify.annotations.NullMarked;
