// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.jspecify.annotations.Nullable;

/**
 * The units of one holder and how people write them: symbols to the letter, words in any case.
 *
 * <p>How a unit is written stands in one text, the spellings parted by commas, as in "gram, grams".
 *
 * <p>What runs while a holder initialises is free of lambdas and of joined strings, whose first use
 * in a program costs more than the table itself.
 *
 * <p>Filled by its holder's initialiser and only read from then on.
 */
final class UnitTable {

  private final Map<String, UnitDefinition<?>> definitions = new LinkedHashMap<>();
  private final Map<String, UnitDefinition<?>> symbols = new HashMap<>();
  private final Map<String, UnitDefinition<?>> words = new HashMap<>();
  private final Map<String, List<UnitDefinition<?>>> shared = new HashMap<>();

  /** Adds a coherent SI unit that is written only as its symbol. */
  <Q extends Quantity<Q>> Unit<Q> si(QuantityKind<Q> kind) {
    return si(kind, "");
  }

  /** Adds a coherent SI unit. */
  <Q extends Quantity<Q>> Unit<Q> si(QuantityKind<Q> kind, String spellings) {
    return add(kind.siDefinition(), spellings);
  }

  /** Adds a unit of numerator / denominator SI units that is written only as its symbol. */
  <Q extends Quantity<Q>> Unit<Q> unit(
      QuantityKind<Q> kind, String symbol, long numerator, long denominator) {
    return unit(kind, symbol, numerator, denominator, "");
  }

  /** Adds a unit of numerator / denominator SI units. */
  <Q extends Quantity<Q>> Unit<Q> unit(
      QuantityKind<Q> kind, String symbol, long numerator, long denominator, String spellings) {
    return add(UnitDefinition.of(kind, symbol, numerator, denominator), spellings);
  }

  /**
   * Adds a unit whose bare names several countries share: they are read only with a word of the
   * country before or behind them.
   */
  <Q extends Quantity<Q>> Unit<Q> national(
      QuantityKind<Q> kind, String country, long numerator, long denominator, String spellings) {
    List<String> names = parted(spellings);
    UnitDefinition<Q> definition =
        UnitDefinition.of(kind, names.get(0).concat(country), numerator, denominator);
    add(definition, "");
    for (String name : names) {
      share(name, definition);
    }
    return definition.unit();
  }

  private <Q extends Quantity<Q>> Unit<Q> add(UnitDefinition<Q> definition, String spellings) {
    definitions.put(definition.symbol(), definition);
    symbols.put(key(definition.symbol()), definition);
    spell(definition, spellings);
    return definition.unit();
  }

  private void spell(UnitDefinition<?> definition, String spellings) {
    for (String spelling : parted(spellings)) {
      if (isWord(spelling)) {
        addWord(spelling, definition);
      } else {
        symbols.put(key(spelling), definition);
      }
    }
  }

  /** Adds spellings of a unit whose own name several countries share. */
  void also(Unit<?> unit, String spellings) {
    for (UnitDefinition<?> definition : definitions.values()) {
      if (definition.unit() == unit) {
        spell(definition, spellings);
      }
    }
  }

  /** The parts of a text between its commas, each without the space before it. */
  private static List<String> parted(String spellings) {
    List<String> parts = new ArrayList<>();
    int from = 0;
    while (from < spellings.length()) {
      int comma = spellings.indexOf(", ", from);
      int to = comma < 0 ? spellings.length() : comma;
      parts.add(spellings.substring(from, to));
      from = to + 2;
    }
    return parts;
  }

  private void addWord(String word, UnitDefinition<?> definition) {
    words.put(word.toLowerCase(Locale.ROOT), definition);
  }

  /** A word is read in any case, a symbol to the letter: Mg is not mg. */
  private static boolean isWord(String spelling) {
    for (int i = 0; i < spelling.length(); i++) {
      char c = spelling.charAt(i);
      if (c != ' ' && !Character.isLetter(c)) {
        return false;
      }
    }
    return spelling.length() > 3;
  }

  /** Marks a name as one that several units share, so that it is refused with the choices. */
  void shared(String name, Unit<?> unit) {
    for (UnitDefinition<?> definition : definitions.values()) {
      if (definition.unit() == unit) {
        share(name, definition);
      }
    }
  }

  private void share(String name, UnitDefinition<?> definition) {
    String key = name.toLowerCase(Locale.ROOT);
    List<UnitDefinition<?>> sharing = shared.get(key);
    if (sharing == null) {
      sharing = new ArrayList<>();
      shared.put(key, sharing);
    }
    sharing.add(definition);
  }

  /** The units that share a bare name, in lower case; empty if it is none. */
  List<UnitDefinition<?>> choices(String name) {
    return shared.getOrDefault(name, List.of());
  }

  Iterable<UnitDefinition<?>> definitions() {
    return definitions.values();
  }

  @Nullable UnitDefinition<?> find(String key) {
    UnitDefinition<?> found = symbols.get(key);
    return found != null ? found : words.get(key.toLowerCase(Locale.ROOT));
  }

  /** How else a unit is written; names that need a country stand in parentheses, without it. */
  List<String> spellings(UnitDefinition<?> unit) {
    Set<String> spellings = new TreeSet<>();
    for (Map.Entry<String, List<UnitDefinition<?>>> name : shared.entrySet()) {
      if (name.getValue().contains(unit)) {
        spellings.add("(" + name.getKey() + ")");
      }
    }
    addSpellings(unit, symbols, spellings);
    addSpellings(unit, words, spellings);
    return List.copyOf(spellings);
  }

  private static void addSpellings(
      UnitDefinition<?> unit, Map<String, UnitDefinition<?>> from, Set<String> into) {
    from.forEach(
        (spelling, definition) -> {
          if (definition == unit && !spelling.equals(key(unit.symbol()))) {
            into.add(spelling);
          }
        });
  }

  /** How each unit's symbol may be written, to the letter. */
  Map<String, UnitDefinition<?>> symbols() {
    return symbols;
  }

  /** The words that are read in any case, in lower case. */
  Map<String, UnitDefinition<?>> words() {
    return words;
  }

  /**
   * The form that spellings are compared in: one space between words, "m³" and "m^3" as "m3", each
   * of two micro signs as one.
   */
  static String key(CharSequence spelling) {
    int same = 0;
    while (same < spelling.length() && isPlain(spelling.charAt(same))) {
      same++;
    }
    return same == spelling.length() ? spelling.toString() : rewritten(spelling);
  }

  /** Letters, digits and signs that stand for themselves. */
  private static boolean isPlain(char c) {
    return c > ' ' && c < '\u007f' && c != '^' && c != '*';
  }

  private static String rewritten(CharSequence spelling) {
    StringBuilder key = new StringBuilder(spelling.length());
    for (int i = 0; i < spelling.length(); i++) {
      char c = canonical(spelling.charAt(i));
      boolean doubled = c == ' ' && (key.length() == 0 || key.charAt(key.length() - 1) == ' ');
      if (c != 0 && !doubled) {
        key.append(c);
      }
    }
    return key.toString().stripTrailing();
  }

  private static char canonical(char c) {
    return switch (c) {
      case '^' -> 0;
      case '²' -> '2';
      case '³' -> '3';
      case '\u03bc' -> '\u00b5';
      case '·', '\u22c5', '*' -> ' ';
      default -> QuantityText.isSpace(c) ? ' ' : c;
    };
  }
}
