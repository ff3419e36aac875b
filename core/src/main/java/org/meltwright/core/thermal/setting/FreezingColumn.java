// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.setting;

import java.util.Arrays;
import org.meltwright.core.thermal.heat.MeltingHeat;

/**
 * A column of cells, a body below and a freezing melt above, in one dimension: implicit finite
 * volumes on enthalpy.
 *
 * <p>Each step solves dx/dt (H − H₀) = Σ G (T − T) for the volumetric enthalpy H by Newton's
 * method: T(H) is piecewise linear, so that the step is solved to rounding once no cell changes its
 * piece. Conductances are those of the liquid fractions at the start of the step, then once more at
 * its end. Mutable; for one thread.
 */
final class FreezingColumn {

  private static final int CONDUCTANCE_PASSES = 1;
  private static final int MOST_ITERATIONS = 60;
  private static final double SMALLEST_CHANGE = 1e-11;

  private final int size;
  private final int bodySize;
  private final double[] dx;
  private final double[] bodyConductivity;
  private final double[] bodyCapacity;

  private final double solidus;
  private final double liquidus;
  private final double solidCapacity;
  private final double liquidCapacity;
  private final double rangeHeat;
  private final double rangeSlope;
  private final double solidConductivity;
  private final double liquidConductivity;

  private double bottomTransfer;
  private double bottomTemperature;
  private double topTransfer;
  private double topTemperature;

  private final double[] enthalpy;
  private final double[] before;
  private final double[] temperature;
  private final double[] slope;
  private final double[] conductance;
  private final double[] diagonal;
  private final double[] right;
  private double heatIn;

  /** Builds a column at uniform temperatures, with adiabatic ends. */
  FreezingColumn(ColumnGrid grid, MeltSubstance melt, double bodyCelsius, double meltCelsius) {
    this.size = grid.size();
    this.bodySize = grid.bodySize();
    this.dx = grid.widths();
    this.bodyConductivity = grid.bodyConductivity();
    this.bodyCapacity = grid.bodyCapacity();
    MeltingHeat heat = melt.heat();
    this.solidus = heat.solidusCelsius();
    this.liquidus = heat.liquidusCelsius();
    this.solidCapacity =
        melt.densityKilogramsPerCubicMetre() * heat.solidSpecificHeatJoulesPerKilogramKelvin();
    this.liquidCapacity =
        melt.densityKilogramsPerCubicMetre() * heat.liquidSpecificHeatJoulesPerKilogramKelvin();
    double width = liquidus - solidus;
    this.rangeHeat =
        melt.densityKilogramsPerCubicMetre() * heat.heatOfFusionJoulesPerKilogram()
            + (solidCapacity + liquidCapacity) / 2 * width;
    this.rangeSlope = width / rangeHeat;
    this.solidConductivity = melt.solidConductivityWattsPerMetreKelvin();
    this.liquidConductivity = melt.liquidConductivityWattsPerMetreKelvin();
    this.enthalpy = new double[size];
    this.before = new double[size];
    this.temperature = new double[size];
    this.slope = new double[size];
    this.conductance = new double[size + 1];
    this.diagonal = new double[size];
    this.right = new double[size];
    for (int i = 0; i < size; i++) {
      enthalpy[i] = i < bodySize ? bodyCapacity[i] * bodyCelsius : meltEnthalpy(meltCelsius);
    }
  }

  private double meltEnthalpy(double celsius) {
    if (celsius >= liquidus) {
      return rangeHeat + liquidCapacity * (celsius - liquidus);
    }
    return celsius <= solidus
        ? solidCapacity * (celsius - solidus)
        : (celsius - solidus) / rangeSlope;
  }

  /**
   * Opens the lower end, and returns this: a transfer coefficient of 0 insulates, an infinite one
   * holds it.
   */
  FreezingColumn openBelow(double transfer, double celsius) {
    bottomTransfer = transfer;
    bottomTemperature = celsius;
    return this;
  }

  /**
   * Opens the upper end, and returns this: a transfer coefficient of 0 insulates, an infinite one
   * holds it.
   */
  FreezingColumn openAbove(double transfer, double celsius) {
    topTransfer = transfer;
    topTemperature = celsius;
    return this;
  }

  /** Goes on by a time; a step that does not settle is halved. */
  void advance(double seconds) {
    System.arraycopy(enthalpy, 0, before, 0, size);
    setConductances();
    boolean settled = settle(seconds);
    for (int k = 0; settled && k < CONDUCTANCE_PASSES; k++) {
      setConductances();
      settled = settle(seconds);
    }
    if (!settled) {
      System.arraycopy(before, 0, enthalpy, 0, size);
      advance(seconds / 2);
      advance(seconds / 2);
      return;
    }
    heatIn +=
        seconds
            * (conductance[0] * (bottomTemperature - temperature[0])
                + conductance[size] * (topTemperature - temperature[size - 1]));
  }

