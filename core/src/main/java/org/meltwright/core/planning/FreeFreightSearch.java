// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.planning.Incumbent.Score;

/**
 * The best plan where some suppliers are to reach the value from which carriage is free.
 *
 * <p>A multiplier per such supplier lowers the prices of its packages and pays for the value that
 * is asked: that gives a bound (Lagrangian relaxation; J. E. Beasley in C. R. Reeves, ed., Modern
 * Heuristic Techniques for Combinatorial Problems, 1993, chapter 6; remembered). Then bundles of
 * packages are built up material by material, dropping what the bounds rule out and what another
 * bundle beats in cost, mass and every value.
 */
final class FreeFreightSearch {

  private static final int ROUNDS = 3;
  private static final int MOST_TABLES = 4;
  private static final int MOST_FILLINGS = 64;

  /** More bundles than this are not held in memory; the search is then given up, unproved. */
  static final int MOST_BUNDLES = 1_000_000;

  private final PackageModel model;
  private final Incumbent best;
  private final Relaxation relaxation;
  private final long[] prices;
  private final long fixed;
  private final int[] suppliers;
  private final long[] asked;
  private final int[] thousandths;
  private final List<Multipliers> tried = new ArrayList<>();
  private Score lowest = new Score(0, 0);

  FreeFreightSearch(
      Incumbent best, Relaxation relaxation, byte[] modes, long[] prices, long fixed) {
    this.model = best.model();
    this.best = best;
    this.relaxation = relaxation;
    this.prices = prices;
    this.fixed = fixed;
    this.suppliers = askingSuppliers(modes);
    this.asked = new long[suppliers.length];
    for (int k = 0; k < asked.length; k++) {
      asked[k] = model.freeFrom()[suppliers[k]];
    }
    this.thousandths = new int[suppliers.length];
  }

