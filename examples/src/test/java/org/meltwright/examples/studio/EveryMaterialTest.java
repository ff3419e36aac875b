// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.mixture.DensityBasis;

/** Every material of the catalogue reaches its review, whatever else is known of it. */
class EveryMaterialTest {

  private static final MaterialCatalogue CATALOGUE = MaterialCatalogue.standard();

  private static final List<String> RECIPES = List.of("alone", "in wax", "by volume");

  /** How much is made, and how it is cast. */
  private enum Making {
    POURED("\"total\": \"300 g\"", "\"activeTime\": \"20 min\""),
    CAST("\"total\": \"300 g\"", StudioText.CAST),
    CAKES("\"cakes\": 8", StudioText.CAST),
    CAKES_MEASURED("\"cakes\": 8", StudioText.CAST_MEASURED);

    private final String make;
    private final String more;

    Making(String make, String more) {
      this.make = make;
      this.more = more;
    }
  }

  @TempDir Path folder;

  static Stream<String> materials() {
    return CATALOGUE.all().stream().map(Material::id);
  }

  /** A material alone, a tenth by mass and 8 % by volume, poured, cast and made by the cake. */
  private static StudioText studio(String material) {
    String wax = material.equals("beeswax-yellow") ? "beeswax-bleached" : "beeswax-yellow";
    StudioText studio =
        new StudioText()
            .shelf("wax", wax)
            .shelf("it", material)
            .alone("alone", "it")
            .share("in wax", "it", "10 %", "wax")
            .share("by volume", "it", "8 % by volume", "wax");
    for (String recipe : RECIPES) {
      for (Making making : Making.values()) {
        studio.job(recipe, making.make, making.more);
      }
    }
    return studio.brushing("alone").classDay("in wax", "by volume");
  }

  private Run run(StudioText studio) throws IOException {
    Path file = folder.resolve("studio.json");
    Files.writeString(file, studio.json(), StandardCharsets.UTF_8);
    return Run.of(
        "--page",
        folder.resolve("page.html").toString(),
        "--class-sheet",
        folder.resolve("class.html").toString(),
        file.toString());
  }

  @ParameterizedTest
  @MethodSource("materials")
  void no_figure_that_is_missing_keeps_a_review_from_running(String material) throws IOException {
    Run run = run(studio(material));
    List<String> jobs = chapters(run);

    assertThat(run.err()).isEmpty();
    assertThat(run.exitCode()).isEqualTo(run.out().contains("BLOCKED") ? 1 : 0);
    assertThat(folder.resolve("page.html")).content().contains("target, not above");
    assertThat(folder.resolve("class.html")).content().contains("Risk assessment");
    assertThat(jobs).hasSize(RECIPES.size() * Making.values().length);
    for (String recipe : RECIPES) {
      for (Making making : Making.values()) {
        String job = jobs.get(RECIPES.indexOf(recipe) * Making.values().length + making.ordinal());
        saysWhatIsKnown(job, CATALOGUE.require(material), recipe, making);
      }
    }
  }

  /** The card and the working of each job, each run of spaces one space. */
  private static List<String> chapters(Run run) {
    String name = "\n(?:" + String.join("|", RECIPES) + ")";
    String cards = run.out().split("\nFor all pots\n", 2)[0];
    String working = run.out().split("\nOn the panel\n", 2)[0].substring(cards.length());
    List<String> first = after(cards, name + "\n=+\n");
    List<String> second = after(working, name + ": [^\n]+\n-+\n");
    return IntStream.range(0, first.size()).mapToObj(i -> first.get(i) + second.get(i)).toList();
  }

  private static List<String> after(String text, String heading) {
    return Stream.of(text.split(heading)).skip(1).map(t -> t.replaceAll("\\s+", " ")).toList();
  }

  private static void saysWhatIsKnown(String job, Material it, String recipe, Making making) {
    String of = " of " + it.name(Locale.ENGLISH);
    boolean isHotKnown = DensityBasis.MELT.unknown(List.of(it)).isEmpty();
    boolean isColdKnown = DensityBasis.SOLID.unknown(List.of(it)).isEmpty();
    boolean isMixKnown = isColdKnown || !recipe.equals("by volume");
    boolean isMeasured = making == Making.CAKES_MEASURED;
    boolean isWeighed = isMixKnown && (isHotKnown || making != Making.CAKES);

    assertThat(job).contains("target, not above");
    assertThat(job.contains("how full the pot is not known"))
        .as(job)
        .isEqualTo(!isWeighed || !(isHotKnown || isMeasured));
    assertThat(job.contains("The review counts it as heavy as water"))
        .as(job)
        .isEqualTo(!isMixKnown);
    if (job.contains(" WITHHELD ")) {
      assertThat(job).doesNotContain("What to weigh");
      return;
    }
    assertThat(job.contains("In the order of weighing")).isEqualTo(isWeighed);
    assertThat(job.contains("weights, cakes and cost not known")).isEqualTo(!isWeighed);
    assertThat(job.contains("whole cakes not known"))
        .as(job)
        .isEqualTo(isWeighed && making == Making.CAST && !isHotKnown);
    boolean isHotMissed = isMixKnown && !isHotKnown && !isMeasured;
    boolean isColdMissed = !isColdKnown && (isWeighed || !isMixKnown);
    for (String property : List.of("liquid-density", "solid-density")) {
      assertThat(job.contains("no " + property.replace('-', ' ') + of))
          .as(job)
          .isEqualTo(
              (isHotMissed && DensityBasis.MELT.property(it).id().equals(property))
                  || (isColdMissed && DensityBasis.SOLID.property(it).id().equals(property)));
    }
  }

  /** What these say is found with no density, price or volume of theirs. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          acrylic-dispersion      | DANGER · BLOCKED The mix holds a polymer dispersed in water: Acrylic dispersion.
          acrylic-polymer         | BLOCKED
          oil-paint-water-mixable | CAUTION The mix holds water-mixable oil paint
          pigment-unspecified     | NOT ASSESSED Which pigment Pigment, not stated holds is not known
          microcrystalline        | What to weigh
          soy-wax                 | What to weigh
          paraffin                | What to weigh
          paraffin-52-54          | What to weigh
          paraffin-56-58          | What to weigh
          paraffin-60-62          | What to weigh
          """)
  void what_is_to_be_said_of_a_tenth_of_it_in_wax_is_said(String material, String said)
      throws IOException {
    Run run =
        run(
            new StudioText()
                .shelf("wax", "beeswax-yellow")
                .unpriced("it", material)
                .share("in wax", "it", "10 %", "wax")
                .job("in wax")
                .classDay("in wax"));

    assertThat(run.exitCode()).as(run.err()).isEqualTo(said.contains("BLOCKED") ? 1 : 0);
    assertThat(run.out().replaceAll("\\s+", " ")).contains(said);
    assertThat(run.out().contains("What to weigh")).isEqualTo(run.exitCode() == StudioSheet.DONE);
  }
}
