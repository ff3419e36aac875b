// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.meltwright.units.Refusals.problemOf;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Quantities of each kind as people write them, and what is refused. */
class QuantityParserTest {

  private static final QuantityParser PARSER = QuantityParser.localeFree();

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
        "1 lb, 4 oz       | 0.56699046250",
        "1 lb and 4 oz    | 0.56699046250",
        "1lb4oz           | 0.56699046250",
        "1-1/2 lb         | 0.680388555",
        "20/5 kg          | 4",
        "3/2 kg           | 1.5",
        "68-ounce         | 1.9277675725",
        "5 KG             | 5",
        "5 Kg             | 5",
        "5 kgs            | 5",
        "5 kg.            | 5",
        "16 OZ            | 0.45359237",
        "2 LBS            | 0.90718474",
        "500 G            | 0.5",
        "500 gm           | 0.5",
        "25 dag           | 0.25",
        "25 dkg           | 0.25",
        "25 Deka          | 0.25",
        "12 ug            | 1.2e-8",
        "1 000 g          | 1",
        "1\u2009000 g     | 1",
        "1'000 g          | 1",
        "1\u2019000 g     | 1",
        "1,000.5 g        | 1.0005",
        "1,000,000 g      | 1000",
        "12 345.67 g      | 12.34567",
        "3 x 250 g        | 0.75",
        "2 packs of 500 g | 1",
        "2 Packungen à 500 g | 1",
        "3 Dosen zu je 250 g | 0.75",
        "5 carats         | 0.001",
        "9 oz (255 g)     | 0.255145708125",
        "250 g (about 9 oz) | 0.25",
        "about 500 g      | 0.5",
        "ca. 500 g        | 0.5",
        "~500 g           | 0.5",
        "half a kilo      | 0.5",
        "anderthalb Kilo  | 1.5",
        "five hundred grams | 0.5",
        "fünfhundert Gramm | 0.5",
        "1 lb 4.5 oz      | 0.58116522406",
        "2 kg 30 g 5 mg   | 2.030005",
        "7000 grains      | 0.45359237",
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
        "3 U.S. cups          | 709.7647095e-6",
        "3 cups (US)          | 709.7647095e-6",
        "3 US-Tassen          | 709.7647095e-6",
        "3 cc                 | 3e-6",
        "3 cubic centimeters  | 3e-6",
        "3 cubic meter        | 3",
        "3 Kubikmeter         | 3",
        "3 cbm                | 3",
        "3 cu. in.            | 49.161192e-6",
        "1 yd³                | 0.764554857984",
        "1 hl                 | 0.1",
        "2 EL                 | 30e-6",
        "½ TL                 | 2.5e-6",
        "ein Viertelliter     | 250e-6",
        "12 FL OZ US          | 354.882354750e-6",
        "1 cup (240 ml)       | 240e-6",
        "1 tbsp (15 ml)       | 15e-6",
        "1 gal (3.785 l)      | 3785e-6",
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
        "1.000.000 g       | number.grouped",
        "1,500,00 g        | number.grouped",
        "1,23,456 g        | number.grouped",
        "1 50 g            | number.malformed",
        "11/2 lb           | number.fraction-or-mixed",
        "15/8 lb           | number.fraction-or-mixed",
        "1 kg - 100 g      | quantity.range",
        "100–150 g         | quantity.range",
        "2 to 3 lb         | quantity.range",
        "1 lb (500 g)      | quantity.unknown-unit",
        "1 lb (16 fl oz US) | quantity.unknown-unit",
        "500 (500 g)       | quantity.unknown-unit",
        "(500 g)           | number.malformed",
        "0x10 g            | quantity.unknown-unit",
        "minus ein Kilo    | number.malformed",
        "ein halbes Pfund  | quantity.ambiguous-unit",
        "1 cwt             | quantity.ambiguous-unit",
        "2 Zentner         | quantity.ambiguous-unit",
        "250 gr.           | quantity.ambiguous-unit",
        "250 GR            | quantity.ambiguous-unit",
        "730 g ± 5 g       | quantity.plus-minus",
        "1.2.3 kg          | number.malformed",
        "1. kg             | number.malformed",
        "kg                | number.malformed",
        "NaN kg            | number.malformed",
        "Infinity kg       | number.malformed",
        "- kg              | number.malformed",
        "--1 kg            | number.malformed",
        "1e400 kg          | number.out-of-reach",
        "1e99999999999 kg  | number.out-of-reach",
        "1e-400 kg         | number.out-of-reach",
        "1e308 t           | number.out-of-reach",
        "12                | quantity.missing-unit",
        "12 kg junk        | quantity.unknown-unit",
        "2 dozen of 500 g  | quantity.unknown-unit",
        "1.5 packs of 2 g  | quantity.unknown-unit",
        "1.5 kg and a half | quantity.unknown-unit",
        "12 kg 5           | quantity.missing-unit",
        "12 gremms         | quantity.unknown-unit",
        "12 Mg             | quantity.prefix-case",
        "250 gr            | quantity.ambiguous-unit",
        "12 Pfund          | quantity.ambiguous-unit",
        "12 T              | quantity.unknown-unit",
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
  @ValueSource(strings = {"1 cup (300 ml)", "1 cup (about)", "1 cup (0 ml)", "1 cup (1 cup)"})
  void parseVolume_shared_unit_is_refused_if_what_is_said_besides_does_not_settle_it(String text) {
    assertThat(problemOf(() -> PARSER.parseVolume(text)).code())
        .isIn(UnitsProblem.AMBIGUOUS_UNIT, UnitsProblem.UNKNOWN_UNIT);
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
  @CsvSource({"gremm,gramm", "kilogrm,kilogram", "ponds,pound", "milligrm,milligram"})
  void parseMass_unknown_unit_names_the_nearest(String unit, String nearest) {
    Problem problem = problemOf(() -> PARSER.parseMass("3 " + unit));

    assertThat(problem.details()).containsEntry("nearest", nearest);
    assertThat(problem.remedy(Locale.ENGLISH)).contains(nearest);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "12 square meters      | 12",
        "12 sq. m              | 12",
        "12 sqm                | 12",
        "12 qm                 | 12",
        "12 Quadratmeter       | 12",
        "12 SQUARE METRES      | 12",
        "6 dm²                 | 0.06",
        "6 square decimeters   | 0.06",
        "6 Quadratdezimeter    | 0.06",
        "12 sq.ft.             | 1.11483648",
        "12 square feet        | 1.11483648",
        "1 yd²                 | 0.83612736",
        "2 Hektar              | 20000",
        "1 acre                | 4046.8564224",
        "30 x 40 cm            | 0.12",
        "30 cm × 40 cm         | 0.12",
        "8\" x 10\"          | 0.0516128",
        "1.5 m mal 200 cm      | 3",
      })
  void parseArea_reads_words_in_both_spellings_and_two_sides(String text, double squareMetres) {
    assertThat(QuantityKind.AREA.toSi(PARSER.parseArea(text)))
        .isCloseTo(squareMetres, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '#',
      value = {
        "5 ft 6 in | 1.6764",
        "5' 6\" | 1.6764",
        "5'6\" | 1.6764",
        "6″ | 0.1524",
        "60-mm | 0.06",
        "3 dm | 0.3",
        "2 Fuß | 0.6096",
        "3 thou | 7.62e-5",
        "12 um | 1.2e-5"
      })
  void parseLength_reads_feet_and_inches(String text, double metres) {
    assertThat(QuantityKind.LENGTH.toSi(PARSER.parseLength(text))).isCloseTo(metres, within(1e-15));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1 h 20 min | 4800",
        "1h20 | 4800",
        "1h20m | 4800",
        "1:20 h | 4800",
        "1 hour and 20 minutes | 4800",
        "90 MIN | 5400",
        "2 weeks | 1209600",
        "eine halbe Stunde | 1800",
        "half an hour | 1800",
        "an hour and a half | 5400",
        "2 hours and a quarter | 8100",
        "5 ms | 0.005",
        "eine Viertelstunde | 900",
        "2 Std. | 7200"
      })
  void parseTime_reads_hours_and_minutes(String text, double seconds) {
    assertThat(QuantityKind.TIME.toSi(PARSER.parseTime(text))).isEqualTo(seconds);
  }

