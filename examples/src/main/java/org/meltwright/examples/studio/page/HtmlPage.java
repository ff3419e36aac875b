// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.meltwright.examples.studio.page.Block.Blanks;
import org.meltwright.examples.studio.page.Block.Bullets;
import org.meltwright.examples.studio.page.Block.Checklist;
import org.meltwright.examples.studio.page.Block.Facts;
import org.meltwright.examples.studio.page.Block.Grid;
import org.meltwright.examples.studio.page.Block.Heading;
import org.meltwright.examples.studio.page.Block.Notice;
import org.meltwright.examples.studio.page.Block.Paragraph;
import org.meltwright.examples.studio.page.Block.Picture;
import org.meltwright.examples.studio.page.Block.Poster;
import org.meltwright.examples.studio.page.Block.Table;

/** A page as one HTML file: no script, no network, light and dark, for phone and A4. */
public final class HtmlPage {

  /** A table of more columns shows each row as a small list there. */
  private static final int MOST_COLUMNS_ON_A_PHONE = 5;

  private final StringBuilder out = new StringBuilder();
  private int pictures;

  private HtmlPage() {}

  /**
   * Returns a page as HTML.
   *
   * @param page the page
   * @return the whole document
   */
  public static String of(Page page) {
    return of(page, "<body>");
  }

  /**
   * Returns a page as HTML that is black on white on screen too, as it is to be printed.
   *
   * @param page the page
   * @return the whole document
   */
  public static String forPaper(Page page) {
    return of(page, "<body class=\"paper\">");
  }

  private static String of(Page page, String body) {
    HtmlPage html = new HtmlPage();
    html.page(page, body);
    return html.out.toString();
  }

  private void page(Page page, String body) {
    line("<!DOCTYPE html>");
    line("<html lang=\"en\">");
    line("<head>");
    line("<meta charset=\"utf-8\">");
    line("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">");
    line("<meta name=\"color-scheme\" content=\"light dark\">");
    line("<title>" + escape(page.title()) + "</title>");
    line("<style>\n" + style("page.css") + style("paper.css") + "</style>");
    line("</head>");
    line(body);
    line("<header><h1>" + escape(page.title()) + "</h1>");
    line("<p>" + escape(page.subtitle()) + "</p></header>");
    line("<main>");
    chapters(page.blocks());
    line("</main>");
    sources(page.sources());
    line("</body>");
    line("</html>");
  }

  /** Each chapter is a section, so that print and screen can keep it together. */
  private void chapters(List<Block> blocks) {
    boolean open = false;
    for (int i = 0; i < blocks.size(); i++) {
      Block block = blocks.get(i);
      if (block instanceof Heading heading && heading.level() == 2) {
        line(open ? "</section>\n<section>" : "<section>");
        open = true;
      }
      int picture = pictureBeside(blocks, i);
      if (picture > i) {
        beside(blocks.subList(i, picture), blocks.get(picture));
        i = picture;
      } else {
        block(block);
      }
    }
    if (open) {
      line("</section>");
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
      line("<ul>");
      bullets.items().forEach(item -> line("<li>" + escape(item) + "</li>"));
      line("</ul>");
    } else if (block instanceof Table table) {
      table(table);
    } else if (block instanceof Notice notice) {
      notice(notice);
    } else if (block instanceof Picture picture) {
      figure(picture);
    } else {
      onPaper(block);
    }
  }

  /** What is made to be printed and written on. */
  private void onPaper(Block block) {
    if (block instanceof Grid grid) {
      grid(grid);
    } else if (block instanceof Checklist list) {
      line("<ul class=\"ticks\">");
      list.items().forEach(item -> line("<li>" + escape(item) + "</li>"));
      line("</ul>");
    } else if (block instanceof Blanks blanks) {
      line("<ul class=\"blanks\">");
      blanks.names().forEach(name -> line("<li>" + escape(name) + "</li>"));
      line("</ul>");
    } else if (block instanceof Poster poster) {
      line("<div class=\"poster\">");
      poster.lines().forEach(l -> line("<p>" + escape(l) + "</p>"));
      line("</div>");
    }
  }

  private void grid(Grid grid) {
    line("<div class=\"wide\"><table class=\"grid\">");
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

  private void table(Table table) {
    boolean many = table.columns().size() > MOST_COLUMNS_ON_A_PHONE;
    line("<div class=\"wide\"><table" + (many ? " class=\"many\"" : "") + ">");
    line("<caption>" + escape(table.caption()) + "</caption>");
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
      line("<ul>");
      notice.lines().forEach(l -> line("<li>" + escape(l) + "</li>"));
      line("</ul>");
    }
    line("</aside>");
  }

  private void sources(List<String> sources) {
    if (sources.isEmpty()) {
      return;
    }
    line("<footer><h2>Sources</h2><ol>");
    sources.forEach(s -> line("<li>" + escape(s) + "</li>"));
    line("</ol></footer>");
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
