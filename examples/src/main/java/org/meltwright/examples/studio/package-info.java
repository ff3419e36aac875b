// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * The studio sheet: from a studio file to what to weigh, whether to heat, and what it costs.
 *
 * <p>{@link org.meltwright.examples.studio.StudioSheet} is the program. Data flows one way through
 * it:
 *
 * <ol>
 *   <li>{@link org.meltwright.examples.studio.file} reads the file,
 *   <li>{@link org.meltwright.examples.studio.day} holds what it says and works out the answers,
 *   <li>{@link org.meltwright.examples.studio.sheet} lays them out, with the blocks of {@link
 *       org.meltwright.examples.studio.page} and the drawings of {@link
 *       org.meltwright.examples.studio.picture}.
 * </ol>
 */
@NullMarked
package org.meltwright.examples.studio;

import org.jspecify.annotations.NullMarked;
