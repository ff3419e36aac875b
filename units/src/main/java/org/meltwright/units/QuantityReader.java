// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/** Reads quantities of a kind. */
final class QuantityReader {

  private static final MathContext FORTY_DIGITS = new MathContext(40);
  private static final double MINUTES = 60;

  /** The unit of the first side of a rectangle, and the sign or word before the second. */
  private static final Pattern SIDES = Pattern.compile("(.*?)\\s*(?:[x×X*]|\\smal|\\sby)\\s*");

  /** What may stand directly before the number of the next part: letters, or the sign of feet. */
  private static final Pattern PART = Pattern.compile("[\\p{L}.]+|['\u2032]");

  static final String[] BETWEEN = {"between", "zwischen"};
  static final String[] FROM = {"from", "von"};

  private QuantityReader() {}

  static <Q extends Quantity<Q>> Quantity<Q> quantity(QuantityText text, QuantityKind<Q> kind) {
    text.refuseDeviation();
    if (kind == QuantityKind.TIME) {
      text.refuseOtherSign();
    }
    text.readNumber();
    boolean mayLead = text.isWhole() && !text.isSigned();
    Number number = text.number();
    if (mayLead && mayBeCounted(kind) && number.doubleValue() >= 1 && text.skipTimesOrPacks()) {
      return counted(number, text, kind);
    }
    if (mayLead && kind == QuantityKind.TIME && text.skip(':')) {
      return hoursAndMinutes(number, text, kind);
    }
    if (kind == QuantityKind.AREA && text.skipTimes()) {
      return area(number, text, "", kind);
    }
    String words = text.words();
    Map.Entry<String, Double> more = NumberWords.behind(words);
    if (more != null && text.isAtEnd() && number.doubleValue() % 1 == 0) {
      String unit = words.substring(0, words.length() - more.getKey().length());
      return of(number.doubleValue() + more.getValue(), unit(text, unit, kind).unit());
    }
    Matcher sides = SIDES.matcher(words);
    if (kind == QuantityKind.AREA && !text.isAtEnd() && sides.matches()) {
      return area(number, text, sides.group(1), kind);
    }
    UnitDefinition<Q> unit = unitOrPart(text, words, kind);
    if (!text.isAtEnd()) {
      return compound(text, number, unit, mayLead);
    }
    if (!Double.isFinite(unit.toSi(number.doubleValue()))) {
      throw new ProblemException(Problem.of(UnitsProblem.NUMBER_OUT_OF_REACH, text.shown()));
    }
    return of(number, unit.unit());
  }

  /** The kind that a text's unit tells: the first unit, or else the last word. */
  static QuantityKind<?> kind(QuantityText text) {
    text.readNumber();
    String first = UnitTable.key(text.words());
    UnitDefinition<?> unit = UnitTables.find(first);
    String last = first.substring(first.lastIndexOf(' ') + 1);
    if (unit == null && !last.equals(first)) {
      unit = UnitTables.find(last);
    }
    if (unit == null) {
      throw new ProblemException(UnitProblems.ofAnyKind(text, first));
    }
    return unit.kind();
  }

  /** Packages are counted; "2 x 4 in" is no length of eight inches. */
  private static boolean mayBeCounted(QuantityKind<?> kind) {
    return kind == QuantityKind.MASS || kind == QuantityKind.VOLUME || kind == QuantityKind.TIME;
  }

  /** "3 x 250 g". */
  private static <Q extends Quantity<Q>> Quantity<Q> counted(
      Number count, QuantityText text, QuantityKind<Q> kind) {
    text.readNumber();
    Number each = text.number();
    UnitDefinition<Q> unit = unit(text, text.words(), kind);
    if (!text.isAtEnd()) {
      throw text.malformed();
    }
    return of(count.doubleValue() * each.doubleValue(), unit.unit());
  }

  /** "1:20 h": minutes of two digits, below sixty. */
  private static <Q extends Quantity<Q>> Quantity<Q> hoursAndMinutes(
      Number hours, QuantityText text, QuantityKind<Q> kind) {
    text.readNumber();
    double minutes = text.value();
    UnitDefinition<Q> unit = unit(text, text.words(), kind);
    boolean clear = unit.unit() == MetricUnits.HOUR && text.isWhole() && minutes < MINUTES;
    if (!clear || !text.isAtEnd()) {
      throw text.malformed();
    }
    return of(hours.doubleValue() + minutes / MINUTES, unit.unit());
  }

  /** "30 x 40 cm", "8 in × 10 in": the sides of a rectangle; its area in the square of a unit. */
  private static <Q extends Quantity<Q>> Quantity<Q> area(
      Number first, QuantityText text, String firstWords, QuantityKind<Q> kind) {
    text.readNumber();
    Number second = text.number();
    UnitDefinition<Length> unit = unit(text, text.rest(), QuantityKind.LENGTH);
    UnitDefinition<Length> other =
        firstWords.isEmpty() ? unit : unit(text, firstWords, QuantityKind.LENGTH);
    double squareMetres = si(first, other) * si(second, unit);
    UnitDefinition<?> square = UnitTables.listed(UnitTable.key(unit.symbol()) + '2');
    Unit<Q> result = square == null ? kind.siUnit() : QuantityReader.<Q>same(square).unit();
    return of(kind.fromSi(squareMetres, result), result);
  }

