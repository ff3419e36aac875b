// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning.blend;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.meltwright.core.numeric.LinearAnswer.Kind;

/**
 * Wishes that contradict each other, none too many, and by how much each would have to give way.
 *
 * <p>One wish after the other is left out: if the rest is still impossible it stays out. What
 * remains is impossible, and possible without any one of it.
 */
final class Conflicts {

  /** Beyond a million times a bound there is none: the wish is left out then. */
  private static final int DOUBLINGS = 20;

  private static final int HALVINGS = 60;
  private static final double CLOSE = 1e-9;

  private final BlendSearch search;
  private final List<Wish> hard;
  private boolean isUndecided;

  Conflicts(BlendSearch search, List<Wish> wishes) {
    this.search = search;
    this.hard = wishes.stream().filter(w -> w.rank().isEmpty()).toList();
  }

  /** Whether some step could not be decided, so that what was found is not sure. */
  boolean isUndecided() {
    return isUndecided;
  }

  private boolean isPossible(List<Wish> wishes) {
    Kind kind = search.feasibility(wishes);
    isUndecided |= kind == Kind.UNDECIDED;
    return kind != Kind.INFEASIBLE;
  }

  /** One set that cannot be met; the wishes that the question adds itself are left out first. */
  List<Wish> set() {
    List<Wish> left = new ArrayList<>(hard);
    for (Wish wish : hard) {
      List<Wish> without = new ArrayList<>(left);
      without.remove(wish);
      if (!isPossible(without)) {
        left = without;
      }
    }
    return List.copyOf(left);
  }

  /** By how much a wish would have to give way, all other hard wishes kept. */
  Concession concession(Wish wish) {
    if (wish instanceof PartCount count) {
      return moreParts(count);
    }
    Bounded bounded = (Bounded) wish;
    return bounded.figure().per() == Figure.Per.BLEND ? stretched(bounded) : halved(bounded);
  }

  private Concession moreParts(PartCount count) {
    for (int most = count.most() + 1; most <= search.parts().size(); most++) {
      if (isPossible(replaced(count, new PartCount(most)))) {
        return Concession.wouldBe(count, count.most(), most);
      }
    }
    return Concession.noHelp(count, count.most());
  }

  private List<Wish> replaced(Wish wish, Wish by) {
    return hard.stream().map(w -> w.equals(wish) ? by : w).toList();
  }

  /** A bound on a share or a mean moves along a line: the least is a programme of its own. */
  private Concession stretched(Bounded wish) {
    Bounded soft = new Bounded(wish.figure(), wish.low(), wish.high(), 1);
    BlendSearch.Best best = search.best(replaced(wish, soft), null, BlendModel.Size.KILOGRAM);
    isUndecided |= best.kind() == Kind.UNDECIDED;
    if (!best.isFound()) {
      return Concession.noHelp(wish, wish.hasLow() ? wish.low() : wish.high());
    }
    double miss = best.kept().get(0).most();
    double[] values = best.answer().values();
    BlendRow missed = null;
    double worst = 0;
    for (BlendRow row : best.model().rows) {
      if (row.wish().equals(soft)) {
        double over = row.beyond(values);
        if (missed == null || over > worst) {
          missed = row;
          worst = over;
        }
      }
    }
    if (missed == null) {
      return Concession.noHelp(wish, wish.low());
    }
    double bound = wish.bound(missed.isUpper());
    double way = miss * BlendModel.weight(wish, bound);
    return Concession.wouldBe(wish, bound, missed.isUpper() ? bound + way : bound - way);
  }

  /** Other bounds multiply what they bound: the least way is found by halving. */
  private Concession halved(Bounded wish) {
    Concession low = wish.hasLow() ? halved(wish, false) : null;
    Concession high = wish.hasHigh() ? halved(wish, true) : null;
    if (low == null || high == null) {
      return low != null ? low : high != null ? high : Concession.noHelp(wish, wish.low());
    }
    if (!low.isEnough() || !high.isEnough()) {
      return low.isEnough() ? low : high;
    }
    return low.from() - low.to() <= high.to() - high.from() ? low : high;
  }

  private Concession halved(Bounded wish, boolean isUpper) {
    double bound = wish.bound(isUpper);
    double far = isUpper ? possibleAbove(wish, bound) : 0;
    if (Double.isInfinite(far) || !isPossible(wish, isUpper, far)) {
      double open = isUpper ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
      return isPossible(wish, isUpper, open)
          ? Concession.wouldBe(wish, bound, open)
          : Concession.noHelp(wish, bound);
    }
    double near = bound;
    for (int i = 0; i < HALVINGS && Math.abs(far - near) > CLOSE * Math.abs(far); i++) {
      double middle = near + (far - near) / 2;
      if (isPossible(wish, isUpper, middle)) {
        far = middle;
      } else {
        near = middle;
      }
    }
    return Concession.wouldBe(wish, bound, far);
  }

  private double possibleAbove(Bounded wish, double bound) {
    if (!isPossible(replaced(wish, wish.withHigh(Double.POSITIVE_INFINITY)))) {
      return Double.POSITIVE_INFINITY;
    }
    double step = Math.max(Math.abs(bound), wish.figure().step().size());
    return IntStream.range(0, DOUBLINGS)
        .mapToDouble(i -> bound + Math.scalb(step, i))
        .filter(far -> isPossible(wish, true, far))
        .findFirst()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /**
   * So near to the bound that nothing is proved it counts as impossible: what is told can be had.
   */
  private boolean isPossible(Bounded wish, boolean isUpper, double bound) {
    return search.feasibility(replaced(wish, wish.with(isUpper, bound))) == Kind.OPTIMAL;
  }
}
