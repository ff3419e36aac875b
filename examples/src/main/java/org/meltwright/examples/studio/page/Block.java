// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.page;

import java.util.List;
import java.util.regex.Pattern;

/** One thing on a page. */
public sealed interface Block {

  /**
   * A heading.
   *
   * @param level 2 for a chapter, 3 for a section of it
   * @param text the heading
   */
  record Heading(int level, String text) implements Block {}

  /**
   * Running text.
   *
   * @param text one paragraph
   */
  record Paragraph(String text) implements Block {}

  /**
   * Short facts, each with its name.
   *
   * @param facts name and value, in order
   */
  record Facts(List<Fact> facts) implements Block {

    /**
     * Copies the facts.
     *
     * @param facts name and value, in order
     */
    public Facts {
      facts = List.copyOf(facts);
    }
  }

  /**
   * One fact.
   *
   * @param name what it is
   * @param value its value, with unit and basis
   */
  record Fact(String name, String value) {}

  /**
   * A list of sentences.
   *
   * @param items one sentence each
   */
  record Bullets(List<String> items) implements Block {

    /**
     * Copies the items.
     *
     * @param items one sentence each
     */
    public Bullets {
      items = List.copyOf(items);
    }
  }

  /**
   * A table. Its first column is text; another is a column of figures if any of its cells is one.
   *
   * @param caption what the table shows
   * @param columns the headings
   * @param rows the cells, row by row, as many as columns
   * @param totalRow whether the last row is the total
   */
  record Table(String caption, List<String> columns, List<List<String>> rows, boolean totalRow)
      implements Block {

    private static final Pattern FIGURE = Pattern.compile("([A-Z]{3} |≥ ?)?[-−]?\\d");

    /**
     * Copies the lists and holds the width.
     *
     * @param caption what the table shows
     * @param columns the headings
     * @param rows the cells, row by row
     * @param totalRow whether the last row is the total
     */
    public Table {
      columns = List.copyOf(columns);
      rows = rows.stream().map(List::copyOf).toList();
      for (List<String> row : rows) {
        if (row.size() != columns.size()) {
          throw new IllegalArgumentException(row.size() + " cells under " + columns.size());
        }
      }
    }

    /**
     * Tells whether a column is of words, which stand on the left.
     *
     * @param column its place, from zero
     * @return whether it is the first or none of its cells is a number, a mass or money
     */
    public boolean isWords(int column) {
      return column == 0
          || rows.stream().noneMatch(row -> FIGURE.matcher(row.get(column)).lookingAt());
    }
  }

  /**
   * A table of running text, to be read and perhaps written into: an empty cell is left to the pen.
   *
   * @param caption what the table shows
   * @param columns the headings
   * @param rows the cells, row by row, as many as columns
   */
  record Grid(String caption, List<String> columns, List<List<String>> rows) implements Block {

    /**
     * Copies the lists and holds the width.
     *
     * @param caption what the table shows
     * @param columns the headings
     * @param rows the cells, row by row
     */
    public Grid {
      columns = List.copyOf(columns);
      rows = rows.stream().map(List::copyOf).toList();
      for (List<String> row : rows) {
        if (row.size() != columns.size()) {
          throw new IllegalArgumentException(row.size() + " cells under " + columns.size());
        }
      }
    }
  }

  /**
   * A list with a box to tick before each item.
   *
   * @param items one sentence or a few each
   */
  record Checklist(List<String> items) implements Block {

    /**
     * Copies the items.
     *
     * @param items one sentence or a few each
     */
    public Checklist {
      items = List.copyOf(items);
    }
  }

  /**
   * Lines to fill in by hand.
   *
   * @param names what is to be written on each line
   */
  record Blanks(List<String> names) implements Block {

    /**
     * Copies the names.
     *
     * @param names what is to be written on each line
     */
    public Blanks {
      names = List.copyOf(names);
    }
  }

  /**
   * What is to be read from across the room.
   *
   * @param lines a paragraph each
   */
  record Poster(List<String> lines) implements Block {

    /**
     * Copies the lines.
     *
     * @param lines a paragraph each
     */
    public Poster {
      lines = List.copyOf(lines);
    }
  }

