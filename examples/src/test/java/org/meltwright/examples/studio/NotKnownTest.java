// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.meltwright.core.material.DefinedTemperature;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.MaterialRole;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.Sourced;
import org.meltwright.examples.studio.day.JobSheet;
import org.meltwright.examples.studio.day.NotKnown;
import org.meltwright.examples.studio.day.Provisions;
import org.meltwright.examples.studio.day.Sheet;
import org.meltwright.examples.studio.page.HtmlPage;
import org.meltwright.examples.studio.page.Phrase;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.examples.studio.page.TextPage;
import org.meltwright.examples.studio.sheet.ClassSheetPage;
import org.meltwright.examples.studio.sheet.SheetPage;

/** What cannot be worked out is "not known" in its place, with the reason and what to do. */
class NotKnownTest {

  /** Materials with as few figures as the tests need; all of it is invented. */
  private static final MaterialCatalogue CATALOGUE =
      MaterialCatalogue.standard()
          .with(
              material("no-melt", "Hidden wax").figure(PropertyKey.MELTING_RANGE, range()).build())
          .with(
              material("cold-only", "Pressed wax")
                  .figure(PropertyKey.MELTING_RANGE, range())
                  .figure(
                      PropertyKey.SOLID_DENSITY,
                      Sourced.of(
                          PropertyKey.SOLID_DENSITY.parse("0.93 g/ml"),
                          Source.USER,
                          Knowledge.READ))
                  .build())
          .with(material("nothing", "Riddle wax").build())
          .with(
              Material.builder("dust")
                  .names("Grey dust", "Grauer Staub")
                  .family(MaterialFamily.PIGMENT, MaterialRole.COLOURANT)
                  .build());

  private static Material.Builder material(String id, String name) {
    return Material.builder(id).names(name, name).family(MaterialFamily.WAX, MaterialRole.BASE);
  }

  private static Sourced<DefinedTemperature> range() {
    return Sourced.of(
        PropertyKey.MELTING_RANGE.parse("60 to 64 °C, capillary-range"),
        Source.USER,
        Knowledge.READ);
  }

  private static StudioText studio() {
    return new StudioText().shelf("wax", "beeswax-yellow");
  }

  private static Sheet sheet(StudioText studio) throws IOException {
    return studio.sheet(CATALOGUE);
  }

  private static String print(StudioText studio) throws IOException {
    return StudioText.print(sheet(studio));
  }

  private static String classSheet(StudioText studio) throws IOException {
    Sheet sheet = sheet(studio);
    String html =
        HtmlPage.forPaper(
            ClassSheetPage.of(sheet, sheet.forClass().orElseThrow(), StudioText.EDITION));
    return Jsoup.parse(html).text();
  }

  private static StudioText hidden() {
    return studio().shelf("it", "no-melt").share("soft", "it", "25 %", "wax");
  }

  @Test
  void a_pot_of_unknown_density_is_weighed_and_costed_and_told_how_to_fill() throws IOException {
    String print = print(hidden().job("soft"));

    assertThat(print)
        .contains(
            "how full the pot is not known: the catalogue holds no liquid density of Hidden wax")
        .contains(
            "NOT KNOWN How full the pot is: the catalogue holds no liquid density of Hidden wax.")
        .contains("State a cast with its meltDensity: weigh a full cup of the melt")
        .contains("two thirds at most, hot, by eye")
        .contains("Hidden wax 75.0 g", "Beeswax, yellow 225.0 g", "Hidden wax 25.0 % 25.0 %")
        .contains("Hidden wax 75.0 g EUR 1.50")
        .doesNotContain("How full the vessel is, hot, is not stated");
  }

  @Test
  void a_pot_of_unknown_fill_ranks_as_not_assessed_at_a_glance() throws IOException {
    Sheet sheet = sheet(studio().alone("plain", "wax").job("plain"));

    assertThat(StudioText.print(sheet)).contains("plain none 300.0 g");
    assertThat(print(hidden().job("soft"))).contains("soft not assessed 300.0 g");
  }

  @Test
  void cakes_of_unknown_density_are_not_known_and_the_weights_are() throws IOException {
    String print = print(hidden().job("soft", "\"total\": \"300 g\"", StudioText.CAST));

    assertThat(print)
        .contains("Hidden wax 75.0 g")
        .contains("whole cakes not known each cake not known")
        .contains("room in the pot not known")
        .contains("NOT KNOWN The cakes: the catalogue holds no liquid density of Hidden wax.")
        .contains("State the meltDensity of its cast: weigh a full cup")
        .contains("own, per kilogram net EUR")
        .doesNotContain("own, per whole cake");
  }

