// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.meltwright.safety.heating.HeatingAction.Level;
import org.meltwright.safety.heating.HeatingReading.Place;
import org.meltwright.units.ProblemException;

class HeatingReadingTest {

  @ParameterizedTest
  @CsvSource({
    "LIQUID, 60, KEEP_WATCH",
    "LIQUID, 85, KEEP_WATCH",
    "LIQUID, 85.1, COUNT_THE_HOURS",
    "LIQUID, 90, COUNT_THE_HOURS",
    "LIQUID, 194F, COUNT_THE_HOURS",
    "LIQUID, 90.1, LOWER",
    "LIQUID, 93.2, LOWER",
    "LIQUID, 93.3, HEAT_OFF",
    "LIQUID, 200F, HEAT_OFF",
    "LIQUID, 97, HEAT_OFF",
    "LIQUID, 110, LEAVE_THE_FUMES",
    "PALETTE_SURFACE, 97, HEAT_OFF",
    "POT_FLOOR, 90, MEASURE_THE_WAX",
    "POT_FLOOR, 97, FLOOR_LOWER",
    "POT_FLOOR, 110, FLOOR_OFF",
    "AIR, 300, MEASURE_THE_WAX",
  })
  void reading_calls_for(Place place, String value, Level level) {
    assertThat(HeatingReading.of(place, Plans.point(value)).action().level()).isEqualTo(level);
  }

  @Test
  void pot_at_97_is_switched_off_at_once_and_set_lower_by_7_kelvin_later() {
    HeatingAction action =
        HeatingReading.of(Place.LIQUID, Plans.point("97")).heldForMinutes(20).action();
    assertThat(action.level().isHeatOff()).isTrue();
    assertThat(action.level().severity()).isEqualTo(Severity.DANGER);
    assertThat(action.lowerBy().orElseThrow().kelvin()).isEqualTo(7);
    assertThat(action.atOnce(Locale.ENGLISH)).contains("97.0 °C (206.6 °F)", "Heat off");
    assertThat(action.later(Locale.ENGLISH)).contains("7.0 K", "20 minutes");
    assertThat(action.atOnce(Locale.GERMAN)).contains("97,0 °C", "Heizung aus");
  }

  @Test
  void air_of_a_heat_gun_says_nothing_of_the_wax() {
    HeatingAction action =
        HeatingReading.of(Place.AIR, Plans.point("300")).heldForMinutes(5).action();
    assertThat(action.lowerBy()).isEmpty();
    assertThat(action.later(Locale.ENGLISH)).doesNotContain("85 °C");
  }

  @ParameterizedTest
  @CsvSource({
    "LIQUID, 84",
    "LIQUID, 88",
    "LIQUID, 92",
    "LIQUID, 97",
    "LIQUID, 111",
    "POT_FLOOR, 80",
    "POT_FLOOR, 97",
    "POT_FLOOR, 111",
    "AIR, 97",
  })
  void texts_are_whole_at_each_level(Place place, String value) {
    HeatingAction action = HeatingReading.of(place, Plans.point(value)).heldForMinutes(5).action();
    for (Locale reader : new Locale[] {Locale.ENGLISH, Locale.GERMAN}) {
      assertThat(action.atOnce(reader) + " " + action.later(reader))
          .doesNotContain("{", "  ")
          .doesNotContainPattern("(?i)\\bsafe\\b|\\bsicher\\b")
          .endsWith(".");
    }
  }

  /** A hair above a limit is at the limit, in each of level, difference and text. */
  @ParameterizedTest
  @CsvSource({
    "85.0000000001, KEEP_WATCH, false, false",
    "85.1, COUNT_THE_HOURS, false, true",
    "90.0000000001, COUNT_THE_HOURS, false, true",
    "90.1, LOWER, true, true",
  })
  void level_difference_and_text_agree(String value, Level level, boolean lower, boolean hours) {
    HeatingAction action =
        HeatingReading.of(Place.LIQUID, Plans.point(value)).heldForMinutes(20).action();
    assertThat(action.level()).isEqualTo(level);
    assertThat(action.lowerBy().isPresent()).isEqualTo(lower);
    assertThat(action.later(Locale.ENGLISH).contains("20 minutes")).isEqualTo(hours);
  }

  @Test
  void minutes_below_zero_are_a_problem() {
    HeatingReading reading = HeatingReading.of(Place.LIQUID, Plans.point("88"));
    assertThat(reading.minutes()).isEmpty();
    assertThatThrownBy(() -> reading.heldForMinutes(-1)).isInstanceOf(ProblemException.class);
  }
}
