// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * All bundles of packages of one material that can be part of a better plan, dominated ones left
 * out: a dynamic programme over the steps that are left to cover.
 */
final class BundleList {

  private final FreeFreightSearch search;
  private final Incumbent best;
  private final PackageModel model;
  private final int[] packages;
  private final int[] steps;
  private final int need;
  private final int material;
  private final List<Multipliers> multipliers;
  private final List<CoverTable> tables = new ArrayList<>();
  private int kept;

  BundleList(
      FreeFreightSearch search,
      Incumbent best,
      Relaxation relaxation,
      int material,
      List<Multipliers> multipliers) {
    this.search = search;
    this.best = best;
    this.model = best.model();
    this.material = material;
    this.packages = model.packagesOf()[material];
    this.steps = relaxation.grid(material).low();
    this.need = relaxation.grid(material).steps();
    this.multipliers = multipliers;
    for (Multipliers m : multipliers) {
      tables.add(relaxation.table(material, m.lowered(), best.isMassFirst(), steps));
    }
  }

  /** The bundles; null if the time was up, or memory short, before all were found. */
  @Nullable List<Bundle> all() {
    List<List<Bundle>> byLeft = new ArrayList<>();
    for (int left = 0; left <= need; left++) {
      byLeft.add(new ArrayList<>());
    }
    byLeft.get(need).add(Bundle.empty(search.suppliers().length));
    for (int left = need; left > 0; left--) {
      for (Bundle bundle : Bundle.undominated(byLeft.get(left))) {
        extend(bundle, left, byLeft);
      }
      byLeft.set(left, List.of());
      if (best.isTimeUp() || kept > FreeFreightSearch.MOST_BUNDLES) {
        return null;
      }
    }
    return beyondTheNeed(Bundle.undominated(byLeft.get(0)));
  }

  private void extend(Bundle bundle, int left, List<List<Bundle>> byLeft) {
    for (int k = 0; k < packages.length; k++) {
      if (search.isUsable(packages[k])) {
        int rest = Math.max(0, left - steps[k]);
        Bundle more = search.plus(bundle, packages[k]);
        if (!isBeyond(more, rest)) {
          byLeft.get(rest).add(more);
          kept++;
        }
      }
    }
  }

  /** Adds packages only to bring a supplier nearer to its value, until that cannot pay any more. */
  private @Nullable List<Bundle> beyondTheNeed(List<Bundle> covering) {
    List<Bundle> all = new ArrayList<>(covering);
    List<Bundle> last = covering;
    while (!last.isEmpty()) {
      List<Bundle> next = new ArrayList<>();
      for (Bundle bundle : last) {
        for (int p : packages) {
          if (search.helps(bundle, p)) {
            Bundle more = search.plus(bundle, p);
            if (!isBeyond(more, 0)) {
              next.add(more);
            }
          }
        }
      }
      if (best.isTimeUp()) {
        return null;
      }
      last = new ArrayList<>(Bundle.undominated(next));
      all.addAll(last);
      all = new ArrayList<>(Bundle.undominated(all));
      last.retainAll(new HashSet<>(all));
    }
    return all;
  }

  private boolean isBeyond(Bundle bundle, int left) {
    long limit = search.limit();
    for (int m = 0; m < tables.size(); m++) {
      CoverTable table = tables.get(m);
      long first = table.first(left);
      if (first == CoverTable.NONE
          || (best.isMassFirst() && bundle.mass() + first > table.first())) {
        return true;
      }
      long rest = best.isMassFirst() ? table.second(left) : first;
      Multipliers by = multipliers.get(m);
      if (by.of(bundle) + rest + by.withoutMaterial(material) > limit) {
        return true;
      }
    }
    return false;
  }
}
