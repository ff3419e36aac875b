// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.laws;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import org.apache.commons.numbers.gamma.Erf;
import org.meltwright.core.explain.Expr;
import org.meltwright.core.explain.Figure;
import org.meltwright.core.explain.Symbol;
import org.meltwright.units.Bilingual;

/** Where a number lies. */
record Ends(double low, double high) {

  static Ends of(double... candidates) {
    return new Ends(
        DoubleStream.of(candidates).min().orElseThrow(),
        DoubleStream.of(candidates).max().orElseThrow());
  }

  private Ends plus(Ends other) {
    return new Ends(low + other.low, high + other.high);
  }

  private Ends minus(Ends other) {
    return new Ends(low - other.high, high - other.low);
  }

  private Ends times(Ends other) {
    return of(low * other.low, low * other.high, high * other.low, high * other.high);
  }

  private Ends over(Ends other) {
    return other.low <= 0 && other.high >= 0
        ? new Ends(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY)
        : of(low / other.low, low / other.high, high / other.low, high / other.high);
  }

  private Ends rising(DoubleUnaryOperator function) {
    return new Ends(function.applyAsDouble(low), function.applyAsDouble(high));
  }

  private Ends either(Ends other) {
    return new Ends(Math.min(low, other.low), Math.max(high, other.high));
  }

  /** Works out trees. */
  record Reckoner(
      Map<Symbol, Figure> known, Optional<Bilingual> line, Function<Figure, Ends> reader) {

    Ends of(Expr tree) {
      if (tree instanceof Symbol symbol) {
        return reader.apply(ExplanationLaws.figure(known, symbol, line));
      }
      if (tree instanceof Expr.Constant constant) {
        return Ends.of(constant.value());
      }
      if (tree instanceof Expr.Total total) {
        return ExplanationLaws.lines(known, total).stream()
            .map(one -> new Reckoner(known, one, reader).of(total.each()))
            .reduce(Ends.of(0), Ends::plus);
      }
      if (tree instanceof Expr.Choice choice) {
        return choice(choice);
      }
      return tree instanceof Expr.Call call ? call(call) : sum(tree);
    }

    private Ends sum(Expr tree) {
      if (tree instanceof Expr.Sum sum) {
        return sum.terms().stream().map(this::of).reduce(Ends.of(0), Ends::plus);
      }
      if (tree instanceof Expr.Difference d) {
        return of(d.from()).minus(of(d.taken()));
      }
      if (tree instanceof Expr.Product product) {
        return product.factors().stream().map(this::of).reduce(Ends.of(1), Ends::times);
      }
      if (tree instanceof Expr.Quotient q) {
        return of(q.over()).over(of(q.under()));
      }
      Expr.Power power = (Expr.Power) tree;
      Ends base = of(power.base());
      double exponent = of(power.exponent()).low;
      return Ends.of(Math.pow(base.low, exponent), Math.pow(base.high, exponent));
    }

    private Ends choice(Expr.Choice choice) {
      Ends ahead = of(choice.left()).minus(of(choice.right()));
      if (ahead.low >= 0) {
        return of(choice.reached());
      }
      return ahead.high < 0 ? of(choice.below()) : of(choice.reached()).either(of(choice.below()));
    }

    private Ends call(Expr.Call call) {
      List<Ends> all = call.arguments().stream().map(this::of).toList();
      Ends x = all.get(0);
      return switch (call.function()) {
        case EXP -> x.rising(Math::exp);
        case LOG -> x.rising(Math::log);
        case ROOT -> x.rising(Math::sqrt);
        case ERF -> x.rising(Erf::value);
        case MIN -> all.stream().reduce(x, (a, b) -> b.least(a));
        case MAX -> all.stream().reduce(x, (a, b) -> b.greatest(a));
        case ROUND -> {
          double step = all.get(1).high;
          yield new Ends(x.low - step / 2, x.high + step / 2);
        }
        case CEILING -> x.rising(Math::ceil);
        case FLOOR -> x.rising(Math::floor);
      };
    }
  }

  private Ends least(Ends other) {
    return new Ends(Math.min(low, other.low), Math.min(high, other.high));
  }

  private Ends greatest(Ends other) {
    return new Ends(Math.max(low, other.low), Math.max(high, other.high));
  }
}