  /** Arithmetic: cups of 30 ml at 80 % and 0.85 g/ml are 20.4 g; 300 g are 14 and 14.4 g over. */
  @Test
  void a_stated_melt_density_makes_cakes_and_room_known_and_the_shrinkage_stays_open()
      throws IOException {
    Sheet sheet = sheet(hidden().job("soft", "\"total\": \"300 g\"", StudioText.CAST_MEASURED));
    JobSheet job = sheet.jobs().get(0);

    assertThat(job.pot().room().value().orElseThrow().highestFillLevel())
        .isCloseTo(0.3 / 850 / 0.002, within(1e-12));
    assertThat(StudioText.print(sheet))
        .contains("whole cakes 14 each cake 20.4 g last part cake 14 g")
        .contains("volume lost in cooling not known room in the pot at most 18 % full")
        .doesNotContain("how full the pot is");
  }

  /** Nobody knows what eight cakes weigh, so nothing is weighed, costed or counted. */
  @Test
  void a_number_of_cakes_of_unknown_density_leaves_its_amount_open() throws IOException {
    StudioText studio =
        hidden()
            .share("tinted", "soft", "90 %", "wax")
            .job("soft", "\"cakes\": 8", StudioText.CAST)
            .job("tinted")
            .classDay("soft");
    Sheet sheet = sheet(studio);
    String print = StudioText.print(sheet);

    assertThat(sheet.jobs().get(0).batch()).isEmpty();
    assertThat(sheet.isBlocked()).isFalse();
    assertThat(print)
        .contains("soft not assessed not known not known not known not known no offer")
        .contains("NOT KNOWN How much is made of soft: what it takes from the shelf is not counted")
        .contains("Beeswax, yellow 2000.0 g 30.0 g 1970.0 g")
        .contains("soft 0.0 g not known 270.0 g not known")
        .contains("how full the pot is not known: how much goes into it is not known")
        .contains("state it as meltDensity of the cast")
        .contains("weights, cakes and cost not known: the catalogue holds no liquid density")
        .doesNotContain("SHORT soft");
    assertThat(print.split(" What to make ")).hasSize(1); // the class needs the solid density
  }

  /** What a job of unknown amount leaves is no zero that looks worked out. */
  @Test
  void a_class_counts_what_is_not_known_of_today_as_none_and_says_so() throws IOException {
    assertThat(print(cold().job("plain").classDay("plain")))
        .contains("is what today's recipes leave, of soft not known and counted as none")
        .contains("What to make");
  }

  /** Arithmetic: a tenth stays on the pot, so 1/0.9 of what is needed is weighed in. */
  @Test
  void a_class_counts_the_film_of_a_job_of_unknown_amount() throws IOException {
    Provisions provisions =
        sheet(cold().classDay("soft"))
            .forClass()
            .flatMap(c -> c.provisions().value())
            .orElseThrow();

    assertThat(provisions.classNeeds().get(0).neededKilograms())
        .isCloseTo(provisions.plan().totalKilograms() * 0.75 / 0.9, within(1e-9));
  }

  /** Cakes of a wax of which the cold density is known alone. */
  private static StudioText cold() {
    return studio()
        .shelf("it", "cold-only")
        .share("soft", "it", "25 %", "wax")
        .alone("plain", "wax")
        .job("soft", "\"cakes\": 8", StudioText.CAST, "\"filmLoss\": \"10 %\"");
  }

  @Test
  void shares_by_volume_of_an_unknown_density_are_not_known_and_the_weights_are()
      throws IOException {
    String print =
        print(studio().shelf("it", "dust").share("grey", "it", "10 %", "wax").job("grey"));

    assertThat(print)
        .contains("Grey dust 30.0 g")
        .contains("% not known not known Beeswax, yellow 90.0 % 90.0 % not known not known")
        .contains(
            "NOT KNOWN The shares by volume: the catalogue holds no solid density of Grey dust.");
  }

