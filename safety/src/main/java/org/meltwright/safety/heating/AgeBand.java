// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import static org.meltwright.safety.heating.HeatingProblem.CHECK;

import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Messages;
import org.meltwright.units.TemperaturePoint;

/**
 * How hot what a child or a young person handles may be: guidance after common practice, for no
 * standard gives an age for hot wax. The safe end of each range.
 */
enum AgeBand {
  /** Nothing hot in the room; the temperature is the lowest of the table. */
  NOTHING_HOT(0, 40),
  /** Hand-warm wax, 40 to 45 °C at most. */
  HAND_WARM(3, 40),
  /** Wax softened in the hand or on a surface of 45 °C at most. */
  SOFTENED(7, 45),
  /** A low-heat plate of 75 °C at most. */
  LOW_HEAT(12, 75),
  /** The limits for adults. */
  AS_ADULTS(16);

  private static final Map<Integer, HeatingLimits> LIMITS = new ConcurrentHashMap<>();

  private final int from;
  private final OptionalDouble celsius;

  AgeBand(int from) {
    this.from = from;
    this.celsius = OptionalDouble.empty();
  }

  AgeBand(int from, double celsius) {
    this.from = from;
    this.celsius = OptionalDouble.of(celsius);
  }

  static AgeBand of(int age) {
    CHECK.between(age, 0, 150, "age in years");
    AgeBand band = NOTHING_HOT;
    for (AgeBand next : values()) {
      band = age >= next.from ? next : band;
    }
    return band;
  }

  /** The limits of an age; their reason names it, and is written once. */
  HeatingLimits limits(int age) {
    return celsius.isEmpty()
        ? HeatingLimits.standard()
        : LIMITS.computeIfAbsent(age, a -> tightened(a, celsius.getAsDouble()));
  }

  private static HeatingLimits tightened(int age, double celsius) {
    Map<String, String> values =
        Map.of("age", Integer.toString(age), "limit", Math.round(celsius) + " °C");
    return HeatingLimits.standard()
        .withHardCeiling(TemperaturePoint.ofCelsius(celsius))
        .because(Bilingual.of(reader -> reason(reader, values)));
  }

  private static String reason(Locale locale, Map<String, String> values) {
    return Messages.beside(AgeBand.class).text("limit.youngest", locale, values);
  }
}
