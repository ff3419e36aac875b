// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.joda.money.Money;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.parser.Parser;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.meltwright.core.batch.WeighingLine;
import org.meltwright.core.cost.CostLine;
import org.meltwright.core.source.Source;
import org.meltwright.core.thermal.heat.HeatDemand;
import org.meltwright.examples.studio.day.BatchSheet;
import org.meltwright.examples.studio.day.Known;
import org.meltwright.examples.studio.day.Sheet;
import org.meltwright.examples.studio.file.StudioFile;
import org.meltwright.examples.studio.page.Say;

class StudioSheetTest {

  @TempDir static Path folder;

  private static Path page;
  private static Run demo;
  private static Sheet sheet;

  @BeforeAll
  static void runTheDemo() throws IOException {
    page = folder.resolve("demo.html");
    Path file = Run.STUDIOS.resolve("demo-studio.json");
    demo = Run.of("--page", page.toString(), file.toString());
    try (InputStream in = Files.newInputStream(file)) {
      sheet = Sheet.of(StudioFile.read(in), Say.ENGLISH);
    }
  }

  private static BatchSheet job(int index) {
    return sheet.jobs().get(index).batch().orElseThrow();
  }

  private static HeatDemand electricity() {
    return job(0).electricity().flatMap(Known::value).orElseThrow();
  }

  private static List<BatchSheet> jobs() {
    return sheet.jobs().stream().flatMap(job -> job.batch().stream()).toList();
  }

  @Test
  void the_shipped_studio_file_is_not_blocked_and_the_program_exits_with_0() {
    assertThat(demo.err()).isEmpty();
    assertThat(demo.exitCode()).isZero();
  }

  /** Arithmetic: 730 g × 1/8. */
  @Test
  void wax_of_730_g_at_1_to_8_needs_91_25_g_resin_and_makes_821_25_g() {
    assertThat(job(0).batch().lines())
        .extracting(l -> l.massKilograms() * 1000)
        .satisfiesExactlyInAnyOrder(
            m -> assertThat(m).isCloseTo(91.25, within(1e-9)),
            m -> assertThat(m).isCloseTo(730, within(1e-9)));
    assertThat(job(0).batch().charge().massKilograms()).isCloseTo(0.82125, within(1e-12));
    assertThat(demo.working("Medium 1:8")).contains("91.250 g", "821.250 g");
  }

  /** Common practice: 4 % insolubles in the resin, 2 % film loss of the pot's content. */
  @Test
  void net_after_insolubles_and_film_is_801_g() {
    assertThat(job(0).batch().net().massKilograms()).isCloseTo(0.801, within(0.001));
  }

  /** Arithmetic: 103.5 ml × 80 % × 0.86 g/ml is 71.2 g. */
  @Test
  void cast_into_cups_of_103_5_ml_it_is_11_cakes_and_a_part_cake_of_18_g() {
    assertThat(job(0).casting().flatMap(Known::value).orElseThrow().wholeCakes()).isEqualTo(11);
    assertThat(job(0).casting().flatMap(Known::value).orElseThrow().partCakeKilograms())
        .isCloseTo(0.018, within(0.002));
    assertThat(demo.card("Medium 1:8"))
        .containsPattern("whole cakes +11\n")
        .containsPattern("last part cake +18 g\n");
  }

  @Test
  void what_to_measure_first_stands_beside_each_estimate_that_decides() {
    assertThat(words(demo.out()))
        .contains(
            "Weigh one panel before and after ten layers: how thick a stroke is decides two thirds"
                + " of this range.",
            "These shares do not add up to 100 %",
            "The melt's temperature is that on contact: a brush brings it there 10 to 20 K below"
                + " the pot's");
    assertThat(words(demo.working("Ultramarine from oil paint")))
        .contains(
            "Weigh a full cup of the melt, and the same cup full of cold water: the density of the"
                + " melt decides nearly all of this range.",
            "how much of the power reaches the pot decides");
  }

  /** In seconds, of the coolest melt on the coolest panel. */
  private static double firstOpenTime(Run run) {
    Matcher row = Pattern.compile(" 75\\.0 °C +([\\d.]+) s \\(").matcher(run.out());
    assertThat(row.find()).isTrue();
    return Double.parseDouble(row.group(1));
  }

  private static String words(String text) {
    return text.replaceAll("\\s+", " ");
  }

