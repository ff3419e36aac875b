// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.equipment;

import org.meltwright.units.Check;
import org.meltwright.units.ProblemCode;

/**
 * The problems that things in a studio report.
 *
 * <p>For example, of a cup that was only weighed nobody knows what a height in it holds, and a ring
 * with numbers has no degrees:
 *
 * <pre>{@code
 * CupShape cup = CupShape.weighedWithWater(grams(103.3));
 * HeatSource ring = HeatSource.of("ring", HeatSource.Kind.RING_WITH_NUMBERS);
 * Problems problems = new Problems();
 * problems.attempt("/cup", () -> cup.cubicMetresTo(0.015));
 * problems.attempt("/ring", () -> ring.withSetPoint(ofCelsius(85)));
 * problems.toList().get(0).code(); // CUP_SHAPE_UNKNOWN
 * problems.toList().get(1).code(); // NUMBERS_NOT_DEGREES
 * }</pre>
 */
public enum EquipmentProblem implements ProblemCode {
  /** A height in a cup of which only the volume is known. */
  CUP_SHAPE_UNKNOWN("equipment.cup-shape-unknown"),
  /** A set point or an overshoot of a heat source that has numbers instead of degrees. */
  NUMBERS_NOT_DEGREES("equipment.numbers-not-degrees");

  /** The guards of this package. */
  static final Check CHECK = Check.beside(EquipmentProblem.class);

  private final String id;

  EquipmentProblem(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
