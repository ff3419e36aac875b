// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import static org.meltwright.units.MetricUnits.grams;
import static org.meltwright.units.MetricUnits.gramsPerMillilitre;
import static org.meltwright.units.MetricUnits.millimetres;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.joda.money.Money;
import org.meltwright.core.cost.FreightTariff;
import org.meltwright.core.cost.Price;
import org.meltwright.core.cost.Rate;
import org.meltwright.core.planning.ClassBudget;
import org.meltwright.core.planning.ClassPlan;
import org.meltwright.core.planning.Coverage;
import org.meltwright.core.planning.Need;
import org.meltwright.core.planning.PackageOffer;
import org.meltwright.core.planning.Piece;
import org.meltwright.core.planning.PurchasePlan;
import org.meltwright.core.planning.PurchaseQuestion;
import org.meltwright.core.planning.SupplierTerms;

/**
 * Plan a class and what to buy: twelve people with six panels each; what to melt, what to charge?
 */
public final class PlanAClass {

  private PlanAClass() {}

  /**
   * Prints masses, packages and the fee.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    Coverage coverage = Coverage.of(millimetres(0.15), 8, gramsPerMillilitre(0.97)).withLoss(0.2);
    ClassPlan plan =
        ClassPlan.of(12, List.of(new Piece(6, 0.2 * 0.2)), coverage).withLeftInTins(grams(60));
    double total = plan.totalKilograms();
    System.out.println(String.format(Locale.ROOT, "medium %.3f kg", total));
    List<Need> needs = List.of(new Need("wax", total * 8 / 9, 0), new Need("resin", total / 9, 0));
    FreightTariff freight =
        FreightTariff.perOrder(Money.parse("EUR 6.90")).withFreeFrom(Money.parse("EUR 90.00"));
    PurchasePlan buy =
        PurchaseQuestion.of(needs, bags(), List.of(SupplierTerms.of("north", freight)), day())
            .cheapest();
    buy.lines().forEach(l -> System.out.println(l.count() + " x " + l.offer().price()));
    System.out.println("to pay " + buy.total() + ", proved " + buy.isProvedOptimal());
    ClassBudget budget =
        ClassBudget.of(12, buy.total(), Money.parse("EUR 14.00"), Money.parse("EUR 420.00"));
    Money fee = budget.fee(Rate.ofPercent("20"), Money.parse("EUR 5.00"));
    System.out.println("fee " + fee + ", even at " + budget.breakEven(fee).wholeUnits());
  }

  private static LocalDate day() {
    return LocalDate.of(2026, 9, 1);
  }

  private static List<PackageOffer> bags() {
    return Stream.of(
            "wax 14.90 EUR/1 kg",
            "wax 66.00 EUR/5 kg",
            "resin 17.90 EUR/500 g",
            "resin 4.90 EUR/100 g")
        .map(t -> t.split(" ", 2))
        .map(t -> PackageOffer.of("north", t[0], Price.parse(t[1])))
        .toList();
  }
}
