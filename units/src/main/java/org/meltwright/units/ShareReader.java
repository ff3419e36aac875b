// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads shares of a whole: fractions and mixing ratios. */
final class ShareReader {

  private static final String MASS = "mass-fraction";
  private static final String VOLUME = "volume-fraction";

  private static final Map<String, FractionUnit> UNITS = units();

  /** How many of it make one, and the basis if it says one. */
  private record FractionUnit(double perOne, @Nullable String basis) {}

  private ShareReader() {}

  private static Map<String, FractionUnit> units() {
    Map<String, FractionUnit> units = new HashMap<>();
    add(units, 100, "%", "percent", "per cent", "prozent");
    add(units, 1000, "\u2030", "per mille", "promille");
    add(units, 1e6, "ppm");
    for (String word : List.of("wt%", "wt.-%", "wt %", "gew.-%", "masse-%", "mass-%", "ma.-%")) {
      units.put(word, new FractionUnit(100, MASS));
    }
    for (String word : List.of("vol%", "vol.-%", "vol.%", "vol %", "vol-%", "volumen-%")) {
      units.put(word, new FractionUnit(100, VOLUME));
    }
    return units;
  }

  private static void add(Map<String, FractionUnit> units, double perOne, String... signs) {
    for (String sign : signs) {
      units.put(sign, new FractionUnit(perOne, null));
      for (String word : List.of("by mass", "by weight", "w/w", "m/m", "(w/w)", "(m/m)")) {
        units.put(sign.concat(" ").concat(word), new FractionUnit(perOne, MASS));
      }
      for (String word : List.of("by volume", "v/v", "(v/v)")) {
        units.put(sign.concat(" ").concat(word), new FractionUnit(perOne, VOLUME));
      }
    }
  }

  static boolean isFraction(String key) {
    return UNITS.containsKey(key.toLowerCase(Locale.ROOT));
  }

  static MassFraction massFraction(QuantityText text) {
    text.readNumber();
    double value = text.value();
    BigDecimal precise = text.precise();
    FractionUnit unit = unit(text, MASS);
    return unit.perOne == 100 && precise == null
        ? MassFraction.ofPercent(value)
        : MassFraction.of(share(value, precise, unit));
  }

  static VolumeFraction volumeFraction(QuantityText text) {
    text.readNumber();
    double value = text.value();
    BigDecimal precise = text.precise();
    FractionUnit unit = unit(text, VOLUME);
    return unit.perOne == 100 && precise == null
        ? VolumeFraction.ofPercent(value)
        : VolumeFraction.of(share(value, precise, unit));
  }

  private static double share(double value, @Nullable BigDecimal precise, FractionUnit unit) {
    return precise == null
        ? value / unit.perOne
        : precise.divide(BigDecimal.valueOf(unit.perOne)).doubleValue();
  }

  private static FractionUnit unit(QuantityText text, String basis) {
    String key = UnitTable.key(text.rest());
    FractionUnit unit = UNITS.get(key.toLowerCase(Locale.ROOT));
    if (unit == null) {
      throw new ProblemException(notAFraction(text.shown(), key, basis));
    }
    if (unit.basis != null && !unit.basis.equals(basis)) {
      throw new ProblemException(
          Problem.of(UnitsProblem.FRACTION_WRONG_BASIS, text.shown())
              .with("expected", basis)
              .with("kind", unit.basis));
    }
    return unit;
  }

  private static Problem notAFraction(String shown, String key, String basis) {
    UnitDefinition<?> unit = UnitTables.find(key);
    if (unit != null) {
      return UnitsProblem.wrongKind(shown, basis, unit.kind().id()).with("units", "%, ‰, ppm");
    }
    return Problem.of(UnitsProblem.FRACTION_WITHOUT_UNIT, shown).with("expected", basis);
  }

  static MixingRatio ratio(QuantityText text) {
    double[] parts = parts(text);
    String[] sides = text.rest().strip().split(":", 3);
    if (sides.length != 2) {
      throw malformed(text);
    }
    String first = sides[0].strip();
    String second = sides[1].strip();
    if (!MixingRatio.isSide(first) || !MixingRatio.isSide(second) || first.equals(second)) {
      throw malformed(text);
    }
    return new MixingRatio(parts[0], parts[1], first, second);
  }

  static MixingRatio ratio(QuantityText text, String firstSide, String secondSide) {
    double[] parts = parts(text);
    if (!text.isAtEnd()) {
      throw malformed(text);
    }
    return new MixingRatio(parts[0], parts[1], firstSide, secondSide);
  }

  private static double[] parts(QuantityText text) {
    text.readNumber();
    double first = text.value();
    if (!text.skip(':')) {
      throw malformed(text);
    }
    text.readNumber();
    return new double[] {first, text.value()};
  }

  private static ProblemException malformed(QuantityText text) {
    return new ProblemException(Problem.of(UnitsProblem.RATIO_MALFORMED, text.shown()));
  }
}
