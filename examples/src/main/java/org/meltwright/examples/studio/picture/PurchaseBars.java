// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.joda.money.Money;
import org.meltwright.core.planning.LeftOver;
import org.meltwright.core.planning.PurchaseLine;
import org.meltwright.core.planning.PurchasePlan;
import org.meltwright.core.planning.SupplierOrder;
import org.meltwright.examples.studio.page.Block.Picture;
import org.meltwright.examples.studio.page.Lettering;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.examples.studio.page.Svg;

/**
 * A purchase plan as bars, one for each material: its packages side by side, full as far as they
 * are needed and hatched where something remains; all bars to one scale.
 */
public final class PurchaseBars {

  private static final double BAR = 16;

  private final Say say;
  private final PurchasePlan plan;
  private final double unitsPerKilogram;
  private final Svg.Builder svg;
  private double y;

  /**
   * Draws a plan.
   *
   * @param say the reader's language
   * @param plan what to buy; the names of its materials are shown as they are
   * @return the picture
   */
  public static Picture of(Say say, PurchasePlan plan) {
    PurchaseBars bars = new PurchaseBars(say, plan);
    return new Picture(bars.draw(), bars.alternative());
  }

  private PurchaseBars(Say say, PurchasePlan plan) {
    this.say = say;
    this.plan = plan;
    double most = plan.leftOver().stream().mapToDouble(LeftOver::boughtKilograms).max().orElse(1);
    this.unitsPerKilogram = Paper.WIDTH / Math.max(most, Double.MIN_NORMAL);
    this.svg =
        Svg.builder(
            say.words("purchase-bars.title"), say.words("purchase-bars.description"), Paper.WIDTH);
  }

  private Svg draw() {
    y =
        Paper.heading(
            svg, say.words(plan.lines().isEmpty() ? "purchase-bars.none" : "purchase-bars.title"));
    plan.leftOver().forEach(this::bar);
    if (!plan.leftOver().isEmpty()) {
      key();
    }
    y += 6;
    plan.orders().forEach(this::drawn);
    svg.line("rule", 0, y + 5, Paper.WIDTH, y + 5);
    y = Paper.nameAndValue(svg, y + 6, say.words("together"), say.money(plan.total()));
    if (!plan.isProvedOptimal()) {
      y = Paper.lines(svg, "start", 0, y, Paper.WIDTH, unproved());
    }
    return svg.build(y + 6);
  }

  private void bar(LeftOver left) {
    double needed = (left.boughtKilograms() - left.massKilograms()) * unitsPerKilogram;
    double bought = left.boughtKilograms() * unitsPerKilogram;
    y = Paper.nameAndValue(svg, y + 8, left.material(), packages(left)) + 5;
    svg.rectangle("needed", 0, y, needed, BAR);
    svg.rectangle("left-over", needed, y, bought - needed, BAR);
    svg.hatching("hatch", needed, y, bought - needed, BAR, 6);
    cuts(left);
    svg.rectangle("outline", 0, y, bought, BAR);
    y += BAR;
    y = Paper.lines(svg, "soft start", 0, y, Paper.WIDTH, remains(left));
  }

  /** Where one package ends and the next begins; the largest first. */
  private void cuts(LeftOver left) {
    double x = 0;
    for (double kilograms : packageMasses(left)) {
      if (x > 0) {
        svg.line("cut", x, y, x, y + BAR);
      }
      x += kilograms * unitsPerKilogram;
    }
  }

  private List<Double> packageMasses(LeftOver left) {
    List<Double> masses = new ArrayList<>();
    for (PurchaseLine line : lines(left)) {
      double kilograms = line.offer().price().packageKilograms();
      // packages too thin to tell apart are drawn as one
      boolean tellable = kilograms * unitsPerKilogram >= 3;
      for (int i = 0; i < (tellable ? line.count() : 1); i++) {
        masses.add(tellable ? kilograms : line.massKilograms());
      }
    }
    return masses;
  }

  private List<PurchaseLine> lines(LeftOver left) {
    return plan.lines().stream()
        .filter(l -> l.offer().material().equals(left.material()))
        .sorted(
            (a, b) -> Double.compare(b.massKilograms() / b.count(), a.massKilograms() / a.count()))
        .toList();
  }

  private String packages(LeftOver left) {
    return lines(left).stream()
        .map(l -> l.count() + " × " + say.grams(l.offer().price().packageKilograms()))
        .collect(Collectors.joining(" + "));
  }

  private String remains(LeftOver left) {
    double needed = left.boughtKilograms() - left.massKilograms();
    if (left.massKilograms() == 0) {
      return say.words("purchase-bars.used-up", "needed", say.grams(needed));
    }
    return say.words(
        "purchase-bars.remains",
        "needed",
        say.grams(needed),
        "left",
        say.grams(left.massKilograms()),
        "worth",
        say.money(left.worth()));
  }

  private void key() {
    y += 10;
    svg.rectangle("needed", 0, y, 22, 10).rectangle("outline", 0, y, 22, 10);
    svg.text("start", 28, y + 9.5, say.words("purchase-bars.needed"));
    svg.rectangle("left-over", 110, y, 22, 10).hatching("hatch", 110, y, 22, 10, 6);
    svg.rectangle("outline", 110, y, 22, 10);
    svg.text("start", 138, y + 9.5, say.words("purchase-bars.left"));
    y += Lettering.LINE;
  }

  private void drawn(SupplierOrder order) {
    y = Paper.nameAndValue(svg, y, from(order), say.money(order.total()));
    y = Paper.lines(svg, "soft start", 0, y, Paper.WIDTH, parts(order));
  }

  /** What an order is made up of; the parts add up to its total. */
  private String parts(SupplierOrder order) {
    List<String> parts = new ArrayList<>();
    parts.add(part("goods", goods(order)));
    parts.add(
        order.freight().isZero()
            ? say.words("purchase-bars.no-carriage")
            : part("carriage", order.freight()));
    if (!order.handling().isZero()) {
      parts.add(part("handling", order.handling()));
    }
    if (!order.flatDuty().isZero()) {
      parts.add(part("flat-duty", order.flatDuty()));
    }
    return String.join(", ", parts);
  }

  private static Money goods(SupplierOrder order) {
    return Money.total(order.lines().stream().map(PurchaseLine::amount).toList());
  }

  private String part(String what, Money money) {
    return say.words("purchase-bars." + what, "money", say.money(money));
  }

  private String from(SupplierOrder order) {
    return say.words("purchase-bars.from", "supplier", order.supplier());
  }

  private String order(SupplierOrder order) {
    return say.words("purchase-bars.order", "supplier", order.supplier());
  }

  private String unproved() {
    return say.words("purchase-bars.unproved", "least", say.money(plan.lowerBound()));
  }

  private String alternative() {
    String materials =
        plan.leftOver().stream()
            .map(l -> l.material() + ": " + packages(l) + ", " + remains(l))
            .collect(Collectors.joining("; "));
    String orders =
        plan.orders().stream()
            .map(o -> order(o) + " " + say.money(o.total()) + " (" + parts(o) + ")")
            .collect(Collectors.joining("; "));
    String all =
        plan.lines().isEmpty()
            ? say.words("purchase-bars.none") + "."
            : say.words(
                "purchase-bars.alternative",
                "materials",
                materials,
                "total",
                say.money(plan.total()),
                "orders",
                orders);
    return plan.isProvedOptimal() ? all : all + " " + unproved();
  }
}
