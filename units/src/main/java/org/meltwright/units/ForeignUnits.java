// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.UnitConverter;

/**
 * The factors of units that others define, kept by identity: a small table, since a program uses
 * few, and bounded, since a program may make units without end.
 */
final class ForeignUnits<Q extends Quantity<Q>> {

  private static final int MOST = 16;

  private volatile Factor<?>[] factors = {};

  /** The factor of a unit, or its converter if it has none. */
  private record Factor<Q extends Quantity<Q>>(
      Unit<Q> unit, double times, double over, UnitConverter converter) {

    static <Q extends Quantity<Q>> Factor<Q> of(Unit<Q> unit, Unit<Q> siUnit) {
      UnitConverter converter = unit.getConverterTo(siUnit);
      if (!converter.isLinear()) {
        return new Factor<>(unit, Double.NaN, 1, converter);
      }
      double factor = converter.convert(1.0);
      double inverse = Math.rint(1 / factor);
      boolean divides = factor < 1 && 1 / inverse == factor;
      return new Factor<>(unit, divides ? 1 : factor, divides ? inverse : 1, converter);
    }

    double toSi(double value) {
      return Double.isNaN(times) ? converter.convert(value) : value * times / over;
    }

    double fromSi(double si) {
      return Double.isNaN(times) ? converter.inverse().convert(si) : si * over / times;
    }
  }

  double toSi(double value, Unit<Q> unit, Unit<Q> siUnit) {
    return factor(unit, siUnit).toSi(value);
  }

  double fromSi(double si, Unit<Q> unit, Unit<Q> siUnit) {
    return factor(unit, siUnit).fromSi(si);
  }

  private Factor<?> factor(Unit<Q> unit, Unit<Q> siUnit) {
    for (Factor<?> known : factors) {
      if (known.unit == unit) {
        return known;
      }
    }
    Factor<Q> factor = Factor.of(unit, siUnit);
    remember(factor);
    return factor;
  }

  private synchronized void remember(Factor<Q> factor) {
    int size = factors.length;
    if (size < MOST) {
      Factor<?>[] more = java.util.Arrays.copyOf(factors, size + 1);
      more[size] = factor;
      factors = more;
    }
  }
}
