// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning.blend;

import org.jspecify.annotations.Nullable;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.numeric.LinearAnswer;
import org.meltwright.core.numeric.LinearAnswer.Kind;
import org.meltwright.core.numeric.LinearProgram;

/**
 * The blends that are as good as the best: whether there are any, and from where to where they go.
 */
final class EqualBlends {

  private static final double SLACK = 1e-9;
  private static final double DIFFERENT = 1e-6;

  /** Multiples of it are spread evenly: no two parts weigh the same, nor sums of few of them. */
  private static final double GOLDEN = 0.6180339887498949;

  private final BlendSearch search;
  private final BlendSearch.Best best;
  private final BlendAim aim;
  private final double[] shown;
  private final double[] least;
  private final double[] most;

  EqualBlends(
      BlendSearch search, BlendSearch.Best best, BlendAim aim, @Nullable Composition usual) {
    this.search = search;
    this.best = best;
    this.aim = aim;
    this.least = best.model().amounts(best.answer());
    this.most = least.clone();
    if (mayBeSeveral() && differ()) {
      span();
    }
    this.shown =
        usual != null && areSeveral() && !(aim instanceof BlendAim.LeastChange)
            ? nearest(usual)
            : best.model().amounts(best.answer());
  }

  private boolean mayBeSeveral() {
    boolean may = false;
    for (int c = 0; c < best.model().columns(); c++) {
      may |= best.answer().mayMove(c);
    }
    for (int r = 0; r < best.model().rows.size(); r++) {
      may |= best.answer().mayMoveRow(r);
    }
    return may;
  }

  /**
   * Whether two blends at far ends of those that are as good are two: ends of no plain direction.
   */
  private boolean differ() {
    double[] cost = new double[best.model().columns()];
    double[] back = new double[cost.length];
    for (int p = 0; p < least.length; p++) {
      cost[p] = 1 + (p * GOLDEN) % 1;
      back[p] = -cost[p];
    }
    LinearAnswer one = among(best.model(), cost).solve();
    LinearAnswer other = among(best.model(), back).solve();
    return one.kind() != Kind.OPTIMAL
        || other.kind() != Kind.OPTIMAL
        || Math.abs(one.objective() + other.objective())
            > DIFFERENT * Math.max(Math.abs(one.objective()), 1e-9);
  }

  private void span() {
    for (int p = 0; p < least.length; p++) {
      double[] cost = new double[best.model().columns()];
      cost[p] = 1;
      least[p] = Math.min(least[p], Math.max(0, value(p, cost)));
      cost[p] = -1;
      most[p] = Math.max(most[p], value(p, cost));
    }
  }

  private double value(int part, double... cost) {
    LinearAnswer answer = among(best.model(), cost).solve();
    return answer.kind() == Kind.OPTIMAL ? answer.value(part) : least[part];
  }

  /** The programme with one row more: no worse than the best. */
  private LinearProgram among(BlendModel model, double... cost) {
    double[] objective = model.objective(aim);
    double value = best.answer().objective();
    return BlendSearch.program(model, cost, aim, best.kept())
        .row(Double.NEGATIVE_INFINITY, value + SLACK * Math.abs(value) + 1e-12, objective);
  }

  private double[] nearest(Composition usual) {
    BlendModel own = best.model();
    BlendModel model = search.model(own.wishes, aim, own.size(), own.choice(), usual);
    double[] change = model.factors(new Figures.Change(usual), Figure.End.MIDDLE, 0, true);
    LinearAnswer answer = among(model, change).solve();
    return answer.kind() == Kind.OPTIMAL ? model.amounts(answer) : own.amounts(best.answer());
  }

  /** Whether another blend is as good. */
  boolean areSeveral() {
    if (best.hasEquals()) {
      return true;
    }
    double widest = 0;
    double whole = 1e-9;
    for (int p = 0; p < most.length; p++) {
      widest = Math.max(widest, most[p] - least[p]);
      whole = Math.max(whole, most[p]);
    }
    return widest > DIFFERENT * whole;
  }

  /** What goes in of each part of the one that is shown. */
  double[] shown() {
    return shown;
  }

  double least(int part) {
    return least[part];
  }

  double most(int part) {
    return most[part];
  }
}
