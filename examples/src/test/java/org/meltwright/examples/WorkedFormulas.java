// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples;

import static org.meltwright.units.MetricUnits.grams;
import static org.meltwright.units.MetricUnits.gramsPerMillilitre;
import static org.meltwright.units.MetricUnits.kilograms;
import static org.meltwright.units.MetricUnits.millilitres;
import static org.meltwright.units.MetricUnits.millimetres;
import static org.meltwright.units.MetricUnits.minutes;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.joda.money.Money;
import org.meltwright.core.batch.Casting;
import org.meltwright.core.cost.BreakEven;
import org.meltwright.core.cost.CostItem;
import org.meltwright.core.cost.CostKind;
import org.meltwright.core.cost.CostRollUp;
import org.meltwright.core.cost.MakeOrBuy;
import org.meltwright.core.cost.ReadyMade;
import org.meltwright.core.cost.SalesTerms;
import org.meltwright.core.cost.SellingPrice;
import org.meltwright.core.cost.UnitCost;
import org.meltwright.core.equipment.Mould;
import org.meltwright.core.equipment.VesselMaterial;
import org.meltwright.core.explain.Explanation;
import org.meltwright.core.laws.SampleMaterials;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.Correction;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.core.mixture.Mixture;
import org.meltwright.core.mixture.ShareOf;
import org.meltwright.core.planning.Coverage;
import org.meltwright.safety.exposure.Agent;
import org.meltwright.safety.exposure.CircuitLoad;
import org.meltwright.safety.exposure.DilutionVentilation;
import org.meltwright.safety.exposure.ExposureLimit;
import org.meltwright.units.MassFraction;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.VolumeFraction;

/** Results whose working holds the formula of a section of the formula pages. */
final class WorkedFormulas {

  private static final Mixture POT =
      Mixture.of(
          Composition.ofParts(List.of(SampleMaterials.WHITE, SampleMaterials.OIL), 1, 1),
          grams(90));

  /** By page and title of the section. */
  static final Map<String, Explanation> ALL =
      Map.of(
          "planning: Coverage",
          Coverage.of(millimetres(0.3), 10, gramsPerMillilitre(0.97))
              .explanation(QuantityKind.AREA.ofSi(1)),
          "cost: Break-even",
          BreakEven.of(euros(9), euros(3), euros(1)).explanation(),
          "cost: What a sale leaves",
          sale(),
          "cost: Make or buy",
          makeOrBuy(),
          "batch: Cakes",
          casting(),
          "mixture: What to add to reach a share",
          Correction.toShare(POT, ShareOf.PIGMENT, share(20), Composition.of(SampleMaterials.OIL))
              .explanation(),
          "mixture: What to add to reach a share by volume",
          Correction.toVolumeShare(
                  POT,
                  ShareOf.PIGMENT,
                  VolumeFraction.ofPercent(5),
                  DensityBasis.SOLID,
                  Composition.of(SampleMaterials.OIL))
              .explanation(),
          "mixture: What to take out to reach a share",
          Correction.byDraining(
                  POT, ShareOf.material(SampleMaterials.OIL), share(20), SampleMaterials.OIL)
              .explanation(),
          "exposure: Dilution ventilation",
          dilution(),
          "exposure: One circuit",
          CircuitLoad.of(230, 16, 1)
              .with(new CircuitLoad.Device("plate", 900, true))
              .explanation());

  private WorkedFormulas() {}

  private static Money euros(int amount) {
    return Money.parse("EUR " + amount);
  }

  private static MassFraction share(int percent) {
    return MassFraction.ofPercent(percent);
  }

  private static Explanation makeOrBuy() {
    CostRollUp batch = CostRollUp.of(CostItem.of(CostKind.OTHER, "all", euros(9)));
    return MakeOrBuy.of(
            batch, kilograms(1), List.of(ReadyMade.of("cakes", euros(20), kilograms(1))))
        .explanation();
  }

  private static Explanation sale() {
    UnitCost cost = UnitCost.of(euros(2)).withWork(minutes(6), euros(20));
    return SellingPrice.of(cost, SalesTerms.exempt(), euros(5)).explanation();
  }

  private static Explanation casting() {
    Mould tray = Mould.of("tray", VesselMaterial.SILICONE, 6, millilitres(50));
    return Casting.of(grams(500), tray, VolumeFraction.ofPercent(90), gramsPerMillilitre(0.85))
        .explanation();
  }

  private static Explanation dilution() {
    ExposureLimit limit =
        new ExposureLimit(
            Agent.vapour("ethanol", 46.07),
            200,
            ExposureLimit.Unit.PPM,
            ExposureLimit.Averaging.EIGHT_HOURS,
            "as entered",
            LocalDate.of(2026, 5, 4));
    return new DilutionVentilation(limit, 46.07, 3).explanation();
  }
}
