// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** "Did you mean": a hint is never wrong by a power of ten; no hint is better than a false one. */
class HintsTest {

  /** The prefixes of the SI, and their powers of ten. */
  private static final Map<String, Integer> PREFIXES =
      Map.ofEntries(
          Map.entry("giga", 9),
          Map.entry("mega", 6),
          Map.entry("kilo", 3),
          Map.entry("hecto", 2),
          Map.entry("hekto", 2),
          Map.entry("deca", 1),
          Map.entry("deka", 1),
          Map.entry("", 0),
          Map.entry("deci", -1),
          Map.entry("dezi", -1),
          Map.entry("centi", -2),
          Map.entry("zenti", -2),
          Map.entry("milli", -3),
          Map.entry("micro", -6),
          Map.entry("mikro", -6),
          Map.entry("nano", -9),
          Map.entry("pico", -12));

  private static final Map<String, QuantityKind<?>> ROOTS =
      Map.of(
          "gram", QuantityKind.MASS,
          "gramm", QuantityKind.MASS,
          "litre", QuantityKind.VOLUME,
          "liter", QuantityKind.VOLUME,
          "metre", QuantityKind.LENGTH,
          "meter", QuantityKind.LENGTH,
          "watt", QuantityKind.POWER,
          "joule", QuantityKind.ENERGY,
          "pascal", QuantityKind.PRESSURE);

  private static String hint(String unit, QuantityKind<?> kind) {
    ProblemException refused =
        catchThrowableOfType(
            ProblemException.class, () -> QuantityParser.localeFree().parse("3 " + unit, kind));
    return refused == null ? "" : refused.problems().get(0).details().getOrDefault("nearest", "");
  }

  private static double size(String unit) {
    return UnitTables.find(UnitTable.key(unit)).toSi(1);
  }

  @Test
  void hint_for_any_prefix_of_any_unit_is_that_unit_or_none() {
    List<String> wrong = new ArrayList<>();
    ROOTS.forEach(
        (root, kind) ->
            PREFIXES.forEach(
                (prefix, power) -> {
                  String hint = hint(prefix + root, kind);
                  double meant = size(root) * Math.pow(10, power);
                  if (!hint.isEmpty() && Math.abs(size(hint) / meant - 1) > 1e-9) {
                    wrong.add(prefix + root + " -> " + hint);
                  }
                }));

    assertThat(wrong).isEmpty();
  }

  /** One letter of a prefixed unit lost, doubled or replaced, wherever it stands. */
  @Property(tries = 10_000)
  boolean a_misspelt_unit_is_hinted_at_as_itself_or_not_at_all(
      @ForAll @IntRange(min = 0, max = 16) int prefixIndex,
      @ForAll @IntRange(min = 0, max = 8) int rootIndex,
      @ForAll @IntRange(min = 0, max = 11) int at,
      @ForAll @IntRange(min = 0, max = 27) int change) {
    List<String> prefixes = PREFIXES.keySet().stream().sorted().toList();
    List<String> roots = ROOTS.keySet().stream().sorted().toList();
    String root = roots.get(rootIndex);
    String prefix = prefixes.get(prefixIndex);
    String misspelt = misspelt(prefix + root, at, change);
    String hint = hint(misspelt, ROOTS.get(root));
    double meant = size(root) * Math.pow(10, PREFIXES.get(prefix));
    return hint.isEmpty() || Math.abs(size(hint) / meant - 1) < 1e-9;
  }

  private static String misspelt(String word, int at, int change) {
    int place = at % word.length();
    StringBuilder changed = new StringBuilder(word);
    if (change == 26) {
      return changed.deleteCharAt(place).toString();
    }
    if (change == 27) {
      return changed.insert(place, word.charAt(place)).toString();
    }
    changed.setCharAt(place, (char) ('a' + change));
    return changed.toString();
  }

  @ParameterizedTest
  @CsvSource({
    "MASS,Mg",
    "MASS,dkgg",
    "MASS,Gran",
    "MASS,ugg",
    "LENGTH,umm",
    "AREA,dm4",
    "VOLUME,EEL",
    "MASS,pfundd",
    "MASS,milogram"
  })
  void symbols_and_unclear_words_have_no_hint(String kind, String unit) {
    QuantityKind<?> asked =
        QuantityKind.all().stream()
            .filter(k -> k.id().equals(kind.toLowerCase(Locale.ROOT)))
            .findFirst()
            .orElseThrow();
    assertThat(hint(unit, asked)).isEmpty();
  }

  @Test
  void an_unknown_unit_without_a_hint_says_what_there_is() {
    ProblemException refused =
        catchThrowableOfType(
            ProblemException.class, () -> QuantityParser.localeFree().parseMass("3 qqq"));
    Problem problem = refused.problems().get(0);

    assertThat(problem.remedy(Locale.ENGLISH))
        .isEqualTo("Write a unit that stands in the list of units.");
    assertThat(problem.allowed(Locale.ENGLISH)).contains("such as kg, g,");
  }
}
