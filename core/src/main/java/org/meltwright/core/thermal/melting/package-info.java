// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * How a mix melts, and between which temperatures it can be worked.
 *
 * <ol>
 *   <li>{@link org.meltwright.core.thermal.melting.MeltingReport} — what in the mix melts where.
 *   <li>{@link org.meltwright.core.thermal.melting.WorkingWindow} — from the clear point up to a
 *       ceiling less a margin.
 *   <li>{@link org.meltwright.core.thermal.melting.IdealLiquidus}, {@link
 *       org.meltwright.core.thermal.melting.IdealSolubility} — the bounds of theory for what is not
 *       measured.
 * </ol>
 */
@NullMarked
package org.meltwright.core.thermal.melting;

import org.jspecify.annotations.NullMarked;
