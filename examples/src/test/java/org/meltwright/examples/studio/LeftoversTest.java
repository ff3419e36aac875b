// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A recipe that is found for wishes, from what is left: what it is, what it saves, and why not. */
class LeftoversTest {

  @TempDir Path folder;

  private static String shipped() throws IOException {
    return Files.readString(Run.STUDIOS.resolve("leftovers-studio.json"), StandardCharsets.UTF_8);
  }

  private Run run(String json, String... options) throws IOException {
    Path file = Files.writeString(folder.resolve("studio.json"), json, StandardCharsets.UTF_8);
    String[] all = new String[options.length + 3];
    System.arraycopy(options, 0, all, 0, options.length);
    all[options.length] = "--out";
    all[options.length + 1] = folder.resolve("out").toString();
    all[options.length + 2] = file.toString();
    return Run.of(all);
  }

  private Run runWith(String from, String to, String... options) throws IOException {
    assertThat(shipped()).contains(from);
    return run(shipped().replace(from, to), options);
  }

  private JsonNode recipe() throws IOException {
    Path results = folder.resolve("out").resolve("results.json");
    return JsonMapper.builder()
        .build()
        .readTree(Files.readString(results, StandardCharsets.UTF_8))
        .get("recipes")
        .get(0);
  }

  /** The same question as that of the guide page "Use up what is left", and the same answer. */
  @Test
  void card_weighsOutTheBlendThatWasFound() throws IOException {
    Run run = run(shipped());
    assertThat(run.exitCode()).as(run.err()).isZero();
    assertThat(run.out())
        .containsPattern("Scrapings with white +300 g")
        .containsPattern("Strong medium 1:4 +300 g")
        .containsPattern("Beeswax, yellow +283 g")
        .containsPattern("Damar resin +17.0 g")
        .contains("Together 900.0 g in the pot.")
        .contains("It saves EUR 13.71 against the same mass of Medium 1:7")
        .contains("strong at most 300 g binds at 300 g")
        .contains("free oil at most 4 % by mass binds at 4 % by mass");
  }

  @Test
  void shelfOfTheDay_countsWhatWasLeftOver() throws IOException {
    assertThat(run(shipped()).out())
        .containsPattern("Scrapings with white +400.0 g +0.0 g +300.0 g +100.0 g")
        .containsPattern("Strong medium 1:4 +300.0 g +0.0 g +300.0 g +0.0 g")
        .doesNotContain("SHORT");
  }

  @Test
  void results_holdTheReasons() throws IOException {
    run(shipped(), "--language", "de");
    assertThat(recipe().get("reasons").get(0).asString()).startsWith("Das spart 13,71");
    assertThat(recipe().get("reasons").size()).isGreaterThan(4);
  }

  /** Where the pot is too hot neither weights nor what tells them is shown. */
  @Test
  void blocked_withholdsAmountsAndReasons() throws IOException {
    Run run = runWith("\"reading\": \"84 °C\"", "\"reading\": \"97 °C\"");
    assertThat(run.exitCode()).isEqualTo(StudioSheet.BLOCKED);
    assertThat(run.out()).doesNotContain("283 g").doesNotContain("13.71").doesNotContain("binds");
    assertThat(recipe().get("reasons").size()).isZero();
    assertThat(recipe().has("weighing")).isFalse();
  }

  @Test
  void bounds_moreParts_fewerParts_areKept() throws IOException {
    Run run = runWith("\"usual\": \"usual\" }", "\"partsAtMost\": 3, \"usual\": \"usual\" }");
    assertThat(run.exitCode()).as(run.err()).isZero();
    assertThat(recipe().get("weighing").get("lines").size()).isLessThanOrEqualTo(3);
  }

  @Test
  void withoutPrices_isNearestToTheUsual() throws IOException {
    Run run = run(shipped().replaceAll("(?s),\\s*\"packages\": \\[[^\\]]*\\]", ""));
    assertThat(run.exitCode()).as(run.err()).isZero();
    assertThat(run.out()).contains("Together 900.0 g in the pot.").doesNotContain("It saves");
  }

