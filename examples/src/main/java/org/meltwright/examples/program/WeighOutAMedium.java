// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import static org.meltwright.units.MetricUnits.grams;
import static org.meltwright.units.MetricUnits.millilitres;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.meltwright.core.batch.Batch;
import org.meltwright.core.batch.Casting;
import org.meltwright.core.batch.Losses;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.batch.WeighingLine;
import org.meltwright.core.batch.WeighingSheet;
import org.meltwright.core.equipment.Balance;
import org.meltwright.core.equipment.Mould;
import org.meltwright.core.equipment.VesselMaterial;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.core.mixture.Mixture;
import org.meltwright.units.MassFraction;
import org.meltwright.units.MixingRatio;
import org.meltwright.units.VolumeFraction;

/**
 * Weigh out a medium from what is left: 730 g of wax are there; how much resin goes with them at 1
 * : 8, and how many cakes come of it?
 */
public final class WeighOutAMedium {

  private WeighOutAMedium() {}

  /**
   * Prints what to weigh, what is left after losses, and the cakes.
   *
   * @param args none
   */
  public static void main(String[] args) {
    MaterialCatalogue catalogue = MaterialCatalogue.standard();
    Material wax = catalogue.require("beeswax-yellow");
    Material resin = catalogue.require("damar");

    MixingRatio oneToEight = new MixingRatio(1, 8, "resin", "wax");
    Recipe medium = Recipe.ofRatio("medium", oneToEight, Map.of("resin", resin, "wax", wax));
    Losses losses =
        Losses.NONE
            .withInsolubles(resin, MassFraction.ofPercent(4))
            .withFilm(grams(15), MassFraction.ofPercent(2));
    Batch batch = Batch.usingUp(medium, wax, grams(730), losses);

    Balance kitchen = Balance.of("kitchen balance", grams(5000), grams(1));
    Balance fine = Balance.of("fine balance", grams(200), grams(0.1));
    WeighingSheet sheet = WeighingSheet.of(batch, List.of(kitchen, fine));
    for (WeighingLine line : sheet.inOrder()) {
      print("%.1f g of %s", line.rounded().printedKilograms() * 1000, line.ingredient().name());
      print("  %s", line.hint().text(Locale.ENGLISH));
    }
    print("%.1f g in the pot, %.1f g after losses", g(sheet.charge()), g(sheet.net()));

    Mould tin = Mould.of("tin", VesselMaterial.STEEL, 12, millilitres(103.5));
    Casting cakes = Casting.of(sheet.net(), tin, VolumeFraction.ofPercent(80), DensityBasis.MELT);
    print("%d whole cakes and one of %.0f g", cakes.wholeCakes(), cakes.partCakeKilograms() * 1000);
  }

  private static double g(Mixture mixture) {
    return mixture.massKilograms() * 1000;
  }

  private static void print(String format, Object... values) {
    System.out.println(String.format(Locale.ROOT, format, values));
  }
}
