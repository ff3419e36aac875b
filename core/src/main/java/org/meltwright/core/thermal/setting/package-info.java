// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * How soon a film on a panel and a cake in its tin set.
 *
 * <ol>
 *   <li>{@link org.meltwright.core.thermal.setting.OpenTime} — how long a film can be worked.
 *   <li>{@link org.meltwright.core.thermal.setting.CakeSetting} — when a cake can be moved.
 *   <li>{@link org.meltwright.core.thermal.setting.Plank} — the simple formula by itself.
 * </ol>
 */
@NullMarked
package org.meltwright.core.thermal.setting;

import org.jspecify.annotations.NullMarked;
