// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.setting;

import java.util.Arrays;

/**
 * The cells of a column: a body in cells that widen away from the melt, and a melt in equal cells.
 */
final class ColumnGrid {

  private static final double WIDENING = 1.06;

  private final double[] widths;
  private final double[] conductivity;
  private final double[] capacity;

  /** Returns a melt without a body. */
  static ColumnGrid ofMelt(double thickness, int cells) {
    double[] widths = new double[cells];
    Arrays.fill(widths, thickness / cells);
    return new ColumnGrid(widths, new double[0], new double[0]);
  }

  /** Returns a melt on a body; the cell of the body at the melt is as wide as those of the melt. */
  static ColumnGrid of(double thickness, int cells, Panel panel) {
    double[] body = widening(panel.thicknessMetres(), thickness / cells);
    double[] widths = Arrays.copyOf(body, body.length + cells);
    Arrays.fill(widths, body.length, widths.length, thickness / cells);
    double[] conductivity = new double[body.length];
    double[] capacity = new double[body.length];
    Panel.Ground laid = panel.ground().orElse(new Panel.Ground(panel.body(), 0));
    double depth = panel.thicknessMetres();
    for (int i = 0; i < body.length; i++) {
      double ground = groundShare(depth - body[i], depth, laid.thicknessMetres());
      conductivity[i] =
          1
              / (ground / laid.substance().conductivityWattsPerMetreKelvin()
                  + (1 - ground) / panel.body().conductivityWattsPerMetreKelvin());
      capacity[i] = ground * volumetric(laid.substance()) + (1 - ground) * volumetric(panel.body());
      depth -= body[i];
    }
    return new ColumnGrid(widths, conductivity, capacity);
  }

  private static double volumetric(Substance substance) {
    return substance.densityKilogramsPerCubicMetre()
        * substance.specificHeatJoulesPerKilogramKelvin();
  }

  /** Returns how much of the cell between two depths below the melt is ground. */
  private static double groundShare(double from, double to, double ground) {
    return Math.max(0, Math.min(1, (ground - from) / (to - from)));
  }

  /** Returns widths from the far end to the melt that widen away from the melt and fill a body. */
  private static double[] widening(double thickness, double finest) {
    int count =
        (int)
            Math.max(
                3, Math.ceil(Math.log1p(thickness * (WIDENING - 1) / finest) / Math.log(WIDENING)));
    double[] widths = new double[count];
    double sum = 0;
    for (int i = 0; i < count; i++) {
      widths[count - 1 - i] = Math.pow(WIDENING, i);
      sum += widths[count - 1 - i];
    }
    for (int i = 0; i < count; i++) {
      widths[i] *= thickness / sum;
    }
    return widths;
  }

  private ColumnGrid(double[] widths, double[] conductivity, double[] capacity) {
    this.widths = widths;
    this.conductivity = conductivity;
    this.capacity = capacity;
  }

  int size() {
    return widths.length;
  }

  int bodySize() {
    return conductivity.length;
  }

  double[] widths() {
    return widths;
  }

  double[] bodyConductivity() {
    return conductivity;
  }

  double[] bodyCapacity() {
    return capacity;
  }
}