  /** The review goes on with a guess that it names; no number rests on it. */
  @Test
  void a_recipe_by_volume_of_an_unknown_density_is_reviewed_and_not_weighed() throws IOException {
    StudioText studio =
        studio()
            .shelf("it", "dust")
            .share("grey", "it", "8 % by volume", "wax")
            .share("pale", "grey", "50 %", "wax")
            .job("grey")
            .job("pale")
            .brushing("pale");
    Sheet sheet = sheet(studio);
    String print = StudioText.print(sheet);
    String chapters =
        print.substring(0, print.indexOf(" For all pots "))
            + print.substring(print.indexOf(" grey: what"), print.indexOf(" On the panel -"));

    assertThat(sheet.jobs()).allMatch(job -> job.batch().isEmpty() && !job.isBlocked());
    assertThat(sheet.jobs().get(0).review().finding("dry-powder")).isPresent();
    assertThat(print)
        .contains(
            "NOT KNOWN The shares by mass of grey: the catalogue holds no solid density of Grey")
        .contains(
            "NOT KNOWN The shares by mass of pale: the catalogue holds no solid density of Grey")
        .contains("The review counts it as heavy as water. State its share by mass.")
        .contains("weights, cakes and cost not known: the catalogue holds no solid density of Grey")
        .contains("On the panel ------------ NOT KNOWN The shares by mass of pale");
    assertThat(chapters).doesNotContainPattern("\\d g\\b").doesNotContain("EUR");
  }

  @Test
  void a_wax_of_unknown_melting_is_weighed_without_window_brushing_and_electricity()
      throws IOException {
    StudioText studio =
        studio().shelf("it", "nothing").share("soft", "it", "25 %", "wax").job("soft");
    Sheet sheet = sheet(studio.brushing("soft"));

    assertThat(sheet.jobs().get(0).window()).isEmpty();
    assertThat(StudioText.print(sheet))
        .contains("not known: the catalogue holds no melting range of Riddle wax")
        .contains("NOT KNOWN The electricity to melt it: the catalogue holds no melting range of")
        .contains("It is not in the cost; read it off a meter and add it.")
        .contains("Riddle wax 75.0 g EUR 1.50 ")
        .contains("Together 300.0 g EUR 6.00")
        .contains("NOT KNOWN How long soft can be brushed: the catalogue holds no melting range of")
        .doesNotContain("Electricity to melt EUR", "time until half of it is set");
    assertThat(HtmlPage.of(SheetPage.of(sheet, StudioText.EDITION)))
        .contains("working window unknown");
  }

  @Test
  void a_mix_in_which_nothing_melts_says_so() throws IOException {
    assertThat(
            print(
                studio().shelf("it", "chalk").alone("chalk", "it").job("chalk").brushing("chalk")))
        .contains("not known: nothing in it melts")
        .contains("NOT KNOWN How long chalk can be brushed: nothing in it melts.");
  }

  @Test
  void oil_in_a_paint_of_which_nothing_is_stated_is_not_known() throws IOException {
    StudioText studio =
        studio().shelf("it", "oil-paint-water-mixable").share("red", "it", "15 %", "wax");

    assertThat(print(studio.job("red")))
        .contains("oil paint in the mix, by mass 15.0 %")
        .contains(
            "free oil in the mix, by mass not known: what Oil paint, water-mixable is made of")
        .contains("NOTICE Oil paint makes up 15.0 % of the mix");
  }

  @Test
  void a_material_without_a_price_is_weighed_and_what_it_costs_is_not_known() throws IOException {
    StudioText studio =
        new StudioText().unpriced("wax", "beeswax-yellow").alone("plain", "wax").job("plain");
    Sheet sheet = sheet(studio);

    assertThat(sheet.isBlocked()).isFalse();
    assertThat(StudioText.print(sheet))
        .contains("plain none 300.0 g 300.0 g none not known no offer")
        .contains("Beeswax, yellow 300.0 g")
        .contains("NOT KNOWN What it costs: no package of Beeswax, yellow is stated.")
        .contains(
            "State its packages on the shelf, each with its price, such as \"19.80 EUR/1 kg\".")
        .doesNotContain("own, per kilogram net EUR");
  }

  /** Arithmetic: 1.28 m² in ten layers of 150 µm at 0.955 g/ml are 1.83 kg; 1.7 kg are there. */
  @Test
  void a_class_that_has_to_buy_what_has_no_price_knows_what_is_missing_but_no_cost()
      throws IOException {
    StudioText studio =
        new StudioText()
            .unpriced("wax", "beeswax-yellow")
            .alone("plain", "wax")
            .alone("spare", "wax")
            .job("spare")
            .classDay("plain");

    assertThat(print(studio))
        .contains("Beeswax, yellow 1833.6 g 1700.0 g 133.6 g")
        .contains(
            "NOT KNOWN Which packages to buy, and what they cost: no package of Beeswax, yellow")
        .contains("bought, per head not known fee, rounded up not known")
        .doesNotContain("Nothing has to be bought");
    assertThat(classSheet(studio))
        .contains("Which packages to buy, and what they cost: no package");
  }

