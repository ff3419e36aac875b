// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * The working behind a result, built on demand from the numbers that the result keeps.
 *
 * <ol>
 *   <li>{@link org.meltwright.core.explain.Explanation} — inputs, formula, steps, warnings,
 *       sources.
 *   <li>{@link org.meltwright.core.explain.Explanation.Builder} — collects them in the order in
 *       which they are read.
 * </ol>
 */
@NullMarked
package org.meltwright.core.explain;

import org.jspecify.annotations.NullMarked;
