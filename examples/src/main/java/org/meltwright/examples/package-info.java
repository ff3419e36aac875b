// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * What an app does with the library: the studio sheet, the main job, and programs of one question.
 *
 * <ol>
 *   <li>{@link org.meltwright.examples.program} — one question, one short program.
 *   <li>{@link org.meltwright.examples.studio} — the studio sheet: a file in, a page out.
 *   <li>{@link org.meltwright.examples.json}, {@link org.meltwright.examples.label} — what both
 *       use: text in and out, and a label as a page.
 * </ol>
 */
@NullMarked
package org.meltwright.examples;

import org.jspecify.annotations.NullMarked;
