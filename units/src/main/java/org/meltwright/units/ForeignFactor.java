// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.UnitConverter;

/**
 * The factor of a unit that others define, asked of the units engine once.
 *
 * <p>A factor such as 0.001 is kept as a division by 1000, which is right to the last digit.
 */
record ForeignFactor(double times, double over) implements Factor {

  static <Q extends Quantity<Q>> Factor of(Unit<Q> unit, Unit<Q> siUnit) {
    UnitConverter converter = unit.getConverterTo(siUnit);
    if (!converter.isLinear()) {
      throw new IllegalArgumentException("not a multiple of " + siUnit + ": " + unit);
    }
    double factor = converter.convert(1.0);
    double inverse = Math.rint(1 / factor);
    return factor < 1 && 1 / inverse == factor
        ? new ForeignFactor(1, inverse)
        : new ForeignFactor(factor, 1);
  }

  @Override
  public double toSi(double value) {
    return value * times / over;
  }

  @Override
  public double fromSi(double si) {
    return si * over / times;
  }
}
