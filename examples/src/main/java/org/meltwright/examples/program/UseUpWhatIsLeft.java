// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import static org.meltwright.units.MetricUnits.GRAM;
import static org.meltwright.units.MetricUnits.grams;
import static org.meltwright.units.TemperaturePoint.ofCelsius;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.meltwright.core.cost.ExactMoney;
import org.meltwright.core.cost.UnitPrice;
import org.meltwright.core.material.MassFractionRange;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.Mixture;
import org.meltwright.core.mixture.ShareOf;
import org.meltwright.core.planning.blend.BlendAnswer;
import org.meltwright.core.planning.blend.BlendLine;
import org.meltwright.core.planning.blend.BlendPart;
import org.meltwright.core.planning.blend.BlendQuestion;
import org.meltwright.core.planning.blend.Wish;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.HeatingReview;
import org.meltwright.safety.heating.HeatingRules;
import org.meltwright.units.MassFraction;
import org.meltwright.units.QuantityFormatter;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.ScaleInterval;
import org.meltwright.units.TemperatureDifference;

/**
 * Use up what is left: a medium between 11 and 14 % resin from old cakes, scrapings and the shelf,
 * old cakes first, free oil below 4 % whatever the tube held, at least cost.
 */
public final class UseUpWhatIsLeft {

  private static final PrintStream OUT = new PrintStream(System.out, true, StandardCharsets.UTF_8);

  private UseUpWhatIsLeft() {}

  /**
   * Prints the amounts, what they save, what binds and why; then wishes that contradict each other.
   *
   * @param args none
   */
  public static void main(String[] args) {
    MaterialCatalogue shelf = MaterialCatalogue.standard();
    Material resin = shelf.require("damar");
    Material wax = shelf.require("beeswax-yellow");
    Material paint = shelf.require("oil-paint-titanium-white");
    Composition usual = Composition.ofParts(List.of(resin, wax), 1, 7);
    Composition strong = Composition.ofParts(List.of(resin, wax), 1, 4);
    UnitPrice nothing = UnitPrice.parse("0 EUR/kg"); // paid for long ago
    BlendPart freshResin = BlendPart.of(resin).at(UnitPrice.parse("39 EUR/kg"));
    BlendPart freshWax = BlendPart.of(wax).at(UnitPrice.parse("19.80 EUR/kg"));
    BlendPart cakes = BlendPart.of("old cakes", Mixture.of(strong, grams(300))).at(nothing);
    Composition tinted = usual.with(paint, MassFraction.ofPercent(40));
    BlendPart scrapings = BlendPart.of("scrapings", Mixture.of(tinted, grams(400))).at(nothing);

    MassFraction fourPerCent = MassFraction.ofPercent(4);
    Wish lean = Wish.share(ShareOf.FREE_OIL, new MassFractionRange(MassFraction.ZERO, fourPerCent));
    List<Wish> wishes =
        List.of(
            Wish.amount(grams(900)),
            Wish.share(ShareOf.RESIN, Wish.percent(11, 14)),
            lean,
            Wish.useUp("old cakes").ranked(1));
    BlendQuestion question =
        BlendQuestion.of(List.of(cakes, scrapings, freshResin, freshWax), wishes)
            .withUsual(usual)
            .weighedTo(ScaleInterval.of(grams(1)))
            .withWorkingWindow(
                ofCelsius(90),
                TemperatureDifference.ofKelvin(10),
                TemperatureDifference.ofKelvin(5))
            .forEveryLot();
    BlendAnswer.Found found = question.cheapest().require();
    print(found);

    BlendAnswer.Found fresh =
        BlendQuestion.of(List.of(freshResin, freshWax), List.of(Wish.amount(grams(900))))
            .nearestTo(usual)
            .require();
    ExactMoney saved = fresh.cost().orElseThrow().minus(found.cost().orElseThrow());
    OUT.println("saves " + saved.toMoney() + " against the usual medium");

    HeatingPlan plan =
        HeatingPlan.builder(found.mixture().composition()).liquidReading(ofCelsius(88)).build();
    HeatingReview review = HeatingRules.standard().review(plan);
    review.findings().forEach(f -> OUT.println(f));

    BlendAnswer greedy = question.with(Wish.useUp("scrapings")).cheapest();
    greedy.sentences().forEach(s -> OUT.println(s.in(Locale.GERMAN)));
  }

  private static void print(BlendAnswer.Found found) {
    QuantityFormatter whole = QuantityFormatter.ofDecimals(0);
    for (BlendLine line : found.lines()) {
      String mass = whole.format(QuantityKind.MASS, line.weighedKilograms(), GRAM);
      OUT.println(mass + " of " + line.part().name());
    }
    found.sentences().forEach(s -> OUT.println(s.in(Locale.ENGLISH)));
  }
}
