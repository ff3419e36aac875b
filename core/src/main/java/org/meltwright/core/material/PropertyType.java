// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import java.util.List;
import javax.measure.Quantity;
import org.meltwright.units.QuantityKind;

/** How the values of a property are read and written in a materials file. */
interface PropertyType<V> {

  /** Reads a value; throws a ProblemException if the text is none. */
  V parse(String text);

  /** Writes a value so that {@link #parse} reads it back. */
  String format(V value);

  /** The value that covers both; of two words, the one that warns more. */
  V span(V one, V other);

  /** Ranges of a physical quantity, with the temperature they hold at. */
  static <Q extends Quantity<Q>> PropertyType<PropertyRange<Q>> quantity(
      QuantityKind<Q> kind, MaterialState state) {
    return new QuantityType<>(kind, state);
  }

  /** Temperatures whose definition stands beside each of them. */
  static PropertyType<DefinedTemperature> temperature() {
    return new TemperatureType(null);
  }

  /** Temperatures that have this definition unless they say another. */
  static PropertyType<DefinedTemperature> temperature(TemperatureDefinition usual) {
    return new TemperatureType(usual);
  }

  /** Ranges of numbers in one unit; an empty unit for pure numbers. */
  static PropertyType<NumberRange> number(String unit) {
    return new NumberType(unit);
  }

  /** Ranges of shares by mass, in per cent. */
  static PropertyType<MassFractionRange> fraction() {
    return new FractionType();
  }

  /** One of some words, the one that warns most first; any text if none are given. */
  static PropertyType<String> text(String... words) {
    return new TextType(List.of(words));
  }
}
