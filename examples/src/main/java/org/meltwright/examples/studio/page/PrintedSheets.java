// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.page;

import java.util.List;
import java.util.stream.Collectors;
import org.meltwright.examples.studio.page.Block.Card;

/**
 * What stands in the margins of each printed sheet: the recipe of its card, studio and date, page
 * of pages; so that no loose sheet is without its name.
 */
final class PrintedSheets {

  private final Page page;
  private final List<Card> cards;

  PrintedSheets(Page page, List<Card> cards) {
    this.page = page;
    this.cards = cards;
  }

  /** The rules of a stylesheet; a browser that knows no margin boxes leaves them out. */
  String style() {
    StringBuilder style = new StringBuilder("@media print {\n@page { ");
    style.append(cards.isEmpty() ? "margin: 9mm; " : "");
    style.append(box("top-left", quoted(page.title())));
    style.append(box("bottom-right", pageOfPages())).append("}\n");
    for (int i = 0; i < cards.size(); i++) {
      style.append(style(cards.get(i), "sheet-" + i, i == 0));
    }
    return style.append("}\n").toString();
  }

  /** A card begins a sheet of its own; the head of the page goes on the first. */
  private static String style(Card card, String name, boolean isFirst) {
    return "@page "
        + name
        + " { "
        + box("top-left", quoted(card.name() + " · " + card.verdict()))
        + box("bottom-left", quoted(card.running()))
        + "}\n#"
        + card.id()
        + (isFirst ? ", header, main > aside" : "")
        + " { page: "
        + name
        + "; }\n";
  }

  private static String box(String place, String content) {
    return "@" + place + " { content: " + content + "; } ";
  }

  /** The words around the two counters, in the order of the language. */
  private String pageOfPages() {
    String words = quoted(page.say().words("page-of-pages", "page", "\u0001", "pages", "\u0002"));
    return words.replace("\\1 ", "\" counter(page) \"").replace("\\2 ", "\" counter(pages) \"");
  }

  /** A text within a stylesheet: what could end it stands as its number. */
  private static String quoted(String text) {
    return text.codePoints()
        .mapToObj(
            c ->
                Character.isLetterOrDigit(c) || c == ' ' || c == '·'
                    ? Character.toString(c)
                    : "\\" + Integer.toHexString(c) + " ")
        .collect(Collectors.joining("", "\"", "\""));
  }
}
