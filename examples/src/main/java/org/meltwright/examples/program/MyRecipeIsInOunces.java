// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import java.util.Locale;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.safety.heating.TemperatureTable;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityParser;
import org.meltwright.units.TemperaturePoint;

/** My recipe is in ounces and °F: 2 lb of wax, 4 oz of resin and 200 °F; what is that here? */
public final class MyRecipeIsInOunces {

  private static final QuantityParser PARSER = QuantityParser.localeFree();

  private MyRecipeIsInOunces() {}

  /**
   * Prints the recipe in grams and degrees Celsius, and what a fluid ounce is taken for.
   *
   * @param args none
   */
  public static void main(String[] args) {
    double wax = QuantityKind.MASS.toSi(PARSER.parseMass("2 lb"));
    double resin = QuantityKind.MASS.toSi(PARSER.parseMass("4 oz"));
    print("2 lb of wax is %.0f g, 4 oz of resin is %.0f g", wax * 1000, resin * 1000);

    MaterialCatalogue catalogue = MaterialCatalogue.standard();
    Recipe medium =
        Recipe.builder("medium")
            .part(catalogue.require("beeswax-yellow"), wax)
            .part(catalogue.require("damar"), resin)
            .build();
    double share = medium.composition().massFraction(catalogue.require("damar")).value();
    print("that is 1 part of resin to %.0f parts of wax", (1 - share) / share);

    TemperaturePoint dial = PARSER.parseTemperature("200 °F");
    print("200 °F is %.1f °C", dial.celsius());
    TemperatureTable table = TemperatureTable.STANDARD;
    if (table.hasBegun(TemperatureTable.Band.AT_CEILING, dial)) {
      print("that reaches the hard ceiling of %s", table.limits().hardCeiling());
    }

    try {
      PARSER.parseMass("8 fl oz US");
    } catch (ProblemException refused) {
      Problem problem = refused.problems().get(0);
      print("%s", problem.what(Locale.ENGLISH));
    }
  }

  private static void print(String format, Object... values) {
    System.out.println(String.format(Locale.ROOT, format, values));
  }
}
