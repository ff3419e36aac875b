// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads temperatures: points, ranges and differences. */
final class TemperatureReader {

  private static final String POINT = "temperature";
  private static final String DIFFERENCE = "temperature-difference";
  private static final String[] NOUNS = {" difference", " Differenz", " Unterschied"};

  private TemperatureReader() {}

  static TemperaturePoint point(QuantityText text) {
    text.refuseDeviation();
    text.readNumber();
    double value = text.value();
    BigDecimal precise = text.precise();
    return point(value, precise, scale(text, text.rest(), POINT));
  }

  static TemperatureRange range(QuantityText text) {
    boolean between = text.skipOneOf(QuantityReader.BETWEEN);
    boolean from = !between && text.skipOneOf(QuantityReader.FROM);
    text.readNumber();
    double low = text.value();
    BigDecimal preciseLow = text.precise();
    String lowWords = text.wordsBeforeRange();
    if (text.isAtEnd() && !between && !from) {
      return deviation(text, low, preciseLow, lowWords);
    }
    QuantityReader.readHighEnd(text, between);
    double high = text.value();
    BigDecimal preciseHigh = text.precise();
    TemperatureScale highScale = scale(text, text.rest(), POINT);
    TemperatureScale lowScale = lowWords.isBlank() ? highScale : scale(text, lowWords, POINT);
    return new TemperatureRange(
        point(low, preciseLow, lowScale), point(high, preciseHigh, highScale));
  }

  /** One temperature, which is a range too, or one with its deviation: "70 °C ± 2 K". */
  private static TemperatureRange deviation(
      QuantityText text, double middle, @Nullable BigDecimal precise, String words) {
    int sign = words.indexOf('±');
    if (sign < 0) {
      return TemperatureRange.of(point(middle, precise, scale(text, words, POINT)));
    }
    String middleWords = words.substring(0, sign).strip();
    text.backTo(words, sign + 1);
    text.skipSpaces();
    text.readNumber();
    double deviation = Math.abs(text.value());
    TemperatureScale scale = scale(text, text.rest(), DIFFERENCE);
    TemperaturePoint point =
        point(middle, precise, middleWords.isEmpty() ? scale : scale(text, middleWords, POINT));
    TemperatureDifference width = scale.difference(deviation);
    return new TemperatureRange(point.minus(width), point.plus(width));
  }

  static TemperatureDifference difference(QuantityText text) {
    text.refuseDeviation();
    boolean said = text.skipOneOf("a difference of", "eine Differenz von");
    text.readNumber();
    double value = text.value();
    BigDecimal precise = text.precise();
    String words = said ? text.rest() : withoutNoun(text.rest().strip());
    TemperatureScale scale = scale(text, words, DIFFERENCE);
    return TemperatureDifference.ofKelvin(
        precise == null ? scale.kelvins(value) : scale.kelvins(precise));
  }

  private static String withoutNoun(String words) {
    for (String noun : NOUNS) {
      if (words.endsWith(noun)) {
        return words.substring(0, words.length() - noun.length());
      }
    }
    return words;
  }

  private static TemperaturePoint point(
      double value, @Nullable BigDecimal precise, TemperatureScale scale) {
    return precise == null
        ? scale.point(value)
        : TemperaturePoint.ofCelsius(scale.celsius(precise));
  }

  private static TemperatureScale scale(QuantityText text, String words, String expected) {
    String key = UnitTable.key(words);
    TemperatureScale scale = TemperatureScale.find(key);
    if (scale == null) {
      throw new ProblemException(problem(text.shown(), key, expected));
    }
    return scale;
  }

  private static Problem problem(String shown, String key, String expected) {
    if (key.isEmpty()) {
      return Problem.of(UnitsProblem.MISSING_UNIT, shown)
          .with("expected", expected)
          .with("units", "°C, °F, K");
    }
    if (UnitProblems.isRange(key)) {
      return Problem.of(UnitsProblem.RANGE_GIVEN, shown);
    }
    if (TemperatureScale.isBareDegree(key)) {
      return UnitProblems.ambiguous(shown, key, Bilingual.of("°C, °F"));
    }
    UnitDefinition<?> unit = UnitTables.find(key);
    if (unit != null) {
      return UnitsProblem.wrongKind(shown, expected, unit.kind().id()).with("units", "°C, °F, K");
    }
    return UnitProblems.unknown(
        shown, key, expected, List.of("celsius", "fahrenheit", "kelvin"), "°C, °F, K");
  }
}
