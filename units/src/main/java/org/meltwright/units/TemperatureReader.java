// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads temperatures: points, ranges and differences. */
final class TemperatureReader {

  private static final String POINT = "temperature";
  private static final String DIFFERENCE = "temperature-difference";

  private TemperatureReader() {}

  static TemperaturePoint point(QuantityText text) {
    text.readNumber();
    double value = text.value();
    BigDecimal precise = text.precise();
    return point(value, precise, scale(text, text.rest(), POINT));
  }

  static TemperatureRange range(QuantityText text) {
    text.readNumber();
    double low = text.value();
    BigDecimal preciseLow = text.precise();
    String lowWords = text.wordsBeforeRange();
    if (text.isAtEnd()) {
      return TemperatureRange.of(point(low, preciseLow, scale(text, lowWords, POINT)));
    }
    QuantityReader.readHighEnd(text);
    double high = text.value();
    BigDecimal preciseHigh = text.precise();
    TemperatureScale highScale = scale(text, text.rest(), POINT);
    TemperatureScale lowScale = lowWords.isBlank() ? highScale : scale(text, lowWords, POINT);
    return new TemperatureRange(
        point(low, preciseLow, lowScale), point(high, preciseHigh, highScale));
  }

  static TemperatureDifference difference(QuantityText text) {
    text.readNumber();
    double value = text.value();
    BigDecimal precise = text.precise();
    TemperatureScale scale = scale(text, text.rest(), DIFFERENCE);
    return TemperatureDifference.ofKelvin(
        precise == null ? scale.kelvins(value) : scale.kelvins(precise));
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
    UnitDefinition<?> unit = UnitTables.find(key);
    if (unit != null) {
      return UnitsProblem.wrongKind(shown, expected, unit.kind().id()).with("units", "°C, °F, K");
    }
    return UnitProblems.unknown(
        shown, key, expected, List.of("°C", "°F", "K", "Celsius", "Fahrenheit"), "°C, °F, K");
  }
}
