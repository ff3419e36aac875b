// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.joda.money.Money;
import org.jsoup.nodes.Element;
import org.jsoup.select.Elements;
import org.junit.jupiter.api.Test;
import org.meltwright.core.cost.CostItem;
import org.meltwright.core.cost.CostKind;
import org.meltwright.core.cost.CostRollUp;
import org.meltwright.core.cost.ExactMoney;
import org.meltwright.core.cost.ReadyMade;
import org.meltwright.core.cost.UnitPrice;
import org.meltwright.examples.studio.page.Block.Picture;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.units.QuantityKind;

class CostBarsTest {

  /** Half a kilogram: 10.00 materials, 0.05 electricity, 6.20 work; so 20.00, 0.10 and 12.40. */
  private static final Picture PICTURE =
      CostBars.of(
          Say.ENGLISH,
          CostRollUp.of(
              "batch",
              List.of(
                  cost(CostKind.MATERIAL, "wax", "7.00"),
                  cost(CostKind.MATERIAL, "resin", "3.00"),
                  cost(CostKind.ENERGY, "plate", "0.05"),
                  cost(CostKind.LABOUR, "stirring", "6.20"))),
          QuantityKind.MASS.ofSi(0.5),
          List.of(new ReadyMade("ready-made", UnitPrice.parse("65.00 EUR/kg"))));

  private static CostItem cost(CostKind kind, String label, String euros) {
    return CostItem.of(kind, label, ExactMoney.of(Money.parse("EUR " + euros)));
  }

  private static double width(Element bar) {
    return Samples.number(bar, "width");
  }

  @Test
  void kinds_are_added_up_per_kilogram_to_the_cent() {
    assertThat(PICTURE.alternative())
        .isEqualTo(
            "Per kilogram: own EUR 32.50 (materials EUR 20.00, electricity EUR 0.10, work EUR"
                + " 12.40); ready-made EUR 65.00.");
  }

  @Test
  void bars_are_as_long_as_the_money_on_one_scale() {
    Element svg = Samples.drawn(PICTURE);
    double offer = width(svg.selectFirst("rect.offer"));
    Elements parts = svg.select("rect.cost:not([height=11])");

    assertThat(parts).hasSize(3);
    assertThat(width(svg.selectFirst("rect.materials")) / offer).isCloseTo(20.0 / 65, within(1e-3));
    assertThat(width(svg.selectFirst("rect.work")) / offer).isCloseTo(12.4 / 65, within(1e-3));
    assertThat(parts.stream().mapToDouble(CostBarsTest::width).sum() / offer)
        .isCloseTo(0.5, within(1e-3));
  }

  @Test
  void money_is_written_in_the_picture_too() {
    assertThat(Samples.drawn(PICTURE).text())
        .contains("EUR 32.50", "EUR 20.00", "EUR 12.40", "EUR 0.10", "EUR 65.00");
  }

  @Test
  void without_an_offer_and_without_cost_there_is_a_picture_still() {
    CostRollUp free = CostRollUp.of("batch", List.of(cost(CostKind.MATERIAL, "snow", "0.00")));

    assertThat(CostBars.of(Say.ENGLISH, free, QuantityKind.MASS.ofSi(1), List.of()).alternative())
        .isEqualTo("Per kilogram: own EUR 0.00 (other EUR 0.00).");
  }
}
