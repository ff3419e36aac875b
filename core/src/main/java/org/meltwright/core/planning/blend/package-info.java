// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * Which parts make a blend that meets wishes, from what is left.
 *
 * <ol>
 *   <li>{@link org.meltwright.core.planning.blend.BlendQuestion} — the parts, and {@linkplain
 *       org.meltwright.core.planning.blend.Wish wishes} about the blend.
 *   <li>{@link org.meltwright.core.planning.blend.BlendAnswer} — the amounts, proved best, or the
 *       wishes that contradict each other.
 * </ol>
 */
@NullMarked
package org.meltwright.core.planning.blend;

import org.jspecify.annotations.NullMarked;
