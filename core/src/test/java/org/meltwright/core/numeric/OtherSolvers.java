// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.numeric;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.optim.MaxIter;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/** The same programme by two general solvers; none where they say that there is none. */
final class OtherSolvers {

  private OtherSolvers() {}

  static OptionalDouble commonsMath(RandomProgramme p) {
    List<LinearConstraint> rows = new ArrayList<>();
    for (int r = 0; r < p.a.length; r++) {
      constrain(rows, p.a[r], p.least[r], p.most[r]);
    }
    for (int c = 0; c < p.cost.length; c++) {
      double[] one = new double[p.cost.length];
      one[c] = 1;
      constrain(rows, one, Double.NEGATIVE_INFINITY, p.high[c]);
    }
    try {
      return OptionalDouble.of(
          new SimplexSolver()
              .optimize(
                  new MaxIter(10_000),
                  new LinearObjectiveFunction(p.cost, 0),
                  new LinearConstraintSet(rows),
                  GoalType.MINIMIZE,
                  new NonNegativeConstraint(true))
              .getValue());
    } catch (MathIllegalStateException e) {
      return OptionalDouble.empty();
    }
  }

  private static void constrain(
      List<LinearConstraint> rows, double[] factors, double least, double most) {
    if (least == most) {
      rows.add(new LinearConstraint(factors, Relationship.EQ, least));
      return;
    }
    if (Double.isFinite(least)) {
      rows.add(new LinearConstraint(factors, Relationship.GEQ, least));
    }
    if (Double.isFinite(most)) {
      rows.add(new LinearConstraint(factors, Relationship.LEQ, most));
    }
  }

  static OptionalDouble ojAlgo(RandomProgramme p) {
    ExpressionsBasedModel model = new ExpressionsBasedModel();
    Variable[] x = new Variable[p.cost.length];
    for (int c = 0; c < x.length; c++) {
      x[c] = model.newVariable("x" + c).lower(0).weight(p.cost[c]);
      if (Double.isFinite(p.high[c])) {
        x[c].upper(p.high[c]);
      }
    }
    for (int r = 0; r < p.a.length; r++) {
      Expression row = model.newExpression("r" + r);
      for (int c = 0; c < x.length; c++) {
        row.set(x[c], p.a[r][c]);
      }
      if (Double.isFinite(p.least[r])) {
        row.lower(p.least[r]);
      }
      if (Double.isFinite(p.most[r])) {
        row.upper(p.most[r]);
      }
    }
    Optimisation.Result result = model.minimise();
    return result.getState().isFeasible()
        ? OptionalDouble.of(result.getValue())
        : OptionalDouble.empty();
  }
}
