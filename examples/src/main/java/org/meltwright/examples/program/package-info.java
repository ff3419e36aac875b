// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * Programs that answer one question each.
 *
 * <ol>
 *   <li>{@link org.meltwright.examples.program.FirstLook} — the lines of the README.
 *   <li>{@link org.meltwright.examples.program.WeighOutAMedium} — what to weigh, and how many
 *       cakes.
 *   <li>{@link org.meltwright.examples.program.CheckAHotPlateBeforeClass} — may this be heated?
 *   <li>{@link org.meltwright.examples.program.SmallService} — the library behind HTTP.
 * </ol>
 *
 * <p>Each {@code main} runs in a test that checks what it prints, and has a page of the same title
 * in {@code docs/guide}.
 */
@NullMarked
package org.meltwright.examples.program;

import org.jspecify.annotations.NullMarked;
