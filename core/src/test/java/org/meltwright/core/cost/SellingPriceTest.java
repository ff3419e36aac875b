// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.meltwright.units.MetricUnits.kilowattHours;
import static org.meltwright.units.MetricUnits.minutes;

import java.util.List;
import java.util.Locale;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.meltwright.units.ProblemException;

class SellingPriceTest {

  private static final SalesTerms MARKET =
      SalesTerms.taxed(Rate.ofPercent("19"))
          .withFee(Rate.ofPercent("10"))
          .withFixedFee(euros("0.30"));
  private static final UnitCost CAKE = UnitCost.of(euros("2")).withWork(minutes(6), euros("20"));

  /** 8 wanted, worked out by hand: 8.30 ÷ 0.9, ÷ (1 ÷ 1.19 − 0.1), ÷ (1 ÷ 1.23 − 0.1). */
  @ParameterizedTest
  @CsvSource({"0, 9.22", "19, 11.21", "23, 11.64"})
  void priceLeaving_putsTaxAndFeeOnByDivision(String tax, String price) {
    SalesTerms terms =
        SalesTerms.taxed(Rate.ofPercent(tax))
            .withFee(Rate.ofPercent("10"))
            .withFixedFee(euros("0.30"));
    assertThat(terms.priceLeaving(euros("8")).toMoney()).isEqualTo(euros(price));
    assertThat(terms.left(terms.priceLeaving(euros("8")))).isEqualTo(exact("8"));
  }

  @Test
  void left_isWhatPerCentsOnTopOfOneAnotherWouldLeave() {
    assertThat(MARKET.left(euros("10.77")).toMoney()).isEqualTo(euros("7.67"));
    assertThat(MARKET.left(euros("11.90"))).isEqualTo(exact("8.51"));
  }

  /** Common accounting terms: the mark-up is margin ÷ (1 − margin). */
  @ParameterizedTest
  @CsvSource({"25, 20", "100, 50", "150, 60", "300, 75"})
  void markUpAndMargin_nameOnePriceInTwoWays(String markUp, String margin) {
    SellingPrice one = SellingPrice.forMarkUp(CAKE, MARKET, Rate.ofPercent(markUp));
    assertThat(one).isEqualTo(SellingPrice.forMargin(CAKE, MARKET, Rate.ofPercent(margin)));
    assertThat(one.markUp()).hasValue(Double.parseDouble(markUp) / 100);
    assertThat(one.margin()).hasValue(Double.parseDouble(margin) / 100);
  }

  @Test
  void forMarkUp_ofACakeAtTheMarket() {
    SellingPrice price = SellingPrice.forMarkUp(CAKE, MARKET, Rate.ofPercent("100"));
    assertThat(price.price().toMoney()).isEqualTo(euros("11.21"));
    assertThat(price.profit()).isEqualTo(exact("4"));
    assertThat(price.roundedUpTo(euros("0.50")).price()).isEqualTo(exact("11.5"));
    assertThat(price.roundedUpTo(euros("0.50")).roundedUpTo(euros("0.50")))
        .isEqualTo(price.roundedUpTo(euros("0.50")));
  }

  /** A fifth off a price of 50 % margin leaves 37.5 %. */
  @Test
  void of_aFifthOff() {
    UnitCost cost = UnitCost.of(euros("5"));
    assertThat(SellingPrice.of(cost, SalesTerms.exempt(), euros("8")).margin()).hasValue(0.375);
  }

  /** 5.95 − 0.95 tax − 0.895 fees − 2 spent = 2.105 for six minutes. */
  @Test
  void leftPerHour_isWhatTheHourEarnsWhateverItsWage() {
    SellingPrice price = SellingPrice.of(CAKE, MARKET, euros("5.95"));
    assertThat(price.leftPerHour()).hasValue(exact("21.05"));
    UnitCost unpaid = UnitCost.of(euros("2")).withWork(minutes(6), euros("0"));
    assertThat(SellingPrice.of(unpaid, MARKET, euros("5.95")).leftPerHour())
        .hasValue(exact("21.05"));
  }

