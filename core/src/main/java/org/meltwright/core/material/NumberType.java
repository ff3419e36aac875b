// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import org.meltwright.units.Bilingual;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/** Ranges of numbers in the one unit that their field uses: "17 to 22 mg KOH/g". */
record NumberType(String unit) implements PropertyType<NumberRange> {

  @Override
  public NumberRange parse(String text) {
    Span span = Span.parse(text);
    if (!span.rest().equals(unit)) {
      throw new ProblemException(Problem.of(MaterialProblem.UNIT, text).with("units", units()));
    }
    double high = span.openAbove() ? Double.POSITIVE_INFINITY : span.high(0);
    return new NumberRange(span.low(0), high, unit);
  }

  @Override
  public void require(NumberRange value) {
    if (!value.unit().equals(unit)) {
      throw new ProblemException(
          Problem.of(MaterialProblem.UNIT, value.toString()).with("units", units()));
    }
  }

  private Bilingual units() {
    return unit.isEmpty() ? MaterialProblem.CHECK.name("no unit") : Bilingual.of(unit);
  }

  @Override
  public String format(NumberRange value) {
    return (Span.format(value.low(), value.high(), 0) + " " + unit).strip();
  }

  @Override
  public NumberRange span(NumberRange one, NumberRange other) {
    return new NumberRange(
        Math.min(one.low(), other.low()), Math.max(one.high(), other.high()), unit);
  }
}
