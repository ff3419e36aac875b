// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.picture;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.joda.money.Money;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.meltwright.core.cost.FreightTariff;
import org.meltwright.core.cost.Price;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.planning.Need;
import org.meltwright.core.planning.PackageOffer;
import org.meltwright.core.planning.PurchasePlan;
import org.meltwright.core.planning.PurchaseQuestion;
import org.meltwright.core.planning.SupplierTerms;
import org.meltwright.core.thermal.setting.Film;
import org.meltwright.core.thermal.setting.MeltFigures;
import org.meltwright.core.thermal.setting.OpenTimeTable;
import org.meltwright.core.thermal.setting.Panel;
import org.meltwright.core.thermal.setting.PanelKind;
import org.meltwright.core.thermal.setting.Surroundings;
import org.meltwright.examples.studio.page.Block.Picture;
import org.meltwright.units.TemperaturePoint;

/** Results to draw, and a look at what was drawn. */
final class Samples {

  static final LocalDate DAY = LocalDate.of(2026, 9, 1);

  private Samples() {}

  static Composition medium() {
    MaterialCatalogue catalogue = MaterialCatalogue.standard();
    return Composition.ofParts(
        List.of(catalogue.require("beeswax-yellow"), catalogue.require("damar")), 8, 1);
  }

  static List<TemperaturePoint> points(double... celsius) {
    return DoubleStream.of(celsius).mapToObj(TemperaturePoint::ofCelsius).toList();
  }

  static OpenTimeTable openTimes(List<TemperaturePoint> melts, List<TemperaturePoint> panels) {
    return openTimes(melts, panels, TemperaturePoint.ofCelsius(20));
  }

  static OpenTimeTable openTimes(
      List<TemperaturePoint> melts, List<TemperaturePoint> panels, TemperaturePoint air) {
    MeltFigures medium = MeltFigures.of(medium(), MeltFigures.TYPICAL);
    return OpenTimeTable.of(
        Film.of(medium, 2e-4, 5e-4, melts.get(0)),
        Panel.of(PanelKind.WOOD, 0.010, TemperaturePoint.ofCelsius(20)),
        Surroundings.stillRoom(air),
        melts,
        panels);
  }

  static PurchasePlan purchase(double waxKilograms, double resinKilograms) {
    FreightTariff freight =
        FreightTariff.perOrder(Money.parse("EUR 6.90")).withFreeFrom(Money.parse("EUR 90.00"));
    return PurchaseQuestion.of(
            List.of(new Need("wax", waxKilograms, 0), new Need("resin", resinKilograms, 0)),
            offers(),
            List.of(SupplierTerms.of("north", freight)),
            DAY)
        .cheapest();
  }

  /** Resin at 16 EUR for 500 g, from one supplier. */
  static PurchasePlan fromFar(double kilograms, SupplierTerms terms) {
    Price price = Price.parse("16.00 EUR/500 g");
    return PurchaseQuestion.of(
            List.of(new Need("resin", kilograms, 0)),
            List.of(PackageOffer.of("far", "resin", price)),
            List.of(terms),
            DAY)
        .cheapest();
  }

  private static List<PackageOffer> offers() {
    return Stream.of(
            "wax 14.90 EUR/1 kg",
            "wax 66.00 EUR/5 kg",
            "resin 17.90 EUR/500 g",
            "resin 4.90 EUR/100 g")
        .map(t -> t.split(" ", 2))
        .map(t -> PackageOffer.of("north", t[0], Price.parse(t[1])))
        .toList();
  }

  /** The picture as a browser would read it. */
  static Element drawn(Picture picture) {
    return Jsoup.parse(picture.svg().element("p")).selectFirst("svg");
  }

  static double number(Element shape, String attribute) {
    return Double.parseDouble(shape.attr(attribute));
  }
}
