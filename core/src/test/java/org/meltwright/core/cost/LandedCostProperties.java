// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Size;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.meltwright.core.source.Source;
import org.meltwright.units.QuantityKind;

class LandedCostProperties {

  private static final Rate TAX = Rate.ofPercent("19");

  private static PurchaseOrder order(List<Integer> cents, long charge, Vat vat) {
    List<OrderLine> lines = new ArrayList<>();
    for (int i = 0; i < cents.size(); i++) {
      Money price = Money.ofMinor(CurrencyUnit.EUR, cents.get(i));
      Price per = Price.of(price, QuantityKind.MASS.ofSi(0.1 * (1 + i % 7))).withVat(vat);
      lines.add(OrderLine.of("line " + i, "kind " + i % 3, per, 1 + i % 4));
    }
    Money fee = Money.ofMinor(CurrencyUnit.EUR, charge);
    return PurchaseOrder.of(lines, CurrencyUnit.EUR, LocalDate.of(2026, 9, 1))
        .withFreight(FreightTariff.perOrder(fee), vat)
        .withInsurance(Rate.ofPercent("0.7"))
        .withHandling(fee, vat);
  }

  @Property(tries = 200)
  void grossPricesAreWhatIsPaid(
      @ForAll @Size(min = 1, max = 8) List<@IntRange(min = 1, max = 20_000) Integer> cents,
      @ForAll @LongRange(max = 3000) long charge) {
    PurchaseOrder order = order(cents, charge, Vat.included(TAX));
    LandedCost cost = order.withInsurance(Rate.ZERO).landed();
    long wanted = 2 * charge;
    for (OrderLine line : order.lines()) {
      wanted += line.count() * line.price().amount().getAmountMinorLong();
    }
    assertThat(cost.paid()).isEqualTo(Money.ofMinor(CurrencyUnit.EUR, wanted));
  }

  @Property(tries = 200)
  void theLinesOfAnImportAddUpToItsParts(
      @ForAll @Size(min = 1, max = 8) List<@IntRange(min = 1, max = 20_000) Integer> cents,
      @ForAll @LongRange(max = 3000) long charge) {
    List<Duty> duties =
        List.of(
            Duty.percent("kind 0", Rate.ofPercent("6.5")),
            Duty.flat("kind 1", Money.parse("EUR 3.00")),
            Duty.percent("kind 2", Rate.ZERO));
    LandedCost cost =
        order(cents, charge, Vat.NONE)
            .withImport(
                ImportRegime.onDeliveredValue("import", TAX, Source.USER).recoverable(), duties)
            .landed();
    Money sum = Money.zero(CurrencyUnit.EUR);
    for (CostPart part : LandedLine.paidParts()) {
      sum = sum.plus(cost.total(part));
    }
    assertThat(sum).isEqualTo(cost.paid());
    assertThat(cost.paid().minus(cost.borne())).isEqualTo(cost.total(CostPart.TAX));
    assertThat(TAX.of(cost.taxBase()).toMoney()).isEqualTo(cost.total(CostPart.TAX));
  }
}
