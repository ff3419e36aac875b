// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * A day in the studio: what is there, what is to be made, and what comes of it, as values without a
 * word of text.
 *
 * <ol>
 *   <li>{@link org.meltwright.examples.studio.day.Studio} — what a studio file says, once read.
 *   <li>{@link org.meltwright.examples.studio.day.Job} — one thing to be made, and {@link
 *       org.meltwright.examples.studio.day.JobSheet} — the answers for it.
 *   <li>{@link org.meltwright.examples.studio.day.ClassDay} — a class to be held, and {@link
 *       org.meltwright.examples.studio.day.ClassSheet} — the answers for it.
 *   <li>{@link org.meltwright.examples.studio.day.Sheet} — all answers of the day.
 *   <li>{@link org.meltwright.examples.studio.day.Known} — an answer, or {@link
 *       org.meltwright.examples.studio.day.NotKnown} — why there is none.
 * </ol>
 */
@NullMarked
package org.meltwright.examples.studio.day;

import org.jspecify.annotations.NullMarked;
