// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

/** A figure of the law that is no share of an ingredient's category. */
enum Bound {
  UNKNOWN_CORRECTED_ABOVE_PER_CENT,
  UNKNOWN_STATED_ABOVE_PER_CENT,
  PH_CORROSIVE_UP_TO,
  PH_CORROSIVE_FROM,
  ASPIRATION_VISCOSITY_UP_TO_MM2_PER_S,
  FLASH_HIGHLY_FLAMMABLE_BELOW_CELSIUS,
  FLASH_FLAMMABLE_UP_TO_CELSIUS,
  BOILING_EXTREMELY_FLAMMABLE_UP_TO_CELSIUS,
  LEAD_STATEMENT_ABOVE_PER_CENT;

  String id() {
    return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
  }

  static Bound ofId(String id) {
    return valueOf(id.toUpperCase(java.util.Locale.ROOT).replace('-', '_'));
  }
}
