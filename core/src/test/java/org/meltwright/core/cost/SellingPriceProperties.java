// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.meltwright.units.MetricUnits.minutes;

import java.math.BigDecimal;
import java.math.MathContext;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

class SellingPriceProperties {

  private static final Money COIN = Money.ofMinor(CurrencyUnit.EUR, 1);

  @Property
  void price_lessTaxLessFeesLessCostIsTheProfit(
      @ForAll("costs") UnitCost cost, @ForAll("terms") SalesTerms terms, @ForAll("money") Money p) {
    SellingPrice price = SellingPrice.of(cost, terms, p);
    ExactMoney sum = price.profit().plus(cost.spent()).plus(cost.work()).plus(cost.overheads());
    assertThat(sum.plus(price.fee()).plus(price.tax())).isEqualTo(ExactMoney.of(p));
  }

  @Property
  void what_isWantedIsWhatThePriceLeaves(
      @ForAll("terms") SalesTerms terms, @ForAll("money") Money wanted) {
    ExactMoney price = terms.priceLeaving(wanted);
    assertThat(terms.left(price)).isEqualTo(ExactMoney.of(wanted));
    assertThat(terms.priceLeaving(terms.left(wanted))).isEqualTo(ExactMoney.of(wanted));
  }

  @Property
  void a_marginIsThatShareOfWhatIsLeft_andAMarkUpOfTheCost(
      @ForAll("costs") UnitCost cost, @ForAll("terms") SalesTerms terms, @ForAll("shares") Rate r) {
    SellingPrice margin = SellingPrice.forMargin(cost, terms, r);
    assertThat(margin.profit()).isEqualTo(r.of(margin.left()));
    SellingPrice markUp = SellingPrice.forMarkUp(cost, terms, r);
    assertThat(markUp.profit()).isEqualTo(r.of(cost.total()));
    assertThat(markUp.price()).isLessThanOrEqualTo(margin.price());
  }

  /** The steps of the sum in the words of an invoice, on plain decimals. */
  @Property
  void an_invoiceLeavesTheSame(
      @ForAll("costs") UnitCost cost, @ForAll("terms") SalesTerms terms, @ForAll("shares") Rate r) {
    BigDecimal gross = decimal(SellingPrice.forMarkUp(cost, terms, r).price());
    MathContext digits = new MathContext(40);
    BigDecimal hundred = BigDecimal.valueOf(100);
    BigDecimal rate = terms.taxRate().percent();
    BigDecimal net = gross.multiply(hundred).divide(hundred.add(rate), digits);
    BigDecimal fee = gross.multiply(terms.feeRate().percent()).divide(hundred);
    BigDecimal left = net.subtract(fee).subtract(decimal(terms.fixedFee().orElseThrow()));
    BigDecimal wished = decimal(cost.total()).multiply(hundred.add(r.percent())).divide(hundred);
    assertThat(left.subtract(wished).abs()).isLessThan(new BigDecimal("1e-20"));
  }

  @Property
  void rounding_upNeverLeavesLess_norAStepMore(
      @ForAll("costs") UnitCost cost, @ForAll("terms") SalesTerms terms, @ForAll("shares") Rate r) {
    SellingPrice exact = SellingPrice.forMargin(cost, terms, r);
    SellingPrice tag = exact.roundedUpTo(COIN);
    assertThat(tag.price()).isEqualTo(ExactMoney.of(tag.price().toMoney()));
    assertThat(tag.profit()).isGreaterThanOrEqualTo(exact.profit());
    assertThat(tag.price()).isLessThan(exact.price().plus(COIN));
  }

  @Property
  void hours_paidAtWhatIsLeftPerHourLeaveNoProfit(
      @ForAll("costs") UnitCost cost, @ForAll("terms") SalesTerms terms, @ForAll("money") Money p) {
    ExactMoney earned = SellingPrice.of(cost, terms, p).leftPerHour().orElseThrow();
    ExactMoney hours = earned.times(cost.hours());
    assertThat(terms.left(p).minus(cost.spent()).minus(cost.overheads())).isEqualTo(hours);
  }

  private static BigDecimal decimal(ExactMoney money) {
    return money.amount().toDecimal(40, java.math.RoundingMode.HALF_EVEN);
  }

  @Provide
  Arbitrary<Money> money() {
    return Arbitraries.longs().between(1, 1_000_000).map(c -> Money.ofMinor(CurrencyUnit.EUR, c));
  }

  @Provide
  Arbitrary<Rate> shares() {
    return Arbitraries.bigDecimals()
        .between(BigDecimal.ZERO, new BigDecimal("99"))
        .ofScale(1)
        .map(Rate::ofPercent);
  }

  @Provide
  Arbitrary<UnitCost> costs() {
    return Combinators.combine(money(), Arbitraries.integers().between(1, 6000), money(), money())
        .as(
            (spent, time, wage, year) ->
                UnitCost.of(spent).withWork(minutes(time), wage).withOverheads(year, 7));
  }

  @Provide
  Arbitrary<SalesTerms> terms() {
    return Combinators.combine(
            Arbitraries.of("0", "7", "19", "25"), Arbitraries.of("0", "6.5", "50", "79"), money())
        .as(
            (tax, fee, fixed) ->
                SalesTerms.taxed(Rate.ofPercent(tax))
                    .withFee(Rate.ofPercent(fee))
                    .withFixedFee(fixed));
  }
}
