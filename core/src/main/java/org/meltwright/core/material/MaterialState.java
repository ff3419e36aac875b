// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

/**
 * The state that a figure holds for.
 *
 * <p>One kilogram of beeswax takes three volumes; for example, its density as a cake, as a melt and
 * as pellets in a scoop:
 *
 * <pre>{@code
 * Composition wax = Composition.of(MaterialCatalogue.standard().require("beeswax-yellow"));
 * wax.density(MaterialState.SOLID).centralSi(); // 955 kg/m³
 * wax.density(MaterialState.LIQUID).centralSi(); // 835 kg/m³
 * wax.density(MaterialState.BULK).centralSi(); // 565 kg/m³
 * }</pre>
 */
public enum MaterialState {
  /** Solid, without air between pieces. */
  SOLID,
  /** Molten, or liquid at room temperature. */
  LIQUID,
  /** Loose bulk: pieces or powder with the air between them, as scooped. */
  BULK
}
