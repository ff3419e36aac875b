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
 *
 * <p>For example, one part of carnauba wax in nine of beeswax, with a margin of 10 K below a
 * ceiling of 90 °C:
 *
 * <pre>{@code
 * MaterialCatalogue shelf = MaterialCatalogue.standard();
 * Composition mix =
 *     Composition.ofParts(List.of(shelf.require("beeswax"), shelf.require("carnauba")), 9, 1);
 * WorkingWindow window =
 *     WorkingWindow.of(
 *         mix,
 *         ofCelsius(90),
 *         TemperatureDifference.ofKelvin(10),
 *         TemperatureDifference.ofKelvin(5));
 * window.state(); // MAY_BE_CLOSED
 * }</pre>
 */
@NullMarked
package org.meltwright.core.thermal.melting;

import org.jspecify.annotations.NullMarked;
