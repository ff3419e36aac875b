// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * The studio sheet: from a studio file to what to weigh, whether to heat, and what it costs.
 *
 * <ol>
 *   <li>{@link org.meltwright.examples.studio.StudioSheet} — the program: a file in, a sheet and a
 *       page out.
 *   <li>{@link org.meltwright.examples.studio.StudioDraft} — the file as it is written.
 *   <li>{@link org.meltwright.examples.studio.StudioBinder} — the draft becomes a {@link
 *       org.meltwright.examples.studio.Studio}, or all its problems.
 *   <li>{@link org.meltwright.examples.studio.JobSheet} — the answers for one thing to be made.
 *   <li>{@link org.meltwright.examples.studio.SheetPage} — the answers for people to read: {@link
 *       org.meltwright.examples.studio.CardPage} for the bench, {@link
 *       org.meltwright.examples.studio.WorkingPage} for who asks why.
 * </ol>
 */
@NullMarked
package org.meltwright.examples.studio;

import org.jspecify.annotations.NullMarked;
