// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * What a person says becomes a value, exactly, or a clear problem.
 *
 * <p>Read in this order:
 *
 * <ol>
 *   <li>{@link org.meltwright.units.MetricUnits} — {@code grams(730)}: a quantity as a person
 *       writes it.
 *   <li>{@link org.meltwright.units.QuantityKind} — the door: a quantity in, one {@code double} in
 *       the SI unit out, and back.
 *   <li>{@link org.meltwright.units.TemperaturePoint} and {@link
 *       org.meltwright.units.TemperatureDifference} — two types, so that 70 °C + 5 °C does not
 *       compile and 70 °C + 5 K does.
 *   <li>{@link org.meltwright.units.MassFraction}, {@link org.meltwright.units.VolumeFraction} and
 *       {@link org.meltwright.units.MixingRatio} — shares that say what they are shares of.
 *   <li>{@link org.meltwright.units.QuantityParser} and {@link
 *       org.meltwright.units.QuantityFormatter} — text to value and back, exactly.
 *   <li>{@link org.meltwright.units.ScaleInterval} — a mass rounded to the steps of a balance.
 *   <li>{@link org.meltwright.units.Problem} — what was wrong, what was found, what is allowed,
 *       what to do; {@link org.meltwright.units.Problems} collects all of them, {@link
 *       org.meltwright.units.ProblemData} says the same as plain data.
 *   <li>{@link org.meltwright.units.FieldReader} — reads the fields of a draft, each problem at its
 *       place.
 * </ol>
 *
 * <p>All types but the collector of problems and the reader of fields are immutable and
 * thread-safe, and no method accepts or returns {@code null} unless it says so.
 */
@NullMarked
package org.meltwright.units;

import org.jspecify.annotations.NullMarked;
