// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;
import org.meltwright.examples.studio.page.Block.Blanks;
import org.meltwright.examples.studio.page.Block.Checklist;
import org.meltwright.examples.studio.page.Block.Fact;
import org.meltwright.examples.studio.page.Block.Facts;
import org.meltwright.examples.studio.page.Block.Grid;
import org.meltwright.examples.studio.page.Block.Heading;
import org.meltwright.examples.studio.page.Block.Notice;
import org.meltwright.examples.studio.page.Block.Paragraph;
import org.meltwright.examples.studio.page.Block.Picture;
import org.meltwright.examples.studio.page.Block.Poster;
import org.meltwright.examples.studio.page.Block.Table;
import org.meltwright.examples.studio.page.Block.Tone;

class PageTest {

  private static Page page() {
    Page.Builder builder = Page.builder(Say.ENGLISH, "A <title> & more", "below it");
    String mark = builder.cite("A book, p. 3");
    return builder
        .add(new Heading(2, "Chapter"))
        .add(new Paragraph("Words with \"quotes\" " + mark))
        .add(new Facts(List.of(new Fact("mass", "1 g"))))
        .add(
            new Table(
                "t", List.of("a", "b"), List.of(List.of("x", "1"), List.of("sum", "10")), true))
        .add(new Notice(Tone.CARE, "CAUTION", "hot", List.of("Why: heat")))
        .build();
  }

  @Test
  void html_parses_without_an_error_and_needs_no_script_and_no_network() {
    Parser parser = Parser.htmlParser().setTrackErrors(50);
    Document document = Jsoup.parse(HtmlPage.of(page()), parser);

    assertThat(parser.getErrors()).isEmpty();
    assertThat(document.select("script, link, img, iframe, object")).isEmpty();
    assertThat(document.outerHtml()).doesNotContain("http:", "https:", "url(", "@import");
    assertThat(document.title()).isEqualTo("A <title> & more");
    assertThat(document.select("aside.care strong").text()).isEqualTo("CAUTION");
    assertThat(document.select("footer li").text()).isEqualTo("A book, p. 3");
  }

  @Test
  void html_has_rules_for_dark_screens_small_screens_and_paper() {
    assertThat(HtmlPage.of(page()))
        .contains("prefers-color-scheme: dark", "max-width: 34rem", "@media print", "size: A4");
  }

  @Test
  void text_lines_up_columns_and_numbers_the_sources() {
    assertThat(TextPage.of(page()))
        .contains("  x     1\n", "  sum  10\n", "CAUTION  hot", "[1] A book, p. 3");
  }

  @Test
  void text_stays_within_its_width() {
    Page wide = Page.builder(Say.ENGLISH, "t", "word ".repeat(80).strip()).build();

    assertThat(TextPage.of(wide).lines()).allMatch(line -> line.length() <= 96);
  }

  private static Page paper() {
    return Page.builder(Say.ENGLISH, "t", "s")
        .add(new Heading(2, "c"))
        .add(
            new Grid(
                "to be read", List.of("what", "how", "left"), List.of(List.of("a", "b <", ""))))
        .add(new Checklist(List.of("dry")))
        .add(new Blanks(List.of("Number")))
        .add(new Poster(List.of("Never use water.")))
        .build();
  }

  @Test
  void what_is_made_for_paper_has_boxes_to_tick_lines_to_fill_and_cells_for_the_pen() {
    Parser parser = Parser.htmlParser().setTrackErrors(50);
    Document document = Jsoup.parse(HtmlPage.forPaper(paper()), parser);

    assertThat(parser.getErrors()).isEmpty();
    assertThat(document.select("body.paper")).hasSize(1);
    assertThat(document.select(".ticks li").text()).isEqualTo("dry");
    assertThat(document.select(".blanks li").text()).isEqualTo("Number");
    assertThat(document.select(".poster p").text()).isEqualTo("Never use water.");
    assertThat(document.select(".grid td.pen")).hasSize(1);
    assertThat(TextPage.of(paper()))
        .contains("- a; how: b <; left: ____", "[ ] dry", "Number: ____", "! Never use water.");
  }

