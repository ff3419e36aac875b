// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Limit;
import org.meltwright.units.Messages;
import org.meltwright.units.TemperaturePoint;

/**
 * The same number on the other scale: 97 °F where 97 °C was meant, 187 °C where 187 °F was.
 *
 * @param number the number as it was probably read
 * @param unit the other unit, °C or °F
 * @param value what it would be
 */
record OtherScale(double number, String unit, TemperaturePoint value) {

  /**
   * Looks whether the number of a reading would fit on the other scale: one too cold would be
   * molten there, one too hot would be molten and below the hard ceiling.
   */
  static Optional<OtherScale> of(
      TemperaturePoint reading, TemperaturePoint molten, HeatingLimits limits) {
    boolean tooHot = Limit.reaches(reading, limits.hardCeiling());
    if (!tooHot && Limit.reaches(reading, molten)) {
      return Optional.empty();
    }
    double number = tooHot ? reading.celsius() : reading.fahrenheit();
    double celsius = tooHot ? (number - 32) / 1.8 : number;
    boolean fits =
        Limit.reaches(celsius, molten.celsius())
            && !(tooHot && Limit.reaches(celsius, limits.hardCeiling().celsius()));
    return fits
        ? Optional.of(
            new OtherScale(number, tooHot ? "°F" : "°C", TemperaturePoint.ofCelsius(celsius)))
        : Optional.empty();
  }

  /** Says what the number would be. */
  Bilingual text() {
    return Bilingual.of(this::text);
  }

  private String text(Locale locale) {
    return Messages.beside(OtherScale.class)
        .text(
            "other-scale",
            locale,
            Map.of(
                "value",
                Texts.plain(number, locale),
                "unit",
                unit,
                "temperature",
                Texts.write(value, locale)));
  }
}
