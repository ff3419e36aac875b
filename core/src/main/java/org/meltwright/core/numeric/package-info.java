// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * Arithmetic that more than one package needs: small linear programmes, solved and proved, for
 * mixtures and plans; where a function is zero; figures of a working in words. Not exported.
 *
 * <ol>
 *   <li>{@link org.meltwright.core.numeric.LinearProgram} — what is to be least, within which
 *       bounds.
 *   <li>{@link org.meltwright.core.numeric.LinearAnswer} — the least, or that there is none, with
 *       the numbers that prove it.
 * </ol>
 */
@NullMarked
package org.meltwright.core.numeric;

import org.jspecify.annotations.NullMarked;
