// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

/**
 * A part of a material that is itself a mix, such as the oil in an oil paint.
 *
 * <p>For example, what a tube of white holds beside its pigment:
 *
 * <pre>{@code
 * Material paint = MaterialCatalogue.standard().require("oil-paint-titanium-white");
 * Constituent second = paint.constituents().get(1);
 * second.material(); // linseed-oil
 * second.share().low(); // 18.0 % by mass
 * second.share().high(); // 30.0 % by mass
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param material what the part is
 * @param share its share by mass, as a range
 */
public record Constituent(Material material, MassFractionRange share) {}
