// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * The working behind a result, built on demand from the numbers that the result keeps; how sure an
 * estimate is, and what to measure first.
 *
 * <ol>
 *   <li>{@link org.meltwright.core.explain.Explanation} — what went in, each {@link
 *       org.meltwright.core.explain.Formula} with its numbers, what follows, cautions, sources, as
 *       data and as text in both languages.
 *   <li>{@link org.meltwright.core.explain.Expr} — a formula as a tree of {@link
 *       org.meltwright.core.explain.Symbol}s; {@link org.meltwright.core.explain.Figure} is a
 *       symbol with its number.
 *   <li>{@link org.meltwright.core.explain.Drivers} — worst and likely range of an estimate, what
 *       each input does to them, and how well it must be known.
 *   <li>{@link org.meltwright.core.explain.EstimateInput} — an input: what it stands for ({@link
 *       org.meltwright.core.explain.Symbol}), its range and where in it it is likely to lie ({@link
 *       org.meltwright.core.explain.Spread}).
 * </ol>
 */
@NullMarked
package org.meltwright.core.explain;

import org.jspecify.annotations.NullMarked;
