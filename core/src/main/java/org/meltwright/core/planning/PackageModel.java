// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

/**
 * A purchase as plain numbers: masses in micrograms, money in millionths of the currency's unit.
 *
 * <p>A plan is the number of packages of each offer, in the order of the offers.
 */
final class PackageModel {

  static final long NEVER = Long.MAX_VALUE;
  static final int NO_DUTY = -1;

  private final long[] need;
  private final int[][] packagesOf;
  private final int[] supplier;
  private final long[] mass;
  private final long[] cost;
  private final long[] goods;
  private final long[] freight;
  private final long[] perOrder;
  private final long[] handling;
  private final long[] freeFrom;
  private final int[] dutyOf;
  private final long[] duty;

  PackageModel(
      long[] need,
      int[][] packagesOf,
      int[] supplier,
      long[] mass,
      long[] cost,
      long[] goods,
      long[] freight,
      long[] perOrder,
      long[] handling,
      long[] freeFrom,
      int[] dutyOf,
      long[] duty) {
    this.need = need;
    this.packagesOf = packagesOf;
    this.supplier = supplier;
    this.mass = mass;
    this.cost = cost;
    this.goods = goods;
    this.freight = freight;
    this.perOrder = perOrder;
    this.handling = handling;
    this.freeFrom = freeFrom;
    this.dutyOf = dutyOf;
    this.duty = duty;
  }

  /** The mass wanted of each material. */
  long[] need() {
    return need;
  }

  /** The offers of each material. */
  int[][] packagesOf() {
    return packagesOf;
  }

  /** The supplier of each offer. */
  int[] supplier() {
    return supplier;
  }

  /** The mass of a package of each offer. */
  long[] mass() {
    return mass;
  }

  /** What the buyer bears for a package of each offer, without carriage. */
  long[] cost() {
    return cost;
  }

  /** What a package of each offer counts towards free carriage. */
  long[] goods() {
    return goods;
  }

  /** What the buyer bears for carriage of a package where it is not free. */
  long[] freight() {
    return freight;
  }

  /** What the buyer bears for carriage per order of each supplier. */
  long[] perOrder() {
    return perOrder;
  }

  /** What the buyer bears for an order of each supplier in any case. */
  long[] handling() {
    return handling;
  }

  /** The value of goods from which carriage is free; {@link #NEVER} if it never is. */
  long[] freeFrom() {
    return freeFrom;
  }

  /** The flat duty that each offer falls under; {@link #NO_DUTY} if none. */
  int[] dutyOf() {
    return dutyOf;
  }

  /** What the buyer bears for each flat duty. */
  long[] duty() {
    return duty;
  }

  int duties() {
    return duty.length;
  }

  int materials() {
    return need.length;
  }

  int suppliers() {
    return perOrder.length;
  }

  int packages() {
    return mass.length;
  }

  /** Whether carriage costs nothing whatever is ordered. */
  boolean isAlwaysFree(int s) {
    if (freeFrom[s] == 0) {
      return true;
    }
    for (int p = 0; p < packages(); p++) {
      if (supplier[p] == s && freight[p] > 0) {
        return false;
      }
    }
    return perOrder[s] == 0;
  }

  long massOf(int[] plan) {
    long sum = 0;
    for (int p = 0; p < plan.length; p++) {
      sum += plan[p] * mass[p];
    }
    return sum;
  }

  long goodsOf(int[] plan, int s) {
    long sum = 0;
    for (int p = 0; p < plan.length; p++) {
      sum += supplier[p] == s ? plan[p] * goods[p] : 0;
    }
    return sum;
  }

  /** What carriage of one supplier's part of a plan costs. */
  long freightOf(int[] plan, int s) {
    long sum = 0;
    boolean isUsed = false;
    for (int p = 0; p < plan.length; p++) {
      if (supplier[p] == s && plan[p] > 0) {
        isUsed = true;
        sum += plan[p] * freight[p];
      }
    }
    return isUsed && goodsOf(plan, s) < freeFrom[s] ? sum + perOrder[s] : 0;
  }

  boolean isUsed(int[] plan, int s) {
    for (int p = 0; p < plan.length; p++) {
      if (supplier[p] == s && plan[p] > 0) {
        return true;
      }
    }
    return false;
  }

  /** Whether a plan holds goods that a flat duty is on. */
  boolean isDue(int[] plan, int d) {
    for (int p = 0; p < plan.length; p++) {
      if (dutyOf[p] == d && plan[p] > 0) {
        return true;
      }
    }
    return false;
  }

  /** What a plan costs in all. */
  long costOf(int[] plan) {
    long sum = 0;
    for (int p = 0; p < plan.length; p++) {
      sum += plan[p] * cost[p];
    }
    for (int s = 0; s < suppliers(); s++) {
      sum += isUsed(plan, s) ? handling[s] + freightOf(plan, s) : 0;
    }
    for (int d = 0; d < duties(); d++) {
      sum += isDue(plan, d) ? duty[d] : 0;
    }
    return sum;
  }
}