  static <Q extends Quantity<Q>> QuantityRange<Q> range(QuantityText text, QuantityKind<Q> kind) {
    boolean between = text.skipOneOf(BETWEEN);
    boolean from = !between && text.skipOneOf(FROM);
    text.readNumber();
    Number low = text.number();
    String lowWords = text.wordsBeforeRange();
    if (text.isAtEnd() && !between && !from) {
      return deviation(text, low, lowWords, kind);
    }
    readHighEnd(text, between);
    Number high = text.number();
    UnitDefinition<Q> highUnit = unit(text, text.rest(), kind);
    UnitDefinition<Q> lowUnit = lowWords.isBlank() ? highUnit : unit(text, lowWords, kind);
    return new QuantityRange<>(kind, si(low, lowUnit), si(high, highUnit));
  }

  /** One amount, which is a range too, or one with its deviation: "100 ± 5 g". */
  private static <Q extends Quantity<Q>> QuantityRange<Q> deviation(
      QuantityText text, Number middle, String words, QuantityKind<Q> kind) {
    int sign = words.indexOf('±');
    if (sign < 0) {
      double si = si(middle, unit(text, words, kind));
      return new QuantityRange<>(kind, si, si);
    }
    String middleWords = words.substring(0, sign).strip();
    text.backTo(words, sign + 1);
    text.skipSpaces();
    text.readNumber();
    Number deviation = text.number();
    UnitDefinition<Q> unit = unit(text, text.rest(), kind);
    double si = si(middle, middleWords.isEmpty() ? unit : unit(text, middleWords, kind));
    double width = Math.abs(si(deviation, unit));
    return new QuantityRange<>(kind, si - width, si + width);
  }

  static double si(Number number, UnitDefinition<?> unit) {
    BigDecimal precise = ManyDigits.of(number);
    return precise == null ? unit.toSi(number.doubleValue()) : unit.toSi(precise);
  }

  static void readHighEnd(QuantityText text, boolean between) {
    if (!text.skipRangeSign(between)) {
      throw text.malformed();
    }
    text.readNumber();
    text.skipSpaces();
  }

  static StatedDensity statedDensity(QuantityText text) {
    text.refuseDeviation();
    text.readNumber();
    Number value = text.number();
    String words = text.rest().strip();
    int space = words.lastIndexOf(' ');
    MaterialState state = MaterialState.find(words.substring(space + 1));
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
      UnitDefinition<Q> unit = nextUnit(text, before);
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
    return Quantities.ofNumber(number, unit);
  }

  /** Behind hours "m" means minutes, and so does a number that ends the text: "1h20". */
  private static <Q extends Quantity<Q>> UnitDefinition<Q> nextUnit(
      QuantityText text, UnitDefinition<Q> before) {
    boolean hours = before.unit() == MetricUnits.HOUR && text.isWhole() && text.value() < MINUTES;
    if (hours && (text.isAtEnd() || text.remaining().strip().equals("m"))) {
      text.rest();
      return same(minute());
    }
    return unitOrPart(text, text.words(), before.kind());
  }

  private static UnitDefinition<?> minute() {
    return Objects.requireNonNull(UnitTables.listed("min"), "minute");
  }

  /** The unit of words; of "lb3oz" the part before the digits, and the text goes back to them. */
  private static <Q extends Quantity<Q>> UnitDefinition<Q> unitOrPart(
      QuantityText text, String words, QuantityKind<Q> kind) {
    String key = UnitTable.key(words);
    UnitDefinition<?> unit = UnitTables.find(key);
    int digits = TextCursor.firstDigit(words);
    if (unit == null && digits > 0 && PART.matcher(words.substring(0, digits)).matches()) {
      UnitDefinition<?> part = UnitTables.find(UnitTable.key(words.substring(0, digits)));
      if (part != null && part.kind() == kind) {
        text.backTo(words, digits);
        return same(part);
      }
    }
    return known(text, key, kind, unit);
  }

  private static <Q extends Quantity<Q>> UnitDefinition<Q> unit(
      QuantityText text, String words, QuantityKind<Q> kind) {
    String key = UnitTable.key(words);
    return known(text, key, kind, UnitTables.find(key));
  }

  private static <Q extends Quantity<Q>> UnitDefinition<Q> known(
      QuantityText text, String key, QuantityKind<Q> kind, @Nullable UnitDefinition<?> unit) {
    if (unit == null || unit.kind() != kind) {
      throw new ProblemException(UnitProblems.of(text, key, kind, unit));
    }
    return same(unit);
  }

  @SuppressWarnings("unchecked") // a unit of the kind is a unit of the kind's type
  private static <Q extends Quantity<Q>> UnitDefinition<Q> same(UnitDefinition<?> unit) {
    return (UnitDefinition<Q>) unit;
  }
}
