// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.file;

import org.joda.money.CurrencyUnit;
import org.joda.money.IllegalCurrencyException;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/** Currencies by their code. */
final class Currencies {

  private Currencies() {}

  /** Returns the currency with an ISO 4217 code. */
  static CurrencyUnit read(String code) {
    try {
      CurrencyUnit currency = CurrencyUnit.of(code);
      if (currency.isPseudoCurrency()) {
        throw new ProblemException(Problem.of(StudioProblem.UNKNOWN_CURRENCY, code));
      }
      return currency;
    } catch (IllegalCurrencyException e) {
      throw new ProblemException(Problem.of(StudioProblem.UNKNOWN_CURRENCY, code));
    }
  }
}
