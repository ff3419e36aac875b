// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import static org.meltwright.units.MetricUnits.grams;

import java.util.List;
import java.util.Locale;
import org.meltwright.core.material.MassFractionRange;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.Correction;
import org.meltwright.core.mixture.Mixture;
import org.meltwright.core.mixture.ShareOf;
import org.meltwright.units.MassFraction;
import org.meltwright.units.ProblemException;

/** Rescue a pot with too much oil paint: it is at 35 %; how much medium brings it down to 10 %? */
public final class RescueAPot {

  private RescueAPot() {}

  /**
   * Prints what to add, both shares that "30 %" may mean, and what cannot be had.
   *
   * @param args none
   */
  public static void main(String[] args) {
    MaterialCatalogue catalogue = MaterialCatalogue.standard();
    Material wax = catalogue.require("beeswax-yellow");
    Material resin = catalogue.require("damar");
    Material paint = catalogue.require("oil-paint-titanium-white");

    Composition medium = Composition.ofParts(List.of(resin, wax), 1, 8);
    Mixture pot = Mixture.of(medium.with(paint, MassFraction.ofPercent(35)), grams(200));
    print("before", pot.composition());

    MassFraction tenPerCent = MassFraction.ofPercent(10);
    Correction correction = Correction.toShare(pot, ShareOf.OIL_PAINT, tenPerCent, medium);
    System.out.println(
        String.format(Locale.ROOT, "add %.0f g of medium", correction.addedKilograms() * 1000));
    print("after", correction.result().composition());

    try {
      Correction.toShare(pot, ShareOf.OIL_PAINT, MassFraction.ofPercent(50), medium);
    } catch (ProblemException e) {
      System.out.println(e.problems().get(0).allowed(Locale.ENGLISH));
    }
  }

  private static void print(String when, Composition mix) {
    MassFractionRange oilPaint = mix.share(ShareOf.OIL_PAINT);
    MassFractionRange freeOil = mix.share(ShareOf.FREE_OIL);
    System.out.println(
        String.format(
            Locale.ROOT,
            "%s: %.1f %% oil paint, %.1f to %.1f %% free oil, by mass of the mix",
            when,
            oilPaint.high().percent(),
            freeOil.low().percent(),
            freeOil.high().percent()));
  }
}
