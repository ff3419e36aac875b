// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * What is in the pot: shares by mass, and an amount of them.
 *
 * <ol>
 *   <li>{@link org.meltwright.core.mixture.Composition} — mass fractions that sum to one.
 *   <li>{@link org.meltwright.core.mixture.Mixture} — an amount of a composition.
 * </ol>
 */
@NullMarked
package org.meltwright.core.mixture;

import org.jspecify.annotations.NullMarked;
