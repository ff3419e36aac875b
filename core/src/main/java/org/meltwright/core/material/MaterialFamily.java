// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

/**
 * The family that a material belongs to by its chemistry and use.
 *
 * <p>For example, what the catalogue knows of oils that dry:
 *
 * <pre>{@code
 * MaterialCatalogue materials = MaterialCatalogue.standard();
 * materials.byFamily(MaterialFamily.DRYING_OIL); // [linseed-oil, walnut-oil, poppy-oil, …
 * materials.require("Dammarharz").family(); // RESIN
 * }</pre>
 */
public enum MaterialFamily {
  /** Waxes, and fats sold as waxes. */
  WAX,
  /** Natural and synthetic resins. */
  RESIN,
  /** Drying oils. */
  DRYING_OIL,
  /** Artists' oil paints: pigment ground in a drying oil. */
  OIL_PAINT,
  /** Dry pigments. */
  PIGMENT,
  /** Fillers and extenders. */
  FILLER,
  /** Organic solvents. */
  SOLVENT,
  /** Water. */
  WATER,
  /** Polymers dispersed in water. */
  DISPERSION,
  /** A fragrance or an essential oil. */
  FRAGRANCE,
  /** Pure substances and what fits nowhere else. */
  OTHER
}
