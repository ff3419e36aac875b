// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.picture;

import java.util.ArrayList;
import java.util.List;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.core.material.DefinedTemperature;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.MaterialRole;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.material.TemperatureDefinition;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.Sourced;
import org.meltwright.core.thermal.melting.WorkingWindow;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.HeatingReview;
import org.meltwright.safety.heating.HeatingRules;
import org.meltwright.safety.heating.TemperatureTable;
import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.TemperatureRange;

/** Pots to review. */
final class Pots {

  private Pots() {}

  static Composition mix(String wax, double waxParts, String other, double otherParts) {
    MaterialCatalogue catalogue = MaterialCatalogue.standard();
    return Composition.ofParts(
        List.of(catalogue.require(wax), catalogue.require(other)), waxParts, otherParts);
  }

  /** Beeswax and an invented resin. */
  static Composition withResinThatDissolvesFrom(double low, double high) {
    Material resin =
        Material.builder("slow-resin")
            .names("Slow resin", "Langsames Harz")
            .family(MaterialFamily.RESIN, MaterialRole.HARDENER)
            .figure(
                PropertyKey.DISSOLVES_FROM,
                Sourced.of(
                    new DefinedTemperature(
                        TemperatureRange.ofCelsius(low, high), TemperatureDefinition.NOT_STATED),
                    Source.USER,
                    Knowledge.READ))
            .build();
    Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
    return Composition.ofParts(List.of(wax, resin), 8, 1);
  }

  /** Beeswax and something invented of which no flash point is stated. */
  static Composition withStuffOfUnknownFlashPoint() {
    Material stuff =
        Material.builder("own-stuff")
            .names("Own stuff", "Eigenes")
            .family(MaterialFamily.DRYING_OIL, MaterialRole.OIL)
            .build();
    Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
    return Composition.ofParts(List.of(wax, stuff), 20, 1);
  }

  /** Beeswax and an invented oil. */
  static Composition withOilThatFlashesAt(double celsius) {
    Material oil =
        Material.builder("light-oil")
            .names("Light oil", "Leichtes Öl")
            .family(MaterialFamily.DRYING_OIL, MaterialRole.OIL)
            .figure(
                PropertyKey.FLASH_POINT,
                Sourced.of(
                    new DefinedTemperature(
                        TemperatureRange.ofCelsius(celsius, celsius),
                        TemperatureDefinition.NOT_STATED),
                    Source.USER,
                    Knowledge.READ))
            .build();
    Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
    return Composition.ofParts(List.of(wax, oil), 20, 1);
  }

  static HeatingReview at(double celsius, Composition mix) {
    HeatSource plate = plate(90).withOvershoot(TemperatureDifference.ofKelvin(10));
    return review(
        HeatingPlan.builder(mix)
            .heat(plate)
            .liquidReading(TemperaturePoint.ofCelsius(celsius))
            .build());
  }

  static HeatingReview withoutOvershoot(double setPoint, Composition mix) {
    return review(HeatingPlan.builder(mix).heat(plate(setPoint)).build());
  }

  static HeatingReview unstated(Composition mix) {
    return review(HeatingPlan.of(mix));
  }

  private static HeatSource plate(double setPoint) {
    return HeatSource.of("plate", HeatSource.Kind.HOT_PLATE)
        .withSetPoint(TemperaturePoint.ofCelsius(setPoint));
  }

  private static HeatingReview review(HeatingPlan plan) {
    return HeatingRules.standard().review(plan);
  }

  static WorkingWindow window(HeatingReview review) {
    return TemperatureTable.STANDARD.window(review.plan().mix(), review.target()).orElseThrow();
  }

  /** Each with the window of its mix and a name by its place. */
  static List<TemperatureScale.Pot> named(HeatingReview... reviews) {
    List<TemperatureScale.Pot> pots = new ArrayList<>();
    for (HeatingReview review : reviews) {
      pots.add(new TemperatureScale.Pot("pot " + (pots.size() + 1), review, window(review)));
    }
    return pots;
  }
}
