// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.file;

import java.util.Optional;
import java.util.function.Supplier;
import org.joda.money.CurrencyUnit;
import org.joda.money.IllegalCurrencyException;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.cost.CostProblem;
import org.meltwright.core.cost.ExactMoney;
import org.meltwright.core.cost.Price;
import org.meltwright.units.FieldReader;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemCode;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityParser;

/**
 * The currency that all prices of a file stand in.
 *
 * @param unit the currency; the euro where it could not be read
 * @param isStated whether it could be read: if not, each price may stand in its own
 */
record StudioCurrency(CurrencyUnit unit, boolean isStated) {

  /** Reads the code of ISO 4217 in a field. */
  static StudioCurrency read(FieldReader at, String name, @Nullable String code) {
    Optional<CurrencyUnit> stated = at.read(name, code, StudioCurrency::unit);
    return new StudioCurrency(stated.orElse(CurrencyUnit.EUR), stated.isPresent());
  }

  private static CurrencyUnit unit(String code) {
    try {
      CurrencyUnit currency = CurrencyUnit.of(code);
      if (!currency.isPseudoCurrency()) {
        return currency;
      }
    } catch (IllegalCurrencyException e) {
      // told below
    }
    throw new ProblemException(Problem.of(StudioProblem.UNKNOWN_CURRENCY, code));
  }

  /** Reads a price per package. */
  Price price(QuantityParser parser, String text) {
    Price price = inTheirWords(text, () -> Price.parse(text, parser));
    require(price.currency(), text);
    return price;
  }

  /** Reads money, which is not less than nothing. */
  Money money(QuantityParser parser, String text) {
    ExactMoney money = inTheirWords(text, () -> ExactMoney.parse(text, parser));
    require(money.currency(), text);
    if (money.isNegative()) {
      throw notMoney(StudioProblem.MONEY, text);
    }
    return money.toMoney();
  }

  /** Texts that are no money or name no currency are told with the studio's own currency. */
  private <T> T inTheirWords(String text, Supplier<T> reading) {
    try {
      return reading.get();
    } catch (ProblemException e) {
      ProblemCode code = e.problems().get(0).code();
      if (code == CostProblem.PRICE_TEXT) {
        throw notMoney(StudioProblem.PRICE, text);
      }
      if (code == CostProblem.MONEY_TEXT) {
        throw notMoney(StudioProblem.MONEY, text);
      }
      throw e;
    }
  }

  private ProblemException notMoney(StudioProblem code, String written) {
    return new ProblemException(Problem.of(code, written).with("currency", unit.getCode()));
  }

  private void require(CurrencyUnit found, String text) {
    if (isStated && !found.equals(unit)) {
      throw notMoney(StudioProblem.CURRENCY, text);
    }
  }
}
