// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;

/** Reads shares of a whole. */
final class ShareReader {

  private static final String MASS = "mass-fraction";
  private static final String VOLUME = "volume-fraction";
  private static final String UNITS = "%, ‰, ppm";

  /** How many of a sign make one; some say the basis themselves. */
  static final Map<String, FractionUnit> QUOTIENTS =
      Map.of(
          "g/kg", new FractionUnit(1000, MASS),
          "mg/kg", new FractionUnit(1e6, MASS),
          "g/100 g", new FractionUnit(100, MASS),
          "g per 100 g", new FractionUnit(100, MASS),
          "g pro 100 g", new FractionUnit(100, MASS),
          "ml/l", new FractionUnit(1000, VOLUME),
          "ml/100 ml", new FractionUnit(100, VOLUME));

  /** How many of a sign make one. */
  static final Map<String, Double> SIGNS =
      Map.ofEntries(
          Map.entry("%", 100.0),
          Map.entry("percent", 100.0),
          Map.entry("per cent", 100.0),
          Map.entry("prozent", 100.0),
          Map.entry("pct", 100.0),
          Map.entry("\u2030", 1000.0),
          Map.entry("per mille", 1000.0),
          Map.entry("promille", 1000.0),
          Map.entry("ppm", 1e6));

  /** Words that say the basis, before the sign or behind it. */
  static final Map<String, String> BASES =
      Map.ofEntries(
          Map.entry("by mass", MASS),
          Map.entry("by weight", MASS),
          Map.entry("by wt", MASS),
          Map.entry("w/w", MASS),
          Map.entry("m/m", MASS),
          Map.entry("wt", MASS),
          Map.entry("weight", MASS),
          Map.entry("mass", MASS),
          Map.entry("masse", MASS),
          Map.entry("massen", MASS),
          Map.entry("massenanteil", MASS),
          Map.entry("ma", MASS),
          Map.entry("gew", MASS),
          Map.entry("gewichts", MASS),
          Map.entry("gewichtsanteil", MASS),
          Map.entry("by volume", VOLUME),
          Map.entry("by vol", VOLUME),
          Map.entry("v/v", VOLUME),
          Map.entry("vol", VOLUME),
          Map.entry("volume", VOLUME),
          Map.entry("volumen", VOLUME),
          Map.entry("volumenanteil", VOLUME),
          Map.entry("abv", VOLUME));

  /** Words for a mass in a volume, which is no share. */
  private static final Set<String> MASS_PER_VOLUME = Set.of("w/v", "m/v");

  /** How many of it make one, and the basis if it says one. */
  record FractionUnit(double perOne, @Nullable String basis) {}

  private ShareReader() {}

  static boolean isFraction(String key) {
    return unit(plain(key)) != null;
  }

  /** Lower case, hyphens as spaces, without dots and parentheses. */
  private static String plain(String key) {
    String plain = key.toLowerCase(Locale.ROOT).replace('-', ' ');
    return UnitTable.key(plain.replace(".", "").replace("(", "").replace(")", ""));
  }

  private static @Nullable FractionUnit unit(String plain) {
    Double alone = SIGNS.get(plain);
    if (alone != null) {
      return new FractionUnit(alone, null);
    }
    FractionUnit quotient = QUOTIENTS.get(plain);
    if (quotient != null) {
      return quotient;
    }
    for (Map.Entry<String, Double> sign : SIGNS.entrySet()) {
      String basis = BASES.get(without(plain, sign.getKey()));
      if (basis != null) {
        return new FractionUnit(sign.getValue(), basis);
      }
    }
    return null;
  }

  /** What stands before or behind the sign; empty if the sign is not there. */
  private static String without(String plain, String sign) {
    if (plain.startsWith(sign)) {
      return plain.substring(sign.length()).strip();
    }
    return plain.endsWith(sign) ? plain.substring(0, plain.length() - sign.length()).strip() : "";
  }

  static MassFraction massFraction(QuantityText text) {
    return inPercent(text, MASS, MassFraction::ofPercent, MassFraction::of);
  }

  static VolumeFraction volumeFraction(QuantityText text) {
    return inPercent(text, VOLUME, VolumeFraction::ofPercent, VolumeFraction::of);
  }

  /** Per cent go their own way, so that 12.5 % is the double next to 0.125. */
  private static <T> T inPercent(
      QuantityText text, String basis, DoubleFunction<T> percent, DoubleFunction<T> share) {
    text.refuseDeviation();
    Double words = NumberWords.share(text.remaining());
    if (words != null) {
      return share.apply(words);
    }
    text.readNumber();
    double value = text.value();
    BigDecimal precise = text.precise();
    FractionUnit unit = unit(text, basis);
    double whole = precise == null ? value / unit.perOne : exactly(precise, unit);
    if (!(whole >= 0 && whole <= 1)) {
      throw outside(text.shown(), basis);
    }
    return unit.perOne == 100 && precise == null ? percent.apply(value) : share.apply(whole);
  }

  private static double exactly(BigDecimal value, FractionUnit unit) {
    return value.divide(BigDecimal.valueOf(unit.perOne)).doubleValue();
  }

  /** As it was written, not as the number that it is of one. */
  private static ProblemException outside(String shown, String basis) {
    return new ProblemException(
        Problem.of(UnitsProblem.VALUE_OUT_OF_RANGE, shown)
            .with("what", UnitsProblem.CHECK.name(basis.replace('-', ' ')))
            .with("low", "0 %")
            .with("high", "100 %"));
  }

  private static FractionUnit unit(QuantityText text, String basis) {
    String key = UnitTable.key(text.rest());
    String plain = SIGNS.containsKey(key) ? key : plain(key);
    FractionUnit unit = unit(plain);
    if (unit == null) {
      throw new ProblemException(notAFraction(text.shown(), key, plain, basis));
    }
    if (unit.basis != null && !unit.basis.equals(basis)) {
      throw new ProblemException(
          Problem.of(UnitsProblem.FRACTION_WRONG_BASIS, text.shown())
              .with("expected", basis)
              .with("kind", unit.basis));
    }
    return unit;
  }

  private static Problem notAFraction(String shown, String key, String plain, String basis) {
    if (key.isEmpty()) {
      return Problem.of(UnitsProblem.FRACTION_WITHOUT_UNIT, shown).with("expected", basis);
    }
    if (UnitProblems.isRange(key)) {
      return Problem.of(UnitsProblem.RANGE_GIVEN, shown);
    }
    if (isMassPerVolume(plain)) {
      return Problem.of(UnitsProblem.FRACTION_MASS_PER_VOLUME, shown).with("expected", basis);
    }
    UnitDefinition<?> unit = UnitTables.find(key);
    return unit != null
        ? UnitsProblem.wrongKind(shown, basis, unit.kind().id()).with("units", UNITS)
        : UnitProblems.unknown(shown, key, basis, List.of("percent", "prozent"), UNITS);
  }

  private static boolean isMassPerVolume(String plain) {
    return SIGNS.keySet().stream().anyMatch(sign -> MASS_PER_VOLUME.contains(without(plain, sign)))
        || MASS_PER_VOLUME.contains(plain);
  }
}
