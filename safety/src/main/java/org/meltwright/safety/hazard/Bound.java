// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** A figure of the law that is no share of an ingredient's category. */
enum Bound {
  UNKNOWN_CORRECTED_ABOVE_PER_CENT("acute-oral"),
  UNKNOWN_STATED_FROM_PER_CENT("acute-oral"),
  PH_CORROSIVE_UP_TO("skin"),
  PH_CORROSIVE_FROM("skin"),
  ASPIRATION_VISCOSITY_UP_TO_MM2_PER_S("aspiration"),
  ASPIRATION_CATEGORY_2_VISCOSITY_UP_TO_MM2_PER_S(""),
  FLASH_HIGHLY_FLAMMABLE_BELOW_CELSIUS("flammable-liquid"),
  FLASH_FLAMMABLE_UP_TO_CELSIUS("flammable-liquid"),
  FLASH_COMBUSTIBLE_UP_TO_CELSIUS(""),
  BOILING_EXTREMELY_FLAMMABLE_UP_TO_CELSIUS("flammable-liquid"),
  LEAD_STATEMENT_FROM_PER_CENT(""),
  WORKPLACE_LIMIT_FROM_PER_CENT(""),
  WORKPLACE_LIMIT_GAS_FROM_PER_CENT(""),
  OWN_LIMIT_PART_ELICITATION(""),
  DRYNESS_CONVENTION_FROM_PER_CENT(""),
  UNKNOWN_AQUATIC_FROM_PER_CENT(""),
  CMR_OWN_NOTE_FROM_PER_CENT(""),
  EYE_CONTACT_STATEMENT_FROM_PER_CENT(""),
  MAY_BURN_FROM_PER_CENT("flammable-liquid"),
  HEATING_FLASH_MARGIN_KELVIN(""),
  HEATING_CEILING_CELSIUS("");

  private final String neededBy;

  Bound(String neededBy) {
    this.neededBy = neededBy;
  }

  String id() {
    return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
  }

  /** Whether a rule file with these classes cannot do without it. */
  boolean isNeededBy(Set<String> classes) {
    return classes.contains(neededBy);
  }

  static Optional<Bound> find(String id) {
    return Stream.of(values()).filter(b -> b.id().equals(id)).findFirst();
  }

  static Bound ofId(String id) {
    return find(id).orElseThrow(() -> new IllegalArgumentException(id));
  }
}
