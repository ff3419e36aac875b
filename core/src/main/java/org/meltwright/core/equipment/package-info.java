// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * What stands in the studio: plain facts, read by batch, thermal and safety alike.
 *
 * <ol>
 *   <li>{@link org.meltwright.core.equipment.Vessel} and {@link
 *       org.meltwright.core.equipment.Mould} — what holds a melt; {@link
 *       org.meltwright.core.equipment.CupShape} — how large a cup is.
 *   <li>{@link org.meltwright.core.equipment.Balance} and {@link
 *       org.meltwright.core.equipment.Thermometer} — what measures.
 *   <li>{@link org.meltwright.core.equipment.HeatSource} — what heats.
 *   <li>Each has a draft, such as {@link org.meltwright.core.equipment.VesselDraft}: how it is
 *       written down, saved and read again.
 * </ol>
 */
@NullMarked
package org.meltwright.core.equipment;

import org.jspecify.annotations.NullMarked;
