// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * Small linear programmes, solved and proved: what mixtures and plans share. Not exported.
 *
 * <ol>
 *   <li>{@link org.meltwright.core.linear.LinearProgram} — what is to be least, within which
 *       bounds.
 *   <li>{@link org.meltwright.core.linear.LinearAnswer} — the least, or that there is none, with
 *       the numbers that prove it.
 * </ol>
 */
@NullMarked
package org.meltwright.core.linear;

import org.jspecify.annotations.NullMarked;
