// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal;

import java.util.stream.DoubleStream;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Check;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemCode;
import org.meltwright.units.ProblemException;

/**
 * The problems that calculations of heat report.
 *
 * <p>A resin alone has no working window, because nothing in it melts:
 *
 * <pre>{@code
 * Composition resin = Composition.of(MaterialCatalogue.standard().require("damar"));
 * TemperatureDifference margin = TemperatureDifference.ofKelvin(10);
 * WorkingWindow.of(resin, ofCelsius(90), margin, margin); // throws ProblemException
 * Problem problem = Problem.of(ThermalProblem.NOTHING_MELTS, "damar");
 * problem.what(Locale.ENGLISH); // Nothing in the mix has a melting range: damar.
 * problem.allowed(Locale.ENGLISH); // at least one component that melts
 * }</pre>
 */
public enum ThermalProblem implements ProblemCode {
  /** Nothing in the mix has a melting range. */
  NOTHING_MELTS("thermal.nothing-melts"),
  /** Two temperatures that must rise or fall do not. */
  TEMPERATURES_OUT_OF_ORDER("thermal.temperatures-out-of-order"),
  /** A material has neither figures nor stated assumptions to calculate with. */
  FIGURE_NEEDED("thermal.figure-needed"),
  /** Readings of a log are not in the order of time. */
  READINGS_OUT_OF_ORDER("thermal.readings-out-of-order"),
  /** A viscosity is asked for below the clear point, where crystals rule the flow. */
  BELOW_CLEAR_POINT("thermal.below-clear-point");

  private static final Check CHECK = Check.beside(ThermalProblem.class);

  private final String id;

  ThermalProblem(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }

  /**
   * Returns the exception for temperatures that must stand in an order.
   *
   * @param order the order, such as "from ≤ to"
   * @param celsius the temperatures as found, in °C
   * @return the exception, to be thrown
   */
  public static ProblemException outOfOrder(String order, double... celsius) {
    Bilingual[] found =
        DoubleStream.of(celsius)
            .mapToObj(degrees -> Bilingual.of(degrees).plus(" °C"))
            .toArray(Bilingual[]::new);
    return new ProblemException(
        Problem.of(TEMPERATURES_OUT_OF_ORDER, Bilingual.list(found))
            .with("order", CHECK.name(order)));
  }
}