  private boolean settle(double seconds) {
    for (int k = 0; k < MOST_ITERATIONS; k++) {
      setTemperatures();
      assemble(1 / seconds);
      if (!correct()) {
        setTemperatures();
        return true;
      }
    }
    return false;
  }

  private void setConductances() {
    double below = half(0);
    conductance[0] = end(bottomTransfer, below);
    for (int i = 1; i < size; i++) {
      double here = half(i);
      conductance[i] = 1 / (below + here);
      below = here;
    }
    conductance[size] = end(topTransfer, below);
  }

  private static double end(double transfer, double resistance) {
    return transfer == 0 ? 0 : 1 / (1 / transfer + resistance);
  }

  /** Returns the resistance of half a cell. */
  private double half(int i) {
    double conductivity =
        i < bodySize
            ? bodyConductivity[i]
            : solidConductivity + fraction(i) * (liquidConductivity - solidConductivity);
    return dx[i] / (2 * conductivity);
  }

  private void setTemperatures() {
    for (int i = 0; i < bodySize; i++) {
      slope[i] = 1 / bodyCapacity[i];
      temperature[i] = enthalpy[i] * slope[i];
    }
    for (int i = bodySize; i < size; i++) {
      double h = enthalpy[i];
      if (h <= 0) {
        slope[i] = 1 / solidCapacity;
        temperature[i] = solidus + h * slope[i];
      } else if (h < rangeHeat) {
        slope[i] = rangeSlope;
        temperature[i] = solidus + h * rangeSlope;
      } else {
        slope[i] = 1 / liquidCapacity;
        temperature[i] = liquidus + (h - rangeHeat) * slope[i];
      }
    }
  }

  /** Sets up residual and Jacobian, and eliminates downwards. */
  private void assemble(double perSecond) {
    for (int i = 0; i < size; i++) {
      double west = i == 0 ? bottomTemperature : temperature[i - 1];
      double east = i == size - 1 ? topTemperature : temperature[i + 1];
      double gw = conductance[i];
      double ge = conductance[i + 1];
      double storage = dx[i] * perSecond;
      double d = storage + (gw + ge) * slope[i];
      double r =
          gw * (west - temperature[i])
              + ge * (east - temperature[i])
              - storage * (enthalpy[i] - before[i]);
      if (i > 0) {
        double factor = gw * slope[i - 1] / diagonal[i - 1];
        d -= factor * gw * slope[i];
        r += factor * right[i - 1];
      }
      diagonal[i] = d;
      right[i] = r;
    }
  }

  /** Substitutes back and corrects the enthalpies; tells whether a cell changed its piece. */
  private boolean correct() {
    boolean changed = false;
    double next = 0;
    for (int i = size - 1; i >= 0; i--) {
      double coupling = i == size - 1 ? 0 : conductance[i + 1] * slope[i + 1];
      double step = (right[i] + coupling * next) / diagonal[i];
      double old = enthalpy[i];
      enthalpy[i] = old + step;
      changed |=
          i >= bodySize
              && piece(old) != piece(enthalpy[i])
              && Math.abs(step) > SMALLEST_CHANGE * rangeHeat;
      next = step;
    }
    return changed;
  }

  private int piece(double h) {
    return h <= 0 ? 0 : h < rangeHeat ? 1 : 2;
  }

  private double fraction(int i) {
    return Math.max(0, Math.min(1, enthalpy[i] / rangeHeat));
  }

  /** Returns the mean liquid fraction of the melt, from 0 to 1. */
  double liquidFraction() {
    double liquid = 0;
    double all = 0;
    for (int i = bodySize; i < size; i++) {
      liquid += fraction(i) * dx[i];
      all += dx[i];
    }
    return liquid / all;
  }

  /** Returns how much of the melt is solid, as a thickness in m. */
  double crust() {
    double solid = 0;
    for (int i = bodySize; i < size; i++) {
      solid += (1 - fraction(i)) * dx[i];
    }
    return solid;
  }

  /** Returns the heat in the column, in J/m², from an arbitrary origin. */
  double heat() {
    double sum = 0;
    for (int i = 0; i < size; i++) {
      sum += enthalpy[i] * dx[i];
    }
    return sum;
  }

  /** Returns the heat that crossed the ends since the start, in J/m²; negative for heat lost. */
  double heatIn() {
    return heatIn;
  }

  /** Returns the temperature between body and melt, in °C. */
  double interfaceCelsius() {
    double below = 1 / half(bodySize - 1);
    double above = 1 / half(bodySize);
    return (below * temperature[bodySize - 1] + above * temperature[bodySize]) / (below + above);
  }

  /** Returns the highest temperature in the melt, in °C. */
  double hottestCelsius() {
    return Arrays.stream(temperature, bodySize, size).max().orElseThrow();
  }
}
