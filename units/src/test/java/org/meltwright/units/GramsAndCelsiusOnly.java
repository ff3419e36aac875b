// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import static org.meltwright.units.MetricUnits.grams;

/** A program that knows grams and degrees Celsius only. */
final class GramsAndCelsiusOnly {

  private GramsAndCelsiusOnly() {}

  public static void main(String[] arguments) {
    QuantityParser parser = QuantityParser.localeFree();
    QuantityFormatter exact = QuantityFormatter.exact();
    double kilograms = QuantityKind.MASS.toSi(parser.parseMass("730 g"));

    System.out.println(exact.format(grams(730)));
    System.out.println(ScaleInterval.of(grams(1)).roundKilograms(kilograms));
    System.out.println(
        exact.format(parser.parseTemperatureRange("62-65 °C"), TemperatureScale.CELSIUS));
    System.out.println(parser.parseTemperature("90 C"));
    System.out.println(parser.parseMassFraction("10 %"));
    System.out.println(TemperaturePoint.of(parser.parseTemperature("90 °C").toQuantity()));
  }
}
