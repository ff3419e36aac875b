// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.label;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.mixture.Composition;
import org.meltwright.safety.hazard.HazardLabel;
import org.meltwright.safety.hazard.HazardReview;
import org.meltwright.safety.hazard.LabelDetails;
import org.meltwright.safety.hazard.LabelSupplier;
import org.meltwright.safety.hazard.RuleSet;
import org.meltwright.units.MetricUnits;
import org.meltwright.units.TemperaturePoint;
import tech.units.indriya.quantity.Quantities;

/** Writes the label of a cake that holds rosin as an HTML file with its pictogram. */
public final class PrintLabel {

  private PrintLabel() {}

  /**
   * Writes the label.
   *
   * @param arguments the file to write; without one, {@code label.html}
   * @throws IOException if the file cannot be written
   */
  public static void main(String[] arguments) throws IOException {
    MaterialCatalogue catalogue = MaterialCatalogue.standard();
    Composition medium =
        Composition.ofParts(
            List.of(catalogue.require("beeswax-bleached"), catalogue.require("colophony")), 85, 15);
    RuleSet rules = RuleSet.clpOn(LocalDate.of(2026, 11, 25));
    HazardLabel label = HazardLabel.of(HazardReview.ofCake(medium, rules), details());

    Path file = Path.of(arguments.length > 0 ? arguments[0] : "label.html");
    Files.writeString(file, LabelPage.of(label, Locale.ENGLISH));
    System.out.println("Written: " + file.getFileName());
  }

  private static LabelDetails details() {
    return LabelDetails.builder()
        .productName("Rosin medium", "Kolophonium-Malmittel")
        .nominalMass(Quantities.getQuantity(250, MetricUnits.GRAM))
        .batch("2026-11-B")
        .ufi("MWA1-C2D3-E4F5-G6H7")
        .supplier(LabelSupplier.of("Atelier Fernhof", "Mill Lane 1, Oldtown", "+00 123"))
        .maximumTemperature(TemperaturePoint.ofCelsius(90))
        .disposal("a collection point for hazardous waste", "einer Schadstoffsammelstelle")
        .build();
  }
}
