// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import java.time.LocalDate;
import java.util.Locale;
import org.meltwright.safety.hazard.CopiedSheet;
import org.meltwright.safety.hazard.HazardLabel;
import org.meltwright.safety.hazard.HazardMixture;
import org.meltwright.safety.hazard.HazardReview;
import org.meltwright.safety.hazard.LabelDetails;
import org.meltwright.safety.hazard.LabelFormat;
import org.meltwright.safety.hazard.LabelSupplier;
import org.meltwright.safety.hazard.PhysicalState;
import org.meltwright.safety.hazard.RuleSet;
import org.meltwright.safety.hazard.SubstanceHazards;
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
    System.out.println(label.explanation().text(Locale.ENGLISH));
    System.out.println("Pack: " + label.packaging());
    LabelFormat tin = LabelFormat.on(LocalDate.of(2026, 11, 30), 0.1);
    System.out.println(tin);
  }

  /** Section 3 of its sheet, as copied. */
  private static final String SHEET =
      """
      turpentine, oil   CAS-No.: 8006-64-2   EC-No.: 232-350-7   >= 90 - <= 100 %
        Flam. Liq. 3, H226; Asp. Tox. 1, H304; Skin Irrit. 2, H315; Skin Sens. 1, H317
        Acute Tox. 4 (Oral), H302; Acute Tox. 4 (Dermal), H312
        Acute Tox. 4 (Inhalation: vapour), H332
        Eye Irritation, Category 2 - H319 Causes serious eye irritation.
        Hazardous to the aquatic environment (chronic): Category 2; H411
      """;

  private static SubstanceHazards solvent() {
    CopiedSheet sheet = CopiedSheet.read(SHEET);
    sheet.problems().forEach(p -> System.out.println(p.inWords(Locale.ENGLISH)));
    sheet.remarks().forEach(r -> System.out.println(r.text(Locale.ENGLISH)));
    return sheet.lines().get(0).hazards().toBuilder().germanName("Terpentinöl").build();
  }

  private static LabelDetails details() {
    return LabelDetails.builder()
        .productName("Wax polish", "Wachspolitur")
        .nominalMass(Quantities.getQuantity(80, MetricUnits.GRAM))
        .batch("2026-11-C")
        .ufi("MWA1-C2D3-E4F5-G6H7")
        .supplier(LabelSupplier.of("Atelier Fernhof", "Mill Lane 1, Oldtown", "+00 123"))
        .disposal("a collection point for hazardous waste", "einer Schadstoffsammelstelle")
        .extinguisher("dry powder or foam", "Löschpulver oder Schaum")
        .build();
  }
}
