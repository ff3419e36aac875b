// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import java.math.BigInteger;

/**
 * The best plan when every package has a price of its own and no supplier's total matters: each
 * material by itself.
 */
final class Relaxation {

  private final PackageModel model;
  private final Grid[] grids;

  Relaxation(PackageModel model) {
    this.model = model;
    this.grids = new Grid[model.materials()];
    for (int i = 0; i < grids.length; i++) {
      grids[i] = new Grid(model.need()[i], values(i, model.mass()));
    }
  }

  /** What came of it. */
  static final class Answer {

    private final long cost;
    private final long mass;
    private final long[] costs;
    private final int[] plan;
    private final boolean isPlanned;

    Answer(long cost, long mass, long[] costs, int[] plan, boolean isPlanned) {
      this.cost = cost;
      this.mass = mass;
      this.costs = costs;
      this.plan = plan;
      this.isPlanned = isPlanned;
    }

    /**
     * The sum of the prices, at most that of any plan; {@link CoverTable#NONE} if there is no plan.
     */
    long cost() {
      return cost;
    }

    /** The sum of the masses. */
    long mass() {
      return mass;
    }

    /** The part of the cost of each material. */
    long[] costs() {
      return costs;
    }

    /** Whether the plan covers all needs; it may not on a coarse grid. */
    boolean isPlanned() {
      return isPlanned;
    }

    /** A plan that covers all needs, the best one where all grids are exact. */
    int[] plan() {
      return plan;
    }

    /** Whether the packages can cover all needs at all. */
    boolean isPossible() {
      return cost != CoverTable.NONE;
    }
  }

  /** The values of one material's packages. */
  long[] values(int material, long[] all) {
    int[] packages = model.packagesOf()[material];
    long[] values = new long[packages.length];
    for (int k = 0; k < values.length; k++) {
      values[k] = all[packages[k]];
    }
    return values;
  }

  Grid grid(int material) {
    return grids[material];
  }

  boolean isExact() {
    for (Grid grid : grids) {
      if (!grid.isExact()) {
        return false;
      }
    }
    return true;
  }

  /** Solves with a price for each package; {@link CoverTable#NONE} leaves it out. */
  Answer solve(long[] prices, boolean isMassFirst) {
    int[] plan = new int[model.packages()];
    long[] costs = new long[grids.length];
    long cost = 0;
    long mass = 0;
    boolean isPlanned = true;
    for (int i = 0; i < grids.length; i++) {
      CoverTable bound = table(i, prices, isMassFirst, grids[i].high());
      if (!bound.isCovered()) {
        return new Answer(CoverTable.NONE, CoverTable.NONE, costs, plan, false);
      }
      isPlanned &= cover(i, bound, prices, isMassFirst, plan);
      costs[i] = isMassFirst ? bound.second() : Math.max(bound.first(), linear(i, prices));
      cost += costs[i];
      mass += Math.max(model.need()[i], isMassFirst ? bound.first() : bound.second());
    }
    return new Answer(cost, mass, costs, plan, isPlanned);
  }

  /** What the need costs at the best price per mass, on a coarse grid the better bound. */
  private long linear(int material, long[] prices) {
    long least = 0;
    if (!grids[material].isExact()) {
      least = CoverTable.NONE;
      BigInteger need = BigInteger.valueOf(model.need()[material]);
      for (int p : model.packagesOf()[material]) {
        if (prices[p] != CoverTable.NONE) {
          BigInteger cost = need.multiply(BigInteger.valueOf(prices[p]));
          least =
              Math.min(least, cost.divide(BigInteger.valueOf(model.mass()[p])).longValueExact());
        }
      }
    }
    return least;
  }

  private boolean cover(
      int material, CoverTable bound, long[] prices, boolean isMassFirst, int[] plan) {
    CoverTable sure =
        grids[material].isExact()
            ? bound
            : table(material, prices, isMassFirst, grids[material].low());
    if (sure.isCovered()) {
      sure.addTo(plan, model.packagesOf()[material]);
    }
    return sure.isCovered();
  }

  /** The table of one material on its grid. */
  CoverTable table(int material, long[] prices, boolean isMassFirst, int[] steps) {
    long[] price = values(material, prices);
    long[] mass = values(material, model.mass());
    if (!isMassFirst) {
      return new CoverTable(grids[material].steps(), steps, price, mass);
    }
    for (int k = 0; k < mass.length; k++) {
      mass[k] = price[k] == CoverTable.NONE ? CoverTable.NONE : mass[k];
    }
    return new CoverTable(grids[material].steps(), steps, mass, price);
  }
}
