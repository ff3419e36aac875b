// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

/**
 * The state of the finished mixture as it is handed over.
 *
 * <p>Turpentine harms the lungs if it is swallowed as a liquid: a firm polish cannot be, and of a
 * liquid one the viscosity must be known.
 *
 * <pre>{@code
 * RuleSet rules = RuleSet.clpOn(LocalDate.of(2026, 6, 1));
 * HazardMixture.Builder polish =
 *     HazardMixture.builder(rules).cas("8006-64-2", 25).cas("8012-89-3", 75);
 * HazardMixture firm = polish.state(PhysicalState.SOLID).build();
 * HazardReview.of(firm, rules).finding(HazardClass.ASPIRATION).status(); // NOT_CLASSIFIED
 * HazardMixture soft = polish.state(PhysicalState.LIQUID).build();
 * HazardReview.of(soft, rules).finding(HazardClass.ASPIRATION).status(); // INSUFFICIENT_DATA
 * }</pre>
 */
public enum PhysicalState {
  /** Solid at 20 °C and still solid at 40 °C, such as a cake of medium. */
  SOLID,
  /** Liquid at 20 °C, or soft enough to be liquid at 40 °C. */
  LIQUID,
  /** Gas. */
  GAS
}
