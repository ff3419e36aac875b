// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityParserTest {

  private static final QuantityParser PARSER = QuantityParser.localeFree();

  private static Problem problemOf(Runnable reading) {
    ProblemException refused =
        Assertions.catchThrowableOfType(ProblemException.class, reading::run);
    assertThat(refused).as("refused").isNotNull();
    assertThat(refused.problems()).hasSize(1);
    return refused.problems().get(0);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "730 g            | 0.73",
        "250g             | 0.25",
        "1.5 kg           | 1.5",
        "+1.5 kg          | 1.5",
        "-5 g             | -0.005",
        "−5 g             | -0.005",
        ".5 kg            | 0.5",
        "1.2e3 g          | 1.2",
        "1.2E-3 t         | 1.2",
        "1/4 kg           | 0.25",
        "1⁄4 kg           | 0.25",
        "½ kg             | 0.5",
        "1½ kg            | 1.5",
        "1 ½ kg           | 1.5",
        "3 ⅞ kg           | 3.875",
        "1 1/2 lb         | 0.680388555",
        "1 1/2lbs         | 0.680388555",
        "1 lb 4 oz        | 0.56699046250",
        "1 lb 4.5 oz      | 0.58116522406",
        "2 kg 30 g 5 mg   | 2.030005",
        "7000 gr          | 0.45359237",
        "1 oz t           | 0.0311034768",
        "2 short ton      | 1814.36948",
        "1 US ton         | 907.18474",
        "1 long ton       | 1016.0469088",
        "1 Gramm          | 0.001",
        "3 POUNDS         | 1.36077711",
        "12 \u00b5g       | 1.2e-8",
        "12 \u03bcg       | 1.2e-8",
        "5\u00a0g         | 0.005",
        "5\u202fg         | 0.005",
      })
  void parseMass_reads_what_a_studio_writes(String text, double kilograms) {
    assertThat(QuantityKind.MASS.toSi(PARSER.parseMass(text)))
        .isCloseTo(kilograms, within(1e-11 * Math.abs(kilograms)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "½ tsp US            | 2.464460796875e-6",
        "1 tsp (US)          | 4.92892159375e-6",
        "1 US tsp            | 4.92892159375e-6",
        "1 teaspoon metric   | 5e-6",
        "1 metric cup        | 250e-6",
        "1 cup US            | 236.5882365e-6",
        "1 cup US label      | 240e-6",
        "2 fl oz US label    | 60e-6",
        "8 fl oz US          | 236.5882365e-6",
        "8 fluid ounces (imp)| 227.3045e-6",
        "1 UK pint           | 568.26125e-6",
        "3 in^3              | 49.161192e-6",
        "3 in3               | 49.161192e-6",
        "3 cu in             | 49.161192e-6",
        "250 mL              | 250e-6",
        "2.5 Liter           | 2.5e-3",
      })
  void parseVolume_reads_units_that_say_their_country(String text, double cubicMetres) {
    assertThat(QuantityKind.VOLUME.toSi(PARSER.parseVolume(text)))
        .isCloseTo(cubicMetres, within(1e-11 * cubicMetres));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "''                | text.empty",
        "'   '             | text.empty",
        "1,5 kg            | number.decimal-comma",
        "1,500 g           | number.decimal-comma",
        "1/4/2 kg          | number.malformed",
        "1/4/2             | number.malformed",
        "1/0 kg            | number.malformed",
        "10000000000000001/2 g | number.malformed",
        "12345678901234567 1/2 g | number.malformed",
        "12345678901234567½ g | number.malformed",
        "1 5/4 kg          | number.malformed",
        "1.5 1/2 kg        | number.malformed",
        "1 000 g           | number.malformed",
        "1'000 g           | number.malformed",
        "1\u2019000 g      | number.malformed",
        "1\u2009000 g      | number.malformed",
        "730 g ± 5 g       | quantity.plus-minus",
        "1.2.3 kg          | number.malformed",
        "1. kg             | number.malformed",
        "kg                | number.malformed",
        "NaN kg            | number.malformed",
        "Infinity kg       | number.malformed",
        "0x10 kg           | quantity.unknown-unit",
        "- kg              | number.malformed",
        "--1 kg            | number.malformed",
        "1e400 kg          | number.out-of-reach",
        "1e99999999999 kg  | number.out-of-reach",
        "1e-400 kg         | number.out-of-reach",
        "1e308 t           | number.out-of-reach",
        "12                | quantity.missing-unit",
        "12 kg junk        | quantity.unknown-unit",
        "12 kg 5           | quantity.missing-unit",
        "12 gramms         | quantity.unknown-unit",
        "12 Mg             | quantity.unknown-unit",
        "12 G              | quantity.unknown-unit",
        "12 pt             | quantity.wrong-kind",
        "8 fl oz           | quantity.wrong-kind",
        "8 ml              | quantity.wrong-kind",
        "70 C              | quantity.wrong-kind",
        "10 %              | quantity.wrong-kind",
        "2 ton             | quantity.ambiguous-unit",
        "4 oz 1 lb         | quantity.compound-malformed",
        "1.5 lb 4 oz       | quantity.compound-malformed",
        "-1 lb 4 oz        | quantity.compound-malformed",
        "1 lb 4 lb         | quantity.compound-malformed",
        "1 lb 4 ml         | quantity.wrong-kind",
      })
  void parseMass_refuses_what_may_mean_two_things(String text, String code) {
    assertThat(problemOf(() -> PARSER.parseMass(text)).code().id()).isEqualTo(code);
  }

  @ParameterizedTest
  @ValueSource(strings = {"cup", "cups", "pint", "fl oz", "tsp", "tablespoons", "gallon", "qt"})
  void parseVolume_bare_kitchen_unit_is_refused_with_the_choices(String unit) {
    Problem problem = problemOf(() -> PARSER.parseVolume("1 " + unit));

    assertThat(problem.code()).isEqualTo(UnitsProblem.AMBIGUOUS_UNIT);
    assertThat(problem.allowed(Locale.ENGLISH)).contains(" US").contains(" imp");
  }

  @Test
  void parseMass_of_a_volume_names_both_kinds_in_two_languages() {
    Problem problem = problemOf(() -> PARSER.parseMass("8 fl oz"));

    assertThat(problem.what(Locale.ENGLISH)).isEqualTo("Expected a mass, found a volume: 8 fl oz.");
    assertThat(problem.what(Locale.GERMAN))
        .isEqualTo("Erwartet: eine Masse; gefunden: ein Volumen: 8 fl oz.");
  }

  @Test
  void parseVolume_of_an_ounce_explains_the_fluid_ounce() {
    Problem problem = problemOf(() -> PARSER.parseVolume("8 oz"));

    assertThat(problem.code()).isEqualTo(UnitsProblem.OUNCE_FOR_VOLUME);
    assertThat(problem.toString()).contains("is a mass").contains("fl oz US");
  }

  @ParameterizedTest
  @CsvSource({"gramms,gramm", "kilogrm,kilogram", "ponds,pounds", "KG,kg", "lsb,lb"})
  void parseMass_unknown_unit_names_the_nearest(String unit, String nearest) {
    Problem problem = problemOf(() -> PARSER.parseMass("3 " + unit));

    assertThat(problem.details()).containsEntry("nearest", nearest);
    assertThat(problem.remedy(Locale.ENGLISH)).contains(nearest);
  }

  @ParameterizedTest
  @CsvSource({
    "90 °C,90",
    "90 C,90",
    "200 F,93.33333333333333",
    "194 °F,90",
    "363.15 K,90",
    "90 ℃,90",
    "90 º C,90",
    "-10 °C,-10",
    "62 1/2 °C,62.5",
    "90degC,90",
    "90 Grad Celsius,90"
  })
  void parseTemperature_reads_the_scales(String text, double celsius) {
    assertThat(PARSER.parseTemperature(text).celsius()).isCloseTo(celsius, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "62–65 °C         | 62 | 65",
        "62-65°C          | 62 | 65",
        "62 - 65 °C       | 62 | 65",
        "62 °C – 65 °C    | 62 | 65",
        "62 to 65 °C      | 62 | 65",
        "62 bis 65 °C     | 62 | 65",
        "62 °C to 65 °C   | 62 | 65",
        "62 °C            | 62 | 62",
        "-10–-5 °C        | -10 | -5",
        "-10 °C to 5 °C   | -10 | 5",
        "194–203 °F       | 90 | 95",
        "90 °C–203 °F     | 90 | 95",
      })
  void parseTemperatureRange_reads_dashes_and_words(String text, double low, double high) {
    TemperatureRange range = PARSER.parseTemperatureRange(text);

    assertThat(range.low().celsius()).isCloseTo(low, within(1e-12));
    assertThat(range.high().celsius()).isCloseTo(high, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "65–62 °C         | range.reversed",
        "62–65            | quantity.missing-unit",
        "70 °C ± 2 K      | quantity.plus-minus",
        "62–65–70 °C      | quantity.unknown-unit",
        "62 °C 65 °C      | quantity.unknown-unit",
        "62– °C           | number.malformed",
        "-300 °C          | temperature.below-absolute-zero",
        "62–65 g          | quantity.wrong-kind",
      })
  void parseTemperatureRange_refuses_the_rest(String text, String code) {
    assertThat(problemOf(() -> PARSER.parseTemperatureRange(text)).code().id()).isEqualTo(code);
  }

  @ParameterizedTest
  @CsvSource({"5 K,5", "5 °C,5", "9 °F,5", "-9 F,-5"})
  void parseTemperatureDifference_takes_degrees_without_offset(String text, double kelvin) {
    assertThat(PARSER.parseTemperatureDifference(text).kelvin()).isCloseTo(kelvin, within(1e-12));
  }

  @Test
  void parseMixingRatio_1_to_8_is_one_ninth() {
    MixingRatio ratio = PARSER.parseMixingRatio("1:8 resin:wax");

    assertThat(ratio).isEqualTo(new MixingRatio(1, 8, "resin", "wax"));
    assertThat(ratio.firstShare()).isEqualTo(1.0 / 9);
    assertThat(PARSER.parseMixingRatio("1 : 8 damar resin : wax").firstSide())
        .isEqualTo("damar resin");
    assertThat(PARSER.parseMixingRatio("1:8", "resin", "wax")).isEqualTo(ratio);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "1:8",
        "1:8 wax",
        "1:8:2 a:b",
        "1:8 a:b:c",
        "1:8 wax:wax",
        "1/8 a:b",
        "1:8 a:",
        "1:8 :b"
      })
  void parseMixingRatio_without_two_sides_is_refused(String text) {
    assertThat(problemOf(() -> PARSER.parseMixingRatio(text)).code())
        .isIn(UnitsProblem.RATIO_MALFORMED, UnitsProblem.NUMBER_MALFORMED);
  }

  @ParameterizedTest
  @CsvSource({
    "10 %,0.1",
    "10%,0.1",
    "10 % by mass,0.1",
    "10 % w/w,0.1",
    "10 wt%,0.1",
    "5 ‰,0.005",
    "200 ppm,0.0002",
    "12.5 percent,0.125",
    "0 %,0",
    "100 %,1"
  })
  void parseMassFraction_reads_parts_of_a_hundred_a_thousand_a_million(String text, double value) {
    assertThat(PARSER.parseMassFraction(text).value()).isCloseTo(value, within(1e-16));
  }

  @ParameterizedTest
  @CsvSource({
    "0.1,fraction.without-unit", "10,fraction.without-unit", "10 % by volume,fraction.wrong-basis",
    "120 %,value.out-of-range", "-1 %,value.out-of-range", "10 g,quantity.wrong-kind"
  })
  void parseMassFraction_refuses_bare_numbers_and_the_other_basis(String text, String code) {
    assertThat(problemOf(() -> PARSER.parseMassFraction(text)).code().id()).isEqualTo(code);
  }

  @Test
  void parseVolumeFraction_reads_its_own_basis() {
    assertThat(PARSER.parseVolumeFraction("10 % by volume"))
        .isEqualTo(VolumeFraction.ofPercent(10));
    assertThat(PARSER.parseVolumeFraction("10 Vol.-%")).isEqualTo(VolumeFraction.ofPercent(10));
    assertThat(problemOf(() -> PARSER.parseVolumeFraction("10 % by mass")).code())
        .isEqualTo(UnitsProblem.FRACTION_WRONG_BASIS);
  }

  @Test
  void withDecimalComma_reads_the_comma_and_refuses_the_point() {
    QuantityParser german = QuantityParser.withDecimalComma();

    assertThat(QuantityKind.MASS.toSi(german.parseMass("1,5 kg"))).isEqualTo(1.5);
    assertThat(german.parseTemperatureRange("62,5–65 °C").low().celsius()).isEqualTo(62.5);
    assertThat(problemOf(() -> german.parseMass("1.500 g")).code())
        .isEqualTo(UnitsProblem.DECIMAL_POINT);
  }

  @Test
  void parseStatedDensity_needs_the_state_word_and_parseDensity_refuses_it() {
    assertThat(PARSER.parseStatedDensity("0.55 g/ml bulk"))
        .isEqualTo(new StatedDensity(550, DensityState.BULK));
    assertThat(PARSER.parseStatedDensity("820 kg/m³ melt").state()).isEqualTo(DensityState.MELT);
    assertThat(problemOf(() -> PARSER.parseDensity("0.55 g/ml scooped")).code())
        .isEqualTo(UnitsProblem.DENSITY_STATE);
    assertThat(problemOf(() -> PARSER.parseStatedDensity("0.55 g/ml")).code())
        .isEqualTo(UnitsProblem.DENSITY_STATE);
  }

  @Test
  void parse_text_of_more_than_100_characters_is_refused_unread() {
    assertThat(problemOf(() -> PARSER.parseMass("1".repeat(101))).code())
        .isEqualTo(UnitsProblem.TEXT_TOO_LONG);
  }
}
