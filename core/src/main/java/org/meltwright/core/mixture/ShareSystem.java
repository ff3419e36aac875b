// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.meltwright.core.numeric.LinearAnswer;
import org.meltwright.core.numeric.LinearProgram;
import org.meltwright.units.Bilingual;
import org.meltwright.units.MassFraction;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityFormatter;
import org.meltwright.units.VolumeFraction;

/** Shares of components that together reach target shares: what a correction of several needs. */
final class ShareSystem {

  private static final int FEW_DIGITS = 4;
  private static final int ALL_DIGITS = 16;

  private static final double EXACT = 1e-9;

  private final List<ShareTarget> targets;
  private final int components;

  /** Row for target, column for component: the share of what is targeted in the component. */
  private final double[][] contents;

  private final double[] wanted;

  ShareSystem(List<Composition> components, List<ShareTarget> targets) {
    this.targets = targets;
    this.components = components.size();
    this.contents = new double[targets.size()][components.size()];
    this.wanted = targets.stream().mapToDouble(t -> t.share().value()).toArray();
    for (int t = 0; t < contents.length; t++) {
      for (int c = 0; c < contents[t].length; c++) {
        contents[t][c] = targets.get(t).what().valueIn(components.get(c));
      }
    }
  }

  double content(int target, int component) {
    return contents[target][component];
  }

  /** The shares with as much of the first component as may be. */
  double[] largestFirst() {
    requireInReach();
    LinearAnswer answer = largestFirst(0);
    if (answer.kind() != LinearAnswer.Kind.OPTIMAL) {
      answer = required(largestFirst(2 * EXACT)); // in reach is what is missed by a hair
    }
    return Amounts.normalised(answer.values());
  }

  private LinearAnswer largestFirst(double hair) {
    double[] cost = new double[components];
    cost[0] = -1;
    LinearProgram program = LinearProgram.minimising(cost).row(1, 1, ones());
    for (int t = 0; t < contents.length; t++) {
      program.row(wanted[t] - hair, wanted[t] + hair, contents[t]);
    }
    return program.solve();
  }

  private double[] ones() {
    double[] ones = new double[components];
    Arrays.fill(ones, 1);
    return ones;
  }

  private static LinearAnswer required(LinearAnswer answer) {
    if (answer.kind() != LinearAnswer.Kind.OPTIMAL) {
      throw new ProblemException(Problem.of(MixtureProblem.UNDECIDED, ""));
    }
    return answer;
  }

  private void requireInReach() {
    List<MassFraction> nearest = nearest();
    List<Problem> problems = new ArrayList<>();
    for (int t = 0; t < wanted.length; t++) {
      if (Math.abs(nearest.get(t).value() - wanted[t]) > EXACT) {
        problems.add(outOfReach(targets.get(t), nearest.get(t).value()));
      }
    }
    if (!problems.isEmpty()) {
      throw new ProblemException(problems);
    }
  }

  private LinearAnswer nearest(double hair) {
    double[] cost = new double[components + 2 * wanted.length];
    Arrays.fill(cost, components, cost.length, 1);
    LinearProgram program = LinearProgram.minimising(cost).row(1, 1, ones());
    for (int t = 0; t < wanted.length; t++) {
      double[] row = Arrays.copyOf(contents[t], cost.length);
      row[components + 2 * t] = 1;
      row[components + 2 * t + 1] = -1;
      program.row(wanted[t] - hair, wanted[t] + hair, row);
    }
    return program.solve();
  }

  /** For each target the wanted share if it can be had, else the nearest, by sum of distances. */
  List<MassFraction> nearest() {
    LinearAnswer answer = nearest(0);
    if (answer.kind() != LinearAnswer.Kind.OPTIMAL) {
      answer = required(nearest(EXACT / 10)); // shares next to nothing, told within a hair
    }
    List<MassFraction> reached = new ArrayList<>();
    for (int t = 0; t < wanted.length; t++) {
      int less = components + 2 * t;
      double miss = answer.value(less + 1) - answer.value(less);
      reached.add(MassFraction.of(Amounts.clamp(wanted[t] + miss)));
    }
    return List.copyOf(reached);
  }

  static Problem outOfReach(ShareTarget target, double nearest) {
    return outOfReach(target.what(), target.share().value(), nearest, ShareSystem::byMass);
  }

  /** A share by volume that lies beyond what is there and what may be added. */
  static Problem outOfReach(ShareOf what, VolumeFraction target, double present, double added) {
    double wanted = target.value();
    double nearest = Math.abs(added - wanted) < Math.abs(present - wanted) ? added : present;
    return outOfReach(what, wanted, nearest, ShareSystem::byVolume);
  }

  private static Problem outOfReach(ShareOf what, double wanted, double nearest, InWords inWords) {
    int digits = FEW_DIGITS;
    while (wanted != nearest
        && digits < ALL_DIGITS
        && inWords.of(wanted, digits).equals(inWords.of(nearest, digits))) {
      digits++;
    }
    return Problem.of(MixtureProblem.OUT_OF_REACH, inWords.of(wanted, digits))
        .with("counted", what.inWords())
        .with("nearest", inWords.of(nearest, digits));
  }

  private interface InWords {
    Bilingual of(double share, int digits);
  }

  private static Bilingual byMass(double share, int digits) {
    MassFraction fraction = MassFraction.of(Amounts.clamp(share));
    QuantityFormatter few = QuantityFormatter.ofSignificantDigits(digits);
    return Bilingual.of(reader -> few.withLocale(reader).format(fraction));
  }

  private static Bilingual byVolume(double share, int digits) {
    VolumeFraction fraction = VolumeFraction.of(Amounts.clamp(share));
    QuantityFormatter few = QuantityFormatter.ofSignificantDigits(digits);
    return Bilingual.of(reader -> few.withLocale(reader).format(fraction));
  }
}
