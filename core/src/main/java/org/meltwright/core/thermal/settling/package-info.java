// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * How long particles stay up in a melt.
 *
 * <ol>
 *   <li>{@link org.meltwright.core.thermal.settling.StirringInterval} — how often to stir a pot.
 *   <li>{@link org.meltwright.core.thermal.settling.Settling} — the formula below it.
 *   <li>{@link org.meltwright.core.thermal.settling.ViscosityCurve} — how a melt flows.
 * </ol>
 */
@NullMarked
package org.meltwright.core.thermal.settling;

import org.jspecify.annotations.NullMarked;
