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
import org.meltwright.units.Bilingual;
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
  private static final int MOST_DECIMALS = 60;
  private static final double MOST_WRITTEN_OUT = 1e9;

  private static final Messages MESSAGES = Messages.beside(Texts.class);

  private Texts() {}

  /** What a text may speak of, and the limits that the plan was held against. */
  static Map<String, String> write(
      Map<String, Object> values, Locale locale, HeatingLimits limits) {
    Map<String, String> written = new HashMap<>(of(limits, locale));
    values.forEach((name, value) -> written.put(name, write(value, locale, limits)));
    return written;
  }

  /** The limits, as texts name them. */
  static Map<String, String> of(HeatingLimits limits, Locale locale) {
    return Map.of(
        "target", limit(limits.target(), 1, locale),
        "ceiling", limit(limits.hardCeiling(), 1, locale),
        "floorLimit", limit(limits.floorLimit(), 0, locale),
        "floorCaution", limit(limits.floorCaution(), 0, locale),
        "margin", limit(limits.flashMargin(), locale),
        "leastWidth", limit(limits.leastWidth(), locale));
  }

  /** One figure of the limits. */
  static String of(HeatingLimits limits, HeatingLimits.Figure figure, Locale locale) {
    return switch (figure) {
      case TARGET -> limit(limits.target(), 1, locale);
      case HARD_CEILING -> limit(limits.hardCeiling(), 1, locale);
      case FLOOR_LIMIT -> limit(limits.floorLimit(), 0, locale);
      case FLASH_MARGIN -> limit(limits.flashMargin(), locale);
      case LEAST_WIDTH -> limit(limits.leastWidth(), locale);
    };
  }

  private static String limit(TemperaturePoint limit, int leastPlaces, Locale locale) {
    return shortest(limit.celsius(), leastPlaces, locale) + " °C";
  }

  private static String limit(TemperatureDifference limit, Locale locale) {
    return shortest(limit.kelvin(), 0, locale) + " K";
  }

  /** A number as a person reads it off: four digits, no trailing zeros. */
  static String plain(double number, Locale locale) {
    MathContext few = new MathContext(FEW_DIGITS);
    return shortest(BigDecimal.valueOf(number).round(few).doubleValue(), 0, locale);
  }

  private static String shortest(double number, int leastPlaces, Locale locale) {
    BigDecimal plain = plain(number);
    return decimals(plain, Math.max(plain.stripTrailingZeros().scale(), leastPlaces), locale);
  }

  static String write(Object value, Locale locale) {
    return write(value, locale, HeatingLimits.standard());
  }

  static String write(Object value, Locale locale, HeatingLimits limits) {
    if (value instanceof TemperaturePoint t) {
      return temperature(t, TemperatureTable.of(limits), locale);
    } else if (value instanceof PotFloor floor) {
      String written = write(floor.value(), locale, limits);
      return floor.isKnown()
          ? written
          : MESSAGES.text("value.at-least", locale, Map.of("value", written));
    } else if (value instanceof Optional<?> known) {
      return known
          .map(each -> write(each, locale, limits))
          .orElseGet(() -> MESSAGES.text("value.unknown", locale));
    } else if (value instanceof List<?> list) {
      return list.stream()
          .map(each -> write(each, locale, limits))
          .collect(Collectors.joining(", "));
    }
    return withoutLimits(value, locale);
  }

  private static String withoutLimits(Object value, Locale locale) {
    if (value instanceof TemperatureDifference d) {
      return number(d.kelvin(), locale) + " K";
    } else if (value instanceof MassFraction f) {
      return number(f.percent(), locale) + " %";
    } else if (value instanceof MassFractionRange r) {
      String low = withoutLimits(r.low(), locale);
      return MESSAGES.text(
          "value.range", locale, Map.of("low", low, "high", withoutLimits(r.high(), locale)));
    } else if (value instanceof Material m) {
      return m.name(locale);
    } else if (value instanceof HeatingAction action) {
      return action.toDo(locale);
    } else if (value instanceof Bilingual words) {
      return words.in(locale);
    }
    return value instanceof Double number ? number(number, locale) : value.toString();
  }

  private static String temperature(TemperaturePoint t, TemperatureTable table, Locale locale) {
    if (t.celsius() >= MOST_WRITTEN_OUT) {
      return t.celsius() + " °C (" + t.fahrenheit() + " °F)";
    }
    QuantityFormatter digits = QuantityFormatter.ofDecimals(places(t, table)).withLocale(locale);
    TemperaturePoint plain = TemperaturePoint.ofCelsius(plain(t.celsius()).doubleValue());
    return digits.format(plain, TemperatureScale.CELSIUS)
        + " ("
        + digits.format(plain, TemperatureScale.FAHRENHEIT)
        + ")";
  }

  /** What no one writes out, or no number at all, is written as the language of numbers has it. */
  private static String number(double number, Locale locale) {
    if (!(Math.abs(number) < MOST_WRITTEN_OUT)) {
      return Double.toString(number);
    }
    BigDecimal plain = plain(number);
    return decimals(plain, places(plain), locale);
  }

  private static String decimals(BigDecimal number, int places, Locale locale) {
    if (places > MOST_DECIMALS) {
      return number.toString();
    }
    return QuantityFormatter.ofDecimals(places).withLocale(locale).format(number.doubleValue());
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
  private static int places(TemperaturePoint t, TemperatureTable table) {
    int places = 1;
    while (places < MOST_PLACES && table.tellsApart(t, rounded(t, places))) {
      places++;
    }
    return places;
  }

  private static TemperaturePoint rounded(TemperaturePoint t, int places) {
    double celsius = plain(t.celsius()).setScale(places, RoundingMode.HALF_UP).doubleValue();
    return TemperaturePoint.ofCelsius(Math.max(celsius, TemperatureTable.ABSOLUTE_ZERO_CELSIUS));
  }

  /** Twelve digits: else 28.85 would print as 28.8 or 28.9, by the last bit of a sum. */
  private static BigDecimal plain(double number) {
    return BigDecimal.valueOf(number).round(new MathContext(12));
  }
}
