// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.meltwright.core.source.Source;
import org.meltwright.units.ProblemException;

class LandedCostTest {

  private static final LocalDate DAY = LocalDate.of(2026, 9, 1);
  private static final Rate NINETEEN = Rate.ofPercent("19");
  private static final List<OrderLine> LINES =
      List.of(
          OrderLine.of("wax", "1521", Price.parse("12.90 EUR/1 kg"), 4),
          OrderLine.of("resin", "1301", Price.parse("17.90 EUR/500 g"), 1),
          OrderLine.of("red", "3213", Price.parse("9.99 EUR/50 g"), 3));

  private static Money eur(String amount) {
    return Money.parse("EUR " + amount);
  }

  private static PurchaseOrder order() {
    return PurchaseOrder.of(LINES, CurrencyUnit.EUR, DAY);
  }

  @Test
  void orderThatDiffersInOneThing_isAnother() {
    FreightTariff parcel = FreightTariff.perOrder(eur("5.95"));

    assertThat(order()).isEqualTo(order());
    assertThat(
            Set.of(
                order(),
                PurchaseOrder.of(LINES.subList(0, 2), CurrencyUnit.EUR, DAY),
                PurchaseOrder.of(LINES, CurrencyUnit.EUR, DAY.plusDays(1)),
                order().withFreight(parcel, Vat.NONE),
                order().withFreight(parcel, Vat.included(NINETEEN)),
                order().withHandling(eur("2"), Vat.NONE),
                order().withHandling(eur("2"), Vat.included(NINETEEN)),
                order().withInsurance(NINETEEN)))
        .hasSize(8);
  }

  @Test
  void anOrderWithinTheCountry_keepsGrossPrices() {
    List<OrderLine> gross =
        LINES.stream()
            .map(
                l ->
                    OrderLine.of(
                        l.label(),
                        l.kindOfGoods(),
                        l.price().withVat(Vat.included(NINETEEN)),
                        l.count()))
            .toList();
    LandedCost cost =
        PurchaseOrder.of(gross, CurrencyUnit.EUR, DAY)
            .withFreight(FreightTariff.perOrder(eur("5.95")), Vat.included(NINETEEN))
            .landed();
    assertThat(cost.paid()).isEqualTo(eur("105.42"));
    assertThat(cost.borne()).isEqualTo(eur("105.42"));
    assertThat(cost.total(CostPart.GOODS)).isEqualTo(eur("83.59"));
    assertThat(cost.total(CostPart.FREIGHT)).isEqualTo(eur("5.00"));
    assertThat(cost.total(CostPart.TAX)).isEqualTo(eur("16.83"));
    assertThat(Money.total(cost.lines().stream().map(LandedLine::paid).toList()))
        .isEqualTo(cost.paid());
  }

  /**
   * 0.99 ÷ 1.19 is 0.8319: the net cents are 0.84, 0.83 and 0.83, the tax what each still lacks.
   */
  @Test
  void everyLine_isPaidForAtItsGrossPrice() {
    Price price = Price.parse("0.99 EUR/10 g").withVat(Vat.included(NINETEEN));
    OrderLine line = OrderLine.of("sample", "", price, 1);
    LandedCost cost = PurchaseOrder.of(List.of(line, line, line), CurrencyUnit.EUR, DAY).landed();
    assertThat(cost.lines()).extracting(LandedLine::paid).containsOnly(eur("0.99"));
    assertThat(cost.lines())
        .extracting(LandedLine::goods)
        .containsExactly(eur("0.84"), eur("0.83"), eur("0.83"));
  }

  /** Customs value 100, uplift 10 %, duty 20: tax of 130 at 15 %. */
  @Test
  void anUplift_countsInTheTaxBase() {
    ImportRegime regime =
        ImportRegime.of(
                "uplifted",
                Set.of(CostPart.GOODS),
                Set.of(CostPart.GOODS, CostPart.DUTY),
                Rate.ofPercent("15"),
                Source.USER)
            .withUplift(Rate.ofPercent("10"));
    OrderLine line = OrderLine.of("goods", "any", Price.parse("100.00 EUR/1 kg"), 1);
    LandedCost cost =
        PurchaseOrder.of(List.of(line), CurrencyUnit.EUR, DAY)
            .withImport(regime, List.of(Duty.percent("any", Rate.ofPercent("20"))))
            .landed();
    assertThat(cost.taxBase()).hasToString("130 EUR");
    assertThat(cost.total(CostPart.TAX)).isEqualTo(eur("19.50"));
    assertThat(cost.paid()).isEqualTo(eur("139.50"));
  }

  @ParameterizedTest
  @CsvSource({"DUTY, DUTY", "UPLIFT, DUTY", "TAX, DUTY", "GOODS, TAX"})
  void aBaseOfWhatComesLater_isRefused(CostPart dutyBase, CostPart taxBase) {
    assertThatExceptionOfType(ProblemException.class)
        .isThrownBy(
            () ->
                ImportRegime.of(
                    "circular", Set.of(dutyBase), Set.of(taxBase), NINETEEN, Source.USER))
        .satisfies(
            e -> assertThat(e.problems().get(0).code()).isEqualTo(CostProblem.BASE_CIRCULAR));
  }

