// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.examples.studio.day.Sheet;
import org.meltwright.examples.studio.page.HtmlPage;
import org.meltwright.examples.studio.sheet.ClassSheetPage;
import org.meltwright.examples.studio.sheet.SheetPage;

/** What the review of a job says of its temperatures, in print and on the page. */
class ReviewNotesTest {

  private static final String AT_LEAST = "at least 95.0 °C; how far it rises above is not known";

  private static StudioText wax(String plate) {
    return new StudioText()
        .shelf("wax", "beeswax-yellow")
        .alone("plain", "wax")
        .job("plain")
        .classDay("plain")
        .plate(plate);
  }

  private static Sheet sheet(String plate) throws IOException {
    return wax(plate).sheet(MaterialCatalogue.standard());
  }

  private static String html(Sheet sheet) {
    return Jsoup.parse(HtmlPage.of(SheetPage.of(sheet, StudioText.EDITION))).text();
  }

  private static String classSheet(Sheet sheet) {
    return Jsoup.parse(
            HtmlPage.forPaper(
                ClassSheetPage.of(sheet, sheet.forClass().orElseThrow(), StudioText.EDITION)))
        .text();
  }

  /** A plate whose overshoot nobody stated is as hot as it is set to, or hotter. */
  @Test
  void a_floor_of_which_the_overshoot_is_not_stated_is_a_lower_bound_wherever_it_is_shown()
      throws IOException {
    Sheet sheet = sheet("\"kind\": \"hot-plate\", \"setPoint\": \"95 °C\"");

    assertThat(StudioText.print(sheet)).contains("floor of the pot " + AT_LEAST);
    assertThat(html(sheet))
        .contains("floor of the pot " + AT_LEAST + " working window") // on the card
        .contains("floor of the pot " + AT_LEAST + "; working window"); // below the picture
    for (String shown : List.of(StudioText.print(sheet), html(sheet), classSheet(sheet))) {
      assertThat(shown)
          .contains("It is " + AT_LEAST + ". What lies on the floor") // beside the finding
          .doesNotContain("floor of the pot 95.0 °C");
    }
  }

  @Test
  void a_floor_of_which_the_overshoot_is_stated_is_shown_as_known() throws IOException {
    Sheet sheet = sheet("\"kind\": \"hot-plate\", \"setPoint\": \"90 °C\", \"overshoot\": \"5 K\"");

    assertThat(StudioText.print(sheet))
        .contains("floor of the pot 95.0 °C / 203.0 °F")
        .contains("The pot floor rises to 95.0 °C (203.0 °F)")
        .doesNotContain("how far it rises above");
  }

  /** On a palette the hotter of surface and reading counts; the file's reading is shown too. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          "overshoot": "5 K" | 90.0 °C / 194.0 °F, set point plus overshoot of the palette, not measured
          "power": "900 W" | 85.0 °C / 185.0 °F, at least the set point; the overshoot is not stated
          """)
  void a_reading_that_does_not_bind_is_shown_beside_what_does(String field, String bound)
      throws IOException {
    Sheet sheet = sheet("\"kind\": \"heated-palette\", \"setPoint\": \"85 °C\", " + field);
    String shown = "read in the wax 80.0 °C / 176.0 °F; not what the review goes by";

    assertThat(StudioText.print(sheet)).contains(shown);
    assertThat(html(sheet)).contains(shown);
    assertThat(classSheet(sheet))
        .contains("is to show 80.0 °C / 176.0 °F; the review goes by " + bound + ".");
  }

  @Test
  void a_reading_that_binds_is_shown_once() throws IOException {
    Sheet sheet = sheet("\"kind\": \"hot-plate\", \"setPoint\": \"85 °C\", \"overshoot\": \"5 K\"");

    assertThat(StudioText.print(sheet))
        .contains("wax 80.0 °C / 176.0 °F, measured in the liquid")
        .doesNotContain("read in the wax");
    assertThat(classSheet(sheet))
        .contains("is to show 80.0 °C / 176.0 °F.")
        .doesNotContain("the review goes by");
  }

  /** On a palette set lower than the wax was read, the reading is the hotter one. */
  @Test
  void a_reading_hotter_than_the_surface_binds_and_is_shown_once() throws IOException {
    Sheet sheet =
        sheet("\"kind\": \"heated-palette\", \"setPoint\": \"70 °C\", \"overshoot\": \"5 K\"");

    assertThat(StudioText.print(sheet))
        .contains("wax 80.0 °C / 176.0 °F, measured in the liquid; the surface of the palette")
        .doesNotContain("read in the wax");
  }
}
