// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.explain.Explanation;
import org.meltwright.units.Bilingual;
import org.meltwright.units.MassFraction;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityFormatter;

/**
 * How much of each of several mixes makes a whole with target shares.
 *
 * <p>The masses are a small linear system without negative amounts. Where many answers exist, the
 * one with the most of the first component is taken. Where none exists, the problems name each
 * target that is out of reach and the nearest share that can be had while the others are kept.
 *
 * <p>For example, 800 g at one part of resin in eight, from a strong and a weak medium:
 *
 * <pre>{@code
 * MaterialCatalogue shelf = MaterialCatalogue.standard();
 * List<Material> both = List.of(shelf.require("damar"), shelf.require("beeswax-yellow"));
 * Composition strong = Composition.ofParts(both, 1, 4);
 * Composition weak = Composition.ofParts(both, 1, 9);
 * ShareTarget resin = ShareTarget.ofPercent(ShareOf.RESIN, 12.5);
 * Blend blend = Blend.of(List.of(strong, weak), List.of(resin));
 * blend.shareValue(0); // 0.25
 * blend.amounts(grams(800)).get(0).massKilograms(); // 0.2 kg
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class Blend {

  private static final int FEW_DIGITS = 4;
  private static final int ALL_DIGITS = 16;

  private static final double EXACT = 1e-9;

  private final List<Composition> components;
  private final double[] shares;

  /**
   * Returns the blend of components that reaches target shares.
   *
   * <p>For example, 25 % and 50 % spirit to 40 % is 2 : 3.
   *
   * @param components what may be mixed, at least one
   * @param targets the shares to reach
   * @return the blend
   * @throws ProblemException if there is no component, or a target is out of reach; a problem for
   *     each such target
   */
  public static Blend of(List<Composition> components, List<ShareTarget> targets) {
    requireComponents(components);
    double[][] contents = contents(components, targets);
    double[] wanted = targets.stream().mapToDouble(t -> t.share().value()).toArray();
    requireInReach(contents, wanted, targets);
    double[] shares = LinearProgram.largestFirst(contents, wanted);
    return new Blend(List.copyOf(components), Amounts.normalised(shares));
  }

  /**
   * Returns the shares nearest to the targets that the components can reach.
   *
   * @param components what may be mixed, at least one
   * @param targets the shares wanted
   * @return for each target the wanted share if it can be had, else the nearest; what is nearest
   *     may need a component alone, or be approached only as its amount grows
   * @throws ProblemException if there is no component
   */
  public static List<MassFraction> nearest(
      List<Composition> components, List<ShareTarget> targets) {
    requireComponents(components);
    double[][] contents = contents(components, targets);
    double[] wanted = targets.stream().mapToDouble(t -> t.share().value()).toArray();
    return LinearProgram.nearest(contents, wanted);
  }

  private static void requireComponents(List<Composition> components) {
    if (components.isEmpty()) {
      throw new ProblemException(Problem.of(MixtureProblem.NO_PARTS, "0"));
    }
  }

  private static void requireInReach(
      double[][] contents, double[] wanted, List<ShareTarget> targets) {
    List<MassFraction> nearest = LinearProgram.nearest(contents, wanted);
    List<Problem> problems = new ArrayList<>();
    for (int i = 0; i < wanted.length; i++) {
      if (Math.abs(nearest.get(i).value() - wanted[i]) > EXACT) {
        problems.add(outOfReach(targets.get(i), nearest.get(i).value()));
      }
    }
    if (!problems.isEmpty()) {
      throw new ProblemException(problems);
    }
  }

  static Problem outOfReach(ShareTarget target, double nearest) {
    double wanted = target.share().value();
    int digits = FEW_DIGITS;
    while (wanted != nearest && digits < ALL_DIGITS && isShownAlike(wanted, nearest, digits)) {
      digits++;
    }
    return Problem.of(MixtureProblem.OUT_OF_REACH, inWords(wanted, digits))
        .with("counted", target.what().inWords())
        .with("nearest", inWords(nearest, digits));
  }

  private static boolean isShownAlike(double one, double other, int digits) {
    return inWords(one, digits).equals(inWords(other, digits));
  }

  private static Bilingual inWords(double share, int digits) {
    MassFraction fraction = MassFraction.of(Amounts.clamp(share));
    QuantityFormatter few = QuantityFormatter.ofSignificantDigits(digits);
    return Bilingual.of(reader -> few.withLocale(reader).format(fraction));
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, "%.4g %% by mass", share * 100);
  }

  /** Row for target, column for component: the share of what is targeted in the component. */
  static double[][] contents(List<Composition> components, List<ShareTarget> targets) {
    double[][] contents = new double[targets.size()][components.size()];
    for (int t = 0; t < contents.length; t++) {
      for (int c = 0; c < contents[t].length; c++) {
        contents[t][c] = targets.get(t).what().valueIn(components.get(c));
      }
    }
    return contents;
  }

  private Blend(List<Composition> components, double[] shares) {
    this.components = components;
    this.shares = shares;
  }

  /**
   * Returns the share of a component in the whole.
   *
   * @param index the place of the component, from zero
   * @return its share by mass, from 0 to 1
   */
  public double shareValue(int index) {
    return shares[index];
  }

  /**
   * Returns what the blend is made of.
   *
   * @return the composition of the whole
   */
  public Composition composition() {
    return Composition.blend(components, shares);
  }

  /**
   * Returns how much of each component makes a total.
   *
   * @param total the mass of the whole
   * @return the amounts, in the order of the components
   * @throws ProblemException if the total is negative or not finite
   */
  public List<Mixture> amounts(Quantity<Mass> total) {
    return amountsKilograms(Amounts.require(total));
  }

  /**
   * Returns how much of each component goes with an amount of one of them.
   *
   * @param index the place of the component whose amount is known, from zero
   * @param mass its mass
   * @return the amounts, in the order of the components
   * @throws ProblemException if the blend takes none of it, or the mass is negative or not finite
   */
  public List<Mixture> amountsFor(int index, Quantity<Mass> mass) {
    if (!(shares[index] > 0)) {
      throw new ProblemException(
          Problem.of(MixtureProblem.NOT_IN_MIX, components.get(index).toString())
              .with("materials", composition().toString()));
    }
    return amountsKilograms(Amounts.require(mass) / shares[index]);
  }

  private List<Mixture> amountsKilograms(double total) {
    List<Mixture> amounts = new ArrayList<>();
    for (int i = 0; i < shares.length; i++) {
      amounts.add(new Mixture(components.get(i), total * shares[i]));
    }
    return List.copyOf(amounts);
  }

  /**
   * Returns how the blend comes about.
   *
   * @return the explanation
   */
  public Explanation explanation() {
    Explanation.Builder text =
        Explanation.of("Blend to target shares")
            .formula("Σ share of component × its content = target, no share below zero");
    for (int i = 0; i < shares.length; i++) {
      text.step(percent(shares[i]) + " of " + components.get(i));
    }
    return text.build();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Blend that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(components, DoubleStream.of(shares).boxed().toList());
  }

  @Override
  public String toString() {
    return "blend of " + components + " by " + Arrays.toString(shares);
  }
}
