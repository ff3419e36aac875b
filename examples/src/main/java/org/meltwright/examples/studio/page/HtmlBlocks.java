// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.page;

import static org.meltwright.examples.studio.page.HtmlPage.escape;

import java.util.List;
import java.util.Locale;
import org.meltwright.examples.studio.page.Block.Blanks;
import org.meltwright.examples.studio.page.Block.Bullets;
import org.meltwright.examples.studio.page.Block.Card;
import org.meltwright.examples.studio.page.Block.Checklist;
import org.meltwright.examples.studio.page.Block.Facts;
import org.meltwright.examples.studio.page.Block.Fold;
import org.meltwright.examples.studio.page.Block.Grid;
import org.meltwright.examples.studio.page.Block.Heading;
import org.meltwright.examples.studio.page.Block.Link;
import org.meltwright.examples.studio.page.Block.Links;
import org.meltwright.examples.studio.page.Block.Notice;
import org.meltwright.examples.studio.page.Block.Paragraph;
import org.meltwright.examples.studio.page.Block.Picture;
import org.meltwright.examples.studio.page.Block.Poster;
import org.meltwright.examples.studio.page.Block.Steps;
import org.meltwright.examples.studio.page.Block.Table;
import org.meltwright.examples.studio.page.Block.Weight;
import org.meltwright.examples.studio.page.Block.Weights;

/** Writes the blocks of a page as HTML. */
final class HtmlBlocks {

  /** A table of more columns shows each row as a small list on a phone. */
  private static final int MOST_COLUMNS_ON_A_PHONE = 5;

  /** A table of fewer columns fits on a phone. */
  private static final int FEWEST_COLUMNS_THAT_GO_ON = 4;

  /** A grid of few columns gives the first more room. */
  private static final int MOST_COLUMNS_OF_A_SHORT_GRID = 3;

  private final Say say;
  private final StringBuilder out;
  private int pictures;

  HtmlBlocks(Say say, StringBuilder out) {
    this.say = say;
    this.out = out;
  }

  void all(List<Block> blocks) {
    for (int i = 0; i < blocks.size(); i++) {
      int picture = pictureBeside(blocks, i);
      if (picture > i) {
        beside(blocks.subList(i, picture), blocks.get(picture));
        i = picture;
      } else {
        block(blocks.get(i));
      }
    }
  }

  /** Returns the place of the picture that follows facts, with or without notices between; or 0. */
  private static int pictureBeside(List<Block> blocks, int facts) {
    int next = facts + 1;
    while (next < blocks.size() && blocks.get(next) instanceof Notice) {
      next++;
    }
    boolean found =
        blocks.get(facts) instanceof Facts
            && next < blocks.size()
            && blocks.get(next) instanceof Picture;
    return found ? next : 0;
  }

  /** A picture stands beside its facts where there is room, else below them. */
  private void beside(List<Block> words, Block picture) {
    line("<div class=\"pair\"><div>");
    words.forEach(this::block);
    line("</div>");
    block(picture);
    line("</div>");
  }

  private void block(Block block) {
    if (block instanceof Heading h) {
      line("<h" + h.level() + ">" + escape(h.text()) + "</h" + h.level() + ">");
    } else if (block instanceof Paragraph p) {
      line("<p>" + escape(p.text()) + "</p>");
    } else if (block instanceof Facts facts) {
      facts(facts);
    } else if (block instanceof Bullets bullets) {
      list("ul", "", bullets.items());
    } else if (block instanceof Table table) {
      table(table);
    } else if (block instanceof Notice notice) {
      notice(notice);
    } else if (block instanceof Picture picture) {
      figure(picture);
    } else if (block instanceof Fold fold) {
      fold(fold);
    } else {
      onPaper(block);
    }
  }

  /** What is made to be printed and written on. */
  private void onPaper(Block block) {
    if (block instanceof Card card) {
      card(card);
    } else if (block instanceof Weights weights) {
      weights(weights);
    } else if (block instanceof Steps steps) {
      list("ol", " class=\"steps\"", steps.items());
    } else if (block instanceof Links links) {
      links(links);
    } else if (block instanceof Grid grid) {
      grid(grid);
    } else if (block instanceof Checklist ticks) {
      list("ul", " class=\"ticks\"", ticks.items());
    } else if (block instanceof Blanks blanks) {
      list("ul", " class=\"blanks\"", blanks.names());
    } else if (block instanceof Poster poster) {
      line("<div class=\"poster\">");
      poster.lines().forEach(l -> line("<p>" + escape(l) + "</p>"));
      line("</div>");
    }
  }

  private void card(Card card) {
    String look = card.isBlocked() ? "card blocked" : "card";
    line("<section class=\"" + look + "\" id=\"" + escape(card.id()) + "\">");
    line("<p class=\"running\">" + escape(card.running()) + "</p>");
    line("<h2>" + escape(card.name()) + "</h2>");
    line("<p class=\"verdict\">" + escape(card.verdict()) + "</p>");
    all(card.blocks());
    line("</section>");
  }

