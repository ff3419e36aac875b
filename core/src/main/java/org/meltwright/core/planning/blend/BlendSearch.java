// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning.blend;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.numeric.LinearAnswer;
import org.meltwright.core.numeric.LinearAnswer.Kind;
import org.meltwright.core.numeric.LinearProgram;

/**
 * Looks for the best blend: rank by rank the least that ranked wishes must give way, then the aim;
 * where few parts are wished for, for every choice of them.
 */
final class BlendSearch {

  /** Below this a miss is none. */
  private static final double NOTHING = 1e-11;

  private static final double SLACK = 1e-9;

  /** How much more than it must a rank may give way, so that the next steps have room to move. */
  private static final double ROOM = 1e-7;

  /**
   * What a rank came to.
   *
   * @param columns its helpers
   * @param most the least sum that they can have
   */
  record Kept(List<Integer> columns, double most) {

    void in(LinearProgram program, int width) {
      if (most <= NOTHING) {
        for (int column : columns) {
          program.column(column, 0, 0);
        }
        return;
      }
      double[] row = new double[width];
      for (int column : columns) {
        row[column] = 1;
      }
      program.row(Double.NEGATIVE_INFINITY, most * (1 + ROOM), row);
    }
  }

  /** The best of one choice of parts, or of all choices. */
  record Best(
      Kind kind,
      BlendModel model,
      LinearAnswer answer,
      List<Kept> kept,
      long cases,
      boolean hasEquals,
      BlendCertificate certificate) {

    boolean isFound() {
      return kind == Kind.OPTIMAL;
    }
  }

  private final Coefficients coefficients;
  private final List<BlendPart> parts;
  private final boolean everyLot;

  BlendSearch(Coefficients coefficients, boolean everyLot) {
    this.coefficients = coefficients;
    this.parts = coefficients.parts();
    this.everyLot = everyLot;
  }

  List<BlendPart> parts() {
    return parts;
  }

  Coefficients coefficients() {
    return coefficients;
  }

  /** The best blend, by all choices of parts that the wishes allow. */
  Best best(List<Wish> wishes, @Nullable BlendAim aim, BlendModel.Size size) {
    List<Bounded> bounded = bounded(wishes);
    Best best = null;
    long cases = 0;
    boolean hasEquals = false;
    for (boolean[] choice : choices(wishes)) {
      Best next = one(bounded, aim, size, choice);
      cases++;
      int order = best == null ? -1 : compare(next, best);
      if (best == null || order < 0) {
        best = next;
        hasEquals = false;
      } else if (order == 0 && next.isFound() && !isSame(next, best)) {
        hasEquals = true;
      }
    }
    if (best == null) {
      throw new IllegalStateException("no choice of parts");
    }
    return new Best(
        best.kind(),
        best.model(),
        best.answer(),
        best.kept(),
        cases,
        hasEquals,
        best.certificate().ofCases(cases));
  }

  static List<Bounded> bounded(List<Wish> wishes) {
    List<Bounded> bounded = new ArrayList<>();
    for (Wish wish : wishes) {
      if (wish instanceof Bounded found) {
        bounded.add(found);
      }
    }
    return bounded;
  }

  /** Which parts may go in, for each choice. */
  private List<boolean[]> choices(List<Wish> wishes) {
    int most = parts.size();
    for (Wish wish : wishes) {
      most = wish instanceof PartCount count ? Math.min(most, count.most()) : most;
    }
    List<boolean[]> choices = new ArrayList<>();
    if (most >= parts.size()) {
      boolean[] all = new boolean[parts.size()];
      Arrays.fill(all, true);
      choices.add(all);
    } else {
      choose(choices, new boolean[parts.size()], 0, most);
    }
    return choices;
  }

  private static void choose(List<boolean[]> choices, boolean[] sofar, int from, int left) {
    if (left == 0) {
      choices.add(sofar.clone());
      return;
    }
    for (int p = from; p + left <= sofar.length; p++) {
      sofar[p] = true;
      choose(choices, sofar, p + 1, left - 1);
      sofar[p] = false;
    }
  }

