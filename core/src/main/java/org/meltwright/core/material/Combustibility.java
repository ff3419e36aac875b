// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

/**
 * Whether a material can burn, the one that warns first.
 *
 * <p>For example:
 *
 * <pre>{@code
 * MaterialCatalogue shelf = MaterialCatalogue.standard();
 * shelf.require("beeswax-yellow").require(PropertyKey.COMBUSTIBILITY).value(); // BURNS
 * shelf.require("ultramarine").require(PropertyKey.COMBUSTIBILITY).value(); // DOES_NOT_BURN
 * PropertyKey.COMBUSTIBILITY.parse("does not burn"); // DOES_NOT_BURN
 * }</pre>
 */
public enum Combustibility {
  /** It burns: a rule asks for its flash point. */
  BURNS,
  /** It does not burn, as minerals and water. */
  DOES_NOT_BURN
}
