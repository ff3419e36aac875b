// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.explain;

import java.util.Locale;
import java.util.Map;
import org.meltwright.units.Messages;
import org.meltwright.units.QuantityFormatter;

/** Numbers in a unit that a maker reads: 0.0004 m are 0.4 mm. */
final class Written {

  private static final Messages WORDS = Messages.beside(Written.class);

  /** A unit and what one of it is in the unit that is stated. */
  private record Shown(String unit, double size) {}

  private Written() {}

  /** One number with its unit, to three figures. */
  static String number(double value, String unit, Locale reader) {
    return number(value, 3, unit, reader);
  }

  /** One number with its unit. */
  static String number(double value, int digits, String unit, Locale reader) {
    Shown shown = shown(Math.abs(value), unit);
    return behind(digits(value / shown.size, digits, reader), shown.unit);
  }

  /** Both ends in one unit; two figures where the high one is twice the low one or more. */
  static String range(double low, double high, String unit, Locale reader) {
    if (low == high) {
      return number(low, unit, reader);
    }
    if (Double.isInfinite(high)) {
      return Double.isInfinite(low)
          ? WORDS.text("range.no-end", reader)
          : WORDS.text("range.from", reader, Map.of("low", number(low, 2, unit, reader)));
    }
    Shown shown = shown(Math.abs(high), unit);
    int digits = low > 0 && high < 2 * low ? 3 : 2;
    String ends =
        digits(low / shown.size, digits, reader)
            + (reader.equals(Locale.ROOT) ? "–" : " " + WORDS.text("range.to", reader) + " ")
            + digits(high / shown.size, digits, reader);
    return behind(ends, shown.unit);
  }

  private static String behind(String number, String unit) {
    return unit.isEmpty() ? number : number + " " + unit;
  }

  private static String digits(double value, int digits, Locale reader) {
    return QuantityFormatter.ofSignificantDigits(digits).withLocale(reader).format(value);
  }

  private static Shown shown(double size, String unit) {
    return switch (unit) {
      case "m" -> size >= 1 ? new Shown("m", 1) : size < 1e-4 ? micro("m") : milli("m");
      case "s" -> size < 120 ? new Shown("s", 1) : minutes(size);
      case "J" -> size < 1000 ? new Shown("J", 1) : new Shown("kJ", 1000);
      case "J/kg" -> new Shown("kJ/kg", 1000);
      case "kg" -> size < 1 ? new Shown("g", 1e-3) : new Shown("kg", 1);
      case "m³" -> size < 1e-3 ? new Shown("ml", 1e-6) : new Shown("l", 1e-3);
      case "1" -> new Shown("%", 0.01);
      case "kg/m²" -> size < 1 ? new Shown("g/m²", 1e-3) : new Shown(unit, 1);
      case "m/s" -> size < 1e-3 ? new Shown("mm/h", 1e-3 / 3600) : new Shown(unit, 1);
      case "m³/kg" -> new Shown("l/kg", 1e-3);
      case "m³/s" -> new Shown("m³/h", 1.0 / 3600);
      case "kg/s" -> new Shown("g/h", 1e-3 / 3600);
      case "Pa s" -> size < 1 ? milli("Pa s") : new Shown("Pa s", 1);
      default -> new Shown(unit, 1);
    };
  }

  private static Shown milli(String unit) {
    return new Shown("m" + unit, 1e-3);
  }

  private static Shown micro(String unit) {
    return new Shown("µ" + unit, 1e-6);
  }

  private static Shown minutes(double seconds) {
    return seconds < 7200 ? new Shown("min", 60) : new Shown("h", 3600);
  }

  /** How much an input decides, in words. */
  static String share(double share, Locale reader) {
    return WORDS.text(shareKey(share), reader, Map.of());
  }

  private static String shareKey(double share) {
    if (share >= 0.97) {
      return "share.all";
    }
    double[] from = {0.85, 0.71, 0.58, 0.42, 0.29, 0.225, 0.15};
    for (int i = 0; i < from.length; i++) {
      if (share >= from[i]) {
        return "share." + (i + 1);
      }
    }
    return "share.tenth";
  }
}