  private static int compare(Best one, Best other) {
    if (!one.isFound() || !other.isFound()) {
      return Integer.compare(order(one), order(other));
    }
    for (int r = 0; r < one.kept().size(); r++) {
      int order = compare(one.kept().get(r).most(), other.kept().get(r).most());
      if (order != 0) {
        return order;
      }
    }
    return compare(one.answer().objective(), other.answer().objective());
  }

  /** What is undecided must not be taken for impossible. */
  private static int order(Best best) {
    return best.isFound() ? 0 : best.kind() == Kind.UNDECIDED ? 1 : 2;
  }

  private static int compare(double one, double other) {
    double slack = SLACK * Math.max(Math.abs(one), Math.abs(other)) + NOTHING;
    return Math.abs(one - other) <= slack ? 0 : Double.compare(one, other);
  }

  private static boolean isSame(Best one, Best other) {
    double[] x = one.model().amounts(one.answer());
    double[] y = other.model().amounts(other.answer());
    return IntStream.range(0, x.length).allMatch(p -> Math.abs(x[p] - y[p]) <= 1e-6);
  }

  private Best one(
      List<Bounded> wishes, @Nullable BlendAim aim, BlendModel.Size size, boolean[] choice) {
    BlendModel model = model(wishes, aim, size, choice);
    List<Kept> kept = new ArrayList<>();
    BlendCertificate certificate = BlendCertificate.NOTHING_YET;
    LinearAnswer last = null;
    for (int rank : ranks(wishes)) {
      List<Integer> columns = model.elastics(rank);
      double[] cost = new double[model.columns()];
      for (int column : columns) {
        cost[column] = 1;
      }
      LinearAnswer answer = solve(model, cost, aim, kept);
      if (answer.kind() != Kind.OPTIMAL) {
        return new Best(answer.kind(), model, answer, kept, 1, false, certificate);
      }
      certificate = certificate.with(answer);
      kept.add(new Kept(columns, Math.max(0, answer.objective())));
      last = answer;
    }
    if (aim == null && last != null) {
      return new Best(Kind.OPTIMAL, model, last, kept, 1, false, certificate);
    }
    double[] cost = aim == null ? new double[model.columns()] : model.objective(aim);
    LinearAnswer answer = solve(model, cost, aim, kept);
    return new Best(
        answer.kind(),
        model,
        answer,
        kept,
        1,
        false,
        answer.kind() == Kind.OPTIMAL ? certificate.with(answer) : certificate);
  }

  private static Iterable<Integer> ranks(List<Bounded> wishes) {
    TreeSet<Integer> ranks = new TreeSet<>();
    for (Bounded wish : wishes) {
      if (!wish.isHard()) {
        ranks.add(wish.place());
      }
    }
    return ranks;
  }

  BlendModel model(
      List<Bounded> wishes,
      @Nullable BlendAim aim,
      BlendModel.Size size,
      boolean[] choice,
      Composition... others) {
    List<Composition> recipes = new ArrayList<>(List.of(others));
    for (Bounded wish : wishes) {
      if (wish.figure() instanceof Figures.Change change) {
        recipes.add(change.recipe());
      }
    }
    if (aim instanceof BlendAim.LeastChange change) {
      recipes.add(change.recipe());
    }
    return new BlendModel(coefficients, wishes, recipes, everyLot, size, choice);
  }

  static LinearAnswer solve(
      BlendModel model, double[] cost, @Nullable BlendAim aim, List<Kept> kept) {
    return program(model, cost, aim, kept).solve();
  }

  static LinearProgram program(
      BlendModel model, double[] cost, @Nullable BlendAim aim, List<Kept> kept) {
    LinearProgram program = model.program(cost, aim);
    for (Kept each : kept) {
      each.in(program, model.columns());
    }
    return program;
  }

  /** Whether hard wishes leave any blend, however good. */
  Kind feasibility(List<Wish> wishes) {
    return best(wishes, null, BlendModel.Size.KILOGRAM).kind();
  }
}
