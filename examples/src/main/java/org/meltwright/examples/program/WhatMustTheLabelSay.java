// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.mixture.Composition;
import org.meltwright.safety.hazard.HazardClass;
import org.meltwright.safety.hazard.HazardLabel;
import org.meltwright.safety.hazard.HazardReview;
import org.meltwright.safety.hazard.LabelDetails;
import org.meltwright.safety.hazard.LabelSupplier;
import org.meltwright.safety.hazard.RuleSet;
import org.meltwright.units.MetricUnits;
import org.meltwright.units.TemperaturePoint;
import tech.units.indriya.quantity.Quantities;

/** What must the label say? The label of a zinc white cake, with the arithmetic behind it. */
public final class WhatMustTheLabelSay {

  private WhatMustTheLabelSay() {}

  /**
   * Prints the label in English and German.
   *
   * @param arguments none
   */
  public static void main(String[] arguments) {
    MaterialCatalogue catalogue = MaterialCatalogue.standard();
    List<Material> materials =
        Stream.of("beeswax-bleached", "damar", "zinc-white").map(catalogue::require).toList();
    Composition cake = Composition.ofParts(materials, 62, 8, 30);

    RuleSet rules = RuleSet.clpOn(LocalDate.of(2026, 11, 25));
    HazardReview review = HazardReview.ofCake(cake, rules);
    HazardLabel label = HazardLabel.of(review, details());

    System.out.println(label.text(Locale.ENGLISH));
    System.out.println(label.text(Locale.GERMAN));
    System.out.println(
        review.finding(HazardClass.AQUATIC_CHRONIC).explanation().text(Locale.ENGLISH));
  }

  private static LabelDetails details() {
    return LabelDetails.builder()
        .productName("Zinc white cake", "Zinkweiß-Block")
        .nominalMass(Quantities.getQuantity(40, MetricUnits.GRAM))
        .batch("2026-11-A")
        .supplier(
            LabelSupplier.of("Atelier Fernhof", "Mill Lane 1, Oldtown", "+00 123")
                .withElectronicAddress("fernhof.example"))
        .maximumTemperature(TemperaturePoint.ofCelsius(90))
        .disposal("a collection point for hazardous waste", "einer Schadstoffsammelstelle")
        .build();
  }
}
