// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.measure.Unit;
import org.jspecify.annotations.Nullable;

/** Says why a text's unit is not one of the kind asked for. */
final class UnitProblems {

  private static final int MOST_NAMED = 8;
  private static final String ANY = "quantity";
  private static final String SOME_UNITS = "kg, g, l, ml, m, mm, h";
  private static final Pattern RANGE =
      Pattern.compile(".*(?:[-–—\u2212…]|\\.\\.)(?: ?\\d.*)?|(?:.* )?(?:to|bis)(?: .*)?");
  private static final QuantityFormatter SIZES = QuantityFormatter.ofSignificantDigits(4);
  private static final QuantityFormatter GERMAN_SIZES = SIZES.withLocale(Locale.GERMAN);

  /** What a name may mean: how that is written, and its size. */
  private record Meaning(QuantityKind<?> kind, String written, double si) {}

  /** Names of several amounts for which no unit is defined. */
  private static final Map<String, List<Meaning>> AMOUNTS =
      Map.of(
          "pfund", List.of(mass("500 g", 0.5), mass("lb", 0.45359237)),
          "zentner", List.of(mass("50 kg", 50), mass("100 kg", 100)),
          "hundredweight", List.of(mass("100 lb", 45.359237), mass("112 lb", 50.80234544)));

  private static final Map<String, String> ALSO =
      Map.of(
          "pfunde", "pfund",
          "pfd", "pfund",
          "ztr", "zentner",
          "cwt", "hundredweight");

  private UnitProblems() {}

  private static Meaning mass(String written, double kilograms) {
    return new Meaning(QuantityKind.MASS, written, kilograms);
  }

  static Problem of(
      QuantityText text, String key, QuantityKind<?> kind, @Nullable UnitDefinition<?> found) {
    String shown = text.shown();
    if (found != null) {
      return wrongKind(shown, kind, found);
    }
    if (key.isEmpty()) {
      return Problem.of(UnitsProblem.MISSING_UNIT, shown)
          .with("expected", kind.id())
          .with("units", units(kind));
    }
    List<Meaning> meanings = meanings(key);
    return meanings.isEmpty() ? other(shown, key, kind) : ambiguous(shown, key, kind, meanings);
  }

  /** Says why a unit is not one of any kind. */
  static Problem ofAnyKind(QuantityText text, String key) {
    String shown = text.shown();
    if (key.isEmpty()) {
      return Problem.of(UnitsProblem.MISSING_UNIT, shown)
          .with("expected", ANY)
          .with("units", SOME_UNITS);
    }
    List<Meaning> meanings = meanings(key);
    return meanings.isEmpty() ? noQuantity(shown, key) : ambiguous(shown, key, inWords(meanings));
  }

  private static Problem noQuantity(String shown, String key) {
    if (TemperatureScale.find(key) != null) {
      return UnitsProblem.wrongKind(shown, ANY, "temperature").with("units", SOME_UNITS);
    }
    if (ShareReader.isFraction(key)) {
      return UnitsProblem.wrongKind(shown, ANY, "fraction").with("units", SOME_UNITS);
    }
    List<String> words = new ArrayList<>();
    UnitTables.tables().forEach(table -> words.addAll(table.words().keySet()));
    return unknown(shown, key, ANY, words, SOME_UNITS);
  }

  private static Problem wrongKind(String shown, QuantityKind<?> kind, UnitDefinition<?> found) {
    boolean ounce = kind == QuantityKind.VOLUME && found.symbol().equals("oz");
    Problem problem =
        ounce
            ? Problem.of(UnitsProblem.OUNCE_FOR_VOLUME, shown)
            : UnitsProblem.wrongKind(shown, kind.id(), found.kind().id());
    return problem.with("units", units(kind));
  }

  private static List<Meaning> meanings(String key) {
    String plain = UnitSpelling.plain(key);
    List<Meaning> amounts = AMOUNTS.get(ALSO.getOrDefault(plain, plain));
    return amounts != null
        ? amounts
        : UnitSpelling.choices(key).stream()
            .map(unit -> new Meaning(unit.kind(), unit.symbol(), unit.toSi(1)))
            .toList();
  }

  private static Problem ambiguous(
      String shown, String key, QuantityKind<?> kind, List<Meaning> meanings) {
    QuantityKind<?> found = meanings.get(0).kind();
    return found == kind
        ? ambiguous(shown, key, inWords(meanings))
        : UnitsProblem.wrongKind(shown, kind.id(), found.id()).with("units", units(kind));
  }

