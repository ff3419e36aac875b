// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * Pictures of results where people would rather look than read, each with a text that says the
 * same.
 *
 * <ol>
 *   <li>{@link org.meltwright.examples.studio.picture.TemperatureScale} — the pots of a day: how
 *       hot, where each can be worked, and the limits.
 *   <li>{@link org.meltwright.examples.studio.picture.CostBars} — own against ready-made.
 *   <li>{@link org.meltwright.examples.studio.picture.OpenTimeCurve} — how long a stroke stays
 *       workable on panels of different warmth.
 *   <li>{@link org.meltwright.examples.studio.picture.PurchaseBars} — packages to buy, and what
 *       remains.
 * </ol>
 *
 * <p>What is a range is drawn as a range; what is unknown is drawn and said as unknown. Nothing is
 * told by colour alone: line style, hatching or a word says it too.
 */
@NullMarked
package org.meltwright.examples.studio.picture;

import org.jspecify.annotations.NullMarked;