  /**
   * What hangs at the bench for one recipe: it begins a sheet of paper and carries its name on
   * each.
   *
   * @param id a name that no other card on the page has, to lead to
   * @param name the recipe
   * @param verdict what the review comes to, in one line
   * @param running what stands at the head of each printed sheet beside the name
   * @param isBlocked whether it must not be made as planned
   * @param blocks what stands on it
   */
  record Card(
      String id, String name, String verdict, String running, boolean isBlocked, List<Block> blocks)
      implements Block {

    /**
     * Copies the blocks.
     *
     * @param id a name that no other card on the page has
     * @param name the recipe
     * @param verdict what the review comes to
     * @param running what stands at the head of each printed sheet
     * @param isBlocked whether it must not be made as planned
     * @param blocks what stands on it
     */
    public Card {
      blocks = List.copyOf(blocks);
    }
  }

  /**
   * What to weigh, in large figures, each with a box to tick and room for the pen.
   *
   * @param lines what to weigh, in order
   * @param together what all of it comes to
   */
  record Weights(List<Weight> lines, String together) implements Block {

    /**
     * Copies the lines.
     *
     * @param lines what to weigh, in order
     * @param together what all of it comes to
     */
    public Weights {
      lines = List.copyOf(lines);
    }
  }

  /**
   * One thing to weigh.
   *
   * @param name the ingredient
   * @param mass what the balance is to show
   * @param balance the balance, with its scale interval
   */
  record Weight(String name, String mass, String balance) {}

  /**
   * What to do, in order.
   *
   * @param items a step each
   */
  record Steps(List<String> items) implements Block {

    /**
     * Copies the steps.
     *
     * @param items a step each
     */
    public Steps {
      items = List.copyOf(items);
    }
  }

  /**
   * Where to go on this page.
   *
   * @param links the places
   */
  record Links(List<Link> links) implements Block {

    /**
     * Copies the links.
     *
     * @param links the places
     */
    public Links {
      links = List.copyOf(links);
    }
  }

  /**
   * A way to a card.
   *
   * @param id the card's
   * @param name what it is called
   */
  record Link(String id, String name) {}

  /**
   * What is read on wish: folded on a screen, left out of print while it is.
   *
   * @param title what it is about
   * @param blocks what it says
   */
  record Fold(String title, List<Block> blocks) implements Block {

    /**
     * Copies the blocks.
     *
     * @param title what it is about
     * @param blocks what it says
     */
    public Fold {
      blocks = List.copyOf(blocks);
    }
  }

  /**
   * Something to take notice of, with reason, remedy and source.
   *
   * @param tone how grave it is
   * @param label the word that stands first, such as "CAUTION"
   * @param title what is the matter
   * @param lines reason, remedy and source, a line each
   */
  record Notice(Tone tone, String label, String title, List<String> lines) implements Block {

    /**
     * Copies the lines.
     *
     * @param tone how grave it is
     * @param label the word that stands first
     * @param title what is the matter
     * @param lines reason, remedy and source
     */
    public Notice {
      lines = List.copyOf(lines);
    }
  }

  /** How grave a notice is, for its colour. */
  enum Tone {
    /** Stop. */
    STOP,
    /** Take care. */
    CARE,
    /** Note. */
    NOTE,
    /** Not known. */
    OPEN
  }

  /**
   * A picture with a text that says the same.
   *
   * @param svg the picture
   * @param alternative the text that says the same, below the picture
   * @param plain what a page without pictures says instead; empty if it stands beside it anyway
   */
  record Picture(Svg svg, String alternative, String plain) implements Block {

    /**
     * Makes a picture of which a page without pictures says all.
     *
     * @param svg the picture
     * @param alternative the text that says the same
     */
    public Picture(Svg svg, String alternative) {
      this(svg, alternative, alternative);
    }

    /**
     * Returns the picture for a place where its numbers stand beside it in a table or in facts.
     *
     * @return the same, of which a page without pictures says nothing
     */
    public Picture besideItsNumbers() {
      return new Picture(svg, alternative, "");
    }
  }
}
