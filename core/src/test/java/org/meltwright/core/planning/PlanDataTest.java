// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.meltwright.units.MetricUnits.grams;
import static org.meltwright.units.MetricUnits.gramsPerMillilitre;
import static org.meltwright.units.MetricUnits.kilograms;
import static org.meltwright.units.MetricUnits.millimetres;

import java.time.LocalDate;
import java.util.List;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.meltwright.core.cost.FreightTariff;
import org.meltwright.core.cost.MoneyData;
import org.meltwright.core.cost.Price;
import org.meltwright.core.laws.SampleMaterials;
import org.meltwright.core.mixture.Composition;
import org.meltwright.units.MassFraction;

class PlanDataTest {

  private static MoneyData eur(String amount) {
    return new MoneyData(amount, "EUR");
  }

  private static PurchasePlan purchase(double kilograms) {
    return PurchaseQuestion.of(
            List.of(Need.of("wax", kilograms(kilograms))),
            List.of(
                PackageOffer.of("north", "wax", Price.parse("18 EUR/1 kg")),
                PackageOffer.of("north", "wax", Price.parse("70 EUR/5 kg"))),
            List.of(
                SupplierTerms.of("north", FreightTariff.perOrder(Money.parse("EUR 6.90")))
                    .withFlatDuties(List.of(FlatDuty.of(Money.parse("EUR 3.00"), "wax")))),
            LocalDate.of(2026, 9, 1))
        .cheapest();
  }

  @Test
  void purchase_twoSizes_hasOrdersRemaindersAndTotals() {
    PurchasePlanData data = PurchasePlanData.of(purchase(6.7));

    assertThat(data.orders()).hasSize(1);
    PurchasePlanData.Order order = data.orders().get(0);
    assertThat(order.supplier()).isEqualTo("north");
    assertThat(order.lines())
        .containsExactlyInAnyOrder(
            new PurchasePlanData.Line("wax", 2, 1, eur("36.00")),
            new PurchasePlanData.Line("wax", 1, 5, eur("70.00")));
    assertThat(order.freight()).isEqualTo(eur("6.90"));
    assertThat(order.handling()).isEqualTo(eur("0.00"));
    assertThat(order.flatDuty()).isEqualTo(eur("3.00"));
    assertThat(order.total()).isEqualTo(eur("115.90"));
    assertThat(data.total()).isEqualTo(eur("115.90"));
    assertThat(data.lowerBound()).isEqualTo(eur("115.90"));
    assertThat(data.provedOptimal()).isTrue();
    assertThat(data.leftOver().get(0).boughtKilograms()).isEqualTo(7);
    assertThat(data.leftOver().get(0).massKilograms()).isCloseTo(0.3, within(1e-12));
    assertThat(data.leftOver().get(0).worth()).isEqualTo(eur("4.54"));
  }

  @Test
  void purchase_nothingNeeded_isEmptyAndCostsNothing() {
    PurchasePlanData data = PurchasePlanData.of(purchase(0));

    assertThat(data.orders()).isEmpty();
    assertThat(data.total()).isEqualTo(eur("0.00"));
  }

  @Test
  void classPlan_withColours_hasMassesThatAddUp() {
    Composition red = Composition.of(SampleMaterials.WHITE);
    Coverage film = Coverage.of(millimetres(0.15), 8, gramsPerMillilitre(0.97)).withLoss(0.2);
    ClassPlan plan =
        ClassPlan.of(12, List.of(new Piece(6, 0.04)), film)
            .withLeftInTins(grams(60))
            .withColours(List.of(new ColourShare("red", MassFraction.ofPercent(25), red)));
    ClassPlanData data = ClassPlanData.of(plan);

    assertThat(data.people()).isEqualTo(12);
    assertThat(data.squareMetres()).isCloseTo(2.88, within(1e-12));
    assertThat(data.totalKilograms()).isEqualTo(plan.totalKilograms());
    assertThat(data.colours())
        .containsExactly(new ClassPlanData.Colour("red", 0.25, data.totalKilograms() / 4));
    assertThat(data.plainKilograms() + data.colours().get(0).massKilograms())
        .isCloseTo(data.totalKilograms(), within(1e-12));
  }
}
