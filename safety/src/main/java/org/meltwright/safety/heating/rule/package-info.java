// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * The rules of this library, one class each; not exported.
 *
 * <ol>
 *   <li>{@link org.meltwright.safety.heating.rule.StandardRules} — the list of all.
 * </ol>
 */
@NullMarked
package org.meltwright.safety.heating.rule;

import org.jspecify.annotations.NullMarked;