  @Test
  void ground_on_the_panel_takes_up_the_heat_first() throws IOException {
    String text = Files.readString(Run.STUDIOS.resolve("demo-studio.json"));
    String ground = "\"ground\": { \"of\": \"plaster-ground\", \"thickness\": \"0.5 mm\" }, ";
    Path file = folder.resolve("ground.json");
    Files.writeString(
        file,
        text.replace("\"air\": \"20 °C\", \"panels\"", ground + "\"air\": \"20 °C\", \"panels\""));
    Run run = Run.of("--page", folder.resolve("ground.html").toString(), file.toString());

    assertThat(words(run.out()))
        .contains("on wood of 10.0 mm with 0.500 mm of plaster ground in a still room");
    assertThat(firstOpenTime(run)).isLessThan(0.8 * firstOpenTime(demo));
    assertThat(words(demo.out())).doesNotContain("plaster ground in a still");
  }

  /** Arithmetic: 10 % of the mix is 250 g ÷ 9, not 25 g. */
  @Test
  void oil_paint_of_10_percent_of_the_mix_in_250_g_medium_is_27_8_g() {
    assertThat(demo.card("Ultramarine from oil paint"))
        .containsPattern("Oil paint, ultramarine +27\\.8 g");
  }

  @Test
  void each_line_is_a_multiple_of_its_interval_and_the_total_within_half_the_coarsest() {
    for (BatchSheet each : jobs()) {
      double coarsest = 0;
      for (WeighingLine line : each.weighing().lines()) {
        double interval = line.balance().intervalKilograms();
        double steps = line.rounded().printedKilograms() / interval;
        coarsest = Math.max(coarsest, interval);
        assertThat(steps).as(each.batch().toString()).isCloseTo(Math.rint(steps), within(1e-6));
      }
      assertThat(each.weighing().printedTotalKilograms())
          .as(each.batch().toString())
          .isCloseTo(each.weighing().exactTotalKilograms(), within(coarsest / 2 + 1e-12));
    }
  }

  @Test
  void the_lines_of_each_cost_add_up_to_the_total_to_the_cent() {
    for (BatchSheet each : jobs()) {
      List<Money> leaves =
          each.cost().value().orElseThrow().leaves().stream().map(CostLine::amount).toList();
      assertThat(Money.total(leaves)).isEqualTo(each.cost().value().orElseThrow().total());
    }
  }

  @Test
  void the_money_printed_on_a_chapter_adds_up_to_its_printed_total() {
    Matcher money = Pattern.compile("EUR (\\d+\\.\\d\\d)\n").matcher(costTable("Medium 1:8"));
    BigDecimal sum = BigDecimal.ZERO;
    BigDecimal last = BigDecimal.ZERO;
    while (money.find()) {
      sum = sum.add(last);
      last = new BigDecimal(money.group(1));
    }

    assertThat(last).isPositive().isEqualByComparingTo(sum);
  }

  private static String costTable(String title) {
    String chapter = demo.working(title);
    return chapter.substring(chapter.indexOf("\nCost\n"), chapter.indexOf("own, per kilogram"));
  }

  @Test
  void the_four_colours_show_own_and_ready_made_cost_side_by_side() {
    for (int i = 2; i < 6; i++) {
      assertThat(demo.working(job(i).batch().recipe().name()))
          .containsPattern("own, per kilogram net +EUR \\d")
          .containsPattern("ready-made, per kilogram +EUR \\d");
    }
  }

  @Test
  void the_awkward_paint_and_the_awkward_pigment_are_warned_of_and_not_blocked() {
    assertThat(demo.card("Ivory black from oil paint, strong"))
        .contains("CAUTION  Oil paint makes up 20.0 % of the mix");
    assertThat(demo.card("Cobalt blue from powder"))
        .contains("WARNING  A pigment of a toxic metal is handled as dry powder: Cobalt blue.")
        .contains("What to weigh");
  }

  @Test
  void eight_cakes_wanted_are_eight_cakes_made() {
    assertThat(job(5).casting().flatMap(Known::value).orElseThrow().wholeCakes()).isEqualTo(8);
  }

  @Test
  void what_another_recipe_made_leaves_no_insolubles_again() {
    assertThat(job(0).batch().insolublesKilograms()).isCloseTo(0.00365, within(1e-9));
    assertThat(job(2).batch().insolublesKilograms()).isZero();
  }

