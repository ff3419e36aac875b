// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Words that stand for a number in front of a unit: "a kilo", "half an hour", "anderthalb Liter",
 * "five hundred grams", "eine Viertelstunde".
 *
 * <p>Numerals up to twelve, the tens and the hundreds; longer ones are not read.
 */
final class NumberWords {

  private static final int MOST_WORDS = 5;

  private static final String[] ENGLISH = {
    "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"
  };
  private static final String[] GERMAN = {
    "zwei", "drei", "vier", "fünf", "sechs", "sieben", "acht", "neun", "zehn", "elf", "zwölf"
  };
  private static final String[] ENGLISH_TENS = {
    "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"
  };
  private static final String[] GERMAN_TENS = {
    "zwanzig", "dreißig", "vierzig", "fünfzig", "sechzig", "siebzig", "achtzig", "neunzig"
  };

  static final Map<String, Double> NUMBERS = numbers();

  /** German fractions that are written in one word with their unit, as in "Viertelliter". */
  static final Map<String, Double> JOINED =
      Map.of(
          "ein viertel", 0.25,
          "eine viertel", 0.25,
          "eine dreiviertel", 0.75,
          "ein dreiviertel", 0.75,
          "ein achtel", 0.125);

  /** Shares that are said in words alone. */
  static final Map<String, Double> SHARES =
      Map.ofEntries(
          Map.entry("half", 1 / 2.0),
          Map.entry("a half", 1 / 2.0),
          Map.entry("one half", 1 / 2.0),
          Map.entry("die hälfte", 1 / 2.0),
          Map.entry("a third", 1 / 3.0),
          Map.entry("one third", 1 / 3.0),
          Map.entry("ein drittel", 1 / 3.0),
          Map.entry("two thirds", 2 / 3.0),
          Map.entry("zwei drittel", 2 / 3.0),
          Map.entry("a quarter", 1 / 4.0),
          Map.entry("one quarter", 1 / 4.0),
          Map.entry("ein viertel", 1 / 4.0),
          Map.entry("three quarters", 3 / 4.0),
          Map.entry("drei viertel", 3 / 4.0),
          Map.entry("an eighth", 1 / 8.0),
          Map.entry("one eighth", 1 / 8.0),
          Map.entry("ein achtel", 1 / 8.0),
          Map.entry("a tenth", 1 / 10.0),
          Map.entry("one tenth", 1 / 10.0),
          Map.entry("ein zehntel", 1 / 10.0));

  /** What may stand behind the unit of a whole number, as in "an hour and a half". */
  private static final Map<String, Double> BEHIND =
      Map.of(
          " and a half", 1 / 2.0,
          " and a quarter", 1 / 4.0,
          " and three quarters", 3 / 4.0);

  private NumberWords() {}

  private static Map<String, Double> numbers() {
    Map<String, Double> numbers = new HashMap<>();
    add(numbers, 1, "a", "an", "one", "ein", "eine", "einen");
    add(numbers, 0.5, "half a", "half an", "a half", "one half");
    add(numbers, 0.5, "ein halbes", "ein halber", "eine halbe", "einen halben");
    add(numbers, 0.25, "a quarter of a", "a quarter of an", "quarter of a", "quarter of an");
    add(numbers, 1.5, "one and a half", "anderthalb", "eineinhalb");
    add(numbers, 2.5, "two and a half", "zweieinhalb");
    add(numbers, 100, "hundred", "a hundred", "one hundred", "hundert", "einhundert");
    for (int i = 0; i < ENGLISH.length; i++) {
      add(numbers, i + 2, ENGLISH[i], GERMAN[i]);
      add(numbers, (i + 2) * 100, ENGLISH[i] + " hundred", GERMAN[i] + "hundert");
    }
    for (int i = 0; i < ENGLISH_TENS.length; i++) {
      add(numbers, (i + 2) * 10, ENGLISH_TENS[i], GERMAN_TENS[i]);
    }
    return numbers;
  }

  private static void add(Map<String, Double> numbers, double value, String... words) {
    for (String word : words) {
      numbers.put(word, value);
    }
  }

  /** Moves past the longest such words; the number, or null if none stand here. */
  static @Nullable Double skip(TextCursor text) {
    for (Map.Entry<String, Double> joined : JOINED.entrySet()) {
      if (text.skipPrefix(joined.getKey())) {
        return joined.getValue();
      }
    }
    for (int count = MOST_WORDS; count > 0; count--) {
      String words = text.nextWords(count);
      Double number = NUMBERS.get(words.toLowerCase(Locale.ROOT));
      if (number != null && text.skipWord(words)) {
        return number;
      }
    }
    return null;
  }

  /** How a unit ends that says a fraction more of it; null if it does not. */
  static Map.@Nullable Entry<String, Double> behind(String words) {
    for (Map.Entry<String, Double> fraction : BEHIND.entrySet()) {
      if (words.toLowerCase(Locale.ROOT).endsWith(fraction.getKey())) {
        return fraction;
      }
    }
    return null;
  }

  /** The number that one word says; null if it says none. */
  static @Nullable Double value(String word) {
    return NUMBERS.get(word.toLowerCase(Locale.ROOT));
  }

  /** The share that words say; null if they say none. */
  static @Nullable Double share(String words) {
    return SHARES.get(words.toLowerCase(Locale.ROOT));
  }
}
