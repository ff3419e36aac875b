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

/** Slips in what is brushed and in the class, each with its code and place; nothing is written. */
class ClassInputTest {

  @TempDir Path folder;

  private static String demo() throws IOException {
    return Files.readString(Run.STUDIOS.resolve("demo-studio.json"), StandardCharsets.UTF_8);
  }

  private Run run(String json, String page, String classSheet) throws IOException {
    Path file = Files.writeString(folder.resolve("studio.json"), json, StandardCharsets.UTF_8);
    return Run.of(
        "--page",
        folder.resolve(page).toString(),
        "--class-sheet",
        folder.resolve(classSheet).toString(),
        file.toString());
  }

  private Run refused(String json) throws IOException {
    Run run = run(json, "page.html", "class.html");

    assertThat(run.exitCode()).as(run.out()).isEqualTo(StudioSheet.BAD_INPUT);
    assertThat(run.out()).isEmpty();
    assertThat(folder.resolve("page.html")).doesNotExist();
    assertThat(folder.resolve("class.html")).doesNotExist();
    return run;
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          "recipe": "medium-8", "melts"  | "recipe": "medium", "melts"   | studio.unknown-name     | /brushing/recipe
          "75 °C", "85 °C"               | "75 °C", "97 °C"              | value.out-of-range      | /brushing/melts/1
          "75 °C", "85 °C"               | "75 °C", "85"                 | quantity.missing-unit   | /brushing/melts/1
          [ "75 °C", "85 °C" ]           | []                            | field.missing           | /brushing/melts
          [ "75 °C", "85 °C" ]           | "75 °C"                       | json.wrong-type         | /brushing/melts
          "panel": "wood"                | "panel": "oak"                | word.unknown            | /brushing/panel
          "thickness": "10 mm"           | "thickness": "10 g"           | quantity.wrong-kind     | /brushing/thickness
          "thickness": "10 mm"           | "thickness": "200 m"          | value.out-of-range      | /brushing/thickness
          "0.2 to 0.5 mm"                | "0.5 to 0.2 mm"               | range.reversed          | /brushing/stroke
          "0.2 to 0.5 mm"                | "0 to 0.5 mm"                 | value.out-of-range      | /brushing/stroke
          "0.2 to 0.5 mm"                | "0.2 to 50 mm"                | value.out-of-range      | /brushing/stroke
          "air": "20 °C",                | "air": "-60 °C",              | value.out-of-range      | /brushing/air
          "stroke":                      | "ground": { "of": "gypsum", "thickness": "0.5 mm" }, "stroke":         | word.unknown        | /brushing/ground/of
          "stroke":                      | "ground": { "of": "plaster-ground" }, "stroke":                        | field.missing       | /brushing/ground/thickness
          "stroke":                      | "ground": { "of": "plaster-ground", "thickness": "9 m" }, "stroke":    | value.out-of-range  | /brushing/ground/thickness
          "air": "20 °C",                |                               | field.missing           | /brushing/air
          "40 °C", "50 °C"               | "40 °C", "150 °C"             | value.out-of-range      | /brushing/panels/3
          "date": "2026-12-05"           | "date": "5.12.2026"           | studio.date             | /classDay/date
          "date": "2026-12-05"           | "date": "2026-02-30"          | studio.date             | /classDay/date
          "date": "2026-12-05"           | "date": "2025-12-05"          | hazard.day-too-early    | /classDay/date
          "title": "Wax                  | "titel": "Wax                 | json.unknown-field      | /classDay/titel
          "adults": 8, "minors": 2       | "adults": 0, "minors": 0      | value.out-of-range      | /classDay/people
          "adults": 8                    | "adults": -8                  | value.out-of-range      | /classDay/people/adults
          "adults": 8                    | "adults": 8.5                 | json.wrong-type         | /classDay/people/adults
          "adults": 8                    | "adults": 100000              | value.out-of-range      | /classDay/people/adults
          "youngest": 16                 | "youngest": 21                | value.out-of-range      | /classDay/people/youngest
          "minors": 2, "youngest": 16    | "minors": 0, "youngest": 16   | value.out-of-range      | /classDay/people/youngest
          "hours": "3 h"                 | "hours": "3 kg"               | quantity.wrong-kind     | /classDay/hours
          "hours": "3 h"                 | "hours": "40 h"               | value.out-of-range      | /classDay/hours
          "perPerson": 4                 | "perPerson": 0                | value.out-of-range      | /classDay/panels/perPerson
          "perPerson": 4                 | "perPerson": 2000000000       | value.out-of-range      | /classDay/panels/perPerson
          "width": "20 cm"               | "width": "0 cm"               | value.out-of-range      | /classDay/panels/width
          "film": "150 µm"               | "film": "150"                 | quantity.missing-unit   | /classDay/panels/film
          "film": "150 µm"               | "film": "9 m"                 | value.out-of-range      | /classDay
          "loss": "20 %"                 | "loss": "100 %"               | value.out-of-range      | /classDay
          "loss": "20 %"                 | "loss": "120 %"               | value.out-of-range      | /classDay/panels/loss
          "recipe": "blue", "share": "10 %" | "recipe": "blu", "share": "10 %" | studio.unknown-name | /classDay/paints/1/recipe
          "recipe": "blue", "share": "10 %" | "recipe": "white", "share": "10 %" | studio.double-id | /classDay/paints/2/recipe
          "recipe": "blue", "share": "10 %" | "recipe": "blue"           | studio.one-of           | /classDay/paints/1
          "recipe": "blue", "share": "10 %" | "recipe": "blue", "share": "10 %", "rest": true | studio.one-of | /classDay/paints/1
          "recipe": "blue", "share": "10 %" | "recipe": "blue", "share": "90 %" | studio.shares   | /classDay/paints
          "recipe": "blue", "share": "10 %" | "recipe": "blue", "rest": true    | studio.shares   | /classDay/paints
          "tools": [ "iron", "iron" ]    | "tools": [ "gun" ]            | studio.unknown-name     | /classDay/tools/0
          "volts": 230, "amperes": 16, "sources": [ "warm-plate", "iron" ] | "volts": 230, "amperes": 16, "sources": [ "warm-plate", "irn" ] | studio.unknown-name | /classDay/circuits/1/sources/1
          "volts": 230, "amperes": 16, "sources": [ "warm-plate", "iron" ] | "volts": 0, "amperes": 16, "sources": [ "iron" ]       | value.out-of-range  | /classDay/circuits/1/volts
          "volts": 230, "amperes": 16, "sources": [ "warm-plate", "iron" ] | "volts": 230000, "amperes": 16, "sources": [ "iron" ]  | value.out-of-range  | /classDay/circuits/1/volts
          "volts": 230, "amperes": 16, "sources": [ "warm-plate", "iron" ] | "volts": 230, "amperes": 5000, "sources": [ "iron" ]   | value.out-of-range  | /classDay/circuits/1/amperes
          "volts": 230, "amperes": 16, "sources": [ "warm-plate", "iron" ] | "volts": 230, "amperes": 16, "sources": []             | field.missing       | /classDay/circuits/1/sources
          "name": "Wall at the door"     | "name": "Wall at the window"  | studio.double-id        | /classDay/circuits/1/name
          "room": { "volume": "90 m³",   | "room": { "volume": "90 kg",  | quantity.wrong-kind     | /classDay/room/volume
          "others": "300 W"              | "others": "-1 W"              | value.out-of-range      | /classDay/circuits/0/others
          "others": "300 W"              | "others": "300 V"             | quantity.unknown-unit   | /classDay/circuits/0/others
          "continuousShare": "80 %"      | "continuousShare": "20 %"     | value.out-of-range      | /classDay/continuousShare
          "perOrder": "6.90 EUR"         | "perOrder": "6.90 CHF"        | studio.currency         | /classDay/freight/perOrder
          "freeFrom": "90 EUR"           | "freeFrom": "ninety EUR"      | studio.money            | /classDay/freight/freeFrom
          "fixed": "420 EUR"             | "fixed": "-420 EUR"           | studio.money            | /classDay/fee/fixed
          "step": "5 EUR"                | "step": "0 EUR"               | value.out-of-range      | /classDay/fee/step
          "margin": "20 %"               | "margin": "a fifth"           | quantity.unknown-unit   | /classDay/fee/margin
          """)
  void one_slip_is_reported_with_its_code_and_path(String from, String to, String code, String path)
      throws IOException {
    assertThat(demo()).contains(from);
    Run run = refused(demo().replace(from, to == null ? "" : to));

    assertThat(run.err()).contains("\n" + path + "\n").contains("[" + code + "]");
    assertThat(run.err()).contains("allowed:", "do:");
  }

  /** What is allowed is said in units that people use, what was found as it was written. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          "others": "300 W"          | "others": "900 kW"          | 900 kW         | 0 to 100 kW
          "width": "20 cm"           | "width": "0 cm"             | 0 cm           | 1 nm to 100 km
          "leftInTins": "60 g"       | "leftInTins": "-1 g"        | -1 g           | 0 to 100 t
          "volume": "90 m³"          | "volume": "0 m³"            | 0 m³           | 1 m³ to 10000000 m³
          "hours": "3 h"             | "hours": "0 h"              | 0 h            | 0.001 s to 100000 s
          "hours": "3 h"             | "hours": "25 h"             | 25 h           | 0.01 to 24 h
          "power": "1500 W"          | "power": "0 W"              | 0 W            | 0.001 W to 1000000 W
          "meltDensity": "0.86 g/ml" | "meltDensity": "0 g/ml"     | 0 g/ml         | 1 kg/m³ to 100 g/ml
          "loss": "20 %"             | "loss": "120 %"             | 120 %          | 0 % to 100 %
          "continuousShare": "80 %"  | "continuousShare": "20 %"   | 20 %           | 50 to 100 %
          "adults": 8, "minors": 2   | "adults": 0, "minors": 0    | 0 people       | 1 to 1000 people
          "reading": "88 °C"         | "reading": "15 °C"          | 15 °C          | 20 to 400 °C
          "share": "15 %"            | "share": "15.1 %", "rest": false | 25.1 %    | shares that sum to 100 %
          "0.2 to 0.5 mm"            | "0.2 to 50 mm"              | 50 mm          | 0.001 to 10 mm
          """)
  void a_range_is_said_in_words_with_units(String from, String to, String found, String allowed)
      throws IOException {
    String json = demo();
    if (to.contains("15.1")) {
      json =
          json.replace(
              "\"recipe\": \"medium-8\", \"rest\": true",
              "\"recipe\": \"medium-8\", \"share\": \"0 %\"");
    }
    assertThat(json).contains(from);

    assertThat(refused(json.replace(from, to)).err())
        .contains("found:   " + found, "allowed: " + allowed)
        .doesNotContain("E-", "E5");
  }

  @Test
  void all_problems_of_both_parts_are_listed_at_once() throws IOException {
    String json =
        demo()
            .replace("\"75 °C\", \"85 °C\"", "\"75 °C\", \"97 °C\"")
            .replace("2026-12-05", "soon")
            .replace("\"continuousShare\": \"80 %\"", "\"continuousShare\": \"8 %\"")
            .replace("\"step\": \"5 EUR\"", "\"step\": \"5 USD\"")
            .replace("\"tools\": [ \"iron\", \"iron\" ]", "\"tools\": [ \"gun\" ]");

    assertThat(refused(json).err())
        .contains("5 problems")
        .contains("/brushing/melts/1", "/classDay/date", "/classDay/continuousShare")
        .contains("/classDay/fee/step", "/classDay/tools/0");
  }

  @Test
  void a_class_sheet_without_a_class_is_bad_input_with_a_clear_message() throws IOException {
    String json = Files.readString(Run.STUDIOS.resolve("blocked-studio.json"));

    assertThat(refused(json).err())
        .contains("/classDay\n", "[studio.class-missing]", "leave out --class-sheet");
  }

  @Test
  void the_three_files_are_three_files() throws IOException {
    Run both = run(demo(), "one.html", "one.html");
    Run self = run(demo(), "page.html", "studio.json");

    assertThat(both.exitCode()).isEqualTo(StudioSheet.BAD_INPUT);
    assertThat(both.err()).contains("studio.page-unwritable", "another page");
    assertThat(self.err()).contains("studio.page-unwritable", "the studio file itself");
    assertThat(folder.resolve("studio.json")).hasContent(demo());
    assertThat(folder.resolve("page.html")).doesNotExist();
  }

  @Test
  void a_class_sheet_that_cannot_be_written_leaves_no_studio_page_either() throws IOException {
    Run run = run(demo(), "page.html", "no/such/class.html");

    assertThat(run.exitCode()).isEqualTo(StudioSheet.BAD_INPUT);
    assertThat(run.out()).isEmpty();
    assertThat(folder.resolve("page.html")).doesNotExist();
  }

  @Test
  void the_new_parts_may_be_left_out() throws IOException {
    Path file = Run.STUDIOS.resolve("blocked-studio.json");
    Run run = Run.of("--page", folder.resolve("page.html").toString(), file.toString());

    assertThat(run.err()).isEmpty();
    assertThat(run.out()).doesNotContain("On the panel", "The class");
  }
}
