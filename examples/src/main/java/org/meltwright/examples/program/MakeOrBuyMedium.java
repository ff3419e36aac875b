// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import static org.meltwright.units.MetricUnits.kilograms;
import static org.meltwright.units.MetricUnits.kilowattHours;
import static org.meltwright.units.MetricUnits.minutes;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.meltwright.core.cost.CostItem;
import org.meltwright.core.cost.CostRollUp;
import org.meltwright.core.cost.Duty;
import org.meltwright.core.cost.FreightTariff;
import org.meltwright.core.cost.ImportRegime;
import org.meltwright.core.cost.LandedCost;
import org.meltwright.core.cost.MakeOrBuy;
import org.meltwright.core.cost.OrderLine;
import org.meltwright.core.cost.Price;
import org.meltwright.core.cost.PurchaseOrder;
import org.meltwright.core.cost.Rate;
import org.meltwright.core.cost.ReadyMade;
import org.meltwright.core.cost.UnitPrice;
import org.meltwright.core.cost.Vat;
import org.meltwright.core.source.Source;

/** Make or buy: is medium of one's own cheaper than ready-made? All prices are invented. */
public final class MakeOrBuyMedium {

  private MakeOrBuyMedium() {}

  /**
   * Prints both costs on one basis.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    MakeOrBuy choice =
        MakeOrBuy.of(ownBatch(), kilograms(4.8), List.of(barsFromAbroad()))
            .withFixedCostPerYear(Money.parse("EUR 80.00"));
    System.out.println("own        " + choice.own().perKilogramRounded() + "/kg net");
    System.out.println("ready-made " + choice.best().landed().perKilogramRounded() + "/kg landed");
    double even = choice.breakEvenKilogramsPerYear().orElseThrow();
    System.out.println(String.format(Locale.ROOT, "even at %.1f kg a year", even));
    choice.savingDrivers(Rate.ofPercent("10")).ranked().stream()
        .limit(3)
        .forEach(d -> System.out.println(d.input().symbol()));
  }

  private static CostRollUp ownBatch() {
    UnitPrice wax = UnitPrice.parse("16.50 EUR/kg");
    UnitPrice resin = UnitPrice.parse("17.90 EUR/500 g");
    return CostRollUp.of(
        "5 kg of medium",
        List.of(
            CostItem.material("beeswax", kilograms(4.444), wax),
            CostItem.material("damar", kilograms(0.556), resin),
            CostItem.energy("melting", kilowattHours(1.5), Money.parse("EUR 0.34")),
            CostItem.labour("work", minutes(90), Money.parse("EUR 25.00"))));
  }

  private static ReadyMade barsFromAbroad() {
    OrderLine bars = OrderLine.of("bars", "3213", Price.parse("12.50 EUR/250 g"), 8);
    Duty duty = Duty.flat("3213", Money.parse("EUR 3.00"));
    Rate tax = Rate.ofPercent("19");
    LandedCost cost =
        PurchaseOrder.of(List.of(bars), CurrencyUnit.EUR, LocalDate.of(2026, 9, 1))
            .withFreight(FreightTariff.perOrder(Money.parse("EUR 18.00")), Vat.NONE)
            .withHandling(Money.parse("EUR 6.00"), Vat.NONE)
            .withImport(ImportRegime.onDeliveredValue("import", tax, Source.USER), List.of(duty))
            .landed();
    return new ReadyMade("bars from abroad", cost.lines().get(0).landed());
  }
}
