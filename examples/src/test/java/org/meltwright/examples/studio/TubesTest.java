// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.meltwright.core.material.Material;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.examples.studio.day.ShelfItem;
import org.meltwright.examples.studio.file.StudioFile;

/** Tubes are sold by volume: stock and price in ml, counted with a density that is named. */
class TubesTest {

  private static final double TUBE = 37e-6;

  @TempDir Path folder;

  private static String demo() throws IOException {
    return Files.readString(Run.STUDIOS.resolve("demo-studio.json"), StandardCharsets.UTF_8);
  }

  /** The blue tube by volume, with something more in its entry. */
  private static String byVolume(String more) throws IOException {
    String json = demo();
    int at = json.indexOf("\"id\": \"blue-tube\"");
    int end = json.indexOf('}', at);
    String entry =
        json.substring(at, end)
            .replaceFirst("\"stock\": \"[^\"]*\"", "\"stock\": \"37 ml\"" + more)
            .replaceFirst("\"packages\": \\[[^\\]]*\\]", "\"packages\": [ \"6.90 EUR/37 ml\" ]");
    return json.substring(0, at) + entry + json.substring(end);
  }

  private static ShelfItem tube(String json) throws IOException {
    return StudioFile.read(new ByteArrayInputStream(json.getBytes(StandardCharsets.UTF_8)))
        .shelf()
        .stream()
        .filter(item -> item.id().equals("blue-tube"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void a_tube_counts_with_the_density_that_is_stated() throws IOException {
    ShelfItem tube = tube(byVolume(", \"density\": \"1.6 g/ml\""));

    assertThat(tube.stockKilograms()).isCloseTo(0.0592, within(1e-12));
    assertThat(tube.price().orElseThrow().perKilogramRounded().getAmount())
        .isEqualByComparingTo("116.55"); // 6.90 EUR by 59.2 g
    assertThat(tube.byVolume()).allMatch(volume -> volume.isStated());
  }

  /** No more is taken to be there, and a kilogram to be no cheaper, than it is. */
  @Test
  void a_tube_without_a_density_counts_with_the_low_end_of_the_catalogue() throws IOException {
    ShelfItem tube = tube(byVolume(""));
    Material paint = tube.material();
    double low = DensityBasis.SOLID.find(paint).orElseThrow().lowSi();

    assertThat(tube.stockKilograms()).isCloseTo(TUBE * low, within(1e-12));
    assertThat(tube.byVolume()).hasSize(2).noneMatch(volume -> volume.isStated());
  }

  @Test
  void the_sheet_says_with_which_density_a_volume_counts() throws IOException {
    Path file =
        Files.writeString(folder.resolve("tubes.json"), byVolume(""), StandardCharsets.UTF_8);
    Run run = Run.of("--page", folder.resolve("tubes.html").toString(), file.toString());

    assertThat(run.out().replaceAll("\\s+", " "))
        .contains("37 ml counts as ", "the low end of what is known of its density");
  }

  /** What is used up is the very thing to buy. */
  @Test
  void an_entry_that_is_used_up_is_short() throws IOException {
    Path file =
        Files.writeString(
            folder.resolve("empty.json"),
            demo().replaceFirst("\"stock\": \"1.4 kg\"", "\"stock\": \"0 g\""),
            StandardCharsets.UTF_8);
    Run run = Run.of("--page", folder.resolve("empty.html").toString(), file.toString());

    assertThat(run.err()).isEmpty();
    assertThat(run.out()).contains("SHORT  Beeswax, bleached");
  }
}
