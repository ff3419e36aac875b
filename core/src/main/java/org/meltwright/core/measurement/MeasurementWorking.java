// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.measurement;

import java.util.List;
import java.util.Map;
import org.meltwright.core.explain.Explanation;
import org.meltwright.core.explain.Expr;
import org.meltwright.core.explain.Figure;
import org.meltwright.core.explain.Formula;
import org.meltwright.core.explain.Symbol;
import org.meltwright.core.measurement.Measurement.Contribution;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Messages;

/** The formulas of this package, loaded when somebody asks how a number came about. */
final class MeasurementWorking {

  private static final Messages WORDS = Messages.beside(MeasurementWorking.class);

  private static final Symbol READ = symbol("read");
  private static final Symbol VALUE = symbol("value");
  private static final Symbol UNSURE =
      symbol("standard uncertainty of what was read").withDigits(3);
  private static final Symbol PART = symbol("what it adds to the doubt");
  private static final Symbol DOUBT = symbol("standard uncertainty");
  private static final Symbol COVERAGE = symbol("coverage factor");
  private static final Symbol EXPANDED = symbol("expanded uncertainty");

  private static final Formula ROOT =
      new Formula(DOUBT, Expr.call(Expr.Function.ROOT, new Expr.Total(PART, PART.power(2))));
  private static final Formula EXPAND = new Formula(EXPANDED, COVERAGE.times(DOUBT));

  private MeasurementWorking() {}

  static Explanation of(Measurement figure) {
    Explanation.Builder text =
        Explanation.builder(
            MeasurementWorking.class,
            "working.measurement",
            Map.of("name", Bilingual.of(figure.name())));
    List<Contribution> all = figure.contributions();
    List<Bilingual> names =
        Explanation.lines(all.stream().map(c -> Bilingual.of(c.input().name())).toList());
    for (int i = 0; i < all.size(); i++) {
      Measurement.Input input = all.get(i).input();
      text.stated(new Figure(READ.of(names.get(i)), input.reading().value(), input.unit()))
          .given(new Figure(UNSURE.of(names.get(i)), input.reading().uncertainty(), input.unit()))
          .given(new Figure(PART.of(names.get(i)), all.get(i).uncertainty(), figure.unit()));
    }
    return text.method(equation(figure))
        .step(ROOT, new Figure(DOUBT, figure.uncertainty(), figure.unit()))
        .given(COVERAGE, figure.coverageFactor())
        .step(EXPAND, new Figure(EXPANDED, figure.expanded(), figure.unit()))
        .conclusion(Bilingual.of(figure.text()))
        .build();
  }

  private static Explanation.Method equation(Measurement figure) {
    return new Explanation.Method(
        WORDS.both("working.measurement.equation", Map.of()),
        List.of(new Figure(VALUE, figure.value(), figure.unit())),
        WORDS.both("working.measurement.moved", Map.of()));
  }

  private static Symbol symbol(String name) {
    return Symbol.beside(MeasurementWorking.class, name, "");
  }
}
