// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.page;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What is said on a page, in order, without how it looks.
 *
 * <p>Immutable and thread-safe.
 *
 * @param say the language of the page
 * @param title the title
 * @param subtitle one line below it
 * @param blocks what is said
 * @param sources what the figures rest on, numbered from 1 in this order
 */
public record Page(
    Say say, String title, String subtitle, List<Block> blocks, List<String> sources) {

  /**
   * Copies the lists.
   *
   * @param say the language of the page
   * @param title the title
   * @param subtitle one line below it
   * @param blocks what is said
   * @param sources what the figures rest on
   */
  public Page {
    blocks = List.copyOf(blocks);
    sources = List.copyOf(sources);
  }

  /** Collects the blocks of a page and numbers its sources; not thread-safe. */
  public static final class Builder {

    private final Say say;
    private final String title;
    private final String subtitle;
    private final List<Block> blocks = new ArrayList<>();
    private final Set<String> sources = new LinkedHashSet<>();

    /**
     * Starts a page.
     *
     * @param say the language of the page
     * @param title the title
     * @param subtitle one line below it
     */
    public Builder(Say say, String title, String subtitle) {
      this.say = say;
      this.title = title;
      this.subtitle = subtitle;
    }

    /**
     * Adds a block.
     *
     * @param block what is said next
     * @return this builder
     */
    public Builder add(Block block) {
      blocks.add(block);
      return this;
    }

    /**
     * Returns how the page speaks.
     *
     * @return its words and notation
     */
    public Say say() {
      return say;
    }

    /**
     * Gathers what is added meanwhile, to stand within another block.
     *
     * @param adding adds to this builder
     * @return what it added, which is not on the page yet
     */
    public List<Block> gather(Runnable adding) {
      int from = blocks.size();
      adding.run();
      List<Block> added = blocks.subList(from, blocks.size());
      List<Block> gathered = List.copyOf(added);
      added.clear();
      return gathered;
    }

    /**
     * Notes a source and returns its mark.
     *
     * @param citation the source on one line
     * @return its number at the foot of the page, such as "[3]"
     */
    public String cite(String citation) {
      sources.add(citation);
      return "[" + (new ArrayList<>(sources).indexOf(citation) + 1) + "]";
    }

    /**
     * Returns the page.
     *
     * @return what was collected so far
     */
    public Page build() {
      return new Page(say, title, subtitle, blocks, new ArrayList<>(sources));
    }
  }
}
