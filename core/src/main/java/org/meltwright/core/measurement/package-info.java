// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * Measurements of one's own with a balance, a rule, a clock and a thermometer: each gives a figure
 * with its uncertainty after the GUM, which goes in front of what is in print.
 *
 * <ol>
 *   <li>{@link org.meltwright.core.measurement.Reading} — a number that was read, and how sure it
 *       is.
 *   <li>{@link org.meltwright.core.measurement.Measurement} — the figure, what made it unsure, and
 *       the way onto a material.
 *   <li>{@link org.meltwright.core.material.Comparison} — whether it agrees with what is in print.
 *   <li>{@link org.meltwright.core.measurement.ThermometerCalibration} — ice and boiling water.
 *   <li>{@link org.meltwright.core.measurement.FullCup}, {@link
 *       org.meltwright.core.measurement.Sinker}, {@link org.meltwright.core.measurement.Bottle} and
 *       {@link org.meltwright.core.measurement.Displacement} — densities of melts, powders and
 *       pieces.
 *   <li>{@link org.meltwright.core.measurement.CastLength}, {@link
 *       org.meltwright.core.measurement.HeatUpLog}, {@link
 *       org.meltwright.core.measurement.TimedStrokes}, {@link
 *       org.meltwright.core.measurement.ResinDirt} and {@link
 *       org.meltwright.core.measurement.DrainedOil} — shrinkage, a pot, a stroke, dirt and oil.
 * </ol>
 *
 * <p>A flash point is never measured at home: ask the supplier; until then it stays unknown.
 */
@NullMarked
package org.meltwright.core.measurement;

import org.jspecify.annotations.NullMarked;
