// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import static org.meltwright.units.MetricUnits.CUBIC_METRE;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.core.equipment.HeatSource.Kind;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.mixture.Composition;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.HeatingReview;
import org.meltwright.safety.heating.HeatingRules;
import org.meltwright.safety.heating.People;
import org.meltwright.safety.heating.Room;
import org.meltwright.safety.heating.StandingAdvice;
import org.meltwright.units.Quantities;
import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.TemperaturePoint;

/** Check a hot plate before class: may I use it, with this medium and a torch at my bench? */
public final class CheckAHotPlateBeforeClass {

  private CheckAHotPlateBeforeClass() {}

  /**
   * Prints the review of one plan.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    MaterialCatalogue catalogue = MaterialCatalogue.standard();
    Composition medium =
        Composition.ofParts(
            List.of(catalogue.require("damar"), catalogue.require("beeswax-yellow")), 1, 8);
    HeatSource plate =
        HeatSource.of("plate by the window", Kind.HOT_PLATE)
            .withSetPoint(TemperaturePoint.ofCelsius(90))
            .withOvershoot(TemperatureDifference.ofKelvin(10));
    HeatingPlan plan =
        HeatingPlan.builder(medium)
            .heat(plate)
            .liquidReading(TemperaturePoint.ofCelsius(88))
            .tool(HeatSource.of("torch", Kind.TORCH))
            .people(People.classOf(1, 7, 1))
            .room(Room.of(Quantities.of(180, CUBIC_METRE)).withExtractionCubicMetresPerHour(1800))
            .build();
    HeatingReview review = HeatingRules.standard().review(plan);

    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    Locale reader = Locale.ENGLISH;
    out.println(review.isBlocked() ? "Do not start like this." : "Read this before you start.");
    review.findings().forEach(f -> out.println(f.severity() + ": " + f.summary(reader)));
    review.notAssessed().forEach(n -> out.println("not assessed: " + n.what(reader)));
    out.println(StandingAdvice.WAX_FIRE.text(reader));
  }
}
