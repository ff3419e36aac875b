// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.page;

import java.util.ArrayList;
import java.util.List;
import org.meltwright.examples.studio.page.Block.Blanks;
import org.meltwright.examples.studio.page.Block.Bullets;
import org.meltwright.examples.studio.page.Block.Card;
import org.meltwright.examples.studio.page.Block.Checklist;
import org.meltwright.examples.studio.page.Block.Fact;
import org.meltwright.examples.studio.page.Block.Facts;
import org.meltwright.examples.studio.page.Block.Fold;
import org.meltwright.examples.studio.page.Block.Grid;
import org.meltwright.examples.studio.page.Block.Heading;
import org.meltwright.examples.studio.page.Block.Notice;
import org.meltwright.examples.studio.page.Block.Paragraph;
import org.meltwright.examples.studio.page.Block.Picture;
import org.meltwright.examples.studio.page.Block.Poster;
import org.meltwright.examples.studio.page.Block.Steps;
import org.meltwright.examples.studio.page.Block.Table;
import org.meltwright.examples.studio.page.Block.Weight;
import org.meltwright.examples.studio.page.Block.Weights;

/** A page as plain text, at most 100 characters wide where its words allow. */
public final class TextPage {

  private static final int WIDTH = 96;

  /** A line to write on, in characters. */
  private static final int BLANK = 20;

  private final StringBuilder out = new StringBuilder();
  private final Say say;

  private TextPage(Say say) {
    this.say = say;
  }

  /**
   * Returns a page as plain text.
   *
   * @param page the page
   * @return the text, ending with a line break
   */
  public static String of(Page page) {
    TextPage text = new TextPage(page.say());
    text.page(page);
    return text.out.toString();
  }

  private void page(Page page) {
    line(page.title());
    line("=".repeat(page.title().length()));
    wrap("", page.subtitle());
    page.blocks().forEach(this::block);
    if (!page.sources().isEmpty()) {
      heading(say.words("sources"), '-');
      for (int i = 0; i < page.sources().size(); i++) {
        wrap("[" + (i + 1) + "] ", page.sources().get(i));
      }
    }
  }

  private void block(Block block) {
    if (block instanceof Heading heading) {
      heading(heading.text(), heading.level() == 2 ? '-' : ' ');
    } else if (block instanceof Paragraph paragraph) {
      line("");
      wrap("", paragraph.text());
    } else if (block instanceof Facts facts) {
      facts(facts.facts());
    } else if (block instanceof Bullets bullets) {
      bullets.items().forEach(item -> wrap("  - ", item));
    } else if (block instanceof Table table) {
      table(table);
    } else if (block instanceof Notice notice) {
      wrap("  " + notice.label() + "  ", notice.title());
      notice.lines().forEach(l -> wrap("      ", l));
    } else if (block instanceof Picture picture) {
      picture(picture);
    } else if (block instanceof Card card) {
      card(card);
    } else if (block instanceof Fold fold) {
      heading(fold.title(), '-');
      fold.blocks().forEach(this::block);
    } else {
      onPaper(block);
    }
  }

  private void card(Card card) {
    heading(card.name(), '=');
    wrap("", card.verdict());
    card.blocks().forEach(this::block);
  }

  /** A box to tick, the mass, and room for what was really weighed and for the lot. */
  private void weights(Weights weights) {
    int names = weights.lines().stream().mapToInt(w -> w.name().length()).max().orElse(0);
    int masses = weights.lines().stream().mapToInt(w -> w.mass().length()).max().orElse(0);
    for (Weight w : weights.lines()) {
      String mass = " ".repeat(masses - w.mass().length()) + w.mass();
      line("  [ ] " + pad(w.name(), names) + "  " + mass + "  " + w.balance());
      line(pen("      ", "weights.really") + pen("  ", "weights.lot"));
    }
    line("  " + say.words("weights.together", "mass", weights.together()));
  }

  private String pen(String lead, String key) {
    return lead + say.words(key) + " " + "_".repeat(BLANK);
  }

