// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.setting;

/**
 * Runs a column until its melt is solid and notes when it was half and when it was fully set.
 *
 * @param half when the mean liquid fraction fell to one half, in s
 * @param full when 99 % was solid, in s; infinite where it never is
 */
record FreezeClock(double half, double full) {

  private static final double HALF_SET = 0.5;
  private static final double FULLY_SET = 0.01;
  private static final double LONGEST = 1e10;

  /**
   * How finely to calculate.
   *
   * @param cells cells of the melt
   * @param growth how much each time step grows on the one before
   */
  record Resolution(int cells, double growth) {

    static final Resolution USUAL = new Resolution(40, 0.02);

    /** The first step: 1 ms for a film of half a millimetre, with the square of its thickness. */
    double firstStep(double thickness) {
      double ratio = thickness / 5e-4;
      return 1e-3 * ratio * ratio * growth / 0.02;
    }
  }

  static FreezeClock run(FreezingColumn column, double firstStep, double growth) {
    double time = 0;
    double step = firstStep;
    double liquid = column.liquidFraction();
    double half = liquid <= HALF_SET ? 0 : Double.POSITIVE_INFINITY;
    while (liquid > FULLY_SET) {
      if (time > LONGEST) {
        return new FreezeClock(half, Double.POSITIVE_INFINITY);
      }
      column.advance(step);
      double now = column.liquidFraction();
      if (liquid > HALF_SET && now <= HALF_SET) {
        half = crossing(time, step, liquid, now, HALF_SET);
      }
      if (now <= FULLY_SET) {
        return new FreezeClock(half, crossing(time, step, liquid, now, FULLY_SET));
      }
      time += step;
      step *= 1 + growth;
      liquid = now;
    }
    return new FreezeClock(half, time);
  }

  private static double crossing(
      double time, double step, double from, double to, double threshold) {
    return time + step * (from - threshold) / (from - to);
  }
}
