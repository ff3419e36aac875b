// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * Programs that answer one question each, and the studio sheet, the main job.
 *
 * <ol>
 *   <li>{@link org.meltwright.examples.FirstLook} — the twelve lines of the README.
 *   <li>{@link org.meltwright.examples.WeighOutAMedium} — what to weigh, and how many cakes.
 *   <li>{@link org.meltwright.examples.CheckAHotPlateBeforeClass} — may this be heated?
 *   <li>{@link org.meltwright.examples.SmallService} — the library behind HTTP.
 *   <li>{@link org.meltwright.examples.studio.StudioSheet} — all of it together.
 * </ol>
 *
 * <p>Each {@code main} runs in a test that checks what it prints, and has a page of the same title
 * in {@code docs/guide}.
 */
@NullMarked
package org.meltwright.examples;

import org.jspecify.annotations.NullMarked;
