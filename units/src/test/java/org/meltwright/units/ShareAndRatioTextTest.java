// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.meltwright.units.Refusals.problemOf;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Shares and ratios as people write them. */
class ShareAndRatioTextTest {

  private static final QuantityParser PARSER = QuantityParser.localeFree();

  @ParameterizedTest
  @ValueSource(
      strings = {
        "1:8 resin:wax",
        "1 : 8 resin : wax",
        "1:8 resin to wax",
        "1:8 (resin:wax)",
        "resin:wax 1:8",
        "resin to wax = 1:8",
        "1 part resin to 8 parts wax",
        "1 part of resin to 8 parts of wax",
        "one part resin to eight parts wax",
        "1 resin to 8 wax",
        "1 Teil resin auf 8 Teile wax",
        "1 Teil resin zu 8 Teilen wax"
      })
  void parseMixingRatio_reads_how_people_say_it(String text) {
    assertThat(PARSER.parseMixingRatio(text)).isEqualTo(new MixingRatio(1, 8, "resin", "wax"));
  }

  @Test
  void parseMixingRatio_of_equal_parts() {
    MixingRatio equal = new MixingRatio(1, 1, "Harz", "Wachs");

    assertThat(PARSER.parseMixingRatio("gleiche Teile Harz und Wachs")).isEqualTo(equal);
    assertThat(PARSER.parseMixingRatio("1 1/2:1 1/2 Harz:Wachs").firstParts()).isEqualTo(1.5);
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
  @ValueSource(strings = {"1:8", "1 : 8", "1 to 8", "1 zu 8", "1:1"})
  void parseMixingRatio_bare_is_refused_since_nobody_can_tell_the_sides(String text) {
    Problem problem = problemOf(() -> PARSER.parseMixingRatio(text));

    assertThat(problem.code()).isEqualTo(UnitsProblem.RATIO_BARE);
    assertThat(problem.remedy(Locale.ENGLISH)).contains("one part in nine, by mass");
    assertThat(problem.remedy(Locale.GERMAN)).contains("ein Teil von neun, nach Masse");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"1:8 wax", "1:8:2 a:b", "1:8 a:b:c", "1:8 wax:wax", "1/8 a:b", "1:8 a:", "1:8 :b"})
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
    "12.5 Massenprozent,0.125",
    "12.5 Gew.-%,0.125",
    "12.5 Masse-%,0.125",
    "12.5 % (w/w),0.125",
    "12.5 wt. %,0.125",
    "125 g/kg,0.125",
    "ein Drittel,0.3333333333333333",
    "0 %,0",
    "100 %,1"
  })
  void parseMassFraction_reads_parts_of_a_hundred_a_thousand_a_million(String text, double value) {
    assertThat(PARSER.parseMassFraction(text).value()).isCloseTo(value, within(1e-16));
  }

  @ParameterizedTest
  @CsvSource({
    "0.1,fraction.without-unit",
    "10,fraction.without-unit",
    "10 % by volume,fraction.wrong-basis",
    "120 %,value.out-of-range",
    "-1 %,value.out-of-range",
    "10 g,quantity.wrong-kind",
    "5 % w/v,fraction.mass-per-volume",
    "5 m/v %,fraction.mass-per-volume",
    "40 % vol,fraction.wrong-basis",
    "10 per cend,quantity.unknown-unit",
    "5-10 %,quantity.range"
  })
  void parseMassFraction_refuses_bare_numbers_and_the_other_basis(String text, String code) {
    assertThat(problemOf(() -> PARSER.parseMassFraction(text)).code().id()).isEqualTo(code);
  }

  @Test
  void parseVolumeFraction_reads_its_own_basis() {
    assertThat(PARSER.parseVolumeFraction("10 % by volume"))
        .isEqualTo(VolumeFraction.ofPercent(10));
    for (String text :
        List.of(
            "10 Vol.-%",
            "10 % vol",
            "10 vol.%",
            "10 % Vol.",
            "10 Volumenprozent",
            "10 % abv",
            "10 % v/v",
            "100 ml/l")) {
      assertThat(PARSER.parseVolumeFraction(text)).as(text).isEqualTo(VolumeFraction.ofPercent(10));
    }
    assertThat(problemOf(() -> PARSER.parseVolumeFraction("10 % by mass")).code())
        .isEqualTo(UnitsProblem.FRACTION_WRONG_BASIS);
  }
}