  @ParameterizedTest
  @CsvSource({"1:20,number.malformed", "1:75 h,number.malformed", "20 m,quantity.wrong-kind"})
  void parseTime_refuses_what_may_mean_two_things(String text, String code) {
    assertThat(problemOf(() -> PARSER.parseTime(text)).code().id())
        .isIn(code, "quantity.missing-unit");
  }

  @ParameterizedTest
  @CsvSource({"5 mW,0.005", "1 MW,1e6", "1 PS,735.49875", "2 metric horsepower,1470.9975"})
  void parsePower_reads_milli_and_mega_by_their_letter(String text, double watts) {
    assertThat(QuantityKind.POWER.toSi(PARSER.parsePower(text))).isEqualTo(watts);
    assertThat(problemOf(() -> PARSER.parsePower("5 Mw")).code())
        .isEqualTo(UnitsProblem.PREFIX_CASE);
    assertThat(problemOf(() -> PARSER.parsePower("5 mw")).code())
        .isEqualTo(UnitsProblem.UNKNOWN_UNIT);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0.96 g per ml | 960",
        "0.96 grams per millilitre | 960",
        "0.96 Gramm pro Milliliter | 960",
        "1 t/m³ | 1000",
        "5 mg/l | 0.005",
        "8 lb/gal imp | 798.2109781",
        "8 lb/gal US | 958.6114185"
      })
  void parseDensity_reads_quotients_in_words(String text, double kilogramsPerCubicMetre) {
    assertThat(QuantityKind.DENSITY.toSi(PARSER.parseDensity(text)))
        .isCloseTo(kilogramsPerCubicMetre, org.assertj.core.data.Percentage.withPercentage(1e-6));
  }

  @ParameterizedTest
  @CsvSource({
    "MASS,250 gr,grain (0.0648 g)",
    "MASS,2 Pfund,500 g",
    "MASS,2 Pfund,lb (453.6 g)",
    "MASS,1 ton,t (1000 kg)",
    "VOLUME,1 cup,cup US (236.6 ml)",
    "VOLUME,1 Tasse,cup metric (250 ml)",
    "LENGTH,5 mil,thou",
    "DENSITY,8 lb/gal,lb/gal imp",
    "DENSITY,8 pounds per gallon,lb/gal imp"
  })
  void ambiguous_names_are_told_with_their_sizes(TextualKind kind, String text, String choice) {
    Problem problem = problemOf(() -> PARSER.parse(text, kind.kind));

    assertThat(problem.code()).isEqualTo(UnitsProblem.AMBIGUOUS_UNIT);
    assertThat(problem.allowed(Locale.ENGLISH)).contains(choice);
    assertThat(problem.allowed(Locale.GERMAN))
        .contains(choice.replace('.', ',').replace("cup", "Tasse").replace("metric", "metrisch"));
  }

  enum TextualKind {
    MASS(QuantityKind.MASS),
    VOLUME(QuantityKind.VOLUME),
    LENGTH(QuantityKind.LENGTH),
    DENSITY(QuantityKind.DENSITY);

    private final QuantityKind<?> kind;

    TextualKind(QuantityKind<?> kind) {
      this.kind = kind;
    }
  }

  @Test
  void parseStatedDensity_needs_the_state_word_and_parseDensity_refuses_it() {
    assertThat(PARSER.parseStatedDensity("0.55 g/ml bulk"))
        .isEqualTo(new StatedDensity(550, MaterialState.BULK));
    assertThat(PARSER.parseStatedDensity("820 kg/m³ melt").state()).isEqualTo(MaterialState.LIQUID);
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
