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
import org.meltwright.units.Bilingual;
import org.meltwright.units.MassFraction;
import org.meltwright.units.MaterialState;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityParser;

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

  /** Ranges of numbers in the one unit that their field uses: "17 to 22 mg KOH/g". */
  record NumberType(String unit) implements PropertyType<NumberRange> {

    @Override
    public NumberRange parse(String text) {
      Span span = Span.parse(text);
      if (!span.rest().equals(unit)) {
        throw new ProblemException(Problem.of(MaterialProblem.UNIT, text).with("units", units()));
      }
      double high = span.openAbove() ? Double.POSITIVE_INFINITY : span.high(0);
      return new NumberRange(span.low(0), high, unit);
    }

    @Override
    public void require(NumberRange value) {
      if (!value.unit().equals(unit)) {
        throw new ProblemException(
            Problem.of(MaterialProblem.UNIT, value.toString()).with("units", units()));
      }
    }

    private Bilingual units() {
      return unit.isEmpty() ? MaterialProblem.CHECK.name("no unit") : Bilingual.of(unit);
    }

    @Override
    public String format(NumberRange value) {
      return (Span.format(value.low(), value.high(), 0) + " " + unit).strip();
    }

    @Override
    public NumberRange span(NumberRange one, NumberRange other) {
      return new NumberRange(
          Math.min(one.low(), other.low()), Math.max(one.high(), other.high()), unit);
    }
  }

  /** Ranges of shares by mass, written in per cent: "50 to 65 %". */
  record FractionType() implements PropertyType<MassFractionRange> {

    @Override
    public MassFractionRange parse(String text) {
      Span span = Span.parse(text);
      if (!span.rest().equals("%") || span.openAbove()) {
        return asEverywhere(text);
      }
      return new MassFractionRange(MassFraction.of(span.low(-2)), MassFraction.of(span.high(-2)));
    }

    private static MassFractionRange asEverywhere(String text) {
      try {
        MassFraction share = QuantityParser.localeFree().parseMassFraction(text);
        return new MassFractionRange(share, share);
      } catch (ProblemException e) {
        throw new ProblemException(Problem.of(MaterialProblem.UNIT, text).with("units", "%"));
      }
    }

    @Override
    public void require(MassFractionRange value) {
      // a mass fraction cannot be what no share is
    }

    @Override
    public String format(MassFractionRange value) {
      return Span.format(value.low().value(), value.high().value(), -2) + " %";
    }

    @Override
    public MassFractionRange span(MassFractionRange one, MassFractionRange other) {
      return new MassFractionRange(
          MassFraction.of(Math.min(one.low().value(), other.low().value())),
          MassFraction.of(Math.max(one.high().value(), other.high().value())));
    }
  }

  /** Any text but none. */
  record TextType() implements PropertyType<String> {

    @Override
    public String parse(String text) {
      if (text.isEmpty()) {
        throw new ProblemException(Problem.of(MaterialProblem.WORD, text).with("words", ""));
      }
      return text;
    }

    @Override
    public void require(String value) {
      parse(value);
    }

    @Override
    public String format(String value) {
      return value;
    }

    @Override
    public String span(String one, String other) {
      return one.equals(other) ? one : one + "; " + other;
    }
  }

  /**
   * One of some values, each with its word; the one that warns most stands first.
   *
   * @param values the values
   * @param words the word of each value, as a materials file writes it
   */
  record WordType<V>(List<V> values, List<String> words) implements PropertyType<V> {

    @Override
    public V parse(String text) {
      int place = words.indexOf(text);
      if (place < 0) {
        throw unknown(text);
      }
      return values.get(place);
    }

    @Override
    public void require(V value) {
      if (!values.contains(value)) {
        throw unknown(value.toString());
      }
    }

    private ProblemException unknown(String found) {
      return new ProblemException(
          Problem.of(MaterialProblem.WORD, found).with("words", String.join(", ", words)));
    }

    @Override
    public String format(V value) {
      return words.get(values.indexOf(value));
    }

    @Override
    public V span(V one, V other) {
      return values.get(Math.min(values.indexOf(one), values.indexOf(other)));
    }
  }
}
