// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

/** The best plan found so far, and the clock. */
final class Incumbent {

  private final PackageModel model;
  private final boolean isMassFirst;
  private final long deadline;
  private int[] plan = {};
  private Score score = Score.WORST;

  /**
   * Starts without a plan.
   *
   * @param model the purchase
   * @param isMassFirst whether plans are judged by mass before cost
   * @param deadline the {@link System#nanoTime} at which the search ends
   */
  Incumbent(PackageModel model, boolean isMassFirst, long deadline) {
    this.model = model;
    this.isMassFirst = isMassFirst;
    this.deadline = deadline;
  }

  PackageModel model() {
    return model;
  }

  boolean isMassFirst() {
    return isMassFirst;
  }

  boolean isTimeUp() {
    return System.nanoTime() - deadline >= 0;
  }

  int[] plan() {
    return plan;
  }

  Score score() {
    return score;
  }

  long cost() {
    return isMassFirst ? score.second() : score.first();
  }

  /** A score of a cost and a mass, in the order in which plans are judged. */
  Score score(long cost, long mass) {
    return isMassFirst ? new Score(mass, cost) : new Score(cost, mass);
  }

  Score trueScore(int[] candidate) {
    return score(model.costOf(candidate), model.massOf(candidate));
  }

  /** Keeps a plan that covers all needs, if it is better. */
  void offer(int[] candidate) {
    Score of = trueScore(candidate);
    if (of.compareTo(score) < 0) {
      score = of;
      plan = candidate.clone();
    }
  }

  /** What a plan is judged by, the first before the second. */
  record Score(long first, long second) implements Comparable<Score> {

    static final Score WORST = new Score(Long.MAX_VALUE, Long.MAX_VALUE);

    @Override
    public int compareTo(Score other) {
      int byFirst = Long.compare(first, other.first);
      return byFirst != 0 ? byFirst : Long.compare(second, other.second);
    }
  }
}
