// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.fail;
import static org.meltwright.units.MetricUnits.grams;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class FieldReaderTest {

  private final FieldReader at = FieldReader.of(QuantityParser.localeFree());

  private List<String> found() {
    return at.problems().toList().stream().map(p -> p.path() + " " + p.code().id()).toList();
  }

  @Test
  void parse_readsByTheParser() {
    assertThat(at.parse("mass", "730 g", QuantityParser::parseMass)).contains(grams(730));
    assertThat(found()).isEmpty();
  }

  @Test
  void parse_readsTheNotationOfTheParser() {
    FieldReader german = FieldReader.of(QuantityParser.withDecimalComma());
    assertThat(german.parse("mass", "1,5 g", QuantityParser::parseMass)).contains(grams(1.5));
  }

  @Test
  void parse_putsTheProblemAtTheField() {
    assertThat(at.parse("mass", "730", QuantityParser::parseMass)).isEmpty();
    assertThat(at.parse("capacity", "7 g", QuantityParser::parseVolume)).isEmpty();
    assertThat(found())
        .containsExactly("/mass quantity.missing-unit", "/capacity quantity.wrong-kind");
  }

  @Test
  void value_missingOrBlank_isAProblem() {
    assertThat(at.value("id", null)).isEmpty();
    assertThat(at.value("name", " ")).isEmpty();
    assertThat(at.value("cups", 12)).contains(12);
    assertThat(found()).containsExactly("/id field.missing", "/name field.missing");
    Problem problem = at.problems().toList().get(0);
    assertThat(problem.what(Locale.ENGLISH)).isEqualTo("The field \"id\" is missing.");
    assertThat(problem.remedy(Locale.GERMAN)).isEqualTo("„id“ angeben.");
  }

  @Test
  void optional_missing_isNone_andWrongIsAProblem() {
    assertThat(at.optional().value("name", null)).isEmpty();
    assertThat(at.optional().each("parts", null, String::length)).isEmpty();
    assertThat(at.optional().parse("mass", "7", QuantityParser::parseMass)).isEmpty();
    assertThat(found()).containsExactly("/mass quantity.missing-unit");
  }

  @Test
  void word_readsTheConstant_andNamesAllWords() {
    assertThat(at.word("sign", "comma", DecimalSign.class)).contains(DecimalSign.COMMA);
    assertThat(at.word("sign", "Comma", DecimalSign.class)).isEmpty();
    assertThat(found()).containsExactly("/sign word.unknown");
    assertThat(at.problems().toList().get(0).allowed(Locale.ENGLISH))
        .isEqualTo("point, comma, either");
  }

  @Test
  void word_misspelt_namesTheNearest() {
    at.word("sign", "eithre", DecimalSign.class);
    assertThat(at.problems().toList().get(0).remedy(Locale.ENGLISH))
        .isEqualTo("Did you mean either? Write one of these words.");
  }

  @Test
  void wordOf_everyConstant_isReadBack() {
    for (UnitsProblem code : UnitsProblem.values()) {
      String word = FieldReader.wordOf(code);
      assertThat(at.word("code", word, UnitsProblem.class)).contains(code);
    }
  }

  @Test
  void each_readsEntriesAtTheirPlaces_andNullIsAProblem() {
    List<Integer> read = at.each("parts", Arrays.asList("a", null, "x", ""), this::digit);
    assertThat(read).containsExactly(10);
    assertThat(found())
        .containsExactly(
            "/parts/1 entry.missing", "/parts/2 word.unknown", "/parts/3 entry.missing");
    assertThat(at.problems().toList().get(0).what(Locale.ENGLISH))
        .isEqualTo("Entry 2 of the list is empty.");
  }

  private int digit(String hex) {
    if (hex.equals("x")) {
      throw new ProblemException(Problem.of(UnitsProblem.WORD_UNKNOWN, hex));
    }
    return Integer.parseInt(hex, 16);
  }

  @Test
  void each_noEntry_isAMissingField() {
    at.each("parts", List.<String>of(), String::length);
    assertThat(found()).containsExactly("/parts field.missing");
  }

  @Test
  void field_readsBelowItsPath() {
    FieldReader cast = at.field("today").field("0").field("cast");
    cast.value("mould", null);
    assertThat(cast.path()).isEqualTo("/today/0/cast");
    assertThat(found()).containsExactly("/today/0/cast/mould field.missing");
  }

  @Test
  void read_draftInADraft_putsItsProblemsBelowTheField() {
    FieldReader inner = FieldReader.of(QuantityParser.localeFree());
    inner.value("mould", null);
    at.read("cast", "a draft", draft -> inner.make(() -> draft));
    assertThat(found()).containsExactly("/cast/mould field.missing");
  }

  @Test
  void make_givesTheThing_whenNothingIsWrong() {
    assertThat(at.make(() -> "a tin")).isEqualTo("a tin");
  }

  @Test
  void make_isNotAsked_whenAFieldIsWrong() {
    at.value("id", null);
    assertThatThrownBy(() -> at.make(() -> fail("asked")))
        .isInstanceOf(ProblemException.class)
        .hasMessageContaining("/id: field.missing");
  }

  @Test
  void attempt_asksOnlyWhatLiesBelow() {
    at.field("vessels").field("0").value("id", null);
    assertThat(at.field("vessels").field("1").attempt(() -> "a tin")).contains("a tin");
    assertThat(at.field("vessels").field("0").attempt(() -> "a tin")).isEmpty();
    assertThat(at.attempt(() -> "a studio")).isEmpty();
  }
}
