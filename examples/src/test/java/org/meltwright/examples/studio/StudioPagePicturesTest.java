// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.meltwright.examples.studio.page.HtmlPage;
import org.meltwright.examples.studio.page.Page;
import org.meltwright.examples.studio.page.TextPage;

class StudioPagePicturesTest {

  private static Page page(String file) throws IOException {
    try (InputStream in = Files.newInputStream(Run.STUDIOS.resolve(file))) {
      return SheetPage.of(Sheet.of(StudioFile.read(in)));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"demo-studio.json", "blocked-studio.json"})
  void each_picture_has_role_title_description_and_a_text_below_it(String file) throws IOException {
    Parser parser = Parser.htmlParser().setTrackErrors(50);
    Document document = Jsoup.parse(HtmlPage.of(page(file)), parser);

    assertThat(parser.getErrors()).isEmpty();
    assertThat(document.select("figure")).hasSizeGreaterThanOrEqualTo(4);
    for (Element figure : document.select("figure")) {
      Element svg = figure.selectFirst("> svg[role=img]");
      List<String> named = List.of(svg.attr("aria-labelledby").split(" ", -1));
      assertThat(named).hasSize(2);
      assertThat(svg.selectFirst("title").id()).isEqualTo(named.get(0));
      assertThat(svg.selectFirst("desc").id()).isEqualTo(named.get(1));
      assertThat(figure.selectFirst("> figcaption").text()).hasSizeGreaterThan(40);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"demo-studio.json", "blocked-studio.json"})
  void ids_are_unique_and_nothing_comes_from_elsewhere(String file) throws IOException {
    Document document = Jsoup.parse(HtmlPage.of(page(file)));

    assertThat(document.select("[id]").eachAttr("id")).isNotEmpty().doesNotHaveDuplicates();
    assertThat(document.select("script, link, image, use, foreignObject, a, [href], [src]"))
        .isEmpty();
    assertThat(document.select("svg [fill], svg [stroke], svg [style]")).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"demo-studio.json", "blocked-studio.json"})
  void each_recipe_has_its_temperatures_and_each_that_may_be_made_its_costs(String file)
      throws IOException {
    Document document = Jsoup.parse(HtmlPage.of(page(file)));

    for (Element section : document.select("section:has(h3:contains(Heating review))")) {
      boolean isBlocked = !section.select("aside:contains(WITHHELD)").isEmpty();
      assertThat(section.select("svg > title").eachText())
          .as(section.selectFirst("h2").text())
          .isEqualTo(
              isBlocked
                  ? List.of("Temperatures of the pot")
                  : List.of("Temperatures of the pot", "Own and ready-made per kilogram"));
    }
  }

  /** A blocked recipe keeps its weights to itself in pictures too. */
  @ParameterizedTest
  @ValueSource(strings = "blocked-studio.json")
  void pictures_of_a_blocked_recipe_show_no_weights(String file) throws IOException {
    Document document = Jsoup.parse(HtmlPage.of(page(file)));
    Element blocked = document.selectFirst("section:has(figure):has(aside:contains(WITHHELD))");

    assertThat(blocked.select("figure").text()).isNotBlank().doesNotContainPattern("\\d k?g\\b");
  }

  @ParameterizedTest
  @ValueSource(strings = "demo-studio.json")
  void the_printed_sheet_says_what_melts_and_does_not_repeat_costs(String file) throws IOException {
    assertThat(TextPage.of(page(file)))
        .contains("Beeswax, yellow: melts 62 to 65 °C")
        .doesNotContain("Per kilogram: own", "Wax: 88.0 °C");
  }
}
