// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.io.ObjectStreamException;
import java.io.Serial;
import java.util.Map;
import javax.measure.Dimension;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import org.jspecify.annotations.Nullable;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.function.MultiplyConverter;

/**
 * A unit that this library defines, for the units engine: it carries its definition with it, so
 * that the door finds the factor without a look-up.
 */
final class DefinedUnit<Q extends Quantity<Q>> extends AbstractUnit<Q> {

  @Serial private static final long serialVersionUID = 1L;

  private final transient UnitDefinition<Q> definition;

  /** Written instead of the definition; symbols are unique over all kinds. */
  private final String key;

  DefinedUnit(UnitDefinition<Q> definition) {
    super(definition.symbol());
    this.definition = definition;
    this.key = definition.symbol();
  }

  UnitDefinition<Q> definition() {
    return definition;
  }

  @Override
  public UnitConverter getSystemConverter() {
    return MultiplyConverter.ofRational(definition.numerator(), definition.denominator());
  }

  @Override
  protected Unit<Q> toSystemUnit() {
    return definition.kind().siUnit();
  }

  @Override
  public @Nullable Map<? extends Unit<?>, Integer> getBaseUnits() {
    return toSystemUnit().getBaseUnits();
  }

  @Override
  public Dimension getDimension() {
    return toSystemUnit().getDimension();
  }

  /** Each unit exists once. */
  @Override
  public boolean equals(@Nullable Object other) {
    return this == other;
  }

  @Override
  public int hashCode() {
    return key.hashCode();
  }

  @Override
  public String toString() {
    return key;
  }

  @Serial
  private Object readResolve() throws ObjectStreamException {
    return UnitTables.bySymbol(key).unit();
  }
}
