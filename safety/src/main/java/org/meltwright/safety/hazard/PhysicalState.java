// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import org.meltwright.units.Bilingual;

/**
 * The state of the finished mixture as it is handed over.
 *
 * <p>Turpentine harms the lungs if it is swallowed as a liquid: what is solid at 40 °C cannot be,
 * and of a polish that may flow there the viscosity must be known.
 *
 * <pre>{@code
 * RuleSet rules = RuleSet.clpOn(LocalDate.of(2026, 6, 1));
 * HazardMixtureBuilder polish =
 *     HazardMixture.builder(rules).cas("8006-64-2", 25).cas("8012-89-3", 75);
 * HazardMixture firm = polish.state(PhysicalState.SOLID_AT_40).build();
 * HazardReview.of(firm, rules).finding(HazardClass.ASPIRATION).status(); // NOT_CLASSIFIED
 * HazardMixture soft = polish.state(PhysicalState.SOLID).build();
 * HazardReview.of(soft, rules).finding(HazardClass.ASPIRATION).status(); // INSUFFICIENT_DATA
 * }</pre>
 */
public enum PhysicalState {
  /** Still solid at 40 °C: it softens above that, such as a cake of wax and resin. */
  SOLID_AT_40,
  /** Solid at 20 °C as handed over; whether it flows at 40 °C is not said, such as a balm. */
  SOLID,
  /** Liquid at 20 °C, such as an oil or a thinner. */
  LIQUID,
  /** Gas. */
  GAS;

  Bilingual inWords() {
    return Bilingual.of(reader -> HazardTexts.label("state." + name(), reader));
  }

  /** What of it can be in the air, as a key of the texts. */
  String airborne() {
    return isSolid() ? SOLID.name() : name();
  }

  /** Whether it is no liquid as handed over. */
  boolean isSolid() {
    return this == SOLID || this == SOLID_AT_40;
  }
}
