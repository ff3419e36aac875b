// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * The hazards of what is mixed in a studio: of each pigment, and of the mixture.
 *
 * <ol>
 *   <li>{@link org.meltwright.safety.hazard.PigmentHazards} — the one table of pigments: heat and
 *       dust.
 * </ol>
 */
@NullMarked
package org.meltwright.safety.hazard;

import org.jspecify.annotations.NullMarked;
