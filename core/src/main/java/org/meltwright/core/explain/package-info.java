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
 *
 * <p>For example:
 *
 * <pre>{@code
 * Explanation working =
 *     Explanation.of("Resin for 730 g of wax at 1 : 8")
 *         .given("wax 730 g")
 *         .formula("resin = wax × first ÷ second")
 *         .step("730 g × 1 ÷ 8 = 91.25 g")
 *         .build();
 * working.steps(); // [730 g × 1 ÷ 8 = 91.25 g]
 * working.text().lines().count(); // 4
 * }</pre>
 */
@NullMarked
package org.meltwright.core.explain;

import org.jspecify.annotations.NullMarked;
