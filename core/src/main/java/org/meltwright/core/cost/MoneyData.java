// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import org.joda.money.BigMoney;
import org.joda.money.BigMoneyProvider;

/**
 * An amount of money as plain data: its digits as text, so that no JSON library makes a binary
 * fraction of them.
 *
 * <pre>{@code
 * MoneyData money = MoneyData.of(Money.parse("EUR 12.04"));
 * money.amount(); // 12.04
 * money.currency(); // EUR
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param amount the amount in plain decimal digits with a point, for example "12.04" or "-0.50"
 * @param currency the code of the currency (ISO 4217), for example "EUR"
 */
public record MoneyData(String amount, String currency) {

  /**
   * Returns an amount as data.
   *
   * @param money the amount, with as many decimals as are to stand there
   * @return its digits and its currency
   */
  public static MoneyData of(BigMoneyProvider money) {
    BigMoney exact = money.toBigMoney();
    return new MoneyData(exact.getAmount().toPlainString(), exact.getCurrencyUnit().getCode());
  }
}