  @Test
  void a_grid_holds_its_width() {
    assertThatThrownBy(() -> new Grid("t", List.of("a"), List.of(List.of("x", "y"))))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void cite_gives_the_same_number_to_the_same_source() {
    Page.Builder builder = Page.builder(Say.ENGLISH, "t", "s");

    assertThat(builder.cite("a")).isEqualTo("[1]");
    assertThat(builder.cite("b")).isEqualTo("[2]");
    assertThat(builder.cite("a")).isEqualTo("[1]");
  }

  private static Picture picture(String words) {
    Svg.Builder svg = Svg.builder("T & t", "d", 100);
    return new Picture(svg.text("start", 0, 12, words).build(20), "says " + words);
  }

  @Test
  void pictures_are_numbered_and_their_words_escaped() {
    Page page = Page.builder(Say.ENGLISH, "t", "s").add(picture("<a>")).add(picture("<a>")).build();
    Document document = Jsoup.parse(HtmlPage.of(page));

    assertThat(document.select("svg > title").eachAttr("id"))
        .containsExactly("picture-1-title", "picture-2-title");
    assertThat(document.select("svg > text").eachText()).containsExactly("<a>", "<a>");
    assertThat(document.select("figcaption").eachText()).containsExactly("says <a>", "says <a>");
  }

  @Test
  void picture_after_facts_stands_beside_them_and_their_notices() {
    Page page =
        Page.builder(Say.ENGLISH, "t", "s")
            .add(new Facts(List.of(new Fact("mass", "1 g"))))
            .add(new Notice(Tone.CARE, "CAUTION", "hot", List.of()))
            .add(picture("a"))
            .build();
    Document document = Jsoup.parse(HtmlPage.of(page));

    assertThat(document.select(".pair > div > dl, .pair > div > aside, .pair > figure")).hasSize(3);
  }

  @Test
  void text_says_what_a_picture_shows_unless_it_stands_beside_its_numbers() {
    Page page =
        Page.builder(Say.ENGLISH, "t", "s")
            .add(picture("a"))
            .add(picture("b").besideItsNumbers())
            .build();

    assertThat(TextPage.of(page)).contains("  says a\n").doesNotContain("says b");
  }

  @Test
  void place_that_is_no_number_is_refused() {
    Svg.Builder svg = Svg.builder("t", "d", 100);

    assertThatIllegalArgumentException()
        .isThrownBy(() -> svg.line("grid", 0, 0, Double.POSITIVE_INFINITY, 0));
  }

  @Test
  void hatching_stays_within_its_rectangle() {
    String path = Svg.builder("t", "d", 99).hatching("h", 10, 20, 30, 8, 5).build(99).element("p");
    Matcher place = Pattern.compile("[ML](\\S+?) (\\S+?)(?=[ML\"])").matcher(path);
    int places = 0;
    while (place.find()) {
      assertThat(Double.parseDouble(place.group(1))).isBetween(10.0, 40.0);
      assertThat(Double.parseDouble(place.group(2))).isBetween(20.0, 28.0);
      places++;
    }

    assertThat(places).isEqualTo(14);
  }

  @Test
  void columns_of_words_stand_on_the_left_and_of_figures_on_the_right() {
    Table table =
        new Table(
            "t",
            List.of("a", "b", "c", "d"),
            List.of(List.of("x", "fine, 1 g", "none", "EUR 2.00"), List.of("y", "", "7", "free")),
            false);
    Page page = Page.builder(Say.ENGLISH, "t", "s").add(table).build();

    assertThat(List.of(table.isWords(0), table.isWords(1), table.isWords(2), table.isWords(3)))
        .containsExactly(true, true, false, false);
    assertThat(Jsoup.parse(HtmlPage.of(page)).select("td.words:nth-child(2)")).hasSize(2);
    assertThat(Jsoup.parse(HtmlPage.of(page)).select("td.words")).hasSize(2);
    assertThat(TextPage.of(page)).contains("  x  fine, 1 g  none  EUR 2.00\n");
  }

  @Test
  void words_are_wrapped_within_their_width_and_long_ones_broken() {
    List<String> lines = Lettering.wrap("wax and Donaudampfschifffahrtsgesellschaft", 100);

    assertThat(lines).hasSizeGreaterThan(2).allMatch(line -> Lettering.width(line) <= 100);
    assertThat(String.join("", lines)).isEqualTo("wax andDonaudampfschifffahrtsgesellschaft");
  }
}
