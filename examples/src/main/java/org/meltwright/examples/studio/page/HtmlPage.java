// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.meltwright.examples.studio.page.Block.Card;
import org.meltwright.examples.studio.page.Block.Fold;
import org.meltwright.examples.studio.page.Block.Heading;

/** A page as one HTML file: no script, no network, light and dark, for phone and A4. */
public final class HtmlPage {

  private final StringBuilder out = new StringBuilder();
  private final Page page;
  private final List<Card> cards;

  /**
   * Returns a page as HTML.
   *
   * @param page the page
   * @return the whole document
   */
  public static String of(Page page) {
    return new HtmlPage(page).document("sheet");
  }

  /**
   * Returns a page as HTML that is black on white on screen too, as it is to be printed.
   *
   * @param page the page
   * @return the whole document
   */
  public static String forPaper(Page page) {
    return new HtmlPage(page).document("paper");
  }

  private HtmlPage(Page page) {
    this.page = page;
    this.cards =
        page.blocks().stream().filter(Card.class::isInstance).map(Card.class::cast).toList();
  }

  private String document(String look) {
    line("<!DOCTYPE html>");
    line("<html lang=\"" + page.say().locale().toLanguageTag() + "\">");
    line("<head>");
    line("<meta charset=\"utf-8\">");
    line("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">");
    line("<meta name=\"color-scheme\" content=\"light dark\">");
    line("<title>" + escape(page.title()) + "</title>");
    line("<style>\n" + style("page.css") + style("card.css") + style("paper.css"));
    line(new PrintedSheets(page, cards).style() + "</style>");
    line("</head>");
    line("<body class=\"" + look + "\">");
    line("<header><h1>" + escape(page.title()) + "</h1>");
    line("<p>" + escape(page.subtitle()) + "</p></header>");
    line("<main>");
    chapters();
    line("</main>");
    line("</body>");
    line("</html>");
    return out.toString();
  }

  /** Each chapter and each card is a section, so that print and screen can keep it together. */
  private void chapters() {
    HtmlBlocks blocks = new HtmlBlocks(page.say(), out);
    List<Block> all = page.blocks();
    for (int from = 0, to; from < all.size(); from = to) {
      to = from + 1;
      while (to < all.size() && !begins(all.get(to))) {
        to++;
      }
      boolean isChapter = all.get(from) instanceof Heading;
      line(isChapter ? "<section>" : "");
      blocks.all(all.subList(from, to));
      line(isChapter ? "</section>" : "");
    }
    blocks.sources(page.sources());
  }

  private static boolean begins(Block block) {
    return block instanceof Card
        || block instanceof Fold
        || (block instanceof Heading heading && heading.level() == 2);
  }

  static String escape(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }

  private void line(String text) {
    out.append(text).append('\n');
  }

  private static String style(String name) {
    try (InputStream in = Objects.requireNonNull(HtmlPage.class.getResourceAsStream(name), name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