  @Test
  void every_source_mark_on_the_sheet_has_its_line_at_the_foot() {
    String body = demo.out().substring(0, demo.out().indexOf("\nSources\n"));
    String foot = demo.out().substring(demo.out().indexOf("\nSources\n"));
    Matcher mark = Pattern.compile("\\[(\\d+)]").matcher(body);
    int marks = 0;
    while (mark.find()) {
      assertThat(foot).contains("\n[" + mark.group(1) + "] ");
      marks++;
    }

    assertThat(marks).isGreaterThan(20);
  }

  @Test
  void the_last_line_says_where_the_page_was_written() {
    assertThat(demo.out().stripTrailing().lines().reduce((a, b) -> b).orElseThrow())
        .endsWith(page.toAbsolutePath().normalize().toString());
  }

  @Test
  void the_page_is_one_valid_self_contained_document() throws IOException {
    Parser parser = Parser.htmlParser().setTrackErrors(50);
    String html = Files.readString(page, StandardCharsets.UTF_8);
    Document document = Jsoup.parse(html, parser);

    assertThat(parser.getErrors()).isEmpty();
    assertThat(document.select("script, link, img[src], iframe")).isEmpty();
    assertThat(html).doesNotContain("http://", "https://");
    assertThat(document.select("section.card > h2").eachText()).startsWith("Medium 1:8").hasSize(6);
    assertThat(document.select("section:not(.card) > h2").eachText())
        .containsExactly("For all pots");
    assertThat(document.select("details > summary").eachText())
        .contains("On the panel", "Figures that this sheet rests on", "Sources")
        .hasSize(6 + 5);
  }

  @Test
  void a_blocked_recipe_shows_its_review_withholds_weights_and_exits_with_1() {
    Path file = Run.STUDIOS.resolve("blocked-studio.json");
    Run run = Run.of("--page", folder.resolve("blocked.html").toString(), file.toString());

    assertThat(run.exitCode()).isEqualTo(StudioSheet.BLOCKED);
    assertThat(run.out())
        .contains("NOT TODAY  Ivory black, far too strong: Oil paint makes up 30.0 %")
        .contains("Ivory black, far too strong: what melts in it");
    assertThat(run.card("Ivory black, far too strong"))
        .contains("BLOCKED: not to be made as planned", "· BLOCKED", "WITHHELD")
        .contains("withheld")
        .doesNotContain("What to weigh", "whole cakes")
        .doesNotContainPattern("\\d g\\b");
    assertThat(run.card("Medium 1:8")).contains("What to weigh", "whole cakes");
  }

  @Test
  void a_defect_of_ours_exits_with_70_and_says_what_to_report() {
    java.io.ByteArrayOutputStream err = new java.io.ByteArrayOutputStream();
    PrintStream broken =
        new PrintStream(java.io.OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8) {
          @Override
          public void print(String text) {
            throw new IllegalStateException("broken on purpose");
          }
        };

    int code =
        StudioSheet.run(
            broken,
            new PrintStream(err, true, StandardCharsets.UTF_8),
            "--page",
            folder.resolve("defect.html").toString(),
            Run.STUDIOS.resolve("demo-studio.json").toString());

    assertThat(code).isEqualTo(StudioSheet.DEFECT);
    assertThat(err.toString(StandardCharsets.UTF_8))
        .contains("Please report it", "broken on purpose", "Java ");
  }

  @Test
  void medium_that_today_lacks_is_named_with_what_is_missing() throws IOException {
    String json =
        Files.readString(Run.STUDIOS.resolve("demo-studio.json"), StandardCharsets.UTF_8)
            .replace(
                "{ \"ingredient\": \"wax\", \"mass\": \"730 g\" }", "{ \"total\": \"100 g\" }");
    Path file = Files.writeString(folder.resolve("short.json"), json, StandardCharsets.UTF_8);
    Run run = Run.of("--page", folder.resolve("short.html").toString(), file.toString());

    assertThat(run.exitCode()).isZero();
    assertThat(run.out()).contains("SHORT  Medium 1:8: today's recipes take ");
    assertThat(demo.out()).doesNotContain("SHORT");
  }

