// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What no printed sheet is without, read off the stylesheet; a browser is not needed. */
class PrintedSheetsTest {

  @TempDir static Path folder;

  private static Document page;
  private static String style;

  @BeforeAll
  static void writeTheDemo() throws IOException {
    Path file = folder.resolve("demo.html");
    Run.of("--page", file.toString(), Run.STUDIOS.resolve("demo-studio.json").toString());
    page = Jsoup.parse(Files.readString(file, StandardCharsets.UTF_8));
    style = page.select("style").html();
  }

  @Test
  void each_card_begins_a_sheet_of_its_own_that_has_its_name_and_gravest_word_on_each_page() {
    List<Element> cards = page.select("section.card");

    assertThat(cards).hasSize(6);
    for (int i = 0; i < cards.size(); i++) {
      Matcher sheet =
          Pattern.compile("@page sheet-" + i + " \\{ @top-left \\{ content: \"([^\"]*)\"")
              .matcher(style);
      assertThat(sheet.find()).isTrue();
      assertThat(unescaped(sheet.group(1)))
          .isEqualTo(
              cards.get(i).select("h2").text() + " · " + cards.get(i).select(".verdict").text());
      assertThat(style)
          .containsPattern("#card-" + (i + 1) + "(, [^{]*)? \\{ page: sheet-" + i + "; }");
      assertThat(cards.get(i).selectFirst("> .running").text())
          .contains("Atelier Wachsgrund", "demo-studio.json")
          .containsPattern("\\d{4}-\\d\\d-\\d\\d");
    }
  }

  private static String unescaped(String text) {
    return Pattern.compile("\\\\([0-9a-f]+) ")
        .matcher(text)
        .replaceAll(
            m -> Matcher.quoteReplacement(Character.toString(Integer.parseInt(m.group(1), 16))));
  }

  @Test
  void each_sheet_says_page_of_pages() {
    assertThat(style)
        .contains(
            "@bottom-right { content: \"Page \" counter(page) \" of \" counter(pages) \"\"; }");
  }

  @Test
  void every_warning_of_a_recipe_stands_on_its_card() {
    Element cobalt = page.selectFirst("section.card:has(h2:containsOwn(Cobalt blue))");

    assertThat(cobalt.select("aside strong").eachText()).containsExactly("WARNING", "NOTICE");
    assertThat(cobalt.selectFirst(".verdict").text()).startsWith("1 × WARNING, 1 × NOTICE");
  }

  /** A name cannot end the stylesheet or begin another element. */
  @Test
  void a_name_in_the_margin_is_text_whatever_it_holds() throws IOException {
    String wild = "Pot \\\"} </style><script>x</script> \\\\ end";
    String json =
        Files.readString(Run.STUDIOS.resolve("demo-studio.json"), StandardCharsets.UTF_8)
            .replace("\"name\": \"Cobalt blue from powder\"", "\"name\": \"" + wild + "\"");
    Path file = Files.writeString(folder.resolve("wild.json"), json, StandardCharsets.UTF_8);
    Path to = folder.resolve("wild.html");
    Run run = Run.of("--page", to.toString(), file.toString());
    Document document = Jsoup.parse(Files.readString(to, StandardCharsets.UTF_8));

    assertThat(run.exitCode()).as(run.err()).isZero();
    assertThat(document.select("script")).isEmpty();
    assertThat(document.select("style")).hasSize(1);
    assertThat(document.select("section.card h2").last().text())
        .isEqualTo("Pot \"} </style><script>x</script> \\ end");
  }

  @Test
  void weights_are_large_on_screen_and_paper() {
    assertThat(style)
        .contains(".weights .mass { font-size: 2rem;", ".weights .mass { font-size: 1.8rem;")
        .contains(".weights .mass { font-size: 20pt; }");
  }
}