  @Test
  void leftPerHour_withoutTimeIsNotKnown() {
    UnitCost cost = UnitCost.of(euros("2"));
    assertThat(SellingPrice.of(cost, MARKET, euros("5")).leftPerHour()).isEmpty();
  }

  @Test
  void profit_ofAPriceBelowCostIsALoss() {
    SellingPrice price = SellingPrice.of(CAKE, SalesTerms.exempt(), euros("3"));
    assertThat(price.profit()).isEqualTo(exact("-1"));
    assertThat(price.markUp()).hasValue(-0.25);
  }

  @Test
  void margin_whereNothingIsLeftIsNotKnown() {
    assertThat(SellingPrice.of(CAKE, MARKET, euros("0")).margin()).isEmpty();
    assertThat(SellingPrice.of(UnitCost.of(euros("0")), MARKET, euros("1")).markUp()).isEmpty();
  }

  @Test
  void overheads_byPiecesByHoursAndFlat() {
    UnitCost byPieces = CAKE.withOverheads(euros("600"), 1000);
    assertThat(byPieces.overheads()).isEqualTo(exact("0.60"));
    assertThat(byPieces.total()).isEqualTo(exact("4.60"));
    // six minutes of a thousand hours
    assertThat(CAKE.withOverheads(euros("6000"), minutes(60_000)).overheads())
        .isEqualTo(exact("0.60"));
    assertThat(CAKE.withOverheads(Rate.ofPercent("15")).overheads()).isEqualTo(exact("0.60"));
  }

  @Test
  void of_aBatchByThePiece() {
    CostRollUp batch =
        CostRollUp.of(
            "cakes", List.of(CostItem.energy("melting", kilowattHours(1.5), euros("0.34"))));
    assertThat(UnitCost.of(batch.perPiece(3)).total()).isEqualTo(exact("0.17"));
  }

  @Test
  void withFee_thatTakesAllIsRefused() {
    SalesTerms taxed = SalesTerms.taxed(Rate.ofPercent("25"));
    assertThat(taxed.withFee(Rate.ofPercent("79.9")).priceLeaving(euros("1")).toMoney())
        .isEqualTo(euros("1000"));
    assertThatThrownBy(() -> taxed.withFee(Rate.ofPercent("80")))
        .isInstanceOfSatisfying(
            ProblemException.class,
            e -> {
              assertThat(e.problems().get(0).code()).isEqualTo(CostProblem.FEE_TAKES_ALL);
              assertThat(e.problems().get(0).what(Locale.GERMAN)).contains("80 %");
            });
  }

  @Test
  void wrongNumbers_areRefused() {
    assertProblem(() -> UnitCost.of(euros("-1")));
    assertProblem(() -> CAKE.withWork(minutes(-1), euros("20")));
    assertProblem(() -> CAKE.withWork(minutes(1), Money.parse("GBP 20")));
    assertProblem(() -> CAKE.withOverheads(euros("1"), 0));
    assertProblem(() -> MARKET.withFixedFee(euros("-1")));
    assertProblem(() -> SellingPrice.of(CAKE, MARKET, euros("-1")));
    assertProblem(() -> SellingPrice.of(CAKE, MARKET, Money.parse("GBP 5")));
    assertProblem(() -> SellingPrice.forMargin(CAKE, MARKET, Rate.ofPercent("100")));
    assertProblem(
        () -> SellingPrice.of(CAKE, MARKET, euros("1")).roundedUpTo(Money.parse("GBP 1")));
    assertProblem(() -> SellingPrice.of(CAKE, MARKET, euros("1")).roundedUpTo(euros("0")));
  }

  private static void assertProblem(Runnable run) {
    assertThatThrownBy(run::run).isInstanceOf(ProblemException.class);
  }

  private static Money euros(String amount) {
    return Money.parse("EUR " + amount);
  }

  private static ExactMoney exact(String amount) {
    return ExactMoney.of(euros(amount));
  }
}