  @Test
  void material_that_the_shelf_lacks_is_named_with_what_is_missing() throws IOException {
    String json =
        Files.readString(Run.STUDIOS.resolve("demo-studio.json"), StandardCharsets.UTF_8)
            .replace("\"stock\": \"1.4 kg\"", "\"stock\": \"500 g\"");
    Path file = Files.writeString(folder.resolve("lack.json"), json, StandardCharsets.UTF_8);
    Run run = Run.of("--page", folder.resolve("lack.html").toString(), file.toString());

    assertThat(run.out())
        .contains("SHORT  Beeswax, bleached: today's recipes take 100 g more than is there.");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      nullValues = "-",
      textBlock =
          """
          -          | 2026-12-04 | 2026-12-04
          2026-12-04 | -          | 2026-12-04
          2026-12-03 | 2026-12-04 | 2026-12-04
          """)
  void the_day_of_the_sheet_is_the_one_asked_for_or_that_of_the_file(
      @Nullable String stated, @Nullable String asked, String day) throws IOException {
    String json = Files.readString(Run.STUDIOS.resolve("demo-studio.json"), StandardCharsets.UTF_8);
    if (stated != null) {
      json = json.replaceFirst("\\{", "{ \"date\": \"" + stated + "\",");
    }
    Path file = Files.writeString(folder.resolve("dated.json"), json, StandardCharsets.UTF_8);
    Path page = folder.resolve("dated.html");
    List<String> args = new ArrayList<>(List.of("--page", page.toString(), file.toString()));
    if (asked != null) {
      args.addAll(List.of("--date", asked));
    }

    assertThat(Run.of(args.toArray(String[]::new)).out()).startsWith("Studio sheet of " + day);
  }

  @Test
  void a_sheet_that_cannot_be_printed_to_its_end_says_so() {
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    PrintStream full =
        new PrintStream(
            new OutputStream() {
              @Override
              public void write(int b) throws IOException {
                throw new IOException("no space left");
              }
            },
            true,
            StandardCharsets.UTF_8);

    int code =
        StudioSheet.run(
            full,
            new PrintStream(err, true, StandardCharsets.UTF_8),
            "--page",
            folder.resolve("full.html").toString(),
            Run.STUDIOS.resolve("demo-studio.json").toString());

    assertThat(code).isEqualTo(StudioSheet.UNWRITABLE);
    assertThat(err.toString(StandardCharsets.UTF_8)).contains("could not be printed to its end");
  }

  @Test
  void an_absurd_number_of_cakes_overflows_the_pot_and_is_blocked() throws IOException {
    String json =
        Files.readString(Run.STUDIOS.resolve("demo-studio.json"), StandardCharsets.UTF_8)
            .replace("\"cakes\": 8", "\"cakes\": 80000000");
    Path file = Files.writeString(folder.resolve("many.json"), json, StandardCharsets.UTF_8);
    Run run = Run.of("--page", folder.resolve("many.html").toString(), file.toString());

    assertThat(run.exitCode()).isEqualTo(StudioSheet.BLOCKED);
    assertThat(run.card("Cobalt blue from powder")).contains("WITHHELD");
  }

  /** The resin's specific heat is assumed, the pan's is of a table: both stand at the foot. */
  @Test
  void the_electricity_cites_what_it_rests_on() {
    assertThat(electricity().sources()).extracting(Source::id).contains("vessel-specific-heats");
    assertThat(demo.working("Medium 1:8"))
        .containsPattern(
            "(?s)reaching the pot\\s+\\[\\d+];\\s+specific\\s+heats\\s+and\\s+heats\\s+of\\s+fusion\\s+\\[\\d+]");
    assertThat(demo.out().replaceAll("\\s+", " "))
        .contains(electricity().sources().stream().map(Source::citation).toList());
  }

  @Test
  void usage_is_printed_on_request_and_names_the_exit_codes() {
    Run run = Run.of("--help");

    assertThat(run.exitCode()).isZero();
    assertThat(run.out())
        .contains(
            "STUDIO_FILE",
            "--page",
            "--class-sheet",
            "--out",
            "--language",
            "0 done",
            "70 a defect of ours");
  }

  @Test
  void output_is_utf_8_in_the_c_locale_too() throws Exception {
    ProcessBuilder builder =
        new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-cp",
            System.getProperty("java.class.path"),
            StudioSheet.class.getName(),
            "--page",
            folder.resolve("c-locale.html").toString(),
            Run.STUDIOS.resolve("demo-studio.json").toString());
    builder.environment().put("LC_ALL", "C");
    builder.environment().remove("JAVA_TOOL_OPTIONS");
    Process process = builder.redirectError(ProcessBuilder.Redirect.DISCARD).start();
    byte[] bytes = process.getInputStream().readAllBytes();

    assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
    assertThat(process.exitValue()).isZero();
    assertThat(new String(bytes, StandardCharsets.UTF_8))
        .contains("88.0 °C / 190.4 °F")
        .doesNotContain("?C");
  }
}
