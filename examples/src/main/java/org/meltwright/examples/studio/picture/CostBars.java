// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.joda.money.Money;
import org.meltwright.core.cost.CostItem;
import org.meltwright.core.cost.CostKind;
import org.meltwright.core.cost.CostLine;
import org.meltwright.core.cost.CostRollUp;
import org.meltwright.core.cost.ReadyMade;
import org.meltwright.core.cost.UnitPrice;
import org.meltwright.examples.studio.page.Block.Picture;
import org.meltwright.examples.studio.page.Lettering;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.examples.studio.page.Svg;

/**
 * What a kilogram costs as bars on one scale: own, split by what the money is spent on, and below
 * it what is offered ready-made.
 */
public final class CostBars {

  private static final double BAR = 18;
  private static final double SWATCH = 22;

  private final Say say;
  private final CostRollUp own;
  private final List<ReadyMade> offers;
  private final double unitsPerMoney;
  private final Svg.Builder svg;
  private double y;

  /**
   * Draws own cost against offers.
   *
   * @param say the reader's language
   * @param cost what a batch costs
   * @param netProduct the net product of the batch
   * @param offers what is offered ready-made, in the same currency; may be empty
   * @return the picture
   */
  public static Picture of(
      Say say, CostRollUp cost, Quantity<Mass> netProduct, List<ReadyMade> offers) {
    CostBars bars = new CostBars(say, perKilogram(cost, netProduct), offers);
    return new Picture(bars.draw(), bars.alternative());
  }

  /** The kinds of cost per kilogram, to the cent, so that they add up. */
  private static CostRollUp perKilogram(CostRollUp cost, Quantity<Mass> netProduct) {
    List<CostItem> kinds = new ArrayList<>();
    for (CostKind kind : CostKind.values()) {
      Money total = cost.total(kind);
      if (total.isPositive()) {
        UnitPrice each = UnitPrice.of(total, netProduct);
        kinds.add(CostItem.of(kind, look(kind), each.perKilogram()));
      }
    }
    if (kinds.isEmpty()) {
      UnitPrice nothing = UnitPrice.of(cost.total(), netProduct);
      kinds.add(CostItem.of(CostKind.OTHER, look(CostKind.OTHER), nothing.perKilogram()));
    }
    return CostRollUp.of("own", kinds);
  }

  /** The name of its look, and of the words for it. */
  private static String look(CostKind kind) {
    return switch (kind) {
      case MATERIAL -> "materials";
      case ENERGY -> "electricity";
      case LABOUR -> "work";
      case EQUIPMENT -> "equipment";
      default -> "other";
    };
  }

  private CostBars(Say say, CostRollUp own, List<ReadyMade> offers) {
    this.say = say;
    this.own = own;
    this.offers = List.copyOf(offers);
    double most = amount(own.total());
    for (ReadyMade offer : offers) {
      most = Math.max(most, amount(money(offer)));
    }
    this.unitsPerMoney = most > 0 ? Paper.WIDTH / most : 0;
    this.svg =
        Svg.builder(say.words("cost-bars.title"), say.words("cost-bars.description"), Paper.WIDTH);
  }

  private static double amount(Money money) {
    return money.getAmount().doubleValue();
  }

  private static Money money(ReadyMade offer) {
    return offer.landed().perKilogram().toMoney();
  }

  private Svg draw() {
    y = Paper.heading(svg, say.words("cost-bars.heading"));
    own();
    offers.forEach(this::offer);
    return svg.build(y + 3);
  }

  private void own() {
    y = Paper.nameAndValue(svg, y + 6, say.words("cost-bars.own"), say.money(own.total())) + 5;
    double x = 0;
    for (CostLine line : own.root().parts()) {
      double w = amount(line.amount()) * unitsPerMoney;
      part(line.kind(), x, w, BAR);
      x += w;
    }
    svg.rectangle("outline", 0, y, x, BAR);
    y += BAR + 5;
    for (CostLine line : own.root().parts()) {
      key(line);
    }
  }

  private void part(CostKind kind, double x, double w, double h) {
    String look = look(kind);
    svg.rectangle("cost " + look, x, y, w, h);
    if (kind == CostKind.LABOUR || kind == CostKind.EQUIPMENT) {
      svg.hatching("hatch", x, y, w, h, kind == CostKind.LABOUR ? 6 : 3);
    }
    svg.line("edge", x + w, y, x + w, y + h);
  }

  private void key(CostLine line) {
    y += 4;
    part(line.kind(), 0, SWATCH, 11);
    svg.rectangle("outline", 0, y, SWATCH, 11);
    svg.text("start", SWATCH + 8, y + 10, name(line));
    svg.text("end", Paper.WIDTH, y + 10, say.money(line.amount()));
    y += Lettering.LINE - 2;
  }

  private void offer(ReadyMade offer) {
    y = Paper.nameAndValue(svg, y + 10, title(offer), say.money(money(offer))) + 5;
    double w = amount(money(offer)) * unitsPerMoney;
    svg.rectangle("offer", 0, y, w, BAR).rectangle("outline", 0, y, w, BAR);
    y += BAR;
  }

  private static String title(ReadyMade offer) {
    return offer.label().substring(0, 1).toUpperCase(Locale.ROOT) + offer.label().substring(1);
  }

  private String name(CostLine line) {
    return say.words("cost-bars." + line.label());
  }

  private String alternative() {
    String parts =
        own.root().parts().stream()
            .map(l -> name(l) + " " + say.money(l.amount()))
            .collect(Collectors.joining(", "));
    String others =
        offers.stream()
            .map(o -> "; " + o.label() + " " + say.money(money(o)))
            .collect(Collectors.joining());
    return say.words(
        "cost-bars.alternative", "own", say.money(own.total()), "parts", parts, "others", others);
  }
}
