// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.meltwright.core.planning.Need;
import org.meltwright.safety.heating.StandingAdvice;

/** The class of the demo file; its numbers are worked out anew here. */
class ClassSheetTest {

  @TempDir static Path folder;

  private static String json;
  private static ClassSheet sheet;
  private static Run run;
  private static Document page;
  private static String html;

  @BeforeAll
  static void runTheDemo() throws IOException {
    json = Files.readString(Run.STUDIOS.resolve("demo-studio.json"), StandardCharsets.UTF_8);
    sheet = classOf(json);
    run = runOf(json);
    html = Files.readString(folder.resolve("class.html"), StandardCharsets.UTF_8);
    page = Jsoup.parse(html);
  }

  static ClassSheet classOf(String json) throws IOException {
    byte[] bytes = json.getBytes(StandardCharsets.UTF_8);
    return Sheet.of(StudioFile.read(new ByteArrayInputStream(bytes))).forClass().orElseThrow();
  }

  private static Run runOf(String json) throws IOException {
    Path file = Files.writeString(folder.resolve("studio.json"), json, StandardCharsets.UTF_8);
    return Run.of(
        "--page",
        folder.resolve("page.html").toString(),
        "--class-sheet",
        folder.resolve("class.html").toString(),
        file.toString());
  }

  /** Runs a changed demo and reads its class sheet. */
  private static Document changed(String from, String to, int exitCode) throws IOException {
    assertThat(json).contains(from);
    Run changed = runOf(json.replace(from, to));
    assertThat(changed.exitCode()).as(changed.err()).isEqualTo(exitCode);
    return Jsoup.parse(Files.readString(folder.resolve("class.html"), StandardCharsets.UTF_8));
  }

  private static PaintNeed paint(int index) {
    return provisions().paints().get(index);
  }

  private static Provisions provisions() {
    return sheet.provisions().value().orElseThrow();
  }

  private static String chapter(Document of, String title) {
    for (Element section : of.select("section")) {
      if (section.select("h2").text().equals(title)) {
        return section.text();
      }
    }
    throw new AssertionError("no chapter " + title);
  }

  private static String row(Document of, String first) {
    for (Element row : of.select("tbody tr")) {
      if (row.select("th").text().startsWith(first)) {
        return row.text();
      }
    }
    throw new AssertionError("no row " + first);
  }

  @Test
  void the_class_of_the_demo_file_is_not_blocked() {
    assertThat(run.err()).isEmpty();
    assertThat(run.exitCode()).isZero();
    assertThat(run.out()).contains("class.html");
  }

  /**
   * Arithmetic: 10 × 4 × 0.2 m × 0.2 m = 1.6 m². Wax 955, resin 1080 kg/m³, 8 : 0.96 after
   * insolubles: medium 967. White 8 % by volume of 4170: 1223. Blue with 10 % of paint (72 %
   * pigment of 2340, 28 % oil of 928): 1008. By 75, 15 and 10 % of mass 1003 kg/m³; ten films of
   * 150 µm, four fifths of what is used, are 3.008 kg; 10 × 60 g on top.
   */
  @Test
  void ten_learners_with_four_panels_of_ten_layers_need_3_61_kg() {
    double medium = 1 / (8 / 8.96 / 955 + 0.96 / 8.96 / 1080);
    double white = 0.92 * medium + 0.08 * 4170;
    double paint = 1 / (0.7215 / 2340 + 0.2785 / 928.5);
    double blue = 1 / (0.9 / medium + 0.1 / paint);
    double density = 1 / (0.75 / medium + 0.15 / white + 0.1 / blue);
    double expected = 1.6 * density * 10 * 150e-6 / 0.8 + 10 * 0.060;

    assertThat(provisions().plan().squareMetres()).isCloseTo(1.6, within(1e-12));
    assertThat(provisions().plan().totalKilograms()).isCloseTo(expected, within(0.002));
    assertThat(paint(0).needed()).isCloseTo(0.75 * expected, within(0.002));
    assertThat(paint(1).needed()).isCloseTo(0.10 * expected, within(0.001));
    assertThat(paint(2).needed()).isCloseTo(0.15 * expected, within(0.001));
  }

  /** Blue: 250 g medium and 27.8 g paint, 2 % film loss, leave 272.2 g. */
  @Test
  void what_today_leaves_is_taken_off() {
    assertThat(paint(1).fromToday()).isCloseTo(0.98 * (0.250 + 0.0278), within(1e-4));
    assertThat(paint(1).toMake()).isCloseTo(paint(1).needed() - 0.2722, within(1e-3));
  }

  /**
   * Arithmetic: medium is 8/9 of wax and 1/9 of resin, 4 % of which stay behind; white is 8 % by
   * volume of pigment, blue 10 % by mass of paint; 2 % of each pot stay on it as film.
   */
  @Test
  void the_shelf_has_to_give_the_medium_inside_the_colours_too() {
    double density = 1 / (8 / 8.96 / 955 + 0.96 / 8.96 / 1080);
    double pigment = 0.08 * 4170 / (0.92 * density + 0.08 * 4170);
    double blue = paint(1).toMake() / 0.98;
    double white = paint(2).toMake() / 0.98;
    double medium =
        (paint(0).toMake() + 0.9 * blue + (1 - pigment) * white) / (1 - 0.04 / 9 - 0.02);

    assertThat(need("Beeswax, yellow").neededKilograms()).isCloseTo(8 * medium / 9, within(1e-3));
    assertThat(need("Damar resin").neededKilograms()).isCloseTo(medium / 9, within(1e-3));
    assertThat(need("Oil paint, ultramarine").neededKilograms())
        .isCloseTo(0.1 * blue, within(1e-6));
    assertThat(need("Beeswax, yellow").stockKilograms()).isZero();
  }

