// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.laws;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.gamma.Erf;
import org.meltwright.core.explain.Expr;
import org.meltwright.core.explain.Figure;
import org.meltwright.core.explain.Symbol;
import org.meltwright.units.Bilingual;

/** A number, and how large the numbers were that it came from. */
record Exact(double value, double size) {

  private static final double UNDECIDED = 1e-12;

  static Exact of(double value) {
    return new Exact(value, Math.abs(value));
  }

  /** By how much more than itself it is in doubt. */
  private double doubt() {
    return value == 0 ? 1 : Math.max(1, size / Math.abs(value));
  }

  private Exact plus(Exact other, int sign) {
    double sum = value + sign * other.value;
    return new Exact(sum, Math.max(Math.abs(sum), Math.max(size, other.size)));
  }

  private Exact times(Exact other) {
    return new Exact(value * other.value, size * other.size);
  }

  private Exact over(Exact other) {
    return new Exact(value / other.value, size / Math.abs(other.value) * other.doubt());
  }

  private Exact mapped(double result, double steepness) {
    return new Exact(result, Math.max(Math.abs(result), steepness * size));
  }

  /** Where rounding may have gone either way, by a whole step. */
  private Exact rounded(double result, double step) {
    double up = Math.abs(value / step - Math.rint(value / step));
    double half = Math.abs(up - 0.5);
    double near = UNDECIDED * size / step;
    return up <= near || half <= near
        ? new Exact(result, step / UNDECIDED)
        : new Exact(result, Math.abs(result));
  }

  /** Works out trees. */
  record Reckoner(Map<Symbol, Figure> known, Optional<Bilingual> line) {

    Exact of(Expr tree) {
      if (tree instanceof Symbol symbol) {
        return Exact.of(ExplanationLaws.figure(known, symbol, line).value());
      }
      if (tree instanceof Expr.Constant constant) {
        return Exact.of(constant.value());
      }
      if (tree instanceof Expr.Total total) {
        return ExplanationLaws.lines(known, total).stream()
            .map(one -> new Reckoner(known, one).of(total.each()))
            .reduce(Exact.of(0), (a, b) -> a.plus(b, 1));
      }
      if (tree instanceof Expr.Choice choice) {
        return choice(choice);
      }
      return tree instanceof Expr.Call call ? call(call) : sum(tree);
    }

    private Exact sum(Expr tree) {
      if (tree instanceof Expr.Sum sum) {
        return sum.terms().stream().map(this::of).reduce(Exact.of(0), (a, b) -> a.plus(b, 1));
      }
      if (tree instanceof Expr.Difference d) {
        return of(d.from()).plus(of(d.taken()), -1);
      }
      if (tree instanceof Expr.Product product) {
        return product.factors().stream().map(this::of).reduce(Exact.of(1), Exact::times);
      }
      if (tree instanceof Expr.Quotient q) {
        return of(q.over()).over(of(q.under()));
      }
      Expr.Power power = (Expr.Power) tree;
      Exact base = of(power.base());
      double exponent = of(power.exponent()).value();
      double raised = Math.pow(base.value, exponent);
      return base.mapped(raised, Math.abs(exponent * raised / base.value));
    }

    private Exact choice(Expr.Choice choice) {
      Exact ahead = of(choice.left()).plus(of(choice.right()), -1);
      Exact reached = of(choice.reached());
      Exact below = of(choice.below());
      Exact chosen = ahead.value >= 0 ? reached : below;
      return Math.abs(ahead.value) > UNDECIDED * ahead.size
          ? chosen
          : new Exact(chosen.value, Math.abs(reached.value - below.value) / UNDECIDED);
    }

    private Exact call(Expr.Call call) {
      List<Exact> all = call.arguments().stream().map(this::of).toList();
      Exact x = all.get(0);
      double v = x.value;
      return switch (call.function()) {
        case EXP -> x.mapped(Math.exp(v), Math.exp(v));
        case LOG -> x.mapped(Math.log(v), 1 / v);
        case ROOT -> v == 0 ? of(Expr.of(0)) : x.mapped(Math.sqrt(v), 0.5 / Math.sqrt(v));
        case ERF -> x.mapped(Erf.value(v), 1.2);
        case MIN -> all.stream().reduce((a, b) -> a.value <= b.value ? a : b).orElseThrow();
        case MAX -> all.stream().reduce((a, b) -> a.value >= b.value ? a : b).orElseThrow();
        case ROUND -> {
          double step = all.get(1).value;
          yield x.rounded(Math.floor(v / step + 0.5) * step, step);
        }
        case CEILING -> x.rounded(Math.ceil(v), 1);
        case FLOOR -> x.rounded(Math.floor(v), 1);
      };
    }
  }
}
