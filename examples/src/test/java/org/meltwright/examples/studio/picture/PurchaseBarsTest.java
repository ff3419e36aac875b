// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.jsoup.nodes.Element;
import org.jsoup.select.Elements;
import org.junit.jupiter.api.Test;
import org.meltwright.core.planning.FlatDuty;
import org.meltwright.core.planning.LeftOver;
import org.meltwright.core.planning.PurchasePlan;
import org.meltwright.core.planning.SupplierTerms;
import org.meltwright.examples.studio.page.Block.Picture;
import org.meltwright.examples.studio.page.Say;

class PurchaseBarsTest {

  private static final CurrencyUnit EURO = CurrencyUnit.EUR;
  private static final FlatDuty DUTY = FlatDuty.of(Money.parse("EUR 3.00"), "resin");
  private static final PurchasePlan PLAN = Samples.purchase(5.6, 0.7);

  @Test
  void bars_of_all_materials_are_as_long_as_what_is_bought_on_one_scale() {
    Elements bars =
        Samples.drawn(PurchaseBars.of(Say.ENGLISH, PLAN)).select("rect.outline:not([height=10])");
    List<LeftOver> bought = PLAN.leftOver();

    assertThat(bars).hasSameSizeAs(bought);
    for (int i = 0; i < bars.size(); i++) {
      double share = bought.get(i).boughtKilograms() / bought.get(0).boughtKilograms();
      assertThat(Samples.number(bars.get(i), "width"))
          .as(bought.get(i).toString())
          .isCloseTo(share * Samples.number(bars.get(0), "width"), within(0.02));
    }
  }

  @Test
  void needed_and_left_over_fill_the_bar_in_their_proportion() {
    Element svg = Samples.drawn(PurchaseBars.of(Say.ENGLISH, PLAN));
    for (int i = 0; i < PLAN.leftOver().size(); i++) {
      LeftOver left = PLAN.leftOver().get(i);
      double needed = Samples.number(svg.select("rect.needed").get(i), "width");
      double rest = Samples.number(svg.select("rect.left-over").get(i), "width");

      assertThat(rest / (needed + rest))
          .as(left.toString())
          .isCloseTo(left.massKilograms() / left.boughtKilograms(), within(1e-3));
    }
  }

  @Test
  void alternative_says_packages_left_overs_and_money_to_the_cent() {
    Picture picture = PurchaseBars.of(Say.ENGLISH, PLAN);

    assertThat(picture.alternative())
        .contains("wax: ", " × ", "left over ", "Together " + PLAN.total());
    assertThat(Samples.drawn(picture).text()).contains(PLAN.total().toString());
  }

  /** Goods of 16 EUR from far away, and 3 EUR of duty on each kind of them. */
  @Test
  void flat_duty_is_named_beside_goods_and_carriage() {
    PurchasePlan far =
        Samples.fromFar(0.5, SupplierTerms.free("far", EURO).withFlatDuties(List.of(DUTY)));

    assertThat(PurchaseBars.of(Say.ENGLISH, far).alternative())
        .contains("from far EUR 19.00 (goods EUR 16.00, no carriage counted, flat duty EUR 3.00)");
    assertThat(Samples.drawn(PurchaseBars.of(Say.ENGLISH, far)).text()).contains("flat duty EUR");
  }

  @Test
  void nothing_to_buy_is_said() {
    assertThat(PurchaseBars.of(Say.ENGLISH, Samples.purchase(0, 0)).alternative())
        .isEqualTo("Nothing to buy.");
  }
}