  @Test
  void recoverableTax_isPaidAndComesBack() {
    Vat back = Vat.added(NINETEEN).recoverable();
    OrderLine line = OrderLine.of("wax", "", Price.parse("100.00 EUR/1 kg").withVat(back), 1);
    LandedCost cost = PurchaseOrder.of(List.of(line), CurrencyUnit.EUR, DAY).landed();
    assertThat(cost.paid()).isEqualTo(eur("119.00"));
    assertThat(cost.borne()).isEqualTo(eur("100.00"));
    assertThat(cost.lines().get(0).landed()).isEqualTo(UnitPrice.parse("100 EUR/kg"));
  }

  @Test
  void freight_goesByMassAndInsuranceByValue() {
    LandedCost cost =
        order()
            .withFreight(FreightTariff.perOrder(eur("6.90")).withPerKilogram(eur("0.50")), Vat.NONE)
            .withInsurance(Rate.ofPercent("1"))
            .landed();
    assertThat(cost.total(CostPart.FREIGHT)).isEqualTo(eur("9.23"));
    assertThat(cost.lines())
        .extracting(LandedLine::freight)
        .containsExactly(eur("7.94"), eur("0.99"), eur("0.30"));
    assertThat(cost.total(CostPart.INSURANCE)).isEqualTo(eur("0.99"));
  }

  @ParameterizedTest
  @CsvSource({"40.00, 2, 7.90", "74.99, 2, 7.90", "75.00, 2, 0", "80.00, 20, 0"})
  void freight_isFreeFromItsValue(String goods, String kilograms, String expected) {
    FreightTariff tariff =
        FreightTariff.perOrder(eur("6.90")).withPerKilogram(eur("0.50")).withFreeFrom(eur("75.00"));
    assertThat(tariff.cost(ExactMoney.of(eur(goods)), new BigDecimal(kilograms)).toMoney())
        .isEqualTo(eur(new BigDecimal(expected).setScale(2).toPlainString()));
  }

  @Test
  void flatDuty_isTakenOncePerKindOfGoodsOnItsDays() {
    List<Duty> duties =
        List.of(
            Duty.flat("1521", eur("3.00")).onlyOn(Validity.from(LocalDate.of(2026, 7, 1))),
            Duty.percent("1521", Rate.ZERO).onlyOn(Validity.until(LocalDate.of(2026, 6, 30))),
            Duty.flat("1301", eur("3.00")).forGoodsUpTo(eur("150.00")),
            Duty.percent("1301", Rate.ofPercent("6.5")).forGoodsAbove(eur("150.00")),
            Duty.flat("3213", eur("3.00")));
    ImportRegime regime = ImportRegime.onDeliveredValue("import", NINETEEN, Source.COMMON_PRACTICE);
    LandedCost after = order().withImport(regime, duties).landed();
    assertThat(after.total(CostPart.DUTY)).isEqualTo(eur("9.00"));
    assertThat(after.taxBase()).hasToString("108.47 EUR");
    LandedCost before =
        PurchaseOrder.of(LINES, CurrencyUnit.EUR, LocalDate.of(2026, 6, 30))
            .withImport(regime, duties)
            .landed();
    assertThat(before.total(CostPart.DUTY)).isEqualTo(eur("6.00"));
    assertThat(after.explanation().sources()).containsExactly(Source.COMMON_PRACTICE);
  }

  @Test
  void missingOrDoubleDuties_areNamed() {
    ImportRegime regime = ImportRegime.onDeliveredValue("import", NINETEEN, Source.COMMON_PRACTICE);
    Duty wax = Duty.percent("1521", Rate.ZERO);
    assertThatExceptionOfType(ProblemException.class)
        .isThrownBy(() -> order().withImport(regime, List.of(wax)).landed())
        .withMessageContaining("1301");
    assertThatExceptionOfType(ProblemException.class)
        .isThrownBy(() -> order().withImport(regime, List.of(wax, wax)).landed())
        .withMessageContaining("1521");
  }

  @Test
  void foreignPrices_takeTheLatestRateOfTheDayOrBefore() {
    ExchangeRates rates =
        ExchangeRates.of(
            List.of(
                rate("1.25", LocalDate.of(2026, 8, 1)),
                rate("1.20", LocalDate.of(2026, 9, 1)),
                rate("1.10", LocalDate.of(2026, 9, 2))));
    OrderLine line = OrderLine.of("red", "3213", Price.parse("24.00 USD/100 g"), 2);
    PurchaseOrder order = PurchaseOrder.of(List.of(line), CurrencyUnit.EUR, DAY);
    assertThat(order.withRates(rates).landed().paid()).isEqualTo(eur("40.00"));
    assertThatExceptionOfType(ProblemException.class)
        .isThrownBy(order::landed)
        .withMessageContaining("USD/EUR");
    PurchaseOrder earlier =
        PurchaseOrder.of(List.of(line), CurrencyUnit.EUR, LocalDate.of(2026, 7, 31));
    assertThatExceptionOfType(ProblemException.class)
        .isThrownBy(() -> earlier.withRates(rates).landed());
  }

  private static ExchangeRate rate(String usd, LocalDate date) {
    return new ExchangeRate(CurrencyUnit.EUR, CurrencyUnit.USD, date, new BigDecimal(usd));
  }

  @Test
  void expiredPrices_areAllNamed() {
    Validity august = Validity.until(LocalDate.of(2026, 8, 31));
    List<OrderLine> old =
        LINES.stream()
            .map(l -> new OrderLine(l.label(), l.kindOfGoods(), l.price(), l.count(), august))
            .toList();
    assertThatExceptionOfType(ProblemException.class)
        .isThrownBy(() -> PurchaseOrder.of(old, CurrencyUnit.EUR, DAY))
        .satisfies(e -> assertThat(e.problems()).hasSize(3));
  }
}
