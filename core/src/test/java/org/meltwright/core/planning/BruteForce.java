// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

/** All plans that can be the best, one after the other. */
final class BruteForce {

  private final PackageModel model;
  private final boolean isMassFirst;
  private final int[] plan;
  private long cost = Long.MAX_VALUE;
  private long mass = Long.MAX_VALUE;

  BruteForce(PackageModel model, boolean isMassFirst) {
    this.model = model;
    this.isMassFirst = isMassFirst;
    this.plan = new int[model.packages()];
    tryAll(0);
  }

  long cost() {
    return cost;
  }

  long mass() {
    return mass;
  }

  private void tryAll(int p) {
    if (p == plan.length) {
      judge();
      return;
    }
    for (int n = 0; n <= most(p); n++) {
      plan[p] = n;
      tryAll(p + 1);
    }
    plan[p] = 0;
  }

  /** Enough for its whole need, or to reach free carriage by itself where that can ever pay. */
  private int most(int p) {
    long need = 0;
    for (int i = 0; i < model.materials(); i++) {
      for (int q : model.packagesOf()[i]) {
        need = q == p ? model.need()[i] : need;
      }
    }
    int forNeed = (int) ((need + model.mass()[p] - 1) / model.mass()[p]);
    long saved = model.perOrder()[model.supplier()[p]] + forNeed * model.freight()[p];
    return forNeed + (int) (saved / model.cost()[p] + 1);
  }

  private void judge() {
    for (int i = 0; i < model.materials(); i++) {
      long sum = 0;
      for (int p : model.packagesOf()[i]) {
        sum += plan[p] * model.mass()[p];
      }
      if (sum < model.need()[i]) {
        return;
      }
    }
    long c = model.costOf(plan);
    long m = model.massOf(plan);
    boolean isBetter =
        isMassFirst ? m < mass || (m == mass && c < cost) : c < cost || (c == cost && m < mass);
    if (isBetter) {
      cost = c;
      mass = m;
    }
  }
}
