// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;
import org.meltwright.examples.page.Block.Blanks;
import org.meltwright.examples.page.Block.Checklist;
import org.meltwright.examples.page.Block.Fact;
import org.meltwright.examples.page.Block.Facts;
import org.meltwright.examples.page.Block.Grid;
import org.meltwright.examples.page.Block.Heading;
import org.meltwright.examples.page.Block.Notice;
import org.meltwright.examples.page.Block.Paragraph;
import org.meltwright.examples.page.Block.Poster;
import org.meltwright.examples.page.Block.Table;
import org.meltwright.examples.page.Block.Tone;

class PageTest {

  private static Page page() {
    Page.Builder builder = new Page.Builder("A <title> & more", "below it");
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
    Page wide = new Page.Builder("t", "word ".repeat(80).strip()).build();

    assertThat(TextPage.of(wide).lines()).allMatch(line -> line.length() <= 96);
  }

  private static Page paper() {
    return new Page.Builder("t", "s")
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
    Page.Builder builder = new Page.Builder("t", "s");

    assertThat(builder.cite("a")).isEqualTo("[1]");
    assertThat(builder.cite("b")).isEqualTo("[2]");
    assertThat(builder.cite("a")).isEqualTo("[1]");
  }
}