  /** 700 g of wax are not there for today: they are bought besides. */
  @Test
  void what_today_lacks_is_bought_too() throws IOException {
    Provisions lacking =
        classOf(json.replace("\"stock\": \"730 g\"", "\"stock\": \"30 g\""))
            .provisions()
            .value()
            .orElseThrow();
    Need before = need("Beeswax, yellow");
    Need after =
        lacking.classNeeds().stream()
            .filter(n -> n.material().equals("Beeswax, yellow"))
            .findFirst()
            .orElseThrow();

    assertThat(after.missingKilograms() - before.missingKilograms()).isCloseTo(0.7, within(1e-6));
  }

  private static Need need(String material) {
    return provisions().classNeeds().stream()
        .filter(n -> n.material().equals(material))
        .findFirst()
        .orElseThrow();
  }

  /**
   * Arithmetic: 2.55 kg wax in bags of 1 kg at 19.80, 90 g of missing resin at 9.75 for 250 g, 6.90
   * freight.
   */
  @Test
  void three_bags_of_wax_and_one_of_resin_are_bought_for_76_05() {
    assertThat(provisions().bought().value().orElseThrow())
        .hasToString("EUR 76.05"); // 59.40 + 9.75 + 6.90
    assertThat(provisions().toBuy().orElseThrow().isProvedOptimal()).isTrue();
    assertThat(run.out()).contains("3 × 19.80 EUR/kg", "1 × 9.75 EUR/250 g");
  }

  /** Arithmetic: (76.05 + 10 × 14 + 420) ÷ 10 = 63.61; × 1.2 = 76.33, up to 80; even at 8. */
  @Test
  void the_fee_covers_a_tenth_of_all_costs_with_a_fifth_on_top() {
    assertThat(run.out())
        .containsPattern("all costs, per head +EUR 63\\.6[01]")
        .containsPattern("fee, rounded up +EUR 80\\.00")
        .containsPattern("even at +8 who learn");
  }

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
  void what_the_reviews_found_and_could_not_assess_has_a_row_each_with_room_for_the_pen() {
    assertThat(row(page, "A pigment of a toxic metal")).contains("WARNING", "who prepares");
    assertThat(row(page, "Under 18 at all")).contains("NOT ASKED", "written consent");
    assertThat(row(page, "Molten wax on skin")).contains("burns at once");
    assertThat(row(page, "Hot metal")).contains("burns at a touch: up to 100 °C", "67 to 73 °C");
    assertThat(page.select("section:contains(Risk assessment) td.pen"))
        .hasSize(page.select("section:contains(Risk assessment) tbody tr").size());
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

  /** The class sheet of a changed file, which need not be free of blocks. */
  private static String written(String changed) throws IOException {
    assertThat(changed).isNotEqualTo(json);
    Run run = runOf(changed);
    assertThat(run.exitCode()).as(run.err()).isNotEqualTo(StudioSheet.BAD_INPUT);
    return Files.readString(folder.resolve("class.html"), StandardCharsets.UTF_8);
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
    assertThat(row(adults, "How many to a teacher")).contains("not found");
  }

  /** Today leaves some Medium 1:8, and only white, made of it, is in the class. */
  @Test
  void medium_left_today_is_not_made_again_inside_a_colour() throws IOException {
    ClassSheet colours = classOf(onlyWhite(json));
    Provisions makes = colours.provisions().value().orElseThrow();
    double medium = colours.ledger().left("Medium 1:8");
    double pigment = pigmentShare();
    double white = makes.paints().get(0).toMake() / 0.98;
    double pot = ((1 - pigment) * white - medium) / (1 - 0.04 / 9 - 0.02);

    assertThat(medium).isPositive();
    assertThat(makes.leftIntoPaints()).containsOnlyKeys("Medium 1:8");
    assertThat(makes.classNeeds().get(0).neededKilograms()).isCloseTo(8 * pot / 9, within(1e-3));
  }

  private static double pigmentShare() {
    double density = 1 / (8 / 8.96 / 955 + 0.96 / 8.96 / 1080);
    return 0.08 * 4170 / (0.92 * density + 0.08 * 4170);
  }

  private static String onlyWhite(String json) {
    return json.replaceFirst(
        "(?s)\"paints\": \\[\\s+\\{ \"recipe\": \"medium-8\".*?\\{ \"recipe\": \"white\","
            + " \"share\": \"15 %\"",
        "\"paints\": [ { \"recipe\": \"white\", \"share\": \"100 %\"");
  }

  @Test
  void loss_and_tins_that_are_not_stated_are_said_to_count_as_none() throws IOException {
    Run run = runOf(json.replace(", \"loss\": \"20 %\", \"leftInTins\": \"60 g\"", ""));

    assertThat(run.out().replaceAll("\\s+", " "))
        .contains("what is scraped off is not stated and counted as none")
        .contains("what stays in their tins is not stated and counted as none");
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
  void toxic_pigments_block_a_class_with_minors_whatever_their_age() throws IOException {
    Document sheet =
        changed(", \"youngest\": 16 }", " }", 0); // no toxic pigment is used, so it does not apply
    Document cobalt = Jsoup.parse(withCobalt());

    assertThat(row(sheet, "Under 18 and a toxic pigment")).contains("not found");
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
        .containsSequence("Risk assessment", "Set-up", "Circuit plan", "Age limits", "Allergens");
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
    assertThat(studio.select("section:contains(On the panel) svg")).isNotEmpty();
    assertThat(studio.select("section:contains(What to buy) svg")).isNotEmpty();
  }
}
