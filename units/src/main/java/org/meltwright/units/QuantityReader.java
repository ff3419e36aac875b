// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.math.BigDecimal;
import java.math.MathContext;
import javax.measure.Quantity;
import javax.measure.Unit;
import tech.units.indriya.quantity.Quantities;

/** Reads quantities of a kind. */
final class QuantityReader {

  private static final MathContext FORTY_DIGITS = new MathContext(40);

  private QuantityReader() {}

  static <Q extends Quantity<Q>> Quantity<Q> quantity(QuantityText text, QuantityKind<Q> kind) {
    text.readNumber();
    boolean mayLead = text.isWhole() && !text.isSigned();
    Number number = text.number();
    UnitDefinition<Q> unit = unit(text, text.words(), kind);
    if (!text.isAtEnd()) {
      return compound(text, number, unit, mayLead);
    }
    if (!Double.isFinite(unit.toSi(number.doubleValue()))) {
      throw new ProblemException(Problem.of(UnitsProblem.NUMBER_OUT_OF_REACH, text.shown()));
    }
    return of(number, unit.unit());
  }

  static <Q extends Quantity<Q>> QuantityRange<Q> range(QuantityText text, QuantityKind<Q> kind) {
    text.readNumber();
    Number low = text.number();
    String lowWords = text.wordsBeforeRange();
    if (text.isAtEnd()) {
      double si = si(low, unit(text, lowWords, kind));
      return new QuantityRange<>(kind, si, si);
    }
    readHighEnd(text);
    Number high = text.number();
    UnitDefinition<Q> highUnit = unit(text, text.rest(), kind);
    UnitDefinition<Q> lowUnit = lowWords.isBlank() ? highUnit : unit(text, lowWords, kind);
    return new QuantityRange<>(kind, si(low, lowUnit), si(high, highUnit));
  }

  private static double si(Number number, UnitDefinition<?> unit) {
    BigDecimal precise = ManyDigits.of(number);
    return precise == null ? unit.toSi(number.doubleValue()) : unit.toSi(precise);
  }

  static void readHighEnd(QuantityText text) {
    if (!text.skipRangeSign()) {
      throw text.malformed();
    }
    text.readNumber();
    text.skipSpaces();
  }

  static StatedDensity statedDensity(QuantityText text) {
    text.readNumber();
    Number value = text.number();
    String words = text.rest().strip();
    int space = words.lastIndexOf(' ');
    DensityState state = DensityState.find(words.substring(space + 1));
    if (space < 0 || state == null) {
      throw new ProblemException(Problem.of(UnitsProblem.DENSITY_STATE, text.shown()));
    }
    UnitDefinition<Density> unit = unit(text, words.substring(0, space), QuantityKind.DENSITY);
    return new StatedDensity(si(value, unit), state);
  }

  /** "1 lb 4 oz": whole numbers but for the last, each unit smaller than the one before. */
  private static <Q extends Quantity<Q>> Quantity<Q> compound(
      QuantityText text, Number first, UnitDefinition<Q> firstUnit, boolean firstMayLead) {
    BigDecimal si = firstUnit.toSiExact(decimal(first));
    UnitDefinition<Q> before = firstUnit;
    boolean mayLead = firstMayLead;
    while (!text.isAtEnd()) {
      text.readNumber();
      UnitDefinition<Q> unit = unit(text, text.words(), firstUnit.kind());
      if (!mayLead || unit.toSi(1) >= before.toSi(1)) {
        throw new ProblemException(Problem.of(UnitsProblem.COMPOUND_MALFORMED, text.shown()));
      }
      si = si.add(unit.toSiExact(decimal(text.number())), FORTY_DIGITS);
      mayLead = text.isWhole();
      before = unit;
    }
    return of(firstUnit.fromSiExact(si).doubleValue(), firstUnit.unit());
  }

  private static BigDecimal decimal(Number number) {
    return number instanceof BigDecimal precise
        ? precise
        : BigDecimal.valueOf(number.doubleValue());
  }

  private static <Q extends Quantity<Q>> Quantity<Q> of(Number number, Unit<Q> unit) {
    return Quantities.getQuantity(number, unit);
  }

  @SuppressWarnings("unchecked") // a unit of the kind is a unit of the kind's type
  private static <Q extends Quantity<Q>> UnitDefinition<Q> unit(
      QuantityText text, String words, QuantityKind<Q> kind) {
    String key = UnitTable.key(words);
    UnitDefinition<?> unit = UnitTables.find(key);
    if (unit == null || unit.kind() != kind) {
      throw new ProblemException(UnitProblems.of(text, key, kind, unit));
    }
    return (UnitDefinition<Q>) unit;
  }
}
