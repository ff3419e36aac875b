// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * Sense of size: is a figure likely, or did a hand slip?
 *
 * <ol>
 *   <li>{@link org.meltwright.core.plausibility.SenseOfSize} — holds a size, a share or a price
 *       against what is usual.
 *   <li>{@link org.meltwright.core.plausibility.Remark} — what is unusual, and what was probably
 *       meant.
 * </ol>
 *
 * <p>A remark is no problem and blocks nothing, and its absence says nothing of safety. What is
 * usual is data: {@code docs/reference/usual-sizes.md}.
 */
@NullMarked
package org.meltwright.core.plausibility;

import org.jspecify.annotations.NullMarked;
