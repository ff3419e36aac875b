// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.naming;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.meltwright.safety.naming.ListedName.Language;
import org.meltwright.safety.naming.ListedName.Use;

/**
 * Finds the names of the list in a text.
 *
 * <p>A name is looked for from the start of each word on, whatever blanks and hyphens stand where;
 * each of its words may end as its language lets words end. The longest name at a place stands for
 * those inside it, so that a false friend takes the words of hazard with it that it holds, and a
 * longer name of the list keeps its force around a false friend. The time is linear: from each
 * letter no more is read than the longest name has.
 */
final class NameSearch {

  /** A word such as "black" does not end with a hazard; "Rotlack" does. */
  private static final int LETTERS_BEFORE_LAST_PART = 2;

  private static final int LONGEST_ENDING = 3;

  private static final Comparator<Hit> BY_PLACE =
      Comparator.comparingInt(Hit::start)
          .thenComparing(Comparator.comparingInt(Hit::end).reversed());

  private final FoldedText text;
  private final NameList list;
  private final List<Hit> hits = new ArrayList<>();
  private NameTree tree;
  private int from;

  /**
   * A name of the list at its place in a text.
   *
   * @param name the name
   * @param start its first letter
   * @param end the letter behind its last
   */
  record Hit(ListedName name, int start, int end) {

    private boolean isAt(Hit other) {
      return start == other.start && end == other.end;
    }
  }

  /** The hazards that a text names, false friends and what they hold cut out. */
  static List<Hit> in(FoldedText text, NameList list) {
    NameSearch search = new NameSearch(text, list);
    for (int i = 0; i < text.length(); i++) {
      search.lookFrom(i);
    }
    return search.longest();
  }

  /** The powder of which nothing is told whose name a text is, apart from shades. */
  static Optional<ListedHazard> harmless(FoldedText text, NameList list) {
    NameSearch search = new NameSearch(text, list);
    for (int word = 0; word < text.words(); word++) {
      search.lookFrom(text.start(word));
      if (!Shades.isShade(text.word(word))) {
        break;
      }
    }
    return search.hits.stream()
        .filter(hit -> hit.name().isFalseFriend() && hit.name().hazard().isPowder())
        .filter(hit -> text.isEnd(hit.end()) && Shades.areAllFrom(text, hit.end()))
        .map(hit -> hit.name().hazard())
        .findFirst();
  }

  private NameSearch(FoldedText text, NameList list) {
    this.text = text;
    this.list = list;
    this.tree = list.tree();
  }

  private void lookFrom(int i) {
    from = i;
    int before = i - text.start(text.wordOf(i));
    if (before == 0) {
      tree = list.tree();
      walk(NameTree.ROOT, i, Language.ALL);
    } else if (before >= LETTERS_BEFORE_LAST_PART) {
      tree = list.lastParts();
      walk(NameTree.ROOT, i, Language.ALL);
    }
  }

  private void walk(int node, int i, int languages) {
    if (tree.endsWord(node)) {
      take(node, i, languages);
      skipEnding(node, i, languages);
    }
    if (i < text.length()) {
      int next = tree.step(node, text.letter(i));
      if (next > NameTree.ROOT) {
        walk(next, i + 1, languages);
      }
    }
  }

  /** Goes on behind the ending of a word, in the languages that know the ending. */
  private void skipEnding(int node, int i, int languages) {
    if (text.isEnd(i)) {
      return;
    }
    int end = text.end(text.wordOf(i));
    if (end - i <= LONGEST_ENDING) {
      int left = languages & Language.endingWith(text.part(i, end));
      if (left != 0) {
        walk(node, end, left);
      }
    }
  }

  private void take(int node, int end, int languages) {
    for (ListedName name : tree.names(node)) {
      if (name.language().isIn(languages) && counts(name, end)) {
        hits.add(new Hit(name, from, end));
      }
    }
  }

  private boolean counts(ListedName name, int end) {
    boolean whole = text.isEnd(end);
    if (!text.isStart(from)) {
      return whole && text.wordOf(from) == text.wordOf(end - 1);
    }
    if (name.use() == Use.ALONE) {
      return whole && from == 0 && Shades.areAllFrom(text, end);
    }
    return whole
        ? !name.isFalseFriend() || name.hasComma() || !crossesComma(end)
        : name.isFirstPart();
  }

  private boolean crossesComma(int end) {
    for (int word = text.wordOf(from) + 1; word <= text.wordOf(end - 1); word++) {
      if (text.isAfterComma(word)) {
        return true;
      }
    }
    return false;
  }

  /** Of hits one within the other the longer; of a hazard and a false friend alike the hazard. */
  private List<Hit> longest() {
    hits.sort(BY_PLACE);
    List<Hit> longest = new ArrayList<>();
    Hit widest = null;
    for (Hit hit : hits) {
      if (widest == null || hit.end() > widest.end() || hit.isAt(widest)) {
        widest = hit;
        longest.add(hit);
      }
    }
    longest.removeIf(hit -> hit.name().isFalseFriend());
    return longest;
  }
}
