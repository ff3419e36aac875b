// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.meltwright.units.MetricUnits;
import org.meltwright.units.QuantityKind;

class CostRollUpProperties {

  private static Arbitrary<CostItem> lines() {
    Arbitrary<BigDecimal> amounts =
        Arbitraries.bigDecimals().between(BigDecimal.ZERO, BigDecimal.valueOf(200)).ofScale(4);
    Arbitrary<Double> masses = Arbitraries.doubles().between(0.001, 5).ofScale(5);
    Arbitrary<Double> packages = Arbitraries.of(0.3, 0.45359237, 0.5, 1.0, 7.0);
    return amounts.flatMap(
        a ->
            masses.flatMap(
                m ->
                    packages.map(
                        p ->
                            CostItem.material(
                                "line",
                                MetricUnits.kilograms(m),
                                UnitPrice.of(
                                    BigMoney.of(CurrencyUnit.EUR, a),
                                    QuantityKind.MASS.ofSi(p))))));
  }

  @Provide
  Arbitrary<CostItem> trees() {
    Arbitrary<CostItem> groups =
        lines().list().ofMinSize(1).ofMaxSize(5).map(CostRollUpProperties::group);
    return Arbitraries.oneOf(lines(), groups)
        .list()
        .ofMinSize(1)
        .ofMaxSize(6)
        .map(CostRollUpProperties::group);
  }

  private static CostItem group(List<CostItem> items) {
    return CostItem.group("group", items);
  }

  @Property(tries = 300)
  void theLeavesAddUpToTheRootAndNoLineIsMoreThanACentOff(@ForAll("trees") CostItem tree) {
    CostRollUp cost = CostRollUp.of(tree);
    assertThat(Money.total(cost.leaves().stream().map(CostLine::amount).toList()))
        .isEqualTo(cost.total());
    check(cost.root());
  }

  private static void check(CostLine line) {
    assertThat(line.exact().minus(ExactMoney.of(line.amount())).amount().toDouble())
        .as("%s of %s", line.amount(), line.exact())
        .isBetween(-0.01, 0.01);
    if (!line.isLeaf()) {
      assertThat(Money.total(line.parts().stream().map(CostLine::amount).toList()))
          .isEqualTo(line.amount());
    }
    line.parts().forEach(CostRollUpProperties::check);
  }

  @Property(tries = 100)
  void twiceTheBatchCostsTwiceAsMuchBeforeRounding(
      @ForAll("trees") CostItem tree, @ForAll @DoubleRange(min = 0.1, max = 10) double factor) {
    ExactMoney scaled = tree.times(factor).cost();
    assertThat(scaled).isEqualTo(tree.cost().times(Ratio.of(factor)));
  }
}
