// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * What a name gives away: whether it tells a hazard, and what to ask for.
 *
 * <ol>
 *   <li>{@link org.meltwright.safety.naming.HazardNames} — asks a material or a name.
 *   <li>{@link org.meltwright.safety.naming.NamedHazard} — one answer: what, by what, and whether
 *       it holds or is only asked for.
 *   <li>{@link org.meltwright.safety.naming.ListedHazard} — the entry of the list behind it, of one
 *       {@link org.meltwright.safety.naming.NameKind}.
 * </ol>
 *
 * <p>For example:
 *
 * <pre>{@code
 * NamedHazard told = HazardNames.ofName("Zinnobergrün").get(0);
 * told.hazard().text(Locale.ENGLISH); // lead and chromium
 * told.heatUse(); // NEVER_HEATED
 * }</pre>
 *
 * <p>The names stand in one text file, those of pigments beside facts that the pigment table holds
 * ({@link org.meltwright.safety.hazard.PigmentHazards}). A name that the list does not know is not
 * assessed; that is never a word of safety.
 */
@NullMarked
package org.meltwright.safety.naming;

import org.jspecify.annotations.NullMarked;
