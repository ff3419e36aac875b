// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** All of it in the reader's language, and all of it in one folder. */
class LanguageAndFolderTest {

  private static final String DEMO = Run.STUDIOS.resolve("demo-studio.json").toString();
  private static final String BLOCKED = Run.STUDIOS.resolve("blocked-studio.json").toString();

  /** What the studio calls its recipes. */
  private static final Pattern NAMES =
      Pattern.compile(
          "Ultramarine from oil paint|Ivory black from oil paint, strong|Titanium white from powder"
              + "|Cobalt blue from powder|Firm medium|Medium|Wall at the \\w+|Workshop in the yard"
              + "|Wax on wood, a first afternoon");

  @TempDir Path folder;

  private Document page(String name) throws IOException {
    return Jsoup.parse(Files.readString(folder.resolve(name), StandardCharsets.UTF_8));
  }

  private JsonNode results() throws IOException {
    return JsonMapper.builder()
        .build()
        .readTree(Files.readString(folder.resolve("results.json"), StandardCharsets.UTF_8));
  }

  private List<String> written() throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.map(p -> p.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void a_folder_holds_sheet_cards_class_sheet_and_results() throws IOException {
    Run run = Run.of("--out", folder.toString(), DEMO);

    assertThat(run.exitCode()).as(run.err()).isZero();
    assertThat(written())
        .containsExactly(
            "card-1.html",
            "card-2.html",
            "card-3.html",
            "card-4.html",
            "card-5.html",
            "card-6.html",
            "class-sheet.html",
            "results.json",
            "sheet.html",
            "sheet.txt");
    assertThat(page("card-2.html").select("section.card > h2").eachText())
        .containsExactly("Firm medium 1:6");
    assertThat(run.out())
        .startsWith(
            Files.readString(folder.resolve("sheet.txt"), StandardCharsets.UTF_8).stripTrailing());
    assertThat(Path.of("studio-sheet-" + LocalDate.now(ZoneId.systemDefault()) + ".html"))
        .doesNotExist();
  }

  @Test
  void results_hold_what_is_weighed_cast_and_spent() throws IOException {
    Run.of("--out", folder.toString(), DEMO);
    JsonNode medium = results().get("recipes").get(0);

    assertThat(medium.get("name").asString()).isEqualTo("Medium 1:8");
    assertThat(medium.at("/weighing/lines/1/printedKilograms").asDouble()).isEqualTo(0.0913);
    assertThat(medium.at("/cakes/whole").asInt()).isEqualTo(11);
    assertThat(medium.at("/cost/amount/currency").asString()).isEqualTo("EUR");
    assertThat(medium.get("times").size()).isEqualTo(3);
    assertThat(results().at("/course/purchase").isMissingNode()).isFalse();
  }

  @Test
  void a_blocked_recipe_has_its_reason_first_and_no_weights_in_any_file() throws IOException {
    Run run = Run.of("--out", folder.toString(), BLOCKED);
    Document sheet = page("sheet.html");
    JsonNode last = results().get("recipes").get(3);

    assertThat(run.exitCode()).isEqualTo(StudioSheet.BLOCKED);
    assertThat(sheet.selectFirst("main > *").text()).startsWith("NOT TODAY Medium 1:8: ");
    assertThat(sheet.select("nav a").last().text())
        .isEqualTo("Ivory black, far too strong: BLOCKED");
    assertThat(sheet.selectFirst("section.blocked aside").text()).contains("BLOCKED");
    assertThat(page("card-4.html").select(".weights, .tick, .mass")).isEmpty();
    assertThat(page("card-4.html").text()).contains("WITHHELD").doesNotContainPattern("\\d g\\b");
    assertThat(last.get("blocked").asBoolean()).isTrue();
    assertThat(last.has("weighing") || last.has("cakes") || last.has("cost")).isFalse();
  }

  @Test
  void a_german_reader_has_german_words_and_a_decimal_comma_everywhere() throws IOException {
    Run run = Run.of("--language", "de", "--out", folder.toString(), DEMO);
    Document sheet = page("sheet.html");

    assertThat(run.exitCode()).as(run.err()).isZero();
    assertThat(sheet.selectFirst("html").attr("lang")).isEqualTo("de");
    assertThat(sheet.select(".mass").eachText()).contains("730 g", "91,3 g");
    assertThat(run.out())
        .contains("Was zu wiegen ist", "Bienenwachs, gelb", "88,0 °C / 190,4 °F")
        .contains("EUR")
        .doesNotContainPattern("\\d\\.\\d+ (?:g|°C|EUR|min|h|%)");
    for (String name : List.of("sheet.html", "class-sheet.html", "card-1.html")) {
      Document german = page(name);
      german
          .select("footer, h2, nav")
          .remove(); // titles of sources, and what the studio calls things
      assertThat(NAMES.matcher(german.text()).replaceAll(""))
          .as(name)
          .doesNotContainPattern(
              "\\b(?:What|Weigh|wax|pot|not known|above|from|the|of|with|and|CAUTION|NOTICE)\\b");
    }
    assertThat(results().get("language").asString()).isEqualTo("de");
  }

  @Test
  void problems_are_told_in_the_language_too() throws IOException {
    Path file = folder.resolve("empty.json");
    Files.writeString(file, "{}", StandardCharsets.UTF_8);
    Run run = Run.of("--language", "de", file.toString());

    assertThat(run.exitCode()).isEqualTo(StudioSheet.BAD_INPUT);
    assertThat(run.err()).contains("nichts wurde geschrieben", "erlaubt:", "tun:");
  }

  @Test
  void a_language_that_nobody_wrote_is_bad_input() {
    Run run = Run.of("--language", "xx", DEMO);

    assertThat(run.exitCode()).isEqualTo(StudioSheet.BAD_INPUT);
    assertThat(run.err()).contains("there are no words in \"xx\"");
  }

  @Test
  void a_folder_that_is_a_file_is_bad_input() throws IOException {
    Path file = Files.writeString(folder.resolve("taken"), "x", StandardCharsets.UTF_8);
    Run run = Run.of("--out", file.toString(), DEMO);

    assertThat(run.exitCode()).isEqualTo(StudioSheet.BAD_INPUT);
    assertThat(run.err()).contains("studio.page-unwritable");
    assertThat(run.out()).isEmpty();
  }
}
