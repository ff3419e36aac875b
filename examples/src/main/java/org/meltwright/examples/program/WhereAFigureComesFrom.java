// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.meltwright.core.material.DefinedTemperature;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.source.Sourced;
import org.meltwright.units.ProblemException;

/** Where does a figure come from? The melting range of beeswax, and what nobody knows of it. */
public final class WhereAFigureComesFrom {

  private WhereAFigureComesFrom() {}

  /**
   * Prints all melting figures of yellow beeswax in order of preference, with their sources.
   *
   * @param arguments none
   */
  public static void main(String[] arguments) {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    Material wax = MaterialCatalogue.standard().require("Bienenwachs, gelb");
    PropertyKey<DefinedTemperature> key = PropertyKey.MELTING_RANGE;
    out.println(wax.name(Locale.ENGLISH) + ": " + key);
    for (Sourced<DefinedTemperature> figure : wax.figures(key)) {
      out.println("  " + key.format(figure.value()));
      out.println("    from " + figure.source().citation());
      String rules = figure.isUsableForRules() ? "yes" : "no";
      out.println("    known: " + figure.knowledge().inWords() + ", for rules: " + rules);
      figure.preferredBecause().ifPresent(why -> out.println("    first because: " + why));
    }
    Material asIn1911 = wax.preferring(key, "bpc-1911");
    out.println("As in 1911: " + key.format(asIn1911.require(key).value()));
    try {
      wax.require(PropertyKey.AUTOIGNITION);
    } catch (ProblemException e) {
      out.println(e.problems().get(0).what(Locale.ENGLISH));
    }
  }
}
