// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * The heat to melt a mix, the time on a source, the energy from the meter.
 *
 * <ol>
 *   <li>{@link org.meltwright.core.thermal.heat.HeatDemand} — heat, time and energy of a pot.
 *   <li>{@link org.meltwright.core.thermal.heat.EnthalpyCurve} — the formula below it.
 *   <li>{@link org.meltwright.core.thermal.heat.ReadingLog} — how long a pot was above a threshold.
 * </ol>
 */
@NullMarked
package org.meltwright.core.thermal.heat;

import org.jspecify.annotations.NullMarked;
