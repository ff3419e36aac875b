// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.equipment;

/**
 * What a vessel or a mould is made of.
 *
 * <p>For example:
 *
 * <pre>{@code
 * CupShape bar = CupShape.block(millimetres(80), millimetres(50), millimetres(25));
 * Mould bars = Mould.of("bars", VesselMaterial.SILICONE, 6, bar);
 * bars.material(); // SILICONE
 * bars.cupCubicMetres() * 1e6; // 100 ml
 * }</pre>
 */
public enum VesselMaterial {
  /** Stainless steel. */
  STAINLESS_STEEL,
  /** Plain (carbon) steel, tinplate included. */
  STEEL,
  /** Steel coated with zinc. */
  GALVANISED_STEEL,
  /** Aluminium. */
  ALUMINIUM,
  /** Cast iron. */
  CAST_IRON,
  /** Enamelled steel. */
  ENAMELLED_STEEL,
  /** Copper or brass. */
  COPPER,
  /** Ordinary glass, such as a jam jar. */
  GLASS,
  /** Borosilicate or another heat-resistant glass. */
  HEAT_RESISTANT_GLASS,
  /** Glazed ceramic or stoneware. */
  CERAMIC,
  /** Silicone rubber. */
  SILICONE,
  /** Paper or card. */
  PAPER,
  /** Any other plastic. */
  PLASTIC,
  /** Not stated. */
  UNKNOWN
}
