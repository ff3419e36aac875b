// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import static org.meltwright.core.material.TemperatureDefinition.NOT_STATED;
import static org.meltwright.core.material.TemperatureDefinition.ONSET;
import static org.meltwright.core.material.TemperatureDefinition.STABLE_UP_TO;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import javax.measure.Quantity;
import org.meltwright.units.MaterialState;
import org.meltwright.units.QuantityKind;

/** How the values of a property are read and written in a materials file. */
interface PropertyType<V> {

  /** Reads a value; throws a ProblemException if the text is none. */
  V parse(String text);

  /** Guards a value made in code as {@link #parse} guards one in a text. */
  void require(V value);

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
  static PropertyType<DefinedTemperature> temperature(Set<TemperatureDefinition> allowed) {
    return new TemperatureType(null, allowed);
  }

  /** Temperatures that have this definition unless they say another. */
  static PropertyType<DefinedTemperature> temperature(TemperatureDefinition usual) {
    return new TemperatureType(usual, EnumSet.of(usual, NOT_STATED));
  }

  /** Temperatures at which something begins, or up to which nothing is seen. */
  static PropertyType<DefinedTemperature> onset() {
    return new TemperatureType(ONSET, EnumSet.of(ONSET, STABLE_UP_TO, NOT_STATED));
  }

  /** Ranges of numbers in one unit; an empty unit for pure numbers. */
  static PropertyType<NumberRange> number(String unit) {
    return new NumberType(unit);
  }

  /** Ranges of shares by mass, in per cent. */
  static PropertyType<MassFractionRange> fraction() {
    return new FractionType();
  }

  /** Any text but none. */
  static PropertyType<String> text() {
    return new TextType();
  }

  /** One of some words, the one that warns most first. */
  static PropertyType<String> words(String... words) {
    return new WordType<>(List.of(words), List.of(words));
  }

  /** The constants of an enum, the one that warns most first; its words are written with spaces. */
  static <E extends Enum<E>> PropertyType<E> words(Class<E> type) {
    List<E> values = List.of(type.getEnumConstants());
    List<String> words = new ArrayList<>();
    for (E value : values) {
      words.add(value.name().toLowerCase(Locale.ROOT).replace('_', ' '));
    }
    return new WordType<>(values, List.copyOf(words));
  }

  /** "yes" or "no", where one of them warns. */
  static PropertyType<Boolean> yesOrNo(boolean warns) {
    return new WordType<>(
        List.of(warns, !warns), warns ? List.of("yes", "no") : List.of("no", "yes"));
  }
}
