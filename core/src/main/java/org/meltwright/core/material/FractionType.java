// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import org.meltwright.units.MassFraction;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/** Ranges of shares by mass, written in per cent: "50 to 65 %". */
record FractionType() implements PropertyType<MassFractionRange> {

  @Override
  public MassFractionRange parse(String text) {
    Span span = Span.parse(text);
    if (!span.rest().equals("%") || span.openAbove()) {
      throw new ProblemException(Problem.of(MaterialProblem.UNIT, text).with("units", "%"));
    }
    return new MassFractionRange(MassFraction.of(span.low(-2)), MassFraction.of(span.high(-2)));
  }

  @Override
  public void require(MassFractionRange value) {
    // a mass fraction cannot be what no share is
  }

  @Override
  public String format(MassFractionRange value) {
    return Span.format(value.low().value(), value.high().value(), -2) + " %";
  }

  @Override
  public MassFractionRange span(MassFractionRange one, MassFractionRange other) {
    return new MassFractionRange(
        MassFraction.of(Math.min(one.low().value(), other.low().value())),
        MassFraction.of(Math.max(one.high().value(), other.high().value())));
  }
}
