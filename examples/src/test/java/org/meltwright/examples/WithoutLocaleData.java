// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples;

import static org.meltwright.units.MetricUnits.grams;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.text.NumberFormat;
import java.util.Locale;
import org.meltwright.core.cost.UnitPrice;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.mixture.Composition;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.HeatingRules;
import org.meltwright.units.MassFraction;
import org.meltwright.units.MetricUnits;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityFormatter;
import org.meltwright.units.QuantityParser;
import org.meltwright.units.TemperaturePoint;

/**
 * Writes for a German reader; {@link WithoutLocaleDataTest} runs it where the JDK knows no German.
 */
final class WithoutLocaleData {

  private static final Locale READER = Locale.GERMANY;

  private WithoutLocaleData() {}

  public static void main(String[] arguments) {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    out.println("JDK: " + NumberFormat.getInstance(READER).format(0.5));
    QuantityFormatter formatter = QuantityFormatter.exact().withLocale(READER);
    out.println("mass: " + formatter.format(grams(12.5), MetricUnits.GRAM));
    out.println("share: " + formatter.format(MassFraction.ofPercent(12.5)));
    QuantityParser parser = QuantityParser.forLocale(READER);
    out.println("read: " + parser.parseMass("1,5 kg"));
    out.println("price: " + UnitPrice.parse("12,50 €/kg", parser));
    try {
      MetricUnits.grams(Double.NaN);
    } catch (ProblemException refused) {
      out.println("problem: " + refused.problems().get(0).what(READER));
    }
    try {
      MassFraction.ofPercent(120.5);
    } catch (ProblemException refused) {
      out.println("found: " + refused.problems().get(0).found(READER));
    }
    Composition wax = Composition.of(MaterialCatalogue.standard().require("beeswax-yellow"));
    HeatingRules.standard()
        .review(HeatingPlan.of(wax, TemperaturePoint.ofCelsius(150.25)))
        .findings()
        .stream()
        .forEach(finding -> out.println("finding: " + finding.summary(READER)));
  }
}
