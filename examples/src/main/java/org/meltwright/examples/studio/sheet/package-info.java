// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * What hangs in the studio: the answers of the day as sheets for people to read.
 *
 * <ol>
 *   <li>{@link org.meltwright.examples.studio.sheet.SheetPage} — the studio sheet, in order.
 *   <li>{@link org.meltwright.examples.studio.sheet.ClassSheetPage} — the class sheet.
 * </ol>
 *
 * Each part of them is a class named for what it shows. Their words stand beside the blocks that
 * they are built of, in {@link org.meltwright.examples.studio.page}.
 */
@NullMarked
package org.meltwright.examples.studio.sheet;

import org.jspecify.annotations.NullMarked;
