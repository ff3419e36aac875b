// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning.blend;

import java.util.ArrayList;
import java.util.List;
import org.meltwright.core.numeric.LinearAnswer;
import org.meltwright.core.numeric.LinearAnswer.Kind;

/**
 * What each wish that binds is worth: by the price of its row, where its bound stands alone, and by
 * asking again with one step more, where it multiplies what it bounds.
 */
final class Worths {

  /** How far a bound is moved to see which price holds beyond a corner. */
  private static final double[] NUDGES = {1e-3, 1e-5, 1e-7};

  private static final double NOTHING = 1e-9;

  private final BlendSearch search;
  private final BlendSearch.Best best;
  private final BlendAim aim;
  private final BlendModel.Size size;

  Worths(BlendSearch search, BlendSearch.Best best, BlendAim aim) {
    this.search = search;
    this.best = best;
    this.aim = aim;
    this.size = best.model().size();
  }

  List<BindingWish> all() {
    List<BindingWish> all = new ArrayList<>();
    for (int r = 0; r < best.model().rows.size(); r++) {
      double price = best.answer().price(r);
      BlendRow row = best.model().rows.get(r);
      if (Math.abs(price) > 0 && hasGivenNoWay(row)) {
        BindingWish found = row.isLinear() ? linear(r, row, price) : stepped(row, price);
        if (found.worth() > NOTHING * Math.max(1e-3, Math.abs(best.answer().objective()))) {
          all.add(found);
        }
      }
    }
    return List.copyOf(all);
  }

  private boolean hasGivenNoWay(BlendRow row) {
    return row.helper() < 0 || best.answer().value(row.helper()) <= NOTHING;
  }

  /** The way that helps: a high bound up, a low one down, an exact one as its price says. */
  private static boolean goesUp(BlendRow row, double price) {
    return row.isBoth() ? price < 0 : row.isUpper();
  }

  private BindingWish linear(int index, BlendRow row, double price) {
    if (row.wish().figure().isInverse()) {
      return stepped(row, price);
    }
    boolean up = goesUp(row, price);
    double[] range = best.answer().range(index);
    double room = (up ? range[1] : -range[0]) / row.perUnit();
    return room > nothing(row)
        ? binding(row, up, price, range[0] / row.perUnit(), range[1] / row.perUnit())
        : beyondTheCorner(index, row, price);
  }

  private static double nothing(BlendRow row) {
    return NOTHING * row.wish().figure().step().size();
  }

  /** In a corner several prices are right; the one that counts holds when the bound has moved. */
  private BindingWish beyondTheCorner(int index, BlendRow row, double price) {
    boolean up = goesUp(row, price);
    for (double nudge : NUDGES) {
      double way = (up ? nudge : -nudge) * row.wish().figure().step().size();
      LinearAnswer moved = moved(row, row.wish().bound(row.isUpper()) + way);
      if (moved.kind() == Kind.OPTIMAL) {
        double[] there = moved.range(index);
        double down = way + there[0] / row.perUnit();
        double on = way + there[1] / row.perUnit();
        if (up ? down <= nothing(row) : on >= -nothing(row)) {
          return binding(row, up, moved.price(index), up ? 0 : down, up ? on : 0);
        }
      }
    }
    return stepped(row, price);
  }

  private BindingWish binding(BlendRow row, boolean up, double price, double down, double on) {
    double bound = row.wish().bound(row.isUpper());
    double gain =
        Math.max(0, up ? -price : price) * row.perUnit() * row.wish().figure().step().size();
    return new BindingWish(row.wish(), bound, up, gain, bound + down, bound + on, true, aim);
  }

  private BindingWish stepped(BlendRow row, double price) {
    Figure figure = row.wish().figure();
    double bound = row.wish().bound(row.isUpper());
    boolean up = goesUp(row, price);
    boolean more = up != figure.isInverse();
    double next = figure.moved(bound, more ? 1 : -1);
    LinearAnswer moved = moved(row, next);
    double gain =
        moved.kind() == Kind.OPTIMAL
            ? Math.max(0, best.answer().objective() - moved.objective())
            : 0;
    return new BindingWish(
        row.wish(), bound, more, gain, Math.min(bound, next), Math.max(bound, next), false, aim);
  }

  private LinearAnswer moved(BlendRow row, double bound) {
    List<Bounded> wishes = new ArrayList<>();
    for (Bounded wish : best.model().wishes) {
      wishes.add(wish.equals(row.wish()) ? with(row, bound) : wish);
    }
    BlendModel model = search.model(wishes, aim, size, best.model().choice());
    return BlendSearch.solve(model, model.objective(aim), aim, best.kept());
  }

  private static Bounded with(BlendRow row, double bound) {
    Bounded wish = row.wish();
    return row.isBoth() ? wish.withLow(bound).withHigh(bound) : wish.with(row.isUpper(), bound);
  }
}
