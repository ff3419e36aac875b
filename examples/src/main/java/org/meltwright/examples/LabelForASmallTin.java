// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples;

import java.time.LocalDate;
import java.util.Locale;
import org.meltwright.safety.hazard.HazardLabel;
import org.meltwright.safety.hazard.HazardMixture;
import org.meltwright.safety.hazard.HazardReview;
import org.meltwright.safety.hazard.LabelDetails;
import org.meltwright.safety.hazard.LabelFormat;
import org.meltwright.safety.hazard.LabelSupplier;
import org.meltwright.safety.hazard.PhysicalState;
import org.meltwright.safety.hazard.RuleSet;
import org.meltwright.safety.hazard.SubstanceHazards;
import org.meltwright.safety.hazard.UptakeForm;
import org.meltwright.units.MetricUnits;
import org.meltwright.units.TemperaturePoint;
import tech.units.indriya.quantity.Quantities;

/**
 * From a data sheet to a label on a small tin: a polish in tins of 100 ml, with the reasons of its
 * label.
 */
public final class LabelForASmallTin {

  private LabelForASmallTin() {}

  /**
   * Prints the label, why each precaution stands on it, and what the tin needs.
   *
   * @param arguments none
   */
  public static void main(String[] arguments) {
    RuleSet rules = RuleSet.clpOn(LocalDate.of(2026, 11, 30));
    SubstanceHazards solvent = solvent();
    HazardMixture polish =
        HazardMixture.builder(rules)
            .substance(solvent, 70)
            .restNotClassified()
            .state(PhysicalState.LIQUID)
            .viscosityAt40(60)
            .flashPoint(TemperaturePoint.ofCelsius(36))
            .build();
    HazardLabel label = HazardLabel.of(HazardReview.of(polish, rules), details());

    System.out.println(label.text(Locale.ENGLISH));
    System.out.println(label.explanation().text());
    System.out.println("Pack: " + label.packaging());
    LabelFormat tin = LabelFormat.on(LocalDate.of(2026, 11, 30), 0.1);
    System.out.println(tin);
  }

  /** As sections 2 and 3 of its sheet say. */
  private static SubstanceHazards solvent() {
    return SubstanceHazards.builder("turpentine, oil")
        .germanName("Terpentinöl")
        .cas("8006-64-2")
        .classified(
            "Flam. Liq. 3 H226; Acute Tox. 4 H302; Acute Tox. 4 H312; Acute Tox. 4 H332;"
                + " Asp. Tox. 1 H304; Skin Irrit. 2 H315; Eye Irrit. 2 H319; Skin Sens. 1 H317;"
                + " Aquatic Chronic 2 H411")
        .inhaledAs(UptakeForm.VAPOUR)
        .build();
  }

  private static LabelDetails details() {
    return LabelDetails.builder()
        .productName("Wax polish", "Wachspolitur")
        .nominalMass(Quantities.getQuantity(80, MetricUnits.GRAM))
        .batch("2026-11-C")
        .supplier(LabelSupplier.of("Atelier Fernhof", "Mill Lane 1, Oldtown", "+00 123"))
        .disposal("a collection point for hazardous waste", "einer Schadstoffsammelstelle")
        .extinguisher("dry powder or foam", "Löschpulver oder Schaum")
        .build();
  }
}