  static Problem ambiguous(String shown, String unit, Bilingual choices) {
    return Problem.of(UnitsProblem.AMBIGUOUS_UNIT, shown)
        .with("unit", Shown.text(unit))
        .with("choices", choices);
  }

  private static Bilingual inWords(List<Meaning> meanings) {
    return Bilingual.list(
        meanings.stream()
            .map(
                meaning ->
                    new Bilingual(inWords(meaning, SIZES), german(inWords(meaning, GERMAN_SIZES))))
            .toArray(Bilingual[]::new));
  }

  /** Names of kitchen measures and countries in German, as the parser reads them too. */
  private static String german(String choice) {
    return choice
        .replace("cup ", "Tasse ")
        .replace("tbsp ", "Esslöffel ")
        .replace("tsp ", "Teelöffel ")
        .replace(" metric", " metrisch")
        .replace(" US label", " US-Etikett");
  }

  /** With its size, unless it says that itself: "tsp US (4.929 ml)". */
  private static String inWords(Meaning meaning, QuantityFormatter sizes) {
    String size = size(meaning, sizes);
    return size.equals(meaning.written()) || size.equals("1 " + meaning.written())
        ? meaning.written()
        : meaning.written() + " (" + size + ")";
  }

  private static String size(Meaning meaning, QuantityFormatter sizes) {
    double si = meaning.si();
    if (meaning.kind() == QuantityKind.MASS) {
      return sizes.format(QuantityKind.MASS, si, si < 1 ? MetricUnits.GRAM : MetricUnits.KILOGRAM);
    }
    if (meaning.kind() == QuantityKind.VOLUME) {
      return sizes.format(QuantityKind.VOLUME, si, MetricUnits.MILLILITRE);
    }
    return inSiUnit(meaning.kind(), si, sizes);
  }

  private static <Q extends javax.measure.Quantity<Q>> String inSiUnit(
      QuantityKind<Q> kind, double si, QuantityFormatter sizes) {
    return sizes.format(kind, si, kind.siUnit());
  }

  /** Whether what follows a number is the second half of a range. */
  static boolean isRange(String key) {
    return RANGE.matcher(key).matches();
  }

  private static Problem other(String shown, String key, QuantityKind<?> kind) {
    if (isRange(key)) {
      return Problem.of(UnitsProblem.RANGE_GIVEN, shown);
    }
    if (TemperatureScale.find(key) != null) {
      return UnitsProblem.wrongKind(shown, kind.id(), "temperature").with("units", units(kind));
    }
    if (ShareReader.isFraction(key)) {
      return UnitsProblem.wrongKind(shown, kind.id(), "fraction").with("units", units(kind));
    }
    if (kind == QuantityKind.DENSITY && MaterialState.endsText(key)) {
      return Problem.of(UnitsProblem.DENSITY_STATE, shown);
    }
    if (UnitSpelling.isOfAnotherPrefix(key)) {
      return Problem.of(UnitsProblem.PREFIX_CASE, shown).with("unit", key);
    }
    return unknown(shown, key, kind.id(), words(kind), units(kind));
  }

  private static List<String> words(QuantityKind<?> kind) {
    List<String> words = new ArrayList<>();
    UnitTables.tables()
        .forEach(
            table ->
                table
                    .words()
                    .forEach(
                        (word, unit) -> {
                          if (unit.kind() == kind) {
                            words.add(word);
                          }
                        }));
    return words;
  }

  static Problem unknown(
      String shown, String key, String expected, List<String> words, String units) {
    return Problem.of(UnitsProblem.UNKNOWN_UNIT, shown)
        .with("unit", Shown.text(key))
        .with("expected", expected)
        .with("nearest", Nearest.of(key, words).orElse(""))
        .with("units", units);
  }

  /** A unit of another library that none of ours equals. */
  static Problem noSymbol(Unit<?> unit, String expected) {
    String shown = Shown.text(unit.toString());
    return Problem.of(UnitsProblem.UNKNOWN_UNIT, shown)
        .with("unit", shown)
        .with("expected", expected);
  }

  /** The metric units of a kind, which are at hand without loading the others. */
  static String units(QuantityKind<?> kind) {
    List<UnitDefinition<?>> units = new ArrayList<>();
    for (UnitDefinition<?> unit : MetricUnits.TABLE.definitions()) {
      if (unit.kind() == kind && units.size() < MOST_NAMED) {
        units.add(unit);
      }
    }
    return units.stream().map(UnitDefinition::symbol).collect(Collectors.joining(", "));
  }
}
