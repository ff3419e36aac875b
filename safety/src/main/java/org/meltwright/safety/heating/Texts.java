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
import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.TemperaturePoint;

/** How the values of a finding are written for a reader. */
final class Texts {

  private static final int MOST_PLACES = 9;

  private static final Messages MESSAGES = Messages.beside(Texts.class);

  private Texts() {}

  static Map<String, String> write(Map<String, Object> values, Locale locale) {
    Map<String, String> written = new HashMap<>();
    values.forEach((name, value) -> written.put(name, write(value, locale)));
    return written;
  }

  static String write(Object value, Locale reader) {
    Locale locale = reader.getLanguage().equals("de") ? Locale.GERMAN : Locale.ENGLISH;
    if (value instanceof TemperaturePoint t) {
      int places = places(t);
      return String.format(
          locale,
          "%." + places + "f °C (%." + places + "f °F)",
          plain(t.celsius()),
          plain(t.fahrenheit()));
    } else if (value instanceof TemperatureDifference d) {
      return String.format(locale, "%.1f K", plain(d.kelvin()));
    } else if (value instanceof MassFraction f) {
      return String.format(locale, "%.1f %%", plain(f.percent()));
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
      return String.format(locale, "%.1f", plain(number));
    }
    return value.toString();
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
