// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.equipment;

import org.meltwright.units.ProblemCode;

/**
 * The problems that equipment reports.
 *
 * <p>For example, degrees on a ring that has none:
 *
 * <pre>{@code
 * HeatSource ring = HeatSource.of("ring", HeatSource.Kind.RING_WITH_NUMBERS);
 * Problems problems = new Problems();
 * problems.attempt("/ring", () -> ring.withSetPoint(ofCelsius(85)));
 * problems.toList().get(0).code(); // NUMBERS_NOT_DEGREES
 * }</pre>
 */
public enum EquipmentProblem implements ProblemCode {
  /** A set point or an overshoot of a heat source that has numbers instead of degrees. */
  NUMBERS_NOT_DEGREES("equipment.numbers-not-degrees");

  private final String id;

  EquipmentProblem(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
