// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.naming;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The names of the list, letter by letter, so that a text is compared with all of them at once. */
final class NameTree {

  /** The node before the first letter. */
  static final int ROOT = 0;

  private static final int NONE = -1;

  private char[] letter = new char[1024];
  private int[] child = new int[1024];
  private int[] sibling = new int[1024];
  private boolean[] wordEnds = new boolean[1024];
  private int size = 1;

  /** The first letters, of which there are many, by themselves. */
  private final int[] first = new int[128];

  private final Map<Integer, List<ListedName>> names = new HashMap<>();

  NameTree() {
    child[ROOT] = NONE;
    sibling[ROOT] = NONE;
    Arrays.fill(first, NONE);
  }

  void add(FoldedText folded, ListedName name) {
    int node = ROOT;
    for (int i = 0; i < folded.length(); i++) {
      node = grow(node, folded.letter(i));
      wordEnds[node] |= folded.isEnd(i + 1);
    }
    names.computeIfAbsent(node, n -> new ArrayList<>(1)).add(name);
  }

  private int grow(int node, char c) {
    int known = step(node, c);
    return known == NONE ? addChild(node, c) : known;
  }

  private int addChild(int node, char c) {
    if (size == letter.length) {
      letter = Arrays.copyOf(letter, 2 * size);
      child = Arrays.copyOf(child, 2 * size);
      sibling = Arrays.copyOf(sibling, 2 * size);
      wordEnds = Arrays.copyOf(wordEnds, 2 * size);
    }
    letter[size] = c;
    child[size] = NONE;
    sibling[size] = child[node];
    child[node] = size;
    if (node == ROOT && c < first.length) {
      first[c] = size;
    }
    return size++;
  }

  /** The node a letter leads to; negative if no name goes on so. */
  int step(int node, char c) {
    if (node == ROOT && c < first.length) {
      return first[c];
    }
    int next = child[node];
    while (next != NONE && letter[next] != c) {
      next = sibling[next];
    }
    return next;
  }

  /** Whether a word of a name ends here. */
  boolean endsWord(int node) {
    return wordEnds[node];
  }

  /** The names that end here. */
  List<ListedName> names(int node) {
    return wordEnds[node] ? names.getOrDefault(node, List.of()) : List.of();
  }
}
