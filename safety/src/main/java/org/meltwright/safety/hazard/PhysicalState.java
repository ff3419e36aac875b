// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

/** The state of the finished mixture as it is handed over. */
public enum PhysicalState {
  /** Solid at 20 °C and still solid at 40 °C, such as a cake of medium. */
  SOLID,
  /** Liquid at 20 °C, or soft enough to be liquid at 40 °C. */
  LIQUID,
  /** Gas. */
  GAS
}
