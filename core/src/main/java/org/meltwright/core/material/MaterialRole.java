// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

/**
 * What a material does in a mix.
 *
 * <p>For example, why two powders are handled in two ways: one dissolves, one never does.
 *
 * <pre>{@code
 * MaterialCatalogue materials = MaterialCatalogue.standard();
 * materials.require("damar").role(); // HARDENER
 * materials.require("yellow-ochre").role(); // COLOURANT
 * materials.require("linseed-oil").role(); // OIL
 * }</pre>
 */
public enum MaterialRole {
  /** Makes up most of a mix and melts. */
  BASE,
  /** Hardens or toughens, dissolved in the base. */
  HARDENER,
  /** Softens or binds as an oil. */
  OIL,
  /** Gives colour. */
  COLOURANT,
  /** Gives body without colour. */
  FILLER,
  /** Is to evaporate. */
  CARRIER
}
