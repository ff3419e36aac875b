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
import org.junit.jupiter.params.provider.ValueSource;

/** Bad input exits with 2, lists every problem and writes nothing. */
class BadInputTest {

  @TempDir Path folder;

  private Run run(String json) throws IOException {
    Path file = Files.writeString(folder.resolve("studio.json"), json, StandardCharsets.UTF_8);
    return run(file);
  }

  private Run run(Path file) {
    Path page = folder.resolve("page.html");
    Run run = Run.of("--page", page.toString(), file.toString());

    assertThat(run.exitCode()).as(run.err()).isEqualTo(StudioSheet.BAD_INPUT);
    assertThat(run.out()).isEmpty();
    assertThat(page).doesNotExist();
    return run;
  }

  @ParameterizedTest
  @ValueSource(strings = {"null", "[]", "1"})
  void a_file_that_holds_no_object_is_bad_input(String json) throws IOException {
    assertThat(run(json).err()).contains("json.wrong-type");
  }

  private static String demo() throws IOException {
    return Files.readString(Run.STUDIOS.resolve("demo-studio.json"), StandardCharsets.UTF_8);
  }

  private Run runWith(String from, String to) throws IOException {
    assertThat(demo()).contains(from);
    return run(demo().replace(from, to));
  }

  /** One slip each in the shipped file: what was changed, into what, the code and the path. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          "stock": "730 g"          | "stok": "730 g"            | json.unknown-field             | /shelf/0/stok
          "stock": "730 g"          | "stock": 730               | json.wrong-type                | /shelf/0/stock
          "stock": "730 g", "bal    | "bal                       | field.missing                  | /shelf/0/stock
          "stock": "730 g"          | "stock": "1 g", "stock": "730 g" | json.duplicate-key       | /shelf/0/stock
          "stock": "730 g"          | "stock": "730 xyz"         | quantity.unknown-unit          | /shelf/0/stock
          "stock": "730 g"          | "stock": "1,5 kg"          | number.decimal-comma           | /shelf/0/stock
          "stock": "730 g"          | "stock": "-5 g"            | value.out-of-range             | /shelf/0/stock
          "stock": "730 g"          | "stock": "NaN g"           | number.malformed               | /shelf/0/stock
          "stock": "730 g"          | "stock": "1e400 kg"        | number.out-of-reach            | /shelf/0/stock
          "stock": "730 g"          | "stock": "8 °C"            | quantity.wrong-kind            | /shelf/0/stock
          "stock": "730 g"          | "stock": "-8 ml"           | value.out-of-range             | /shelf/0/stock
          "19.80 EUR/1 kg"          | "19.80 EUR/0 ml"           | value.out-of-range             | /shelf/0/packages/0
          "beeswax-yellow", "form": "pellets", "stock": "730 g" | "acrylic-dispersion", "form": "x", "stock": "730 ml" | studio.density-needed | /shelf/0/stock
          "setPoint": "90 °C"       | "setPoint": "-300 °C"      | temperature.below-absolute-zero | /heatSources/0/setPoint
          "material": "damar"       | "material": "damer"        | material.unknown               | /shelf/2/material
          "balance": "kitchen",     | "balance": "kitchn",       | studio.unknown-name            | /shelf/0/balance
          "1:8 resin:wax"           | "0:0 resin:wax"            | value.out-of-range             | /recipes/0/ratio
          "of": "blue-tube"         | "of": "blue"               | studio.recipe-in-itself        | /recipes/2/parts/1/of
          "9.75 EUR/250 g"          | "9.75 CHF/250 g"           | studio.currency                | /shelf/2/packages/0
          "share": "10 %"           | "share": "110 %"           | value.out-of-range             | /recipes/2/parts/1/share
          { "of": "blue-tube", "share": "10 %" } | { "of": "blue-tube", "share": "10 %" }, { "of": "white-powder", "share": "106 % by volume" } | value.out-of-range | /recipes/2/parts/2/share
          "18.00 EUR"               | "18.00 ZZZ"                | cost.currency.unknown          | /studio/labourPerHour
          "32.50 EUR/500 g"         | "0 EUR/500 g"              | value.out-of-range             | /readyMade/0/price
          "name": "Firm medium 1:6" | "name": "Medium 1:8"       | studio.double-id               | /recipes/1/name
          "beeswax-bleached"        | "beeswax-yellow"           | studio.double-material         | /shelf/1/material
          "reading": "88 °C"        | "reading": "15 °C"         | value.out-of-range             | /today/0/reading
          "town": "Niederlohbach"   | "town": "Nieder\\u001b[31mlohbach" | json.invalid-value     | /studio/town
          "name": "Medium 1:8"      | "name": "M\\u202e:8"       | json.invalid-value             | /recipes/0/name
          "id": "pot"               | "id": "p\\u2067ot"         | json.invalid-value             | /vessels/0/id
          "title": "Wax on wood     | "title": "\\u200fWax       | json.invalid-value             | /classDay/title
          "currency": "EUR"         | "currency": "QQQ"          | studio.unknown-currency        | /studio/currency
          "lining": "none"          | "lining": "gold"           | word.unknown                   | /vessels/0/lining
          "cups": 12                | "cups": 0                  | value.out-of-range             | /moulds/0/cups
          { "total": "700 g" }      | { "total": "700 g", "net": "1 kg" } | studio.one-of         | /today/1/make
          """)
  void one_slip_is_reported_with_its_code_and_path(String from, String to, String code, String path)
      throws IOException {
    Run run = runWith(from, to);

    assertThat(run.err()).contains("\n" + path + "\n").contains("[" + code + "]");
    assertThat(run.err()).contains("allowed:", "do:");
  }

  /** One slip that many fields lean on is told once. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          "currency": "EUR" | "currency": "CFH"
          "minors": 0       | "minors": -1
          "cups": 24        | "cups": 0
          """)
  void one_slip_is_one_problem(String from, String to) throws IOException {
    assertThat(runWith(from, to).err()).startsWith("1 problem in ");
  }

  @Test
  void a_misspelt_material_is_answered_with_the_nearest_names() throws IOException {
    assertThat(runWith("\"damar\"", "\"damer\"").err()).contains("damar");
  }

  @Test
  void all_problems_are_listed_at_once() throws IOException {
    String json =
        demo()
            .replace("\"730 g\"", "\"730 xyz\"")
            .replace("\"90 °C\"", "\"-300 °C\"")
            .replace("\"material\": \"damar\"", "\"material\": \"damer\"")
            .replace("\"cups\": 24", "\"cups\": \"many\"")
            .replace("\"town\":", "\"twon\":");

    assertThat(run(json).err())
        .contains(
            "/shelf/0/stock",
            "/today/0/make/mass",
            "/heatSources/0/setPoint",
            "/shelf/2/material",
            "/moulds/1/cups",
            "/studio/twon",
            "/studio/town");
  }

  @Test
  void a_declared_decimal_comma_holds_for_money_too_and_a_point_is_refused_there()
      throws IOException {
    String declared =
        demo()
            .replace("\"town\":", "\"decimalComma\": true, \"town\":")
            .replaceAll("(\\d)\\.(\\d)", "$1,$2");
    Path file = Files.writeString(folder.resolve("comma.json"), declared, StandardCharsets.UTF_8);
    Path written = folder.resolve("comma.html");

    assertThat(Run.of("--page", written.toString(), file.toString()).err()).isEmpty();
    assertThat(run(declared.replace("18,00 EUR", "18.00 EUR")).err())
        .contains("number.decimal-point", "/studio/labourPerHour");
  }

  /** What is shown and asked for must be right with either decimal mark. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          18,00 EUR      | 18,00             | studio.money
          18,00 EUR      | achtzehn EUR      | studio.money
          9,75 EUR/250 g | 9,75 EUR im Glas   | studio.price
          """)
  void money_that_cannot_be_read_is_shown_as_written_and_no_point_is_asked_for(
      String from, String to, String code) throws IOException {
    String declared =
        demo()
            .replace("\"town\":", "\"decimalComma\": true, \"town\":")
            .replaceAll("(\\d)\\.(\\d)", "$1,$2");
    assertThat(declared).contains(from);
    String err = run(declared.replace(from, to)).err();

    assertThat(err).contains("[" + code + "]", "found:   " + to);
    assertThat(err.lines().filter(l -> l.contains("allowed:") || l.contains("do:")))
        .noneMatch(l -> l.matches(".*\\d[.,]\\d.*") || l.contains("decimal point"));
  }

  /** The refusal in the guide is what the program writes. */
  @Test
  void the_refusal_in_the_guide_is_real() throws IOException {
    String slips =
        demo()
            .replace("\"stock\": \"730 g\"", "\"stock\": \"1,5 kg\"")
            .replace("\"damar\"", "\"damer\"");
    Path file = Files.writeString(folder.resolve("my-studio.json"), slips, StandardCharsets.UTF_8);
    String written = run(file).err().replace(file.toString(), "my-studio.json");
    String guide =
        Files.readString(
            Run.STUDIOS.resolve("../../../../docs/guide/your-studio-file.md"),
            StandardCharsets.UTF_8);

    assertThat(guide).contains("```\n" + written + "```\n");
  }