  private int[] askingSuppliers(byte[] modes) {
    List<Integer> found = new ArrayList<>();
    for (int s = 0; s < model.suppliers(); s++) {
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

  int[] suppliers() {
    return suppliers;
  }

  /** What the packages of a plan may cost at most to be of use, scaled. */
  long limit() {
    return Multipliers.SCALE * (best.cost() - fixed);
  }

  boolean isUsable(int p) {
    return prices[p] != CoverTable.NONE;
  }

  /** Whether one more package still brings a supplier nearer to its value. */
  boolean helps(Bundle bundle, int p) {
    int k = asking(model.supplier()[p]);
    return k >= 0 && isUsable(p) && model.goods()[p] > 0 && bundle.value(k) < asked[k];
  }

  Bundle plus(Bundle bundle, int p) {
    int k = asking(model.supplier()[p]);
    return bundle.plus(p, prices[p], model.mass()[p], k, model.goods()[p], k < 0 ? 0 : asked[k]);
  }

  private int asking(int supplier) {
    for (int k = 0; k < suppliers.length; k++) {
      if (suppliers[k] == supplier) {
        return k;
      }
    }
    return -1;
  }

  /** Raises each multiplier until its supplier's value is reached. */
  private void raise() {
    solve();
    for (int round = 0; round < (suppliers.length > 1 ? ROUNDS : 1); round++) {
      for (int k = 0; k < suppliers.length; k++) {
        bisect(k);
      }
    }
  }

  private boolean isSettled() {
    return lowest.compareTo(best.score()) > 0 || best.isTimeUp();
  }

  private void bisect(int k) {
    int low = 0;
    int high = most(suppliers[k]);
    while (low < high && !isSettled()) {
      thousandths[k] = (low + high) / 2;
      if (model.goodsOf(solve(), suppliers[k]) >= asked[k]) {
        high = thousandths[k];
      } else {
        low = thousandths[k] + 1;
      }
    }
    thousandths[k] = low;
    if (!isSettled()) {
      solve();
    }
  }

  /** The largest multiplier that leaves no package with a price below zero. */
  private int most(int s) {
    long most = Multipliers.SCALE - 1L;
    for (int p = 0; p < model.packages(); p++) {
      if (model.supplier()[p] == s && isUsable(p) && model.goods()[p] > 0) {
        most = Math.min(most, Multipliers.SCALE * prices[p] / model.goods()[p]);
      }
    }
    return (int) most;
  }

  private int[] solve() {
    long[] lowered = lowered();
    Relaxation.Answer answer = relaxation.solve(lowered, best.isMassFirst());
    best.offer(answer.plan());
    best.offer(filled(answer.plan()));
    Multipliers of =
        new Multipliers(suppliers, asked, thousandths.clone(), lowered, answer.costs());
    tried.add(of);
    long cost = Grid.ceilingDiv(of.bound(), Multipliers.SCALE) + fixed;
    if (best.isMassFirst()) {
      lowest = new Score(answer.mass(), Math.max(cost, lowest.second()));
    } else {
      lowest = new Score(Math.max(cost, lowest.first()), 0);
    }
    return answer.plan();
  }

  private long[] lowered() {
    long[] lowered = new long[prices.length];
    for (int p = 0; p < lowered.length; p++) {
      int k = asking(model.supplier()[p]);
      long less = k < 0 ? 0 : thousandths[k] * model.goods()[p];
      lowered[p] = isUsable(p) ? Multipliers.SCALE * prices[p] - less : CoverTable.NONE;
    }
    return lowered;
  }

  /** A plan with packages added until each value is reached: rarely the best, but a good start. */
  private int[] filled(int[] plan) {
    int[] more = plan.clone();
    for (int k = 0; k < suppliers.length; k++) {
      long lacking = asked[k] - model.goodsOf(more, suppliers[k]);
      for (int n = 0; n < MOST_FILLINGS && lacking > 0; n++) {
        int p = filling(suppliers[k], lacking);
        if (p < 0) {
          return plan;
        }
        more[p]++;
        lacking -= model.goods()[p];
      }
    }
    return more;
  }

  /** The package that just fills what is lacking, else the largest that does not. */
  private int filling(int supplier, long lacking) {
    int found = -1;
    for (int p = 0; p < model.packages(); p++) {
      if (model.supplier()[p] == supplier && isUsable(p) && model.goods()[p] > 0) {
        found = found < 0 || fillsBetter(p, found, lacking) ? p : found;
      }
    }
    return found;
  }

  private boolean fillsBetter(int p, int than, long lacking) {
    long value = model.goods()[p];
    long other = model.goods()[than];
    if (value >= lacking && other >= lacking) {
      return value < other;
    }
    return value >= lacking || (other < lacking && value > other);
  }

  /** Joins bundles material by material; tells whether it came to an end in time. */
  private boolean join() {
    tried.sort(Comparator.comparingLong(Multipliers::bound).reversed());
    List<Multipliers> few = few();
    List<Bundle> joined = List.of(Bundle.empty(suppliers.length));
    for (int i = 0; i < model.materials() && !joined.isEmpty(); i++) {
      List<Bundle> bundles = new BundleList(this, best, relaxation, i, few).all();
      List<Bundle> next = bundles == null ? null : joinAll(joined, bundles, i + 1);
      if (next == null) {
        return false;
      }
      joined = next;
    }
    joined.stream().filter(this::reachesAll).forEach(b -> best.offer(plan(b)));
    return true;
  }

  /** The best multipliers and some that differ from them. */
  private List<Multipliers> few() {
    int step = Math.max(1, tried.size() / MOST_TABLES);
    List<Multipliers> few = new ArrayList<>();
    for (int m = 0; m < tried.size() && few.size() < MOST_TABLES; m += step) {
      few.add(tried.get(m));
    }
    return few;
  }

  private @Nullable List<Bundle> joinAll(List<Bundle> left, List<Bundle> right, int next) {
    List<Bundle> all = new ArrayList<>();
    for (Bundle a : left) {
      for (Bundle b : right) {
        Bundle both = a.join(b, asked);
        if (!isBeyond(both, next)) {
          all.add(both);
        }
      }
      if (best.isTimeUp() || all.size() > MOST_BUNDLES) {
        return null;
      }
    }
    return Bundle.undominated(all);
  }

  private boolean isBeyond(Bundle bundle, int next) {
    long limit = limit();
    for (Multipliers by : tried) {
      if (by.of(bundle) + by.fromMaterial(next) > limit) {
        return true;
      }
    }
    return false;
  }

  private boolean reachesAll(Bundle bundle) {
    for (int k = 0; k < asked.length; k++) {
      if (bundle.value(k) < asked[k]) {
        return false;
      }
    }
    return true;
  }

  private int[] plan(Bundle bundle) {
    int[] plan = new int[model.packages()];
    bundle.addTo(plan);
    return plan;
  }
}
