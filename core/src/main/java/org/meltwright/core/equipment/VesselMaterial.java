// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.equipment;

/** What a vessel or a mould is made of. */
public enum VesselMaterial {
  /** Stainless steel. */
  STAINLESS_STEEL,
  /** Plain (carbon) steel, tinplate included. */
  STEEL,
  /** Aluminium. */
  ALUMINIUM,
  /** Cast iron. */
  CAST_IRON,
  /** Enamelled steel. */
  ENAMELLED_STEEL,
  /** Copper or brass. */
  COPPER,
  /** Heat-resistant glass or glazed ceramic. */
  GLASS_OR_CERAMIC,
  /** Silicone rubber. */
  SILICONE,
  /** Paper or card. */
  PAPER,
  /** Any other plastic. */
  PLASTIC,
  /** Not stated. */
  UNKNOWN
}
