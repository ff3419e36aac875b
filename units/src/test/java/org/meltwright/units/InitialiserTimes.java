// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import javax.measure.Unit;
import javax.measure.quantity.Length;
import tech.units.indriya.function.AddConverter;
import tech.units.indriya.function.MultiplyConverter;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.AlternateUnit;
import tech.units.indriya.unit.BaseUnit;
import tech.units.indriya.unit.ProductUnit;
import tech.units.indriya.unit.TransformedUnit;
import tech.units.indriya.unit.UnitDimension;

/**
 * Prints how long each class named takes to initialise, in milliseconds, in the order given.
 *
 * <p>One unit of each sort is made first, so that loading the engine's classes is not counted.
 */
final class InitialiserTimes {

  private InitialiserTimes() {}

  public static void main(String[] classes) throws ClassNotFoundException {
    loadEngine();
    for (String name : classes) {
      long start = System.nanoTime();
      Class.forName(name);
      System.out.println((System.nanoTime() - start) / 1e6 + " " + name);
    }
  }

  private static void loadEngine() {
    Unit<Length> base = new BaseUnit<>("x", "X", UnitDimension.LENGTH);
    Unit<Length> part = new TransformedUnit<>("y", base, MultiplyConverter.ofRational(1, 7));
    Unit<?> product = new ProductUnit<>(base.pow(3).divide(base));
    Unit<?> shifted = new TransformedUnit<>("z", base, new AddConverter(273.15));
    System.out.println(
        "0 "
            + AlternateUnit.of(product.multiply(base), "w", "W").getDimension()
            + Quantities.getQuantity(1, part).getUnit().getDimension()
            + shifted.getDimension());
  }
}
