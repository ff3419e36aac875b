// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.equipment;

import org.meltwright.units.Check;
import org.meltwright.units.ProblemCode;

/**
 * The problems that things in a studio report.
 *
 * <p>For example, of a cup that was only weighed nobody knows what a height in it holds:
 *
 * <pre>{@code
 * CupShape cup = CupShape.weighedWithWater(grams(103.3));
 * List<Problem> problems = new ArrayList<>();
 * try {
 *   cup.cubicMetresTo(0.015);
 * } catch (ProblemException e) {
 *   problems.addAll(e.problems());
 * }
 * problems.get(0).code(); // CUP_SHAPE_UNKNOWN
 * problems.get(0).what(Locale.ENGLISH); // Of this cup only the volume up to the brim is known.
 * }</pre>
 */
public enum EquipmentProblem implements ProblemCode {
  /** A height in a cup of which only the volume is known. */
  CUP_SHAPE_UNKNOWN("equipment.cup-shape-unknown");

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
