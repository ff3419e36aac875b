// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.meltwright.units.Refusals.problemOf;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A decimal sign that was declared, and one that was not. */
class DecimalSignTextTest {

  @Test
  void withDecimalComma_reads_the_comma_and_refuses_the_point() {
    QuantityParser german = QuantityParser.withDecimalComma();

    assertThat(QuantityKind.MASS.toSi(german.parseMass("1,5 kg"))).isEqualTo(1.5);
    assertThat(german.parseTemperatureRange("62,5–65 °C").low().celsius()).isEqualTo(62.5);
    assertThat(problemOf(() -> german.parseMass("1.500 g")).code())
        .isEqualTo(UnitsProblem.DECIMAL_POINT);
  }

  /** What a person types: their own sign always, the other where it cannot part thousands. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "de    | 1,5 kg      | 1.5",
        "de    | 1,500 kg    | 1.5",
        "de    | 1.5 kg      | 1.5",
        "de    | 0.750 kg    | 0.75",
        "de    | 1.234,5 kg  | 1234.5",
        "en    | 1.500 kg    | 1.5",
        "en    | 1,5 kg      | 1.5",
        "en    | 1,234.5 kg  | 1234.5",
        "en    | 2 lb, 4.5 oz | 1.0347575940625",
        "de-CH | 1.500 kg    | 1.5",
      })
  void forLocale_reads_the_other_sign_where_it_can_only_stand_before_decimals(
      String tag, String text, double kilograms) {
    QuantityParser parser = QuantityParser.forLocale(Locale.forLanguageTag(tag));

    assertThat(QuantityKind.MASS.toSi(parser.parseMass(text))).isCloseTo(kilograms, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "de | 1.500 kg       | number.decimal-or-thousands",
        "de | 12.345 g       | number.decimal-or-thousands",
        "en | 1,500 g        | number.decimal-or-thousands",
        "de | 1,234.5 kg     | number.decimal-point",
        "de | 1.5.2 kg       | number.malformed"
      })
  void forLocale_refuses_what_may_be_thousands(String tag, String text, String code) {
    QuantityParser parser = QuantityParser.forLocale(Locale.forLanguageTag(tag));

    assertThat(problemOf(() -> parser.parseMass(text)).code().id()).isEqualTo(code);
  }

  @Test
  void forLocale_refuses_a_point_that_may_part_hours_from_minutes() {
    QuantityParser german = QuantityParser.forLocale(Locale.GERMANY);

    assertThat(problemOf(() -> german.parseTime("1.30 h")).code())
        .isEqualTo(UnitsProblem.DECIMAL_POINT);
    assertThat(QuantityKind.TIME.toSi(german.parseTime("1,5 h"))).isEqualTo(5400);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1,5 kg    | 1.5",
        "1.5 kg    | 1.5",
        "0,500 kg  | 0.5",
        "0.500 kg  | 0.5",
        "1,50 kg   | 1.5",
        "1234,567 kg | 1234.567",
        "1,5000 kg | 1.5",
        "1.500e0 kg | 1.5",
        "1.234,5 kg | 1234.5",
        "1,234.5 kg | 1234.5",
        "1.000.000 kg | 1e6",
        ",5 kg     | 0.5",
      })
  void either_sign_is_read_where_it_can_only_stand_before_decimals(String text, double kilograms) {
    QuantityParser either = QuantityParser.of(DecimalSign.EITHER);

    assertThat(QuantityKind.MASS.toSi(either.parseMass(text))).isEqualTo(kilograms);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"1,500 kg", "1.500 kg", "12,345 g", "999.999 g"})
  void either_sign_that_may_stand_before_thousands_is_refused_with_both_meanings(String text) {
    Problem problem = problemOf(() -> QuantityParser.of(DecimalSign.EITHER).parseMass(text));

    assertThat(problem.code()).isEqualTo(UnitsProblem.DECIMAL_OR_THOUSANDS);
    String digits = text.replaceAll("[^0-9]", "");
    assertThat(problem.details()).containsEntry("thousands", digits);
    assertThat(problem.what(Locale.ENGLISH)).contains(digits);
    assertThat(problem.what(Locale.GERMAN))
        .contains(problem.details().get("decimal").replace('.', ','));
  }
}
