// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

/**
 * A part of a material that is itself a mix, such as the oil in an oil paint.
 *
 * <p>Immutable and thread-safe.
 *
 * @param material what the part is
 * @param share its share by mass, as a range
 */
public record Constituent(Material material, MassFractionRange share) {}
