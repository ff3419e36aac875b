// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * Leftovers combined to target shares, with as much of them used as possible.
 *
 * <p>For example, of 500 g at 1 : 6 and 300 g at 1 : 10, all of the first and 261.9 g of the second
 * make 1 : 7; the rest stays for another day.
 *
 * <p>In code:
 *
 * <pre>{@code
 * MaterialCatalogue shelf = MaterialCatalogue.standard();
 * List<Material> both = List.of(shelf.require("damar"), shelf.require("beeswax-yellow"));
 * Mixture strong = Mixture.of(Composition.ofParts(both, 1, 6), grams(500));
 * Mixture weak = Mixture.of(Composition.ofParts(both, 1, 10), grams(300));
 * ShareTarget oneInEight = ShareTarget.ofPercent(ShareOf.RESIN, 12.5);
 * Leftovers used = Leftovers.combine(List.of(strong, weak), List.of(oneInEight));
 * used.taken().get(1).massKilograms(); // 0.2619 kg
 * used.left().get(1).massKilograms(); // 0.0381 kg
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class Leftovers {

  private static final double NOTHING = 1e-9;

  private final List<Mixture> taken;
  private final List<Mixture> left;
  private final Mixture result;

  /**
   * Returns the largest combination of leftovers with target shares.
   *
   * @param leftovers what is there, each above zero
   * @param targets the shares to reach, by mass of the combination
   * @return the combination
   * @throws ProblemException if targets are out of reach: a problem for each, with the nearest
   *     share that can be had
   */
  public static Leftovers combine(List<Mixture> leftovers, List<ShareTarget> targets) {
    List<Composition> components = leftovers.stream().map(Mixture::composition).toList();
    Blend.of(components, targets);
    double total = leftovers.stream().mapToDouble(Mixture::massKilograms).sum();
    double[] used = largest(leftovers, Blend.contents(components, targets), targets, total);
    if (!(ExactSum.of(used) > NOTHING)) {
      throw new ProblemException(Problem.of(MixtureProblem.NO_PARTS, "0"));
    }
    return new Leftovers(leftovers, used, total);
  }

  /** Maximises Σ x where Σ x (content − target) = 0 and x + slack = what is there. */
  private static double[] largest(
      List<Mixture> leftovers, double[][] contents, List<ShareTarget> targets, double total) {
    int count = leftovers.size();
    int rows = targets.size() + count;
    double[][] a = new double[rows][2 * count];
    double[] b = new double[rows];
    double[] cost = new double[2 * count];
    for (int i = 0; i < count; i++) {
      for (int t = 0; t < targets.size(); t++) {
        a[t][i] = contents[t][i] - targets.get(t).share().value();
      }
      a[targets.size() + i][i] = 1;
      a[targets.size() + i][count + i] = 1;
      b[targets.size() + i] = leftovers.get(i).massKilograms() / total;
      cost[i] = -1;
    }
    double[] x = LinearProgram.minimise(a, b, cost);
    return x == null ? new double[count] : java.util.Arrays.copyOf(x, count);
  }

  private Leftovers(List<Mixture> leftovers, double[] used, double total) {
    List<Mixture> takes = new ArrayList<>();
    List<Mixture> rests = new ArrayList<>();
    for (int i = 0; i < used.length; i++) {
      Mixture there = leftovers.get(i);
      double mass = Math.min(there.massKilograms(), used[i] * total);
      takes.add(new Mixture(there.composition(), mass));
      rests.add(new Mixture(there.composition(), there.massKilograms() - mass));
    }
    this.taken = List.copyOf(takes);
    this.left = List.copyOf(rests);
    this.result = Mixture.blend(takes);
  }

  /**
   * Returns how much of each leftover is used.
   *
   * @return the amounts, in the order given; some may be nothing
   */
  public List<Mixture> taken() {
    return taken;
  }

  /**
   * Returns how much of each leftover stays.
   *
   * @return the amounts, in the order given; some may be nothing
   */
  public List<Mixture> left() {
    return left;
  }

  /**
   * Returns the combination.
   *
   * @return what is made of them
   */
  public Mixture result() {
    return result;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Leftovers that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(taken, left);
  }

  @Override
  public String toString() {
    return "leftovers: taken " + taken + ", left " + left;
  }
}
