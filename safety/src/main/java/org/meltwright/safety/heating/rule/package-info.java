// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * The rules of this library, one table for each topic; not exported.
 *
 * <ol>
 *   <li>{@link org.meltwright.safety.heating.rule.StandardRules} — the list of all, one table after
 *       the other.
 * </ol>
 *
 * <p>For example, as the standard set gives them to an app:
 *
 * <pre>{@code
 * HeatingRules rules = HeatingRules.standard();
 * rules.find("hard-ceiling").get().info().severity(); // DANGER
 * rules.find("above-target").get().info().severity(); // CAUTION
 * }</pre>
 */
@NullMarked
package org.meltwright.safety.heating.rule;

import org.jspecify.annotations.NullMarked;
