// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * Air, burns and electrical load: arithmetic with its sources, and refusals where arithmetic is no
 * remedy.
 *
 * <ol>
 *   <li>{@link org.meltwright.safety.exposure.RoomAir} and {@link
 *       org.meltwright.safety.exposure.DilutionVentilation} — air changes, the time to a share of
 *       the start, and the air that thins a vapour.
 *   <li>{@link org.meltwright.safety.exposure.ExposureLimit} and {@link
 *       org.meltwright.safety.exposure.CombinedExposure} — limits that the user enters, and what is
 *       held against them.
 *   <li>{@link org.meltwright.safety.exposure.BurnThresholds}, {@link
 *       org.meltwright.safety.exposure.SkinDamage} and {@link
 *       org.meltwright.safety.exposure.WaxContact} — burns.
 *   <li>{@link org.meltwright.safety.exposure.CircuitLoad} — plates and guns on one circuit.
 * </ol>
 *
 * <p>For example:
 *
 * <pre>{@code
 * RoomAir room = RoomAir.ofAirChanges(120, 6, 3);
 * room.minutesToShareOfStart(0.01); // 138.2 min
 * }</pre>
 *
 * <p>Nothing here is a clearance. Local codes, data sheets and licensed practice come first: an
 * occupational hygienist for air, an electrician for circuits, a doctor for burns.
 */
@NullMarked
package org.meltwright.safety.exposure;

import org.jspecify.annotations.NullMarked;
