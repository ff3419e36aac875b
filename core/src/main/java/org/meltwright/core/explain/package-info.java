// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * The working behind a result, built on demand from the numbers that the result keeps; how sure an
 * estimate is, and what to measure first.
 *
 * <ol>
 *   <li>{@link org.meltwright.core.explain.Explanation} — inputs, formula, steps, warnings,
 *       sources.
 *   <li>{@link org.meltwright.core.explain.Explanation.Builder} — collects them in the order in
 *       which they are read.
 *   <li>{@link org.meltwright.core.explain.Drivers} — worst and likely range of an estimate, what
 *       each input does to them, and how well it must be known.
 *   <li>{@link org.meltwright.core.explain.EstimateInput} — an input: what it stands for ({@link
 *       org.meltwright.core.explain.Symbol}), its range and where in it it is likely to lie ({@link
 *       org.meltwright.core.explain.Spread}).
 * </ol>
 *
 * <p>For example:
 *
 * <pre>{@code
 * Explanation working =
 *     Explanation.builder("Resin for 730 g of wax at 1 : 8")
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