  private void steps(Steps steps) {
    for (int i = 0; i < steps.items().size(); i++) {
      wrap("  " + (i + 1) + ". ", steps.items().get(i));
    }
  }

  private void picture(Picture picture) {
    if (!picture.plain().isEmpty()) {
      wrap("  ", picture.plain());
    }
  }

  /** What is made to be printed and written on. */
  private void onPaper(Block block) {
    if (block instanceof Grid grid) {
      line("");
      wrap("  ", grid.caption());
      grid.rows().forEach(row -> wrap("  - ", cells(grid.columns(), row)));
    } else if (block instanceof Checklist list) {
      list.items().forEach(item -> wrap("  [ ] ", item));
    } else if (block instanceof Blanks blanks) {
      blanks.names().forEach(name -> line("  " + name + ": " + "_".repeat(BLANK)));
    } else if (block instanceof Poster poster) {
      poster.lines().forEach(l -> wrap("  ! ", l));
    } else if (block instanceof Weights weights) {
      weights(weights);
    } else if (block instanceof Steps steps) {
      steps(steps);
    }
  }

  private static String cells(List<String> columns, List<String> row) {
    List<String> cells = new ArrayList<>();
    for (int i = 0; i < row.size(); i++) {
      String cell = row.get(i).isEmpty() ? "_".repeat(BLANK) : row.get(i);
      cells.add(i == 0 ? cell : columns.get(i) + ": " + cell);
    }
    return String.join("; ", cells);
  }

  private void heading(String text, char underline) {
    line("");
    line(text);
    if (underline != ' ') {
      line(String.valueOf(underline).repeat(text.length()));
    }
  }

  private void facts(List<Fact> facts) {
    int width = facts.stream().mapToInt(f -> f.name().length()).max().orElse(0);
    facts.forEach(f -> wrap("  " + pad(f.name(), width) + "  ", f.value()));
  }

  private void table(Table table) {
    List<List<String>> all = new ArrayList<>(List.of(table.columns()));
    all.addAll(table.rows());
    int[] widths = new int[table.columns().size()];
    for (List<String> row : all) {
      for (int i = 0; i < widths.length; i++) {
        widths[i] = Math.max(widths[i], row.get(i).length());
      }
    }
    line("");
    wrap("  ", table.caption());
    row(table, table.columns(), widths);
    rule(widths);
    for (int i = 0; i < table.rows().size(); i++) {
      if (table.totalRow() && i == table.rows().size() - 1) {
        rule(widths);
      }
      row(table, table.rows().get(i), widths);
    }
  }

  private void row(Table table, List<String> cells, int[] widths) {
    StringBuilder row = new StringBuilder("  ").append(pad(cells.get(0), widths[0]));
    for (int i = 1; i < widths.length; i++) {
      String space = " ".repeat(widths[i] - cells.get(i).length());
      row.append("  ");
      row.append(table.isWords(i) ? cells.get(i) + space : space + cells.get(i));
    }
    line(row.toString());
  }

  private void rule(int[] widths) {
    StringBuilder rule = new StringBuilder("  ").append("-".repeat(widths[0]));
    for (int i = 1; i < widths.length; i++) {
      rule.append("  ").append("-".repeat(widths[i]));
    }
    line(rule.toString());
  }

  /** Writes words after a lead, and breaks lines so that they stand below the words. */
  private void wrap(String lead, String text) {
    StringBuilder line = new StringBuilder(lead);
    boolean empty = true;
    for (String word : text.split(" ", -1)) {
      if (!empty && line.length() + 1 + word.length() > WIDTH) {
        line(line.toString());
        line = new StringBuilder(" ".repeat(lead.length()));
        empty = true;
      }
      line.append(empty ? "" : " ").append(word);
      empty = false;
    }
    line(line.toString());
  }

  private static String pad(String text, int width) {
    return text + " ".repeat(Math.max(0, width - text.length()));
  }

  private void line(String text) {
    out.append(text.stripTrailing()).append('\n');
  }
}
