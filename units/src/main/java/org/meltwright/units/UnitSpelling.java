// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Units written in other ways than the tables list: "KG", "68-ounce", "square meters", "grams per
 * ml", "U.S. cups".
 *
 * <p>Asked only when the tables do not know a spelling, so that the usual ones cost nothing.
 */
final class UnitSpelling {

  /** Symbols of milli or mega, in lower case: another case of the first letter is the other. */
  private static final Map<String, String> MILLI_OR_MEGA =
      Map.ofEntries(
          Map.entry("mg", "mg"),
          Map.entry("mgs", "mg"),
          Map.entry("ml", "ml"),
          Map.entry("mls", "ml"),
          Map.entry("mm", "mm"),
          Map.entry("mms", "mm"),
          Map.entry("mm2", "mm²"),
          Map.entry("mm3", "mm³"),
          Map.entry("mbar", "mbar"),
          Map.entry("mw", "mW"),
          Map.entry("mpa", "mPa"),
          Map.entry("ms", "ms"),
          Map.entry("mj", "MJ"));

  /** Letters that by themselves mean something else in the other case. */
  private static final Set<String> OTHER_LETTER = Set.of("T", "p", "M");

  private static final Pattern WORD = Pattern.compile("[\\p{L}µ0-9]+");

  private static final Map<String, String> COUNTRIES =
      Map.ofEntries(
          Map.entry("us", " US"),
          Map.entry("usa", " US"),
          Map.entry("us label", " US label"),
          Map.entry("us food label", " US label"),
          Map.entry("us etikett", " US label"),
          Map.entry("imp", " imp"),
          Map.entry("imperial", " imp"),
          Map.entry("uk", " imp"),
          Map.entry("brit", " imp"),
          Map.entry("british", " imp"),
          Map.entry("britisch", " imp"),
          Map.entry("metric", " metric"),
          Map.entry("metrisch", " metric"));

  private static final Pattern SQUARE = Pattern.compile("(?:square|sq|quadrat) ?(.+)");
  private static final Pattern CUBIC = Pattern.compile("(?:cubic|cu|kubik) ?(.+)");
  private static final Pattern PER = Pattern.compile("(.+?)(?: ?/ ?| per | pro | je )(.+)");

  private static final Pattern HYPHEN = Pattern.compile("(?<=\\p{L})[-\u2010\u2011](?=\\p{L})");
  private static final Pattern PARENTHESES = Pattern.compile("\\(([^()]*)\\)");
  private static final Pattern ABBREVIATION = Pattern.compile("(\\p{L}{2,})\\.(?=\\p{L})");
  private static final Pattern DOT = Pattern.compile("\\.");

  private UnitSpelling() {}

  static @Nullable UnitDefinition<?> find(String key) {
    if (isOfAnotherCase(key)) {
      return null;
    }
    String plain = plain(key);
    UnitDefinition<?> found = words(plain);
    return found == null ? ByLowerCase.SYMBOLS.get(plain) : found;
  }

  /** The units that share a bare name, written in any of these ways; empty if it is none. */
  static List<UnitDefinition<?>> choices(String key) {
    String plain = plain(key);
    List<UnitDefinition<?>> choices = UnitTables.choices(plain);
    if (choices.isEmpty() && mayBePlural(plain)) {
      choices = UnitTables.choices(plain.substring(0, plain.length() - 1));
    }
    Matcher per = PER.matcher(plain);
    return choices.isEmpty() && per.matches() ? choicesPer(per.group(1), per.group(2)) : choices;
  }

  /** "pounds per gallon" is "lb/gal", which several units share. */
  private static List<UnitDefinition<?>> choicesPer(String upper, String lower) {
    UnitDefinition<?> above = UnitTables.find(upper);
    List<UnitDefinition<?>> below = choices(lower);
    if (above == null || below.isEmpty()) {
      return List.of();
    }
    String national = below.get(0).symbol();
    String name = national.substring(0, national.lastIndexOf(' '));
    return UnitTables.choices(above.symbol() + "/" + name);
  }

  /**
   * Lower case, a hyphen within as a space, no pair of parentheses; a dot ends an abbreviation,
   * which a space parts from what follows unless it is a single letter: "sq.ft." is "sq ft", "U.S."
   * is "us".
   */
  static String plain(String key) {
    String bare = PARENTHESES.matcher(key.toLowerCase(Locale.ROOT)).replaceAll("$1");
    String parted = HYPHEN.matcher(bare).replaceAll(" ");
    return UnitTable.key(
        DOT.matcher(ABBREVIATION.matcher(parted).replaceAll("$1 ")).replaceAll(""));
  }

