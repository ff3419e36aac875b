// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** All bundles of packages of one material whose lowered prices lie within a gap of the least. */
final class BundleList {

  private static final int STEPS_BETWEEN_LOOKS_AT_THE_CLOCK = 4096;

  private final PackageModel model;
  private final Incumbent best;
  private final int[] packages;
  private final int[] steps;
  private final long[] lowered;
  private final long[] prices;
  private final int[] suppliers;
  private final CoverTable table;
  private final int[] chosen = new int[4096];
  private final List<Bundle> found = new ArrayList<>();
  private final int need;
  private long gap;
  private int looks;
  private boolean isTimeUp;

  BundleList(
      Incumbent best,
      Relaxation relaxation,
      int material,
      long[] lowered,
      long[] prices,
      int[] suppliers) {
    this.model = best.model();
    this.best = best;
    this.packages = model.packagesOf()[material];
    this.steps = relaxation.grid(material).low();
    this.need = relaxation.grid(material).steps();
    this.lowered = relaxation.values(material, lowered);
    this.prices = relaxation.values(material, prices);
    this.suppliers = suppliers;
    this.table = relaxation.table(material, lowered, best.isMassFirst(), steps);
  }

  /** The bundles; null if the time was up before all were found. */
  @Nullable List<Bundle> within(long newGap) {
    gap = newGap;
    if (table.isCovered()) {
      add(0, need, 0, 0, 0, new long[suppliers.length], 0);
    }
    return isTimeUp ? null : found;
  }

  private void add(int from, int left, long price, long mass, long cost, long[] values, int count) {
    if (++looks % STEPS_BETWEEN_LOOKS_AT_THE_CLOCK == 0) {
      isTimeUp |= best.isTimeUp();
    }
    if (isTimeUp || isBeyond(left, price, mass)) {
      return;
    }
    if (left <= 0) {
      found.add(new Bundle(cost, mass, excess(price), values, Arrays.copyOf(chosen, count), null));
    }
    if (count == chosen.length) {
      isTimeUp = true;
      return;
    }
    for (int k = from; k < packages.length; k++) {
      if (lowered[k] != CoverTable.NONE && (left > 0 || helps(k, values))) {
        chosen[count] = packages[k];
        add(
            k,
            left - steps[k],
            price + lowered[k],
            mass + model.mass()[packages[k]],
            cost + prices[k],
            plus(values, k),
            count + 1);
      }
    }
  }

  private boolean isBeyond(int left, long price, long mass) {
    long first = table.first(left);
    if (first == CoverTable.NONE) {
      return true;
    }
    if (best.isMassFirst()) {
      long wholeMass = mass + first;
      return wholeMass > table.first()
          || (wholeMass == table.first() && price + table.second(left) - table.second() > gap);
    }
    return price + first - table.first() > gap;
  }

  private long excess(long price) {
    return price - (best.isMassFirst() ? table.second() : table.first());
  }

  /** Whether one more package, beyond the need, still brings a supplier nearer to its value. */
  private boolean helps(int k, long[] values) {
    int supplier = model.supplier()[packages[k]];
    for (int b = 0; b < suppliers.length; b++) {
      if (suppliers[b] == supplier) {
        return model.goods()[packages[k]] > 0 && values[b] < model.freeFrom()[supplier];
      }
    }
    return false;
  }

  private long[] plus(long[] values, int k) {
    int supplier = model.supplier()[packages[k]];
    for (int b = 0; b < suppliers.length; b++) {
      if (suppliers[b] == supplier) {
        long[] more = values.clone();
        more[b] = Math.min(model.freeFrom()[supplier], more[b] + model.goods()[packages[k]]);
        return more;
      }
    }
    return values;
  }
}
