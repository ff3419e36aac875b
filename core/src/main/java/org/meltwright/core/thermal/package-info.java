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
 *   <li>{@link org.meltwright.core.thermal.HeatDemand} — the heat to melt it, the time on a source,
 *       the energy from the meter.
 *   <li>{@link org.meltwright.core.thermal.OpenTime} and {@link
 *       org.meltwright.core.thermal.CakeSetting} — how soon a film and a cast cake set.
 *   <li>{@link org.meltwright.core.thermal.StirringInterval} — how long particles stay up.
 *   <li>{@link org.meltwright.core.thermal.ReadingLog} — how long a pot was above a threshold.
 * </ol>
 *
 * <p>Below these stand the formulas by themselves: {@link
 * org.meltwright.core.thermal.EnthalpyCurve}, {@link org.meltwright.core.thermal.ExactFreezing},
 * {@link org.meltwright.core.thermal.Plank}, {@link org.meltwright.core.thermal.Conduction}, {@link
 * org.meltwright.core.thermal.Settling}, {@link org.meltwright.core.thermal.IdealSolubility}. Every
 * estimate has a low, a central and a high value, lists its inputs as {@link
 * org.meltwright.core.thermal.EstimateInput}, and explains itself on demand.
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
package org.meltwright.core.thermal;

import org.jspecify.annotations.NullMarked;
