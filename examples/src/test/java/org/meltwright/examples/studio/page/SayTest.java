// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Locale;
import javax.measure.quantity.Time;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.meltwright.units.Estimate;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.TemperaturePoint;

class SayTest {

  private static final double OUNCE = 0.028349523125;

  @Test
  void a_mass_is_written_as_its_balance_shows_it() {
    assertThat(Say.ENGLISH.grams(0.09125, 0.0001)).isEqualTo("91.3 g");
    assertThat(Say.ENGLISH.grams(0.73, 0.001)).isEqualTo("730 g");
    assertThat(Say.ENGLISH.grams(14.8 * OUNCE, 0.1 * OUNCE)).isEqualTo("14.8 oz");
    assertThat(Say.ENGLISH.interval(0.1 * OUNCE)).isEqualTo("0.1 oz");
  }

  @Test
  void a_temperature_is_not_rounded_onto_a_limit_that_it_does_not_reach() {
    assertThat(Say.ENGLISH.temperature(TemperaturePoint.ofCelsius(93.25)))
        .isEqualTo("93.25 °C / 199.85 °F");
    assertThat(Say.ENGLISH.temperature(TemperaturePoint.ofCelsius(88)))
        .isEqualTo("88.0 °C / 190.4 °F");
    assertThat(Say.ENGLISH.margin(TemperatureDifference.ofKelvin(0.05)))
        .isEqualTo("0.05 K below it");
    assertThat(Say.ENGLISH.margin(TemperatureDifference.ofKelvin(-2))).isEqualTo("2.0 K above it");
  }

  @Test
  void a_lower_bound_says_that_it_is_one() {
    assertThat(Say.ENGLISH.atLeast(TemperaturePoint.ofCelsius(95)))
        .isEqualTo("at least 95.0 °C; how far it rises above is not known");
  }

  @Test
  void an_estimate_has_three_significant_figures() {
    assertThat(Say.ENGLISH.significant(71.208)).isEqualTo("71.2");
    assertThat(Say.ENGLISH.significant(1234.5)).isEqualTo("1230");
    assertThat(Say.ENGLISH.significant(0)).isEqualTo("0");
  }

  /** Two figures where the high end is twice the low end or more. */
  @Test
  void an_estimate_that_is_rough_has_two_figures() {
    Estimate<Time> rough = new Estimate<>(QuantityKind.TIME, 1.57, 6.71, 20.6);
    Estimate<Time> fine = new Estimate<>(QuantityKind.TIME, 6.12, 6.71, 7.34);

    assertThat(Say.ENGLISH.time(rough)).isEqualTo("6.7 s (1.6 s to 21 s)");
    assertThat(Say.ENGLISH.time(fine)).isEqualTo("6.71 s (6.12 s to 7.34 s)");
  }

  @Test
  void a_german_reader_has_a_comma_the_money_before_its_currency_and_the_day_first() {
    Say german = Say.in(Locale.GERMAN);

    assertThat(german.grams(0.09125, 0.0001)).isEqualTo("91,3 g");
    assertThat(german.money(Money.parse("EUR 1234.50"))).isEqualTo("1234,50 EUR");
    assertThat(german.day(LocalDate.of(2026, 12, 5))).isEqualTo("05.12.2026");
    assertThat(german.span("62", "65")).isEqualTo("62 bis 65");
    assertThat(german.count("verdict.open", 1)).isEqualTo("1 Punkt nicht beurteilt");
  }
}
