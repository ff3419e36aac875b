// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;

/** The small solver beside that of Apache Commons Math. */
class LinearProgramProperties {

  @Property
  void theLeastCostIsThatOfAnotherSolver(
      @ForAll @IntRange(min = 1, max = 4) int rows,
      @ForAll @IntRange(min = 1, max = 7) int columns,
      @ForAll long seed) {
    java.util.Random random = new java.util.Random(seed);
    double[][] a = new double[rows][columns];
    double[] start = new double[columns];
    double[] cost = new double[columns];
    for (int c = 0; c < columns; c++) {
      start[c] = random.nextInt(3) == 0 ? 0 : random.nextDouble();
      cost[c] = random.nextDouble();
    }
    double[] b = new double[rows];
    for (int r = 0; r < rows; r++) {
      for (int c = 0; c < columns; c++) {
        a[r][c] = random.nextInt(4) == 0 ? 0 : random.nextDouble();
        b[r] += a[r][c] * start[c];
      }
    }
    double[] x = LinearProgram.minimise(a, b, cost);
    assertThat(x).isNotNull();
    double[] other = solveElsewhere(a, b, cost);
    assertThat(dot(cost, x)).isCloseTo(dot(cost, other), within(1e-6));
    for (int r = 0; r < rows; r++) {
      assertThat(dot(a[r], x)).isCloseTo(b[r], within(1e-8));
    }
  }

  @Example
  void whatHasNoSolutionIsNull() {
    assertThat(
            LinearProgram.minimise(new double[][] {{1}, {1}}, new double[] {1, 2}, new double[1]))
        .isNull();
  }

  @Example
  void rowsThatRepeatEachOtherDoNoHarm() {
    double[][] a = {{1, 1}, {2, 2}, {1, 1}};
    double[] x = LinearProgram.minimise(a, new double[] {1, 2, 1}, new double[] {1, 2});
    assertThat(x).containsExactly(new double[] {1, 0}, within(1e-12));
  }

  private static double[] solveElsewhere(double[][] a, double[] b, double[] cost) {
    List<LinearConstraint> rows = new ArrayList<>();
    for (int r = 0; r < b.length; r++) {
      rows.add(new LinearConstraint(a[r], Relationship.EQ, b[r]));
    }
    return new SimplexSolver()
        .optimize(
            new LinearObjectiveFunction(cost, 0),
            new LinearConstraintSet(rows),
            GoalType.MINIMIZE,
            new NonNegativeConstraint(true))
        .getPoint();
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
