// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.util.IdentityHashMap;
import javax.measure.Quantity;
import javax.measure.UnconvertibleException;
import javax.measure.Unit;
import org.jspecify.annotations.Nullable;

/**
 * The factors of one kind's units, found by identity: each unit's own equality walks through its
 * definition, which costs more than the conversion.
 *
 * <p>Copied on each addition, so that reading takes no lock. Units of others are kept up to a
 * number, since a program may make units without end.
 */
final class UnitFactors<Q extends Quantity<Q>> {

  private static final int MOST_FOREIGN = 32;

  private final QuantityKind<Q> kind;
  private volatile IdentityHashMap<Unit<?>, Factor> factors = new IdentityHashMap<>();
  private int foreign;

  UnitFactors(QuantityKind<Q> kind) {
    this.kind = kind;
  }

  synchronized void add(Unit<Q> unit, Factor factor) {
    IdentityHashMap<Unit<?>, Factor> more = new IdentityHashMap<>(factors);
    more.put(unit, factor);
    factors = more;
  }

  Factor get(Unit<Q> unit) {
    Factor factor = factors.get(unit);
    return factor != null ? factor : foreign(unit);
  }

  /** The definition of this very unit; null for a unit that others define. */
  @Nullable UnitDefinition<?> definition(Unit<Q> unit) {
    return factors.get(unit) instanceof UnitDefinition<?> definition ? definition : null;
  }

  private synchronized Factor foreign(Unit<Q> unit) {
    Factor factor = convertible(unit);
    if (foreign < MOST_FOREIGN) {
      foreign++;
      add(unit, factor);
    }
    return factor;
  }

  /** Reached with another kind's unit only past an unchecked cast. */
  private Factor convertible(Unit<Q> unit) {
    try {
      return ForeignFactor.of(unit, kind.siUnit());
    } catch (UnconvertibleException e) {
      throw new ProblemException(
          UnitsProblem.wrongKind(Shown.text(unit.toString()), kind.id(), "quantity"));
    }
  }
}
