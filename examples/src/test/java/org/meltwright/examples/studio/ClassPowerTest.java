// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;

/** What hangs on which circuit of a class, and how hot its metal gets. */
class ClassPowerTest extends ClassOfTheDemo {

  /** Arithmetic: (2 × 1000 + 200 + 300) W ÷ 230 V = 10.9 A; 80 % of 16 A are 12.8 A, 2944 W. */
  @Test
  void the_first_circuit_is_within_and_the_second_is_not_assessed() {
    assertThat(row(page, "Wall at the window"))
        .contains("2 × warm-plate (1000 W)", "2500 W, 10.9 A", "2944 W, 12.8 A", "stays within");
    assertThat(row(page, "Wall at the door"))
        .contains("at least 1200 W, 5.2 A", "NOT ASSESSED", "the power of all else")
        .doesNotContain("stays within");
  }

  @Test
  void three_plates_run_for_hours_are_too_much_though_the_rating_holds_them() throws IOException {
    Document sheet =
        changed(
            "\"warm-plate\", \"warm-plate\", \"iron\"", "\"warm-plate\", \"plate\", \"iron\"", 0);

    assertThat(row(sheet, "Wall at the window"))
        .contains("3000 W", "more than the circuit carries for hours");
    assertThat(row(sheet, "Overloaded")).contains("Wall at the window: TOO MUCH");
  }

  @Test
  void a_plate_without_power_and_a_code_without_share_are_not_assessed() throws IOException {
    Document noPower = changed("\"6 K\", \"power\": \"1000 W\"", "\"6 K\"", 0);
    Document noShare = changed("\"continuousShare\": \"80 %\",", "", 0);

    assertThat(row(noPower, "Wall at the window"))
        .contains("at least 500 W", "NOT ASSESSED", "the power of warm-plate");
    assertThat(row(noShare, "Wall at the window"))
        .contains("NOT ASSESSED", "the share that your code lets run for hours", "3680 W");
  }

  @Test
  void a_heat_source_on_no_circuit_is_not_assessed() throws IOException {
    Run without = runOf(json.replaceFirst("(?s)\"circuits\": \\[.*?\\n    \\],", ""));
    Document sheet =
        Jsoup.parse(Files.readString(folder.resolve("class.html"), StandardCharsets.UTF_8));

    assertThat(without.exitCode()).as(without.err()).isZero();
    assertThat(sheet.text()).contains("no circuit stated", "NOT ASSESSED: say where it hangs");
    assertThat(page.text()).doesNotContain("no circuit stated");
  }

  @Test
  void pieces_are_counted_not_kinds() throws IOException {
    String irons = "[ \"iron\"" + ", \"iron\"".repeat(7) + " ]";
    Document sheet = Jsoup.parse(written(json.replace("[ \"iron\", \"iron\" ]", irons)));

    assertThat(chapter(sheet, "Circuit plan")).contains("6 × iron (200 W)", "say where it hangs");
    assertThat(row(sheet, "Overloaded")).contains("6 × iron: NOT ASSESSED: on no circuit stated");
  }

  @Test
  void a_heat_source_named_like_a_circuit_hides_no_verdict() throws IOException {
    Document sheet =
        Jsoup.parse(
            written(
                json.replace("Wall at the window", "iron")
                    .replace(
                        "\"warm-plate\", \"warm-plate\", \"iron\"",
                        "\"plate\", \"plate\", \"warm-plate\"")));

    assertThat(row(sheet, "Overloaded"))
        .contains("iron: TOO MUCH", "iron: NOT ASSESSED: on no circuit stated");
  }

  @Test
  void a_paint_without_heat_source_leaves_the_load_and_the_hot_metal_open() throws IOException {
    String blue =
        "\"share\": \"10 %\",\n"
            + "        \"vessel\": \"tin\", \"fill\": \"50 %\", \"heatSource\": \"warm-plate\",";
    Document sheet =
        Jsoup.parse(
            written(json.replace(blue, blue.replace("\"heatSource\": \"warm-plate\",", ""))));

    assertThat(chapter(sheet, "Circuit plan")).contains("Ultramarine from oil paint: heat source");
    assertThat(row(sheet, "Overloaded"))
        .contains("Ultramarine from oil paint: NOT ASSESSED: heat source not stated");
    assertThat(row(sheet, "Hot metal"))
        .contains("not stated: the heat source of Ultramarine from oil paint");
  }

  @Test
  void an_open_coil_among_the_tools_blocks_the_class_and_counts_on_its_circuit()
      throws IOException {
    String iron = "{ \"id\": \"iron\", \"kind\": \"iron\"";
    String coil =
        "{ \"id\": \"coil\", \"kind\": \"open-coil-or-gas\", \"power\": \"2000 W\" }, " + iron;
    String inUse =
        json.replace(iron, coil).replace("[ \"iron\", \"iron\" ]", "[ \"coil\", \"iron\" ]");
    Document sheet = Jsoup.parse(written(inUse));
    Document gas = Jsoup.parse(written(inUse.replace(", \"power\": \"2000 W\"", "")));

    assertThat(sheet.text()).contains("WITHHELD", "open coil or a gas flame");
    assertThat(chapter(sheet, "Circuit plan")).contains("coil (2000 W)", "say where it hangs");
    assertThat(row(gas, "Overloaded")).contains("coil: NOT ASSESSED: gas or an open coil");
  }

  @Test
  void what_hangs_on_a_circuit_is_reviewed_though_it_is_no_tool() throws IOException {
    String iron = "{ \"id\": \"iron\", \"kind\": \"iron\"";
    String torch = "{ \"id\": \"burner\", \"kind\": \"torch\" }, " + iron;
    Document sheet =
        Jsoup.parse(
            written(
                json.replace(iron, torch)
                    .replace("\"warm-plate\", \"iron\" ] }", "\"burner\" ] }")));

    assertThat(row(sheet, "Under 18 and a torch")).contains("FOUND");
  }

  @Test
  void hot_metal_of_which_something_is_not_stated_is_never_below_a_threshold() throws IOException {
    String cool =
        json.replaceAll(
            "\"setPoint\": \"[0-9]+ °C\", \"overshoot\": \"[0-9]+ K\"", "\"setPoint\": \"55 °C\"");
    Document noOvershoot = Jsoup.parse(written(cool));
    Document nothing = Jsoup.parse(written(cool.replace(", \"setPoint\": \"55 °C\"", "")));

    assertThat(row(noOvershoot, "Hot metal"))
        .contains("NOT ASSESSED: at least 55 °C", "the overshoot of iron")
        .doesNotContain("below the threshold");
    assertThat(row(nothing, "Hot metal"))
        .contains("NOT ASSESSED; not stated:", "the set point of iron", "the set point of plate");
  }
}
