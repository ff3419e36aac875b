// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.meltwright.core.material.MassFractionRange;
import org.meltwright.core.material.Material;
import org.meltwright.units.MassFraction;
import org.meltwright.units.Messages;
import org.meltwright.units.QuantityFormatter;
import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.TemperatureScale;

/** How the values of a finding are written for a reader. */
final class Texts {

  private static final int MOST_PLACES = 9;
  private static final int FEW_DIGITS = 4;

  private static final Messages MESSAGES = Messages.beside(Texts.class);

  private Texts() {}

  static Map<String, String> write(Map<String, Object> values, Locale locale) {
    Map<String, String> written = new HashMap<>();
    values.forEach((name, value) -> written.put(name, write(value, locale)));
    return written;
  }

  static String write(Object value, Locale locale) {
    if (value instanceof TemperaturePoint t) {
      return temperature(t, locale);
    } else if (value instanceof TemperatureDifference d) {
      return number(d.kelvin(), locale) + " K";
    } else if (value instanceof MassFraction f) {
      return number(f.percent(), locale) + " %";
    } else if (value instanceof Material m) {
      return m.name(locale);
    } else if (value instanceof MassFractionRange r) {
      return MESSAGES.text(
          "value.range",
          locale,
          Map.of("low", write(r.low(), locale), "high", write(r.high(), locale)));
    } else if (value instanceof Optional<?> known) {
      return known
          .map(each -> write(each, locale))
          .orElseGet(() -> MESSAGES.text("value.unknown", locale));
    } else if (value instanceof List<?> list) {
      return list.stream().map(each -> write(each, locale)).collect(Collectors.joining(", "));
    } else if (value instanceof Double number) {
      return number(number, locale);
    }
    return value.toString();
  }

  private static String temperature(TemperaturePoint t, Locale locale) {
    QuantityFormatter digits = QuantityFormatter.ofDecimals(places(t)).withLocale(locale);
    TemperaturePoint plain = TemperaturePoint.ofCelsius(plain(t.celsius()).doubleValue());
    return digits.format(plain, TemperatureScale.CELSIUS)
        + " ("
        + digits.format(plain, TemperatureScale.FAHRENHEIT)
        + ")";
  }

  private static String number(double number, Locale locale) {
    BigDecimal plain = plain(number);
    return QuantityFormatter.ofDecimals(places(plain))
        .withLocale(locale)
        .format(plain.doubleValue());
  }

  /**
   * One decimal, or as many as a number has that was given with few digits, or as it takes not to
   * show it as a whole number, which a limit may be: 0.04 is not 0.0, and 99.96 not 100.0.
   */
  private static int places(BigDecimal number) {
    int places = Math.max(1, number.stripTrailingZeros().scale());
    if (number.stripTrailingZeros().precision() <= FEW_DIGITS) {
      return Math.min(places, MOST_PLACES);
    }
    int shown = 1;
    while (shown < Math.min(places, MOST_PLACES) && isWhole(number, shown)) {
      shown++;
    }
    return shown;
  }

  private static boolean isWhole(BigDecimal number, int places) {
    return number.setScale(places, RoundingMode.HALF_UP).stripTrailingZeros().scale() <= 0;
  }

  /** As many decimals as it takes not to round onto a limit, or off it: mostly one. */
  private static int places(TemperaturePoint t) {
    int places = 1;
    while (places < MOST_PLACES && TemperatureTable.STANDARD.tellsApart(t, rounded(t, places))) {
      places++;
    }
    return places;
  }

  private static TemperaturePoint rounded(TemperaturePoint t, int places) {
    return TemperaturePoint.ofCelsius(
        plain(t.celsius()).setScale(places, RoundingMode.HALF_UP).doubleValue());
  }

  /** Twelve digits: else 28.85 would print as 28.8 or 28.9, by the last bit of a sum. */
  private static BigDecimal plain(double number) {
    return BigDecimal.valueOf(number).round(new MathContext(12));
  }
}
