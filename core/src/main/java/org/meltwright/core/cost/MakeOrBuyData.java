// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * Own product against ready-made offers as plain data: any JSON library writes it.
 *
 * <pre>{@code
 * CostItem wax = CostItem.material("wax", kilograms(1), UnitPrice.parse("20.00 EUR/kg"));
 * CostRollUp batch = CostRollUp.of("batch", List.of(wax));
 * ReadyMade bars = new ReadyMade("bars", UnitPrice.parse("60.00 EUR/kg"));
 *
 * MakeOrBuyData data = MakeOrBuyData.of(MakeOrBuy.of(batch, kilograms(0.8), List.of(bars)));
 * data.ownPerKilogram().amount(); // 25.00
 * data.savingPerKilogram().amount(); // 35.00
 * }</pre>
 *
 * <p>All amounts are per kilogram of net product, each rounded by itself to the smallest coin: the
 * saving may differ by a coin from the difference of the two prices printed here.
 *
 * <p>Immutable and thread-safe.
 *
 * @param ownPerKilogram what a kilogram of one's own costs
 * @param offers the offers, the cheapest first, at least one
 * @param savingPerKilogram what making saves against the cheapest offer; below zero if buying is
 *     cheaper
 * @param makingCheaper whether making saves anything, before rounding
 * @param breakEvenKilogramsPerYear how much net product must be made a year before making pays, in
 *     kg a year, not rounded; absent if making saves nothing
 */
public record MakeOrBuyData(
    MoneyData ownPerKilogram,
    List<Offer> offers,
    MoneyData savingPerKilogram,
    boolean makingCheaper,
    @Nullable Double breakEvenKilogramsPerYear) {

  /**
   * A ready-made offer.
   *
   * @param label who offers what
   * @param landedPerKilogram what a kilogram of it costs, at the door
   */
  public record Offer(String label, MoneyData landedPerKilogram) {

    private static Offer of(ReadyMade offer) {
      return new Offer(offer.label(), MoneyData.of(offer.landed().perKilogramRounded()));
    }
  }

  public MakeOrBuyData {
    offers = List.copyOf(offers);
  }

  /**
   * Returns a comparison as data.
   *
   * @param choice the comparison
   * @return its prices, saving and break-even
   */
  public static MakeOrBuyData of(MakeOrBuy choice) {
    OptionalDouble even = choice.breakEvenKilogramsPerYear();
    return new MakeOrBuyData(
        MoneyData.of(choice.own().perKilogramRounded()),
        choice.offers().stream().map(Offer::of).toList(),
        MoneyData.of(choice.savingPerKilogram().toMoney()),
        choice.isMakingCheaper(),
        even.isPresent() ? even.getAsDouble() : null);
  }
}
