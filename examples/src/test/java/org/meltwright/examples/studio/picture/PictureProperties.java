// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.Chars;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.StringLength;
import net.jqwik.api.constraints.Whitespace;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.meltwright.core.cost.CostItem;
import org.meltwright.core.cost.CostKind;
import org.meltwright.core.cost.CostRollUp;
import org.meltwright.core.cost.ExactMoney;
import org.meltwright.core.cost.FreightTariff;
import org.meltwright.core.cost.Price;
import org.meltwright.core.cost.ReadyMade;
import org.meltwright.core.cost.UnitPrice;
import org.meltwright.core.planning.FlatDuty;
import org.meltwright.core.planning.Need;
import org.meltwright.core.planning.PackageOffer;
import org.meltwright.core.planning.PurchaseQuestion;
import org.meltwright.core.planning.SupplierTerms;
import org.meltwright.core.thermal.setting.OpenTimeTable;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.safety.heating.HeatingReview;
import org.meltwright.units.QuantityKind;

/** No two labels overlap and none leaves the picture, whatever is drawn. */
class PictureProperties {

  private static final CurrencyUnit EURO = CurrencyUnit.EUR;

  @Property(tries = 60)
  void labels_of_a_pot_keep_clear_of_each_other(
      @ForAll @DoubleRange(min = -30, max = 400) double reading,
      @ForAll @DoubleRange(min = 0, max = 9) double wax,
      @ForAll @IntRange(min = 0, max = 4) int which) {
    String other =
        List.of(
                "damar",
                "carnauba",
                "oil-paint-ultramarine",
                "gum-turpentine",
                "titanium-white-rutile")
            .get(which);
    HeatingReview review = Pots.at(reading, Pots.mix("beeswax-bleached", wax + 1, other, 1));

    Looks.arePicturesOfOurs(TemperatureScale.of(Say.ENGLISH, Pots.named(review, review)));
    Looks.arePicturesOfOurs(TemperatureScale.of(Say.in(Locale.GERMAN), Pots.named(review, review)));
  }

  @Property(tries = 60)
  void labels_of_costs_keep_clear_of_each_other(
      @ForAll @IntRange(max = 90_000_000) int materials,
      @ForAll @IntRange(max = 90_000) int work,
      @ForAll @Size(max = 4)
          List<@AlphaChars @Whitespace @StringLength(min = 1, max = 70) String> labels) {
    CostRollUp cost =
        CostRollUp.of(
            "batch", List.of(cost(CostKind.MATERIAL, materials), cost(CostKind.LABOUR, work)));
    List<ReadyMade> offers =
        labels.stream()
            .filter(label -> !label.isBlank())
            .map(label -> new ReadyMade(label, UnitPrice.parse("65.00 EUR/kg")))
            .toList();

    Looks.arePicturesOfOurs(CostBars.of(Say.ENGLISH, cost, QuantityKind.MASS.ofSi(0.7), offers));
  }

  private static CostItem cost(CostKind kind, int cents) {
    return CostItem.of(kind, kind.name(), ExactMoney.of(Money.ofMinor(EURO, cents)));
  }

  @Property(tries = 40)
  void labels_of_open_times_keep_clear_of_each_other(
      @ForAll @Size(min = 1, max = 12) List<@DoubleRange(min = -10, max = 95) Double> panels,
      @ForAll @DoubleRange(min = 66, max = 90) double melt) {
    double[] celsius = panels.stream().mapToDouble(p -> p).toArray();
    OpenTimeTable table = Samples.openTimes(Samples.points(melt, 90), Samples.points(celsius));

    Looks.arePicturesOfOurs(OpenTimeCurve.of(Say.ENGLISH, table));
  }

  /** Wide and narrow letters, none of which spell a "NaN" by chance. */
  @Property(tries = 40)
  void labels_of_purchases_keep_clear_of_each_other(
      @ForAll @Size(min = 1, max = 5) List<@DoubleRange(min = 0, max = 90) Double> needs,
      @ForAll @Chars({'W', 'M', 'B', 'a', 'e', 'g', 'i', 'l'}) @StringLength(min = 1, max = 60)
          String longName) {
    List<Need> all = new ArrayList<>();
    List<PackageOffer> offers = new ArrayList<>();
    for (int i = 0; i < needs.size(); i++) {
      String name = longName + " " + i;
      all.add(new Need(name, needs.get(i), 0));
      offers.add(PackageOffer.of("south", name, Price.parse("14.90 EUR/1 kg")));
      offers.add(PackageOffer.of("south", name, Price.parse("1200.00 EUR/100 kg")));
    }
    SupplierTerms south =
        SupplierTerms.of("south", FreightTariff.perOrder(Money.parse("EUR 6.90")));

    Looks.arePicturesOfOurs(
        PurchaseBars.of(
            Say.ENGLISH,
            PurchaseQuestion.of(all, offers, List.of(south), Samples.DAY)
                .withTimeLimit(Duration.ofMillis(50))
                .cheapest()));
  }

  @Property(tries = 40)
  void parts_of_an_order_that_are_named_add_up_to_its_total(
      @ForAll @DoubleRange(min = 0.01, max = 9) double kilograms,
      @ForAll @IntRange(max = 2000) int freight,
      @ForAll @IntRange(max = 900) int duty) {
    SupplierTerms terms =
        SupplierTerms.of("far", FreightTariff.perOrder(Money.ofMinor(EURO, freight)))
            .withFlatDuties(List.of(FlatDuty.of(Money.ofMinor(EURO, duty), "resin")));
    String said = PurchaseBars.of(Say.ENGLISH, Samples.fromFar(kilograms, terms)).alternative();
    Matcher order = Pattern.compile("from far (EUR [\\d.]+) \\((.*)\\)").matcher(said);

    assertThat(order.find()).as(said).isTrue();
    List<Money> parts =
        Pattern.compile("EUR [\\d.]+")
            .matcher(order.group(2))
            .results()
            .map(part -> Money.parse(part.group()))
            .toList();
    assertThat(Money.total(parts)).as(said).isEqualTo(Money.parse(order.group(1)));
  }
}
