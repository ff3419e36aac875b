// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * How hot, how long, how soon it sets, how often to stir.
 *
 * <p>Ceilings, margins and thresholds are arguments: this package holds no limit of its own.
 *
 * <ol>
 *   <li>{@link org.meltwright.core.thermal.MeltingReport} and {@link
 *       org.meltwright.core.thermal.WorkingWindow} — how a mix melts and between which temperatures
 *       it can be worked.
 * </ol>
 */
@NullMarked
package org.meltwright.core.thermal;

import org.jspecify.annotations.NullMarked;
