// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.EnumSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;
import org.meltwright.safety.heating.StandingAdvice;

/** The class sheet as a page for the wall, and what it withholds. */
class ClassSheetTest extends ClassOfTheDemo {

  @Test
  void the_class_of_the_demo_file_is_not_blocked() {
    assertThat(run.err()).isEmpty();
    assertThat(run.exitCode()).isZero();
    assertThat(run.out()).contains("class.html");
  }

  @Test
  void minors_with_a_torch_block_the_class_and_its_masses_are_withheld() throws IOException {
    String from = "{ \"id\": \"iron\", \"kind\": \"iron\"";
    Document sheet = changed(from, "{ \"id\": \"iron\", \"kind\": \"torch\"", StudioSheet.BLOCKED);

    assertThat(sheet.text())
        .contains("WITHHELD", "Someone under 18 works where a torch, gas or an open coil is used.");
    assertThat(row(sheet, "Someone under 18 works where a torch")).contains("BLOCKED");
    assertThat(row(sheet, "Under 18 and a torch")).contains("FOUND");
    assertThat(sheet.text()).doesNotContainPattern("\\d g are ready");
    assertThat(page.text()).containsPattern("\\d g are ready");
  }

  /** A setting that blocks is no step of a checklist. */
  @Test
  void settings_of_a_blocked_class_are_no_step_of_its_checklist() throws IOException {
    Run hot = runOf(json.replaceAll("\"reading\": \"80 °C\" }", "\"reading\": \"125 °C\" }"));
    Document sheet =
        Jsoup.parse(Files.readString(folder.resolve("class.html"), StandardCharsets.UTF_8));
    String ticks = sheet.select(".ticks").text();

    assertThat(hot.exitCode()).isEqualTo(StudioSheet.BLOCKED);
    assertThat(ticks)
        .contains("Nothing is switched on: the class is blocked")
        .doesNotContain("125.0 °C", "is to show", "set to");
    assertThat(page.select(".ticks").text())
        .contains("is to show 80.0 °C", "set to 82.0 °C")
        .doesNotContain("Nothing is switched on");
  }

  @Test
  void a_job_that_is_blocked_today_withholds_the_class_that_needs_it() throws IOException {
    String first = "\"thermometer\": \"dip\", \"reading\": \"88 °C\"";
    Document sheet = changed(first, first.replace("88", "97"), StudioSheet.BLOCKED);
    Run blocked = runOf(json.replace(first, first.replace("88", "97")));

    assertThat(sheet.text())
        .contains("WITHHELD", "Medium 1:8, made: Heat off: the wax is at 97.0 °C");
    assertThat(sheet.text()).doesNotContainPattern("\\d g are ready");
    assertThat(blocked.out()).contains("The class: Wax on wood").doesNotContain("still to make");
  }

  @Test
  void the_emergency_steps_stand_in_big_print_with_lines_to_fill_in() {
    String poster = page.select(".poster").text();

    assertThat(poster)
        .contains(StandingAdvice.WAX_FIRE.text(java.util.Locale.ENGLISH))
        .contains(StandingAdvice.BURN.text(java.util.Locale.ENGLISH));
    assertThat(page.select(".blanks li").eachText()).contains("Emergency number", "Assembly point");
    assertThat(chapter(page, "If it goes wrong"))
        .contains("From 93.3 °C / 199.9 °F on: The wax is at 93.3 °C");
  }

  @Test
  void standing_advice_is_on_the_sheet_but_for_flames_and_lamps_that_nobody_uses() {
    Set<StandingAdvice> used =
        EnumSet.complementOf(EnumSet.of(StandingAdvice.FLAME, StandingAdvice.LAMP));
    for (StandingAdvice advice : used) {
      assertThat(page.text()).contains(advice.text(java.util.Locale.ENGLISH));
    }
  }

  @Test
  void the_sheet_is_one_valid_document_without_script_or_network_to_be_ticked_on_paper() {
    Parser parser = Parser.htmlParser().setTrackErrors(50);
    Document document = Jsoup.parse(html, parser);

    assertThat(parser.getErrors()).isEmpty();
    assertThat(document.select("script, link, img, iframe, input")).isEmpty();
    assertThat(html).doesNotContain("http://", "https://");
    assertThat(document.select("body.paper")).hasSize(1);
    assertThat(document.select(".ticks li")).hasSizeGreaterThan(15);
    assertThat(document.select("h2").eachText())
        .containsSequence(
            "If it goes wrong",
            "Risk assessment",
            "Set-up",
            "Circuit plan",
            "Age limits",
            "Allergens");
  }

  @Test
  void every_source_mark_of_the_sheet_has_its_line_at_the_foot() {
    int sources = page.select("footer li").size();
    Matcher mark = Pattern.compile("\\[(\\d+)]").matcher(page.select("main").text());
    int marks = 0;
    while (mark.find()) {
      assertThat(Integer.parseInt(mark.group(1))).isBetween(1, sources);
      marks++;
    }

    assertThat(marks).isGreaterThan(20);
  }

  @Test
  void the_sheet_has_a_chapter_on_the_panel_with_table_and_picture() throws IOException {
    Document studio =
        Jsoup.parse(Files.readString(folder.resolve("page.html"), StandardCharsets.UTF_8));
    String panel = chapter(studio, "On the panel");

    assertThat(panel).contains("panel 50.0 °C", "above 50.0 °C", "WARM PANELS");
    assertThat(studio.select("details:has(> summary:containsOwn(On the panel)) svg")).isNotEmpty();
    assertThat(studio.select("details:contains(What to buy) svg")).isNotEmpty();
  }
}
