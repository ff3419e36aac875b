// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.meltwright.safety.hazard.SheetToken.Kind;

/**
 * The words by which sheets say classes, routes and limits, as {@code sheet-words.txt} has them.
 */
final class SheetWords {

  /** What a spelling is a word for. */
  enum Sort {
    /** One or several names of classes of the law. */
    CLASS,
    /** A class that only a test of the mixture can tell; the target lists its statements. */
    PHYSICAL,
    /** A word of the rules, named by the target. */
    WORD,
    /** A heading of the form. */
    HEADING,
    /** A word that doubts, asked of names alone. */
    DOUBT
  }

  /** What a spelling means. */
  record Meaning(Sort sort, String target) {

    boolean is(String word) {
      return sort == Sort.WORD && target.equals(word);
    }

    /** The names of the law, without the route that some spellings have in them. */
    List<String> names() {
      int bracket = target.indexOf(" (");
      return List.of((bracket < 0 ? target : target.substring(0, bracket)).split(" / ", -1));
    }

    /** The route of uptake that the spelling names: "acute oral toxicity". */
    Optional<String> route() {
      int bracket = target.indexOf(" (");
      return bracket < 0
          ? Optional.empty()
          : Optional.of(target.substring(bracket + 2, target.length() - 1));
    }

    /** The class that only a test can tell. */
    HazardClass physicalClass() {
      return HazardClass.ofId(target.substring(0, target.indexOf(' ')));
    }

    boolean isClass() {
      return sort == Sort.CLASS || sort == Sort.PHYSICAL;
    }
  }

  /** A meaning that was found, and the place behind it. */
  record Match(Meaning meaning, int end) {}

  private static final class Node {
    final Map<String, Node> next = new HashMap<>();
    @Nullable Meaning meaning;
  }

  private static final List<List<String>> ROWS = TextTable.rows("sheet-words.txt");
  private static final Node ROOT = tree();

  private SheetWords() {}

  /** The rows of the list: sort, target, and the spellings in English, German and others. */
  static List<List<String>> rows() {
    return ROWS;
  }

  private static Node tree() {
    Node root = new Node();
    for (List<String> row : ROWS) {
      if (isDoubt(row)) {
        continue;
      }
      Meaning meaning = new Meaning(Sort.valueOf(row.get(0).toUpperCase(Locale.ROOT)), row.get(1));
      row.subList(2, row.size())
          .forEach(cell -> TextTable.items(cell, ";").forEach(s -> plant(root, s, meaning)));
    }
    return root;
  }

  private static boolean isDoubt(List<String> row) {
    return row.get(0).equals("doubt");
  }

  /** The words that doubt what is said of classes, in all languages. */
  static List<String> doubts() {
    return ROWS.stream()
        .filter(SheetWords::isDoubt)
        .flatMap(row -> row.subList(2, row.size()).stream())
        .flatMap(cell -> TextTable.items(cell, ";").stream())
        .toList();
  }

  private static void plant(Node root, String spelling, Meaning meaning) {
    Node node = root;
    for (SheetToken token : SheetLexer.tokens(SheetLexer.plain(spelling))) {
      if (!token.isMark()) {
        node = node.next.computeIfAbsent(key(token), k -> new Node());
      }
    }
    if (node.meaning != null && !node.meaning.equals(meaning)) {
      throw new IllegalStateException("two meanings of \"" + spelling + "\"");
    }
    node.meaning = meaning;
  }

  /** Words compare without case, and with umlauts written either way. */
  static String key(SheetToken token) {
    return token
        .text()
        .toLowerCase(Locale.ROOT)
        .replace("ä", "ae")
        .replace("ö", "oe")
        .replace("ü", "ue")
        .replace("ß", "ss");
  }

  /** The longest spelling that starts at a place; marks between its words do not matter. */
  static Optional<Match> match(List<SheetToken> tokens, int from) {
    Node node = ROOT;
    Match longest = null;
    int lines = 0;
    for (int i = from; i < tokens.size() && lines <= 1; i++) {
      SheetToken token = tokens.get(i);
      if (token.isMark() && i > from) {
        lines += token.is(Kind.NEWLINE) ? 1 : 0;
        continue;
      }
      node = node.next.get(key(token));
      if (node == null) {
        break;
      }
      longest = node.meaning == null ? longest : new Match(node.meaning, i + 1);
    }
    return Optional.ofNullable(longest);
  }
}
