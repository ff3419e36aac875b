// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import static org.meltwright.units.MetricUnits.kilograms;
import static org.meltwright.units.MetricUnits.kilowattHours;
import static org.meltwright.units.MetricUnits.minutes;

import java.util.List;
import java.util.Locale;
import org.joda.money.Money;
import org.meltwright.core.cost.CostItem;
import org.meltwright.core.cost.CostRollUp;
import org.meltwright.core.cost.ExactMoney;
import org.meltwright.core.cost.Rate;
import org.meltwright.core.cost.SalesMix;
import org.meltwright.core.cost.SalesTerms;
import org.meltwright.core.cost.SellingPrice;
import org.meltwright.core.cost.UnitCost;
import org.meltwright.core.cost.UnitPrice;

/** What to charge for a cake at a market? All prices, rates and fees are invented. */
public final class WhatToCharge {

  private WhatToCharge() {}

  /**
   * Prints a price and where it goes, what an hour earns, and how many must be sold.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    SellingPrice wished = SellingPrice.forMarkUp(cake(), market(), Rate.ofPercent("50"));
    SellingPrice tag = wished.roundedUpTo(Money.parse("EUR 0.50"));
    System.out.println("cost    " + cake().total().toMoney());
    System.out.println("wished  " + wished.price().toMoney());
    System.out.println("on tag  " + tag.price().toMoney());
    System.out.println("tax     " + tag.tax().toMoney());
    System.out.println("fees    " + tag.fee().toMoney());
    System.out.println("profit  " + tag.profit().toMoney());
    System.out.println(
        String.format(Locale.ROOT, "margin  %.1f %%", tag.margin().orElseThrow() * 100));
    SellingPrice elsewhere = SellingPrice.of(cake(), market(), Money.parse("EUR 6.00"));
    System.out.println(
        "at 6.00 an hour earns " + elsewhere.leftPerHour().map(ExactMoney::toMoney).orElseThrow());
    evenAtTheMarket(tag);
  }

  private static UnitCost cake() {
    CostRollUp batch =
        CostRollUp.of(
            "40 cakes",
            List.of(
                CostItem.material("beeswax", kilograms(1.778), UnitPrice.parse("16.50 EUR/kg")),
                CostItem.material("damar", kilograms(0.222), UnitPrice.parse("17.90 EUR/500 g")),
                CostItem.energy("melting", kilowattHours(1.5), Money.parse("EUR 0.34"))));
    return UnitCost.of(batch.perPiece(40))
        .withWork(minutes(7), Money.parse("EUR 25.00"))
        .withOverheads(Money.parse("EUR 480.00"), 800);
  }

  private static SalesTerms market() {
    return SalesTerms.taxed(Rate.ofPercent("19"))
        .withFee(Rate.ofPercent("10"))
        .withFixedFee(Money.parse("EUR 0.30"));
  }

  private static void evenAtTheMarket(SellingPrice cake) {
    SalesMix mix =
        SalesMix.of(
            List.of(
                SalesMix.Product.of("cake", 3, cake.left(), cake.cost().spent()),
                SalesMix.Product.of("set", 1, Money.parse("EUR 22"), Money.parse("EUR 11"))));
    long sets = mix.breakEven(Money.parse("EUR 120.00")).wholeUnits();
    System.out.println("the table is paid by " + mix.counts(sets) + " cakes and sets");
  }
}