  /** Nothing can be said of grams per area; the risks can. */
  @Test
  void a_class_of_a_paint_of_unknown_density_is_assessed_and_not_planned() throws IOException {
    StudioText studio =
        studio()
            .shelf("it", "dust")
            .share("grey", "it", "10 %", "wax")
            .job("grey")
            .classDay("grey");

    assertThat(print(studio))
        .contains(
            "NOT KNOWN What the class uses, and so what to make and buy: the catalogue holds no")
        .contains("Paint one panel, weigh it before and after, and multiply.")
        .contains("to be painted 1.28 m²")
        .doesNotContain("Cost per head", "still to make");
    assertThat(classSheet(studio))
        .contains(
            "Not known What the class uses, and so what to make and buy: the catalogue holds no")
        .contains("grey: enough is ready, made before class; how much is not known.")
        .contains("Risk assessment", "Pigment is handled as dry powder");
  }

  @Test
  void a_class_sheet_names_the_pots_of_today_that_are_not_known() throws IOException {
    assertThat(classSheet(hidden().job("soft").alone("plain", "wax").classDay("plain")))
        .contains(
            "How full the pot is, soft: the catalogue holds no liquid density of Hidden wax.");
    assertThat(classSheet(studio().alone("plain", "wax").job("plain").classDay("plain")))
        .doesNotContain("Not known");
  }

  /** What must not be heated needs no advice on how to measure it. */
  @Test
  void a_blocked_pot_says_what_is_not_known_and_gives_no_advice_on_it() throws IOException {
    StudioText studio =
        studio()
            .shelf("it", "acrylic-dispersion")
            .share("thick", "it", "10 %", "wax")
            .job("thick", "\"total\": \"300 g\"", StudioText.CAST)
            .job("thick", "\"cakes\": 8", StudioText.CAST)
            .classDay("thick");
    Sheet sheet = sheet(studio);
    String print = StudioText.print(sheet);

    assertThat(sheet.isBlocked()).isTrue();
    assertThat(print)
        .contains("how full the pot is not known: the catalogue holds no liquid density of Acrylic")
        .contains("how full the pot is not known: how much goes into it is not known")
        .contains("DANGER · BLOCKED The mix holds a polymer dispersed in water")
        .contains("WITHHELD")
        .doesNotContain("meltDensity", "What to weigh", "NOT KNOWN");
    assertThat(classSheet(studio)).contains("WITHHELD").doesNotContain("meltDensity", "Not known");
  }

  @Test
  void a_slip_beside_a_figure_that_is_missing_is_the_only_problem(@TempDir Path folder)
      throws IOException {
    String json =
        studio()
            .shelf("it", "acrylic-dispersion")
            .share("thick", "it", "10 %", "wax")
            .job("thick", "\"total\": \"300 xyz\"")
            .brushing("thick")
            .json();
    Path file = Files.writeString(folder.resolve("s.json"), json, StandardCharsets.UTF_8);
    Run run = Run.of("--page", folder.resolve("s.html").toString(), file.toString());

    assertThat(run.exitCode()).isEqualTo(StudioSheet.BAD_INPUT);
    assertThat(run.err()).startsWith("1 problem in ").contains("/today/0/make/total");
  }

  @Test
  void what_the_guide_shows_is_what_is_printed() throws IOException {
    String guide =
        Files.readString(
            Run.STUDIOS.resolve("../../../../docs/guide/your-studio-file.md"),
            StandardCharsets.UTF_8);
    String shown = guide.substring(guide.indexOf("  NOT KNOWN  "));
    StudioText studio = studio().shelf("it", "microcrystalline");

    assertThat(
            TextPage.of(
                SheetPage.of(
                    sheet(studio.share("soft", "it", "20 %", "wax").job("soft")),
                    StudioText.EDITION)))
        .contains("\n" + shown.substring(0, shown.indexOf("```")));
  }

  @Test
  void several_materials_are_named_together() {
    List<Material> both = List.of(CATALOGUE.require("dust"), CATALOGUE.require("no-melt"));

    assertThat(Say.ENGLISH.words(NotKnown.price(Phrase.of("not-known.cost"), both).why()))
        .isEqualTo("no package of Grey dust; Hidden wax is stated");
  }
}