  /** One slip each: what was changed, into what, the code and the place. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          "from": [ "strong", | "from": [ "stronk", | studio.unknown-name        | /recipes/3/wishes/from/0
          "from": [ "strong", | "from": [ "usual",  | studio.nothing-left-over   | /recipes/3/wishes/from/0
          "first": [ "strong" | "first": [ "usual"  | studio.unknown-name        | /recipes/3/wishes/first/0
          "from": [ "strong", | "from": [ null,     | entry.missing              | /recipes/3/wishes/from/0
          "make": "900 g"     | "make": "900"       | quantity.missing-unit      | /recipes/3/wishes/make
          "make": "900 g"     | "make": "0 g"       | value.out-of-range         | /recipes/3/wishes/make
          "make": "900 g",    |                     | field.missing              | /recipes/3/wishes/make
          "make": "900 g"     | "make": "9 kg"      | planning.wishes-conflict   | /recipes/3/wishes
          "atLeast": "11 %"   | "atLeast": "110 %"  | value.out-of-range         | /recipes/3/wishes/resin/atLeast
          "atLeast": "11 %"   | "atLeast": "15 %"   | range.reversed             | /recipes/3/wishes/resin
          "atMost": "4 %"     | "atMost": "4"       | fraction.without-unit      | /recipes/3/wishes/freeOil/atMost
          "usual": "usual" }  | "usual": "medium" } | studio.unknown-name        | /recipes/3/wishes/usual
          "usual": "usual" }  | "usual": "from-left" } | studio.recipe-in-itself | /recipes/3/wishes/usual
          "usual": "usual" }  | "costAtMost": "12 USD/kg" } | studio.currency    | /recipes/3/wishes/costAtMost
          "usual": "usual" }  | "partsAtMost": 0 }  | value.out-of-range         | /recipes/3/wishes/partsAtMost
          "mass": "400 g"     | "mass": "-1 g"      | value.out-of-range         | /leftovers/1/mass
          "recipe": "scrapings" | "recipe": "scraps" | studio.unknown-name       | /leftovers/1/recipe
          "wishes": {         | "ratio": "1:7 resin:wax", "wishes": { | studio.one-of | /recipes/3
          """)
  void slip_isToldAtItsPlace(String from, String to, String code, String path) throws IOException {
    Run run = runWith(from, to == null ? "" : to);
    assertThat(run.exitCode()).as(run.out()).isEqualTo(StudioSheet.BAD_INPUT);
    assertThat(run.err()).contains(code).contains(path);
    assertThat(folder.resolve("out")).doesNotExist();
  }

  @Test
  void conflict_namesWhatEachWishWouldHaveToGive() throws IOException {
    Run run =
        runWith(
            "\"first\": [ \"strong\" ],",
            "\"first\": [ \"strong\" ], \"oilPaint\": { \"atLeast\": \"30 %\" },",
            "--language",
            "de");
    assertThat(run.err())
        .contains("Ölfarbe mindestens 30 Masse-%")
        .contains("allein müsste er nachgeben bis 13,33 Masse-%");
  }

  @Test
  void noPriceAndNothingUsual_isToldWithBothRemedies() throws IOException {
    String json =
        shipped()
            .replaceAll("(?s),\\s*\"packages\": \\[[^\\]]*\\]", "")
            .replaceAll("(?s),\\s*\"usual\": \"usual\"", "");
    Run run = run(json);
    assertThat(run.exitCode()).isEqualTo(StudioSheet.BAD_INPUT);
    assertThat(run.err()).contains("studio.no-aim").contains("resin, wax").contains("\"packages\"");
  }

  @Test
  void jobOfAnOrdinaryRecipe_stillHasToSayHowMuch() throws IOException {
    Run run = runWith("{ \"recipe\": \"from-left\",", "{ \"recipe\": \"usual\",");
    assertThat(run.exitCode()).isEqualTo(StudioSheet.BAD_INPUT);
    assertThat(run.err()).contains("field.missing").contains("/today/0/make");
  }
}
