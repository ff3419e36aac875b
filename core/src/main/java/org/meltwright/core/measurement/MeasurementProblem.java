// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.measurement;

import org.meltwright.units.Check;
import org.meltwright.units.ProblemCode;

/**
 * The problems that measurements report.
 *
 * <p>For example, a thermometer held twice into the same ice:
 *
 * <pre>{@code
 * ThermometerCalibration.Point ice = ThermometerCalibration.Point.ice(Reading.within(0.4, 0.1));
 * Problems problems = new Problems();
 * problems.attempt("/points", () -> ThermometerCalibration.of(List.of(ice, ice)));
 * problems.toList().get(0).code(); // NOT_APART
 * }</pre>
 */
public enum MeasurementProblem implements ProblemCode {
  /** Fewer readings than the calculation needs. */
  TOO_FEW("measurement.too-few"),
  /** Readings that do not differ, where a slope or a spread is asked for. */
  NOT_APART("measurement.not-apart"),
  /** What should be heavier, longer or denser is not. */
  NOT_MORE("measurement.not-more"),
  /** A measured figure that cannot be compared or stated in the unit of a property. */
  OTHER_UNIT("measurement.other-unit");

  /** The guards of this package. */
  static final Check CHECK = Check.beside(MeasurementProblem.class);

  private final String id;

  MeasurementProblem(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
