// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * The studio file: how it is written, and how it is read with all its mistakes told at once.
 *
 * <ol>
 *   <li>{@link org.meltwright.examples.studio.file.StudioDraft} — the file as it is written.
 *   <li>{@link org.meltwright.examples.studio.file.StudioFile} — reads one to a {@link
 *       org.meltwright.examples.studio.day.Studio}, or to all its problems.
 *   <li>{@link org.meltwright.examples.studio.file.StudioProblem} — what can be wrong with it that
 *       no type of the library says.
 *   <li>{@link org.meltwright.examples.studio.file.StudioSchema} — its JSON schema.
 * </ol>
 */
@NullMarked
package org.meltwright.examples.studio.file;

import org.jspecify.annotations.NullMarked;
