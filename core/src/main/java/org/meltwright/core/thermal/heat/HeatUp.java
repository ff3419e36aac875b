// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.heat;

import org.meltwright.units.TemperaturePoint;

/** Adds up the time between the bends of an enthalpy curve. */
final class HeatUp {

  private final EnthalpyCurve curve;
  private final double mass;
  private final double vessel;
  private final HeatSupply supply;

  HeatUp(EnthalpyCurve curve, double mass, double vessel, HeatSupply supply) {
    this.curve = curve;
    this.mass = mass;
    this.vessel = vessel;
    this.supply = supply;
  }

  HeatUpTime between(TemperaturePoint from, TemperaturePoint to) {
    double[] bends = curve.bends(from.celsius(), to.celsius());
    double[] stages = new double[3];
    for (int i = 0; i < bends.length; i++) {
      if (i > 0) {
        stages[stage(bends[i - 1], bends[i])] += rising(bends[i - 1], bends[i]);
      }
      if (bends[i] > from.celsius()) {
        stages[1] += standing(bends[i]);
      }
    }
    HeatUpTime.Reached reached = new HeatUpTime.Reached(stages[0], stages[1], stages[2]);
    return Double.isFinite(reached.seconds()) ? reached : never(from, to);
  }

  private int stage(double from, double to) {
    if (to <= curve.solidus()) {
      return 0;
    }
    return from >= curve.liquidus() ? 2 : 1;
  }

  private double rising(double from, double to) {
    double middle = from + (to - from) / 2;
    return supply.seconds(
        mass * curve.capacity(from, middle) + vessel,
        mass * curve.capacity(to, middle) + vessel,
        from,
        to);
  }

  /** Returns the time on a plateau: melting at one temperature. */
  private double standing(double celsius) {
    double latent = mass * curve.latentAt(celsius);
    if (latent == 0) {
      return 0;
    }
    double net = supply.netWatts(celsius);
    return net > 0 ? latent / net : Double.POSITIVE_INFINITY;
  }

  private HeatUpTime never(TemperaturePoint from, TemperaturePoint to) {
    TemperaturePoint end = supply.restingPoint().orElse(from);
    return new HeatUpTime.NeverReached(to, end, curve.isMoltenAbove(end.celsius()));
  }
}