  private void weights(Weights weights) {
    line("<table class=\"weights\">");
    line("<thead><tr><td></td>");
    List.of("weights.weigh", "weights.of", "weights.really", "weights.lot")
        .forEach(key -> line("<th scope=\"col\">" + escape(say.words(key)) + "</th>"));
    line("</tr></thead><tbody>");
    weights.lines().forEach(this::weight);
    line("</tbody></table>");
    line("<p>" + escape(say.words("weights.together", "mass", weights.together())) + "</p>");
  }

  private void weight(Weight weight) {
    line("<tr><td class=\"tick\"></td>");
    line("<td class=\"mass\">" + escape(weight.mass()) + "</td>");
    line("<th scope=\"row\">" + escape(weight.name()));
    line("<span>" + escape(weight.balance()) + "</span></th>");
    line("<td class=\"pen\"></td><td class=\"pen\"></td></tr>");
  }

  private void links(Links links) {
    line("<nav><ul>");
    for (Link link : links.links()) {
      line("<li><a href=\"#" + escape(link.id()) + "\">" + escape(link.name()) + "</a></li>");
    }
    line("</ul></nav>");
  }

  private void fold(Fold fold) {
    line("<details><summary>" + escape(fold.title()) + "</summary>");
    all(fold.blocks());
    line("</details>");
  }

  private void list(String element, String look, List<String> items) {
    line("<" + element + look + ">");
    items.forEach(item -> line("<li>" + escape(item) + "</li>"));
    line("</" + element + ">");
  }

  private void grid(Grid grid) {
    boolean isShort = grid.columns().size() <= MOST_COLUMNS_OF_A_SHORT_GRID;
    line("<div class=\"wide\"><table class=\"" + (isShort ? "grid short" : "grid") + "\">");
    line("<caption>" + escape(grid.caption()) + "</caption>");
    line("<thead><tr>");
    grid.columns().forEach(c -> line("<th scope=\"col\">" + escape(c) + "</th>"));
    line("</tr></thead>");
    line("<tbody>");
    grid.rows().forEach(this::row);
    line("</tbody></table></div>");
  }

  /** An empty cell is left to the pen. */
  private void row(List<String> cells) {
    line("<tr>");
    line("<th scope=\"row\">" + escape(cells.get(0)) + "</th>");
    cells.stream()
        .skip(1)
        .map(c -> c.isEmpty() ? "<td class=\"pen\"></td>" : "<td>" + escape(c) + "</td>")
        .forEach(this::line);
    line("</tr>");
  }

  private void figure(Picture picture) {
    pictures++;
    line("<figure>" + picture.svg().element("picture-" + pictures));
    line("<figcaption>" + escape(picture.alternative()) + "</figcaption></figure>");
  }

  private void facts(Facts facts) {
    line("<dl>");
    facts
        .facts()
        .forEach(
            f ->
                line(
                    "<div><dt>"
                        + escape(f.name())
                        + "</dt><dd>"
                        + escape(f.value())
                        + "</dd></div>"));
    line("</dl>");
  }

  /** A table that is wider than a phone says below its caption that it goes on. */
  private void table(Table table) {
    boolean many = table.columns().size() > MOST_COLUMNS_ON_A_PHONE;
    boolean few = table.columns().size() < FEWEST_COLUMNS_THAT_GO_ON;
    String goesOn = many || few ? "" : "<span>" + escape(say.words("table.goes-on")) + "</span>";
    line("<div class=\"wide\"><table" + (many ? " class=\"many\"" : "") + ">");
    line("<caption>" + escape(table.caption()) + goesOn + "</caption>");
    line("<thead><tr>");
    for (int i = 0; i < table.columns().size(); i++) {
      line("<th scope=\"col\"" + words(table, i) + ">" + escape(table.columns().get(i)) + "</th>");
    }
    line("</tr></thead>");
    line("<tbody>");
    for (int i = 0; i < table.rows().size(); i++) {
      boolean total = table.totalRow() && i == table.rows().size() - 1;
      row(table, table.rows().get(i), total);
    }
    line("</tbody></table></div>");
  }

  private void row(Table table, List<String> cells, boolean total) {
    line(total ? "<tr class=\"total\">" : "<tr>");
    line("<th scope=\"row\">" + escape(cells.get(0)) + "</th>");
    for (int i = 1; i < cells.size(); i++) {
      String column = " data-column=\"" + escape(table.columns().get(i)) + "\"";
      line("<td" + column + words(table, i) + ">" + escape(cells.get(i)) + "</td>");
    }
    line("</tr>");
  }

  private static String words(Table table, int column) {
    return table.isWords(column) ? " class=\"words\"" : "";
  }

  private void notice(Notice notice) {
    line("<aside class=\"" + notice.tone().name().toLowerCase(Locale.ROOT) + "\">");
    line("<p><strong>" + escape(notice.label()) + "</strong> " + escape(notice.title()) + "</p>");
    if (!notice.lines().isEmpty()) {
      list("ul", "", notice.lines());
    }
    line("</aside>");
  }

  /** The sources are folded; what their marks lead to is all there. */
  void sources(List<String> sources) {
    if (sources.isEmpty()) {
      return;
    }
    line("<footer><details>");
    line("<summary>" + escape(say.words("sources")) + "</summary>");
    list("ol", "", sources);
    line("</details></footer>");
  }

  private void line(String text) {
    if (!text.isEmpty()) {
      out.append(text).append('\n');
    }
  }
}