  private static @Nullable UnitDefinition<?> words(String plain) {
    UnitDefinition<?> found = UnitTables.listed(plain);
    if (found == null) {
      found = power(plain);
    }
    if (found == null) {
      found = quotient(plain);
    }
    if (found == null) {
      found = national(plain);
    }
    return found == null && mayBePlural(plain)
        ? words(plain.substring(0, plain.length() - 1))
        : found;
  }

  /** "kgs", "hrs", "Litern"; two letters are none: "ms" is not m. */
  private static boolean mayBePlural(String plain) {
    return (plain.endsWith("s") && plain.length() > 2)
        || (plain.endsWith("n") && plain.length() > 4);
  }

  private static @Nullable UnitDefinition<?> power(String plain) {
    Matcher square = SQUARE.matcher(plain);
    if (square.matches()) {
      return power(square.group(1), '2');
    }
    Matcher cubic = CUBIC.matcher(plain);
    return cubic.matches() ? power(cubic.group(1), '3') : null;
  }

  private static @Nullable UnitDefinition<?> power(String length, char exponent) {
    UnitDefinition<?> base = UnitTables.find(length);
    return base != null && base.kind() == QuantityKind.LENGTH
        ? UnitTables.listed(base.symbol() + exponent)
        : null;
  }

  private static @Nullable UnitDefinition<?> quotient(String plain) {
    Matcher per = PER.matcher(plain);
    if (!per.matches()) {
      return null;
    }
    UnitDefinition<?> upper = UnitTables.find(per.group(1));
    UnitDefinition<?> lower = UnitTables.find(per.group(2));
    return upper == null || lower == null
        ? null
        : UnitTables.listed(UnitTable.key(upper.symbol() + "/" + lower.symbol()));
  }

  /** A shared name with a word of its country before or behind it. */
  private static @Nullable UnitDefinition<?> national(String plain) {
    for (Map.Entry<String, String> country : COUNTRIES.entrySet()) {
      String word = country.getKey();
      UnitDefinition<?> found = null;
      if (plain.startsWith(word + " ")) {
        found = national(plain.substring(word.length() + 1), country.getValue());
      }
      if (found == null && plain.endsWith(" " + word)) {
        found =
            national(plain.substring(0, plain.length() - word.length() - 1), country.getValue());
      }
      if (found != null) {
        return found;
      }
    }
    return null;
  }

  private static @Nullable UnitDefinition<?> national(String name, String country) {
    for (UnitDefinition<?> choice : choices(name)) {
      if (choice.symbol().endsWith(country)) {
        return choice;
      }
    }
    return null;
  }

  /** Whether one of the words of a spelling means something else in the other case. */
  private static boolean isOfAnotherCase(String key) {
    return WORD.matcher(key)
        .results()
        .anyMatch(word -> OTHER_LETTER.contains(word.group()) || isOfAnotherPrefix(word.group()));
  }

  /** Whether a symbol would be one of milli if its first letter were small, or the other way. */
  static boolean isOfAnotherPrefix(String word) {
    String known = MILLI_OR_MEGA.get(word.toLowerCase(Locale.ROOT));
    return known != null && known.charAt(0) != word.charAt(0);
  }

  /** Apart, so that it is made only when a symbol is not known as it is written. */
  private static final class ByLowerCase {

    static final Map<String, UnitDefinition<?>> SYMBOLS = symbols();

    private ByLowerCase() {}

    private static Map<String, UnitDefinition<?>> symbols() {
      Map<String, UnitDefinition<?>> symbols = new HashMap<>();
      Set<String> twofold = new HashSet<>(); // "mw": milli or mega
      for (UnitTable table : UnitTables.tables().toList()) {
        for (Map.Entry<String, UnitDefinition<?>> symbol : table.symbols().entrySet()) {
          String lower = symbol.getKey().toLowerCase(Locale.ROOT);
          UnitDefinition<?> other = symbols.put(lower, symbol.getValue());
          if (other != null && other != symbol.getValue()) {
            twofold.add(lower);
          }
        }
      }
      symbols.keySet().removeAll(twofold);
      return symbols;
    }
  }
}
