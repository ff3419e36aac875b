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
import org.jsoup.select.Elements;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.meltwright.examples.studio.day.Sheet;
import org.meltwright.examples.studio.file.StudioFile;
import org.meltwright.examples.studio.page.HtmlPage;
import org.meltwright.examples.studio.page.Page;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.examples.studio.page.TextPage;
import org.meltwright.examples.studio.sheet.SheetPage;

class StudioPagePicturesTest {

  private static Page page(String file) throws IOException {
    try (InputStream in = Files.newInputStream(Run.STUDIOS.resolve(file))) {
      return SheetPage.of(Sheet.of(StudioFile.read(in), Say.ENGLISH), StudioText.EDITION);
    }
  }

  @ParameterizedTest
  @CsvSource({"demo-studio.json, 10", "blocked-studio.json, 3"})
  void each_picture_has_role_title_description_and_a_text_below_it(String file, int pictures)
      throws IOException {
    Parser parser = Parser.htmlParser().setTrackErrors(50);
    Document document = Jsoup.parse(HtmlPage.of(page(file)), parser);

    assertThat(parser.getErrors()).isEmpty();
    assertThat(document.select("figure")).hasSize(pictures);
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
    List<String> cards = document.select("section.card").eachAttr("id");

    assertThat(document.select("[id]").eachAttr("id")).isNotEmpty().doesNotHaveDuplicates();
    assertThat(document.select("script, link, image, use, foreignObject, [src]")).isEmpty();
    assertThat(document.select("[href]").eachAttr("href"))
        .containsExactlyElementsOf(cards.stream().map(id -> "#" + id).toList());
    assertThat(document.select("svg [fill], svg [stroke], svg [style]")).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"demo-studio.json", "blocked-studio.json"})
  void the_day_has_one_scale_with_each_pot_and_each_recipe_that_may_be_made_its_costs(String file)
      throws IOException {
    Document document = Jsoup.parse(HtmlPage.of(page(file)));
    Elements scales = document.select("figure:has(title:contains(Temperatures of the day))");
    Elements cards = document.select("section.card");

    assertThat(scales).hasSize(1);
    assertThat(scales.select("line.pin")).hasSameSizeAs(cards);
    for (Element card : cards) {
      assertThat(scales.text()).contains(card.selectFirst("h2").text());
    }
    assertThat(document.select("title:contains(Own and ready-made per kilogram)"))
        .hasSameSizeAs(document.select("section.card:not(.blocked)"));
  }

  /** A blocked recipe keeps its weights to itself in pictures too. */
  @ParameterizedTest
  @ValueSource(strings = "blocked-studio.json")
  void pictures_that_show_a_blocked_recipe_show_no_weights(String file) throws IOException {
    Document document = Jsoup.parse(HtmlPage.of(page(file)));

    assertThat(document.select("section.blocked figure, section.blocked .weights")).isEmpty();
    assertThat(document.select("section figure").text())
        .contains("Ivory black, far too strong")
        .doesNotContainPattern("\\d k?g\\b");
    assertThat(document.select("details:contains(what melts in it)").text())
        .contains("Ivory black, far too strong: what melts in it")
        .doesNotContainPattern("\\d k?g\\b");
  }

  @ParameterizedTest
  @ValueSource(strings = "demo-studio.json")
  void the_printed_sheet_says_what_melts_and_does_not_repeat_costs(String file) throws IOException {
    assertThat(TextPage.of(page(file)))
        .containsPattern("Beeswax, yellow +melts 62 to 65 °C, capillary range")
        .doesNotContain("Per kilogram: own", "Medium 1:8: wax 88.0 °C");
  }
}
