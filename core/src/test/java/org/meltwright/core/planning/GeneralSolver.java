// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/** The same purchase as a mixed integer programme, for a general solver. */
final class GeneralSolver {

  private static final double MILLION = 1e6;
  private static final double KILOGRAM = 1e9;

  private final PackageModel model;
  private final ExpressionsBasedModel programme = new ExpressionsBasedModel();
  private final Variable[] paid;
  private final Variable[] free;

  /** The plan; empty if the solver could not prove its best one. */
  static int[] solve(PackageModel model) {
    return new GeneralSolver(model).run();
  }

  private GeneralSolver(PackageModel model) {
    this.model = model;
    this.paid = new Variable[model.packages()];
    this.free = new Variable[model.packages()];
    for (int p = 0; p < model.packages(); p++) {
      double price = model.cost()[p] / MILLION;
      paid[p] = count("paid" + p, price + model.freight()[p] / MILLION);
      free[p] = count("free" + p, price);
    }
    for (int i = 0; i < model.materials(); i++) {
      cover(i);
    }
    for (int s = 0; s < model.suppliers(); s++) {
      carriage(s);
    }
    for (int d = 0; d < model.duties(); d++) {
      duty(d);
    }
  }

  private void duty(int d) {
    Variable due = programme.newVariable("due" + d).binary().weight(model.duty()[d] / MILLION);
    for (int p = 0; p < model.packages(); p++) {
      if (model.dutyOf()[p] == d) {
        link("due paid" + p, paid[p], due);
        link("due free" + p, free[p], due);
      }
    }
  }

  private Variable count(String name, double weight) {
    return programme.newVariable(name).lower(0).upper(200).integer(true).weight(weight);
  }

  private void cover(int i) {
    Expression need = programme.newExpression("need" + i).lower(model.need()[i] / KILOGRAM);
    for (int p : model.packagesOf()[i]) {
      need.set(paid[p], model.mass()[p] / KILOGRAM);
      need.set(free[p], model.mass()[p] / KILOGRAM);
    }
  }

  private void carriage(int s) {
    double perOrder = (model.perOrder()[s] + model.handling()[s]) / MILLION;
    Variable pays = programme.newVariable("pays" + s).binary().weight(perOrder);
    Variable isFree = programme.newVariable("free" + s).binary();
    isFree.weight(model.handling()[s] / MILLION);
    if (model.freeFrom()[s] == PackageModel.NEVER) {
      isFree.upper(0);
    }
    Expression value = programme.newExpression("value" + s).lower(0);
    value.set(isFree, -Math.min(model.freeFrom()[s], 1_000_000_000_000L) / MILLION);
    for (int p = 0; p < model.packages(); p++) {
      if (model.supplier()[p] == s) {
        link("paid" + p, paid[p], pays);
        link("free" + p, free[p], isFree);
        value.set(free[p], model.goods()[p] / MILLION);
      }
    }
  }

  private void link(String name, Variable count, Variable isUsed) {
    programme.newExpression("link " + name).upper(0).set(count, 1).set(isUsed, -200);
  }

  private int[] run() {
    Optimisation.Result result = programme.minimise();
    if (!result.getState().isOptimal()) {
      return new int[0];
    }
    int[] plan = new int[model.packages()];
    for (int p = 0; p < plan.length; p++) {
      plan[p] =
          (int) Math.round(paid[p].getValue().doubleValue())
              + (int) Math.round(free[p].getValue().doubleValue());
    }
    return plan;
  }
}
