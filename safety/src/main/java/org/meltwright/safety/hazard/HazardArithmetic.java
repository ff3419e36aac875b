// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.List;
import java.util.Map;
import org.meltwright.core.explain.Explanation;
import org.meltwright.core.explain.Expr;
import org.meltwright.core.explain.Figure;
import org.meltwright.core.explain.Formula;
import org.meltwright.core.explain.Symbol;
import org.meltwright.units.Bilingual;

/** The sums behind a classification, loaded when somebody asks how it came about. */
final class HazardArithmetic {

  private static final Symbol SHARE = symbol("share", "%");
  private static final Symbol LIMIT = symbol("limit", "%");
  private static final Symbol ESTIMATE = symbol("acute toxicity estimate", "");
  private static final Symbol QUOTIENT = symbol("share over limit", "");
  private static final Symbol TOXIC = symbol("share over estimate", "%");
  private static final Symbol UNKNOWN = symbol("share of unknown toxicity", "%");
  private static final Symbol SUM = symbol("sum, reached at 1", "");
  private static final Symbol WHOLE = symbol("acute toxicity estimate of the mixture", "");

  private static final Formula OVER_LIMIT = new Formula(QUOTIENT, SHARE.over(LIMIT));
  private static final Formula OVER_ESTIMATE = new Formula(TOXIC, SHARE.over(ESTIMATE));
  private static final Formula ADDED = new Formula(SUM, new Expr.Total(QUOTIENT, QUOTIENT));
  private static final Formula ACUTE =
      new Formula(WHOLE, Expr.of(100).over(new Expr.Total(TOXIC, TOXIC)));
  private static final Formula CORRECTED =
      new Formula(WHOLE, Expr.of(100).minus(UNKNOWN).over(new Expr.Total(TOXIC, TOXIC)));

  private HazardArithmetic() {}

  /** Each sum is told by itself: one ingredient counts against several limits. */
  static void describe(List<Working> workings, Explanation.Builder text) {
    List<Bilingual> levels =
        Explanation.lines(workings.stream().map(w -> Bilingual.of(w.level())).toList());
    for (int i = 0; i < levels.size(); i++) {
      Working w = workings.get(i);
      Symbol result = (w.isEstimate() ? WHOLE : SUM).of(levels.get(i));
      if (Double.isFinite(w.value())) {
        text.given(Figure.of(result, w.value()), working(w, levels.get(i)));
      } else {
        text.conclusion("working.finding.without-limit", Map.of("level", levels.get(i)));
      }
    }
  }

  private static Explanation working(Working w, Bilingual level) {
    Explanation.Builder text =
        Explanation.builder(
            HazardArithmetic.class, "working.sum." + w.kind(), Map.of("level", level));
    List<Contribution> all = w.contributions();
    List<Bilingual> names =
        Explanation.lines(all.stream().map(c -> Bilingual.of(c.ingredient()::name)).toList());
    for (int i = 0; i < names.size(); i++) {
      contribution(w, all.get(i), names.get(i), text);
    }
    return switch (w.kind()) {
      case SUM, HIGHEST -> text.step(ADDED, w.value()).build();
      case ACUTE -> text.step(ACUTE, w.value()).build();
      case ACUTE_CORRECTED ->
          text.given(UNKNOWN, w.unknownPercent()).step(CORRECTED, w.value()).build();
    };
  }

  private static void contribution(
      Working w, Contribution c, Bilingual name, Explanation.Builder text) {
    text.given(SHARE.of(name), c.percent());
    if (Double.isFinite(c.divisor())) {
      text.given((w.isEstimate() ? ESTIMATE : LIMIT).of(name), c.divisor())
          .step(w.isEstimate() ? OVER_ESTIMATE : OVER_LIMIT, name, c.quotient());
    }
    HazardIngredient i = c.ingredient();
    if (c.percent() != i.percent()) {
      text.conclusion(
          "working.finding.metal",
          Map.of(
              "name",
              name,
              "share",
              Bilingual.of(Figure.of(SHARE, i.percent())::number),
              "counted",
              Bilingual.of(Figure.of(SHARE, c.percent())::number),
              "metal",
              Bilingual.of(i.hazards().metal().orElse(""))));
    }
  }

  private static Symbol symbol(String name, String unit) {
    return Symbol.beside(HazardArithmetic.class, name, unit);
  }
}
