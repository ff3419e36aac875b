// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import static org.meltwright.units.MetricUnits.grams;
import static org.meltwright.units.TemperaturePoint.ofCelsius;

import java.util.Locale;
import java.util.Map;
import org.meltwright.core.batch.Batch;
import org.meltwright.core.batch.Losses;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.HeatingReview;
import org.meltwright.safety.heating.HeatingRules;
import org.meltwright.units.MassFraction;
import org.meltwright.units.QuantityParser;

/** Answers: what do I weigh for a medium, and is the pot at 97 °C too hot? The README shows it. */
public final class FirstLook {

  private FirstLook() {}

  /**
   * Prints the working of a batch and the review of a reading.
   *
   * @param args none
   */
  public static void main(String[] args) {
    Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
    Material resin = MaterialCatalogue.standard().require("damar");
    var ratio = QuantityParser.localeFree().parseMixingRatio("1:8 resin:wax");
    Recipe medium = Recipe.ofRatio("medium", ratio, Map.of("resin", resin, "wax", wax));

    Losses losses = Losses.NONE.withInsolubles(resin, MassFraction.ofPercent(4));
    Batch batch = Batch.usingUp(medium, wax, grams(730), losses);
    System.out.println(batch.explanation().text(Locale.ENGLISH));

    HeatingPlan plan =
        HeatingPlan.builder(medium.composition()).liquidReading(ofCelsius(97)).build();
    HeatingReview review = HeatingRules.standard().review(plan);
    System.out.println(review.findings().get(0));
  }
}
