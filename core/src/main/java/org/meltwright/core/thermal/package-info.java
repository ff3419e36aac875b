// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * How hot, how long, how soon it sets, how often to stir.
 *
 * <p>Ceilings, margins and thresholds are arguments: nothing here holds a limit of its own. Four
 * rooms, one way:
 *
 * <ol>
 *   <li>{@link org.meltwright.core.thermal.melting} — how a mix melts, and between which
 *       temperatures it can be worked.
 *   <li>{@link org.meltwright.core.thermal.heat} — the heat to melt it, the time on a source, the
 *       energy from the meter, how long a pot was above a threshold.
 *   <li>{@link org.meltwright.core.thermal.setting} — how soon a film and a cast cake set.
 *   <li>{@link org.meltwright.core.thermal.settling} — how long particles stay up.
 * </ol>
 *
 * <p>Every estimate has a low, a central and a high value, lists its inputs as {@link
 * org.meltwright.core.explain.EstimateInput}, tells what it hangs on ({@link
 * org.meltwright.core.explain.Drivers}), and explains itself on demand.
 */
@NullMarked
package org.meltwright.core.thermal;

import org.jspecify.annotations.NullMarked;