  @Test
  void a_page_never_overwrites_the_studio_file() throws IOException {
    Path file = Files.writeString(folder.resolve("studio.json"), demo(), StandardCharsets.UTF_8);
    Run run = Run.of("--page", file.toString(), file.toString());

    assertThat(run.exitCode()).isEqualTo(StudioSheet.BAD_INPUT);
    assertThat(run.err()).contains("studio.page-unwritable");
    assertThat(file).hasContent(demo());
  }

  @Test
  void a_missing_file_is_named() {
    assertThat(run(folder.resolve("none.json")).err())
        .contains("json.file-unreadable", "none.json");
  }

  @Test
  void broken_json_is_reported_with_line_and_column() throws IOException {
    assertThat(run("{\n  \"studio\" {}\n}").err()).contains("line 2, column ");
  }

  @Test
  void a_file_of_50_megabytes_is_refused() throws IOException {
    Path file = Files.write(folder.resolve("large.json"), new byte[50_000_000]);

    assertThat(run(file).err()).contains("json.too-large");
  }

  @Test
  void a_file_nested_10_000_deep_is_refused() throws IOException {
    assertThat(run("{\"studio\":" + "[".repeat(10_000)).err()).contains("json.too-deep");
  }

  @Test
  void recipes_in_a_circle_are_refused() throws IOException {
    String json =
        demo()
            .replace(
                "\"ratio\": \"1:8 resin:wax\"",
                "\"parts\": [ { \"of\": \"blue\", \"rest\": true } ]");

    assertThat(run(json).err()).contains("studio.recipe-in-itself");
  }

  @Test
  void an_option_that_nobody_knows_prints_the_usage() {
    Run run = Run.of("--colour", "x.json");

    assertThat(run.exitCode()).isEqualTo(StudioSheet.BAD_INPUT);
    assertThat(run.err()).contains("Unknown option", "STUDIO_FILE");
  }

  @Test
  void a_page_that_cannot_be_written_is_bad_input_and_nothing_is_printed() throws IOException {
    Path file = Files.writeString(folder.resolve("studio.json"), demo(), StandardCharsets.UTF_8);
    Run run = Run.of("--page", folder.resolve("no/such/folder.html").toString(), file.toString());

    assertThat(run.exitCode()).isEqualTo(StudioSheet.BAD_INPUT);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("studio.page-unwritable");
  }
}
