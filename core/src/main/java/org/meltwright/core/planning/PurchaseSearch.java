// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import java.util.PriorityQueue;
import org.meltwright.core.planning.Incumbent.Score;

/**
 * Branch and bound over what each supplier is: not used, paid for carriage, or carrying for
 * nothing; and over each flat duty: avoided or paid.
 *
 * <p>With that settled, each material is a covering knapsack by itself; only the values from which
 * carriage is free join the materials, see {@link FreeFreightSearch}. While a supplier is open, its
 * packages count without carriage, and what an open duty is on without duty, which bounds every
 * choice from below.
 *
 * <p>A node's modes are those of the suppliers, then those of the duties; a duty is open, unused or
 * paying.
 */
final class PurchaseSearch {

  static final byte OPEN = 0;
  static final byte UNUSED = 1;
  static final byte PAYING = 2;
  static final byte FREE = 3;

  private final PackageModel model;
  private final Incumbent best;
  private final Relaxation relaxation;
  private final PriorityQueue<Node> open = new PriorityQueue<>();

  /** The least bound of what was left unsettled; above all bounds while nothing is. */
  private Score unsettled = Score.WORST;

  private static final class Node implements Comparable<Node> {

    private final Score bound;
    private final byte[] modes;
    private final int[] plan;

    Node(Score bound, byte[] modes, int[] plan) {
      this.bound = bound;
      this.modes = modes;
      this.plan = plan;
    }

    @Override
    public int compareTo(Node other) {
      return bound.compareTo(other.bound);
    }
  }

  PurchaseSearch(Incumbent best) {
    this.model = best.model();
    this.best = best;
    this.relaxation = new Relaxation(model);
  }

  /** Searches until the best plan is proved or the time is up, but always finds a plan. */
  Outcome run() {
    best.offer(simple());
    push(allOpen());
    while (!open.isEmpty() && open.element().bound.compareTo(best.score()) < 0) {
      if (best.isTimeUp()) {
        leave(open.element().bound);
        break;
      }
      expand(open.remove());
    }
    return outcome();
  }

  private byte[] allOpen() {
    return new byte[model.suppliers() + model.duties()];
  }

  /** Of each material the one package that is cheapest where only one kind is bought. */
  private int[] simple() {
    int[] plan = new int[model.packages()];
    for (int i = 0; i < model.materials(); i++) {
      long need = model.need()[i];
      int cheapest = model.packagesOf()[i][0];
      for (int p : model.packagesOf()[i]) {
        cheapest = costOfAll(p, need) < costOfAll(cheapest, need) ? p : cheapest;
      }
      plan[cheapest] = Math.toIntExact(Grid.ceilingDiv(need, model.mass()[cheapest]));
    }
    return plan;
  }

  private long costOfAll(int p, long need) {
    return Grid.ceilingDiv(need, model.mass()[p]) * (model.cost()[p] + model.freight()[p]);
  }

  /** What the search came to. */
  static final class Outcome {

    private final int[] plan;
    private final long cost;
    private final long bound;
    private final boolean isProved;

    Outcome(int[] plan, long cost, long bound, boolean isProved) {
      this.plan = plan;
      this.cost = cost;
      this.bound = bound;
      this.isProved = isProved;
    }

    /** The best plan. */
    int[] plan() {
      return plan;
    }

    /** What it costs. */
    long cost() {
      return cost;
    }

    /** What no plan of as little mass (if that is judged first) or no plan at all can go below. */
    long bound() {
      return bound;
    }

    /** Whether no plan is better. */
    boolean isProved() {
      return isProved;
    }
  }

  private Outcome outcome() {
    boolean isProved = unsettled.compareTo(best.score()) >= 0;
    long bound = isProved ? best.cost() : unsettledCost();
    return new Outcome(best.plan(), best.cost(), bound, isProved);
  }

  private long unsettledCost() {
    if (!best.isMassFirst()) {
      return unsettled.first();
    }
    return relaxation.solve(prices(allOpen()), false).cost();
  }

  private void leave(Score bound) {
    unsettled = bound.compareTo(unsettled) < 0 ? bound : unsettled;
  }

