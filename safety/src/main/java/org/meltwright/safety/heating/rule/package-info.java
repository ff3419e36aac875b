// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * The rules of this library, one table for each topic; not exported.
 *
 * <ol>
 *   <li>{@link org.meltwright.safety.heating.rule.StandardRules} — the list of all, one table after
 *       the other.
 * </ol>
 */
@NullMarked
package org.meltwright.safety.heating.rule;

import org.jspecify.annotations.NullMarked;
