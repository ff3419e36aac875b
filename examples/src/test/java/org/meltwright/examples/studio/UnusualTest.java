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

/** A slip of the hand is asked about on top of the sheet, and blocks nothing. */
class UnusualTest {

  @TempDir Path folder;

  private Run run(String json, String language) throws IOException {
    Path file = Files.writeString(folder.resolve("studio.json"), json, StandardCharsets.UTF_8);
    return Run.of(
        "--language", language, "--page", folder.resolve("page.html").toString(), file.toString());
  }

  private static String demo() throws IOException {
    return Files.readString(Run.STUDIOS.resolve("demo-studio.json"), StandardCharsets.UTF_8);
  }

  /** What was changed, into what, whose figure it is, and what was probably meant. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          19.80 EUR/1 kg     | 1420 EUR/1 kg       | wax                           | Was 14.2 EUR/kg meant?
          1:6 resin:white-wax | 6:1 resin:white-wax | Firm medium 1:6               | Was the ratio the other way round, 14.3 % resin meant?
          "film": "150 µm"   | "film": "200 mm"    | Wax on wood, a first afternoon | Was 200 µm meant?
          "cup": "103.5 ml"  | "cup": "103.5 l"    | muffin                        | Usual is 5 ml to 500 ml
          """)
  void a_slip_is_asked_about_once_with_what_was_meant(
      String from, String to, String whose, String meant) throws IOException {
    assertThat(demo()).contains(from);
    String sheet = run(demo().replace(from, to), "en").out().replaceAll("\\s+", " ");

    assertThat(sheet).containsOnlyOnce("UNUSUAL " + whose + ": please look again.");
    assertThat(sheet).contains(meant);
    assertThat(sheet.split("UNUSUAL")).hasSize(2);
  }

  @Test
  void a_price_among_others_is_held_against_those_that_are_no_slips() throws IOException {
    String sheet =
        run(demo().replace("19.80 EUR/1 kg", "1420 EUR/1 kg"), "de").out().replaceAll("\\s+", " ");

    assertThat(sheet)
        .containsOnlyOnce("UNGEWÖHNLICH wax: Bitte noch einmal ansehen.")
        .contains("War 14,2 EUR/kg gemeint?");
  }

  @Test
  void what_is_usual_is_not_spoken_of() throws IOException {
    assertThat(run(demo(), "en").out()).doesNotContain("UNUSUAL");
  }
}
