// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import java.util.PriorityQueue;

/**
 * Branch and bound over what each supplier is: not used, paid for carriage, or carrying for
 * nothing.
 *
 * <p>With that settled for all suppliers, each material is a covering knapsack by itself; only the
 * values from which carriage is free join the materials, see {@link FreeFreightSearch}. While a
 * supplier is open, its packages count without carriage, which bounds every choice from below.
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
    push(new byte[model.suppliers()]);
    while (!open.isEmpty() && open.element().bound.compareTo(best.score()) < 0) {
      if (best.isTimeUp()) {
        leave(open.element().bound);
        break;
      }
      expand(open.remove());
    }
    return outcome();
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
    return relaxation.solve(prices(new byte[model.suppliers()]), false).cost();
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
    int supplier = branchOn(node);
    if (supplier < 0) {
      settle(node);
      return;
    }
    for (byte mode = UNUSED; mode <= FREE; mode++) {
      if (isAllowed(supplier, mode)) {
        byte[] modes = node.modes.clone();
        modes[supplier] = mode;
        push(modes);
      }
    }
  }

  private boolean isAllowed(int supplier, byte mode) {
    boolean alwaysFree = model.isAlwaysFree(supplier);
    return switch (mode) {
      case PAYING -> !alwaysFree;
      case FREE -> alwaysFree || model.freeFrom()[supplier] != PackageModel.NEVER;
      default -> true;
    };
  }

  /** The open supplier whose real charges most exceed what the bound counts; -1 if none is open. */
  private int branchOn(Node node) {
    int found = -1;
    long most = -1;
    for (int s = 0; s < model.suppliers(); s++) {
      if (node.modes[s] == OPEN) {
        long charges =
            model.isUsed(node.plan, s) ? model.freightOf(node.plan, s) + model.handling()[s] : 0;
        if (charges > most) {
          most = charges;
          found = s;
        }
      }
    }
    return found;
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
      prices[p] = price(p, modes[model.supplier()[p]]);
    }
    return prices;
  }

  private long price(int p, byte mode) {
    boolean paysCarriage =
        mode == PAYING || (mode == OPEN && !isAllowed(model.supplier()[p], FREE));
    long price = model.cost()[p] + (paysCarriage ? model.freight()[p] : 0);
    return mode == UNUSED ? CoverTable.NONE : price;
  }

  private long fixed(byte[] modes) {
    long sum = 0;
    for (int s = 0; s < modes.length; s++) {
      sum += modes[s] == PAYING ? model.perOrder()[s] + model.handling()[s] : 0;
      sum += modes[s] == FREE ? model.handling()[s] : 0;
    }
    return sum;
  }
}
