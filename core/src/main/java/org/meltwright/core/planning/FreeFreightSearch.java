// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The best plan when some suppliers must reach the value from which they carry for nothing.
 *
 * <p>A multiplier per such supplier lowers the price of its packages and pays for the value that is
 * asked: that gives a bound (Lagrangian relaxation; J. E. Beasley in C. R. Reeves, ed., Modern
 * Heuristic Techniques for Combinatorial Problems, 1993, chapter 6; remembered). Only bundles of
 * packages within the gap between bound and best plan can be part of a better one; they are listed
 * for each material and joined, dropping what another join beats in cost, mass and every value.
 */
final class FreeFreightSearch {

  /** Multipliers are whole thousandths, so that all arithmetic stays exact. */
  private static final int SCALE = 1000;

  private static final int ROUNDS = 2;

  private final PackageModel model;
  private final Incumbent best;
  private final Relaxation relaxation;
  private final long[] prices;
  private final long fixed;
  private final int[] bound;
  private final int[] multipliers;
  private int[] bestMultipliers;
  private Score lowest = new Score(0, 0);

  FreeFreightSearch(
      Incumbent best, Relaxation relaxation, byte[] modes, long[] prices, long fixed) {
    this.model = best.model();
    this.best = best;
    this.relaxation = relaxation;
    this.prices = prices;
    this.fixed = fixed;
    this.bound = boundSuppliers(modes);
    this.multipliers = new int[model.suppliers()];
    this.bestMultipliers = multipliers.clone();
  }

  private int[] boundSuppliers(byte[] modes) {
    List<Integer> found = new ArrayList<>();
    for (int s = 0; s < modes.length; s++) {
      boolean asks = model.freeFrom()[s] > 0 && model.freeFrom()[s] != PackageModel.NEVER;
      if (modes[s] == PurchaseSearch.FREE && asks) {
        found.add(s);
      }
    }
    return found.stream().mapToInt(Integer::intValue).toArray();
  }

  /** Searches; tells whether no better plan of this kind is left. */
  boolean run() {
    raise();
    if (lowest.compareTo(best.score()) > 0) {
      return true;
    }
    return !best.isTimeUp() && join();
  }

  /** What no plan of this kind can go below. */
  Score bound() {
    return lowest;
  }

  /** Raises each multiplier until its supplier's value is reached. */
  private void raise() {
    solve();
    for (int round = 0; round < (bound.length > 1 ? ROUNDS : 1); round++) {
      for (int s : bound) {
        bisect(s);
      }
    }
  }

  private void bisect(int s) {
    int low = 0;
    int high = most(s);
    while (low < high && !best.isTimeUp()) {
      multipliers[s] = (low + high) / 2;
      if (model.goodsOf(solve(), s) >= model.freeFrom()[s]) {
        high = multipliers[s];
      } else {
        low = multipliers[s] + 1;
      }
    }
    multipliers[s] = low;
    solve();
  }

  /** The largest multiplier that leaves no package with a price below zero. */
  private int most(int s) {
    long most = SCALE - 1L;
    for (int p = 0; p < model.packages(); p++) {
      if (model.supplier()[p] == s && model.goods()[p] > 0) {
        most = Math.min(most, SCALE * prices[p] / model.goods()[p]);
      }
    }
    return (int) most;
  }

  private int[] solve() {
    Relaxation.Answer answer = relaxation.solve(lowered(), best.isMassFirst());
    best.offer(answer.plan());
    long scaled = answer.cost();
    for (int s : bound) {
      scaled += multipliers[s] * model.freeFrom()[s];
    }
    Score of = best.score(Grid.ceilingDiv(scaled, SCALE) + fixed, answer.mass());
    if (costOf(of) > costOf(lowest)) {
      lowest = best.isMassFirst() ? of : new Score(of.first(), 0);
      bestMultipliers = multipliers.clone();
    }
    return answer.plan();
  }

  private long costOf(Score score) {
    return best.isMassFirst() ? score.second() : score.first();
  }

  private long[] lowered() {
    long[] lowered = new long[prices.length];
    for (int p = 0; p < lowered.length; p++) {
      lowered[p] =
          prices[p] == CoverTable.NONE
              ? CoverTable.NONE
              : SCALE * prices[p] - multipliers[model.supplier()[p]] * model.goods()[p];
    }
    return lowered;
  }

  /** Joins bundles material by material; tells whether it came to an end in time. */
  private boolean join() {
    System.arraycopy(bestMultipliers, 0, multipliers, 0, multipliers.length);
    long[] lowered = lowered();
    long gap = gap(lowered);
    List<Bundle> joined = List.of(Bundle.empty(bound.length));
    for (int i = 0; i < model.materials() && !joined.isEmpty(); i++) {
      BundleList bundles = new BundleList(best, relaxation, i, lowered, prices, bound);
      List<Bundle> next = best.isTimeUp() ? null : joinAll(joined, bundles.within(gap), gap);
      if (next == null) {
        return false;
      }
      joined = next;
    }
    joined.stream().filter(this::reachesAll).forEach(b -> best.offer(b.plan(model.packages())));
    return true;
  }

  /** How far reduced prices may add up beyond the bound, in scaled money. */
  private long gap(long[] lowered) {
    long scaled = relaxation.solve(lowered, best.isMassFirst()).cost();
    for (int s : bound) {
      scaled += multipliers[s] * model.freeFrom()[s];
    }
    return SCALE * (best.cost() - fixed) - scaled;
  }

  private @Nullable List<Bundle> joinAll(
      List<Bundle> left, @Nullable List<Bundle> right, long gap) {
    if (right == null) {
      return null;
    }
    List<Bundle> all = new ArrayList<>();
    for (Bundle a : left) {
      for (Bundle b : right) {
        if (a.excess() + b.excess() <= gap) {
          all.add(a.join(b, bound, model.freeFrom()));
        }
      }
      if (best.isTimeUp()) {
        return null;
      }
    }
    return undominated(all);
  }

  private @Nullable List<Bundle> undominated(List<Bundle> all) {
    all.sort(Comparator.comparingLong(Bundle::cost).thenComparingLong(Bundle::mass));
    List<Bundle> kept = new ArrayList<>();
    for (Bundle candidate : all) {
      if (kept.stream().noneMatch(k -> k.hasAllValuesOf(candidate))) {
        kept.add(candidate);
      }
      if (best.isTimeUp()) {
        return null;
      }
    }
    return kept;
  }

  private boolean reachesAll(Bundle bundle) {
    for (int k = 0; k < bound.length; k++) {
      if (bundle.values()[k] < model.freeFrom()[bound[k]]) {
        return false;
      }
    }
    return true;
  }
}
