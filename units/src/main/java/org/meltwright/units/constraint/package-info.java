// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * Jakarta Bean Validation for input objects: quantity text, quantities, temperatures and fractions
 * within bounds that are written as a person writes them.
 *
 * <p>Read in this order:
 *
 * <ol>
 *   <li>{@link org.meltwright.units.constraint.QuantityText} — text that reads as a kind of value.
 *   <li>{@link org.meltwright.units.constraint.AtLeast}, {@link
 *       org.meltwright.units.constraint.AtMost}, {@link org.meltwright.units.constraint.Between}
 *       and {@link org.meltwright.units.constraint.PositiveAmount} — values within bounds, such as
 *       {@code @AtMost("93.3 °C")}.
 *   <li>{@link org.meltwright.units.constraint.FractionsSumToOne} — the fractions of an object.
 * </ol>
 *
 * <p>For example:
 *
 * <pre>{@code
 * record Line(
 *     @QuantityText(kind = TextKind.MASS, min = "1 g", max = "20 kg") String amount,
 *     @AtMost("90 °C") TemperaturePoint held) {}
 * }</pre>
 *
 * <p>The constraints work on any provider, with an English message. With the reference provider the
 * message is in English or German, the violation carries the {@link org.meltwright.units.Problem}
 * as its dynamic payload, and a {@link java.util.Locale} as validator payload decides which decimal
 * sign is read; no expression language is needed. The standard {@code @Positive} is checked on
 * quantities by the reference provider alone; elsewhere {@link
 * org.meltwright.units.constraint.PositiveAmount} does it.
 */
@NullMarked
package org.meltwright.units.constraint;

import org.jspecify.annotations.NullMarked;