  private void push(byte[] modes) {
    Relaxation.Answer answer = relaxation.solve(prices(modes), best.isMassFirst());
    if (!answer.isPossible()) {
      return;
    }
    if (answer.isPlanned()) {
      best.offer(answer.plan());
    }
    Score bound = best.score(answer.cost() + fixed(modes), answer.mass());
    if (bound.compareTo(best.score()) < 0) {
      open.add(new Node(bound, modes, answer.plan()));
    }
  }

  private void expand(Node node) {
    int chosen = branchOn(node);
    if (chosen < 0) {
      settle(node);
      return;
    }
    for (byte mode = UNUSED; mode <= FREE; mode++) {
      if (chosen >= model.suppliers() ? mode != FREE : isAllowed(chosen, mode)) {
        byte[] modes = node.modes.clone();
        modes[chosen] = mode;
        push(avoided(modes));
      }
    }
  }

  /** Marks the open duties that are on nothing which these modes let one buy. */
  private byte[] avoided(byte[] modes) {
    for (int d = 0; d < model.duties(); d++) {
      if (modes[model.suppliers() + d] == OPEN && !canBeDue(d, modes)) {
        modes[model.suppliers() + d] = UNUSED;
      }
    }
    return modes;
  }

  private boolean canBeDue(int d, byte[] modes) {
    for (int p = 0; p < model.packages(); p++) {
      if (model.dutyOf()[p] == d && modes[model.supplier()[p]] != UNUSED) {
        return true;
      }
    }
    return false;
  }

  private boolean isAllowed(int supplier, byte mode) {
    boolean alwaysFree = model.isAlwaysFree(supplier);
    return switch (mode) {
      case PAYING -> !alwaysFree;
      case FREE -> alwaysFree || model.freeFrom()[supplier] != PackageModel.NEVER;
      default -> true;
    };
  }

  /** The open supplier or duty that most exceeds what the bound counts; -1 if none is open. */
  private int branchOn(Node node) {
    int found = -1;
    long most = -1;
    for (int k = 0; k < node.modes.length; k++) {
      long charges = node.modes[k] == OPEN ? charges(k, node.plan) : -1;
      if (charges > most) {
        most = charges;
        found = k;
      }
    }
    return found;
  }

  /** What a plan is charged by a supplier, beside packages, or for a duty. */
  private long charges(int k, int[] plan) {
    int d = k - model.suppliers();
    if (d >= 0) {
      return model.isDue(plan, d) ? model.duty()[d] : 0;
    }
    return model.isUsed(plan, k) ? model.freightOf(plan, k) + model.handling()[k] : 0;
  }

  private void settle(Node node) {
    if (!relaxation.isExact()) {
      leave(node.bound);
      return;
    }
    FreeFreightSearch search =
        new FreeFreightSearch(best, relaxation, node.modes, prices(node.modes), fixed(node.modes));
    if (!search.run()) {
      leave(max(search.bound(), node.bound));
    }
  }

  private static Score max(Score one, Score other) {
    return one.compareTo(other) >= 0 ? one : other;
  }

  private long[] prices(byte[] modes) {
    long[] prices = new long[model.packages()];
    for (int p = 0; p < prices.length; p++) {
      prices[p] = isAvoided(p, modes) ? CoverTable.NONE : price(p, modes[model.supplier()[p]]);
    }
    return prices;
  }

  private boolean isAvoided(int p, byte[] modes) {
    int d = model.dutyOf()[p];
    return d != PackageModel.NO_DUTY && modes[model.suppliers() + d] == UNUSED;
  }

  private long price(int p, byte mode) {
    boolean paysCarriage =
        mode == PAYING || (mode == OPEN && !isAllowed(model.supplier()[p], FREE));
    long price = model.cost()[p] + (paysCarriage ? model.freight()[p] : 0);
    return mode == UNUSED ? CoverTable.NONE : price;
  }

  private long fixed(byte[] modes) {
    long sum = 0;
    for (int s = 0; s < model.suppliers(); s++) {
      sum += modes[s] == PAYING ? model.perOrder()[s] + model.handling()[s] : 0;
      sum += modes[s] == FREE ? model.handling()[s] : 0;
    }
    for (int d = 0; d < model.duties(); d++) {
      sum += modes[model.suppliers() + d] == PAYING ? model.duty()[d] : 0;
    }
    return sum;
  }
}
