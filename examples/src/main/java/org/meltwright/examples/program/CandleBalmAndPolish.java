// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import static org.meltwright.units.MetricUnits.grams;
import static org.meltwright.units.MetricUnits.gramsPerMillilitre;
import static org.meltwright.units.MetricUnits.millilitres;

import java.util.Locale;
import org.meltwright.core.batch.Batch;
import org.meltwright.core.batch.BatchLine;
import org.meltwright.core.batch.Casting;
import org.meltwright.core.batch.Losses;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.equipment.Mould;
import org.meltwright.core.equipment.VesselMaterial;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.MaterialRole;
import org.meltwright.units.MassFraction;
import org.meltwright.units.VolumeFraction;

/** The same for a candle, a balm and a wood polish: the core knows no craft; what do I weigh? */
public final class CandleBalmAndPolish {

  private static final MaterialCatalogue CATALOGUE = MaterialCatalogue.standard();
  private static final Material BEESWAX = CATALOGUE.require("beeswax-yellow");
  private static final Losses FILM = Losses.NONE.withFilm(MassFraction.ofPercent(2));

  private CandleBalmAndPolish() {}

  /**
   * Prints what to weigh for 24 candles, 30 tins of balm and 1 kg of polish.
   *
   * @param args none
   */
  public static void main(String[] args) {
    Mould votive = Mould.of("votive", VesselMaterial.SILICONE, 6, millilitres(70));
    Recipe candle =
        Recipe.builder("candle").part(CATALOGUE.require("soy-wax"), 80).part(BEESWAX, 20).build();
    pieces(candle, 24, votive, 100, 0.86);

    Material oil = // a material of your own; its figures come from your data sheet
        Material.builder("sunflower-oil")
            .names("Sunflower oil", "Sonnenblumenöl")
            .family(MaterialFamily.OTHER, MaterialRole.OIL)
            .build();
    Mould jar = Mould.of("tin", VesselMaterial.ALUMINIUM, 1, millilitres(30));
    pieces(Recipe.builder("balm").part(oil, 75).part(BEESWAX, 25).build(), 30, jar, 90, 0.90);

    Recipe polish =
        Recipe.builder("polish")
            .part(BEESWAX, 60)
            .part(CATALOGUE.require("carnauba"), 15)
            .part(CATALOGUE.require("linseed-oil"), 25)
            .build();
    print(Batch.ofNet(polish, grams(1000), FILM));
  }

  private static void pieces(Recipe recipe, int count, Mould mould, double fill, double density) {
    Casting one =
        Casting.of(grams(1), mould, VolumeFraction.ofPercent(fill), gramsPerMillilitre(density));
    print(Batch.ofCakes(recipe, count, one.cake(), FILM));
  }

  private static void print(Batch batch) {
    StringBuilder text = new StringBuilder(batch.recipe().name()).append(':');
    for (BatchLine line : batch.lines()) {
      text.append(
          String.format(
              Locale.ROOT, " %s %.0f g", line.ingredient().name(), line.massKilograms() * 1000));
    }
    System.out.println(text);
  }
}
