// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.Locale;
import org.meltwright.core.explain.EnglishExplanation;

/** Writes the arithmetic of an answer, on demand. */
final class HazardArithmetic {

  private HazardArithmetic() {}

  static void describe(Working w, EnglishExplanation.Builder b) {
    w.contributions().forEach(c -> b.step(step(w, c)));
    switch (w.kind()) {
      case SUM -> {
        b.formula("sum of share / limit, reached at 1");
        b.step("category " + w.level() + ": sum " + number(w.value()) + " against 1");
      }
      case HIGHEST -> {
        b.formula("highest share / limit, reached at 1");
        b.step("category " + w.level() + ": highest " + number(w.value()) + " against 1");
      }
      case ACUTE -> {
        b.formula("100 / ATE of the mixture = sum of share / ATE");
        b.step(w.level() + ": " + estimate(w));
      }
      case ACUTE_CORRECTED -> {
        b.formula("(100 - unknown share) / ATE of the mixture = sum of share / ATE");
        b.step(w.level() + ": unknown share " + number(w.unknownPercent()) + " %, " + estimate(w));
      }
    }
  }

  private static String estimate(Working w) {
    return "ATE of the mixture " + number(w.value());
  }

  private static String step(Working w, Contribution c) {
    HazardIngredient i = c.ingredient();
    String metal =
        c.percent() == i.percent()
            ? ""
            : " (" + number(i.percent()) + " % counted as " + i.hazards().metal().orElse("") + ")";
    return String.format(
        Locale.ROOT,
        "%s: %s %%%s / %s = %s",
        i.name(Locale.ENGLISH),
        number(c.percent()),
        metal,
        number(c.divisor()) + (w.isEstimate() ? "" : " %"),
        number(c.quotient()));
  }

  /** Four significant figures, without an exponent for the sizes met here. */
  static String number(double value) {
    if (Double.isInfinite(value)) {
      return "without limit";
    }
    return new java.math.BigDecimal(value)
        .round(new java.math.MathContext(4))
        .stripTrailingZeros()
        .toPlainString();
  }
}
