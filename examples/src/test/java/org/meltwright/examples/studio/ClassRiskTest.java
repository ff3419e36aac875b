// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/** What a class sheet names as risks, by whom and where, and whom it keeps away. */
class ClassRiskTest extends ClassOfTheDemo {

  @Test
  void what_the_reviews_found_and_could_not_assess_has_a_row_each_with_room_for_the_pen() {
    assertThat(row(page, "A pigment of a toxic metal")).contains("WARNING", "who prepares");
    assertThat(row(page, "Under 18 at all")).contains("NOT ASKED", "written consent");
    assertThat(row(page, "Molten wax on skin")).contains("burns at once");
    assertThat(row(page, "Hot metal")).contains("burns at a touch: up to 100 °C", "67 to 73 °C");
    Element risks = page.selectFirst("section:has(> h2:containsOwn(Risk assessment))");
    assertThat(risks.select("td.pen")).hasSize(risks.select("tbody tr").size());
  }

  @Test
  void a_room_that_is_not_stated_is_not_assessed() throws IOException {
    Document sheet =
        changed("\"room\": { \"volume\": \"75 m³\", \"extractionPerHour\": \"750 m³\" },", "", 0);

    assertThat(row(sheet, "Fumes of wax"))
        .contains("in class: 8.0 air changes", "in the studio: NOT ASSESSED");
  }

  /** Arithmetic: 720 m³ ÷ 90 m³ are 8 an hour, 750 m³ ÷ 75 m³ are 10. */
  @Test
  void a_class_elsewhere_has_the_air_of_its_own_room_or_none_that_is_known() throws IOException {
    String place = "\"place\": \"Workshop in the yard, Niederlohbach\",";
    String room = "\"room\": { \"volume\": \"90 m³\", \"extractionPerHour\": \"720 m³\" },";
    Document none = changed(room, "", 0);
    Document both = changed(room, room.replace("720", "0"), 0);
    Run atHome = runOf(json.replace(place, "").replace(room, ""));
    Document home =
        Jsoup.parse(Files.readString(folder.resolve("class.html"), StandardCharsets.UTF_8));

    assertThat(row(page, "Fumes of wax"))
        .contains("in class: 8.0 air changes", "in the studio: 10.0 air changes");
    assertThat(row(none, "Fumes of wax")).contains("in class: NOT ASSESSED: room or extraction");
    assertThat(row(both, "Fumes of wax")).contains("in class: 0.0 air changes");
    assertThat(atHome.exitCode()).isZero();
    assertThat(row(home, "Fumes of wax")).contains("10.0 air changes").doesNotContain("in class");
  }

  @Test
  void two_pigments_and_two_readings_under_one_rule_are_all_named() throws IOException {
    Document sheet =
        Jsoup.parse(
            written(
                json.replace(
                        "\"material\": \"titanium-white-rutile\"", "\"material\": \"cadmium-red\"")
                    .replaceFirst("\"reading\": \"88 °C\"", "\"reading\": \"91 °C\"")
                    .replaceFirst("\"reading\": \"88 °C\"", "\"reading\": \"92.5 °C\"")));

    assertThat(chapter(sheet, "Risk assessment"))
        .contains("Cadmium red", "Cobalt blue", "91.0 °C", "92.5 °C");
  }

  @Test
  void dry_pigment_is_taken_as_none_and_a_class_without_a_teacher_is_found() throws IOException {
    Document sheet =
        changed(
            "\"teachers\": 1, \"adults\": 8, \"minors\": 2, \"youngest\": 16",
            "\"teachers\": 0, \"adults\": 8, \"minors\": 0",
            0);

    assertThat(row(page, "Under 18 and dry pigment")).contains("taken as none");
    assertThat(row(page, "How many to a teacher")).contains("FOUND");
    assertThat(row(sheet, "How many to a teacher")).contains("FOUND");
    Document adults =
        changed(
            "\"teachers\": 1, \"adults\": 8, \"minors\": 2, \"youngest\": 16",
            "\"teachers\": 1, \"adults\": 10, \"minors\": 0",
            0);
    assertThat(lookedForInVain(adults)).contains("How many to a teacher");
  }

  private static String lookedForInVain(Document sheet) {
    return sheet.select("p").eachText().stream()
        .filter(text -> text.startsWith("Looked for and not found in this class:"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void toxic_pigments_block_a_class_with_minors_whatever_their_age() throws IOException {
    Document sheet =
        changed(", \"youngest\": 16 }", " }", 0); // no toxic pigment is used, so it does not apply
    Document cobalt = Jsoup.parse(withCobalt());

    assertThat(lookedForInVain(sheet)).contains("Under 18 and a toxic pigment");
    assertThat(row(cobalt, "Under 18 and a toxic pigment")).contains("FOUND");
  }

  private static String withCobalt() throws IOException {
    Run cobalt =
        runOf(
            json.replace(", \"youngest\": 16 }", " }")
                .replace(
                    "{ \"recipe\": \"white\", \"share\"", "{ \"recipe\": \"cobalt\", \"share\""));
    assertThat(cobalt.exitCode()).as(cobalt.err()).isEqualTo(1);
    return Files.readString(folder.resolve("class.html"), StandardCharsets.UTF_8);
  }

  @Test
  void allergens_are_known_unknown_or_in_no_list_and_never_called_safe() throws IOException {
    Document colophony = changed("\"material\": \"damar\"", "\"material\": \"colophony\"", 0);

    assertThat(row(page, "NOT KNOWN")).contains("Cobalt blue", "unknown is never safe");
    assertThat(row(page, "No entry in the law's list")).contains("Damar resin", "data sheet");
    assertThat(chapter(page, "Allergens")).contains("at times adulterated", "propolis");
    assertThat(row(colophony, "Known to sensitise"))
        .contains("Colophony (Skin sensitisation 1, H317)");
  }

  /** Said in the same words of the pots before class and in class, it has one row for both. */
  @Test
  void no_row_stands_twice() throws IOException {
    Document warm =
        Jsoup.parse(written(json.replace("\"setPoint\": \"82 °C\"", "\"setPoint\": \"88 °C\"")));
    List<String> rows =
        warm.select(".grid tbody tr").stream()
            .map(row -> row.select("th, td:nth-child(3)").text())
            .toList();

    assertThat(rows).hasSizeGreaterThan(15).doesNotHaveDuplicates();
    assertThat(row(warm, "The pot floor rises to 94.0 °C"))
        .contains("everyone", "before class: ", "in class: all recipes");
  }
}
