// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Says why a text's unit is not one of the kind asked for. */
final class UnitProblems {

  private static final int MOST_NAMED = 8;

  private UnitProblems() {}

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
    List<UnitDefinition<?>> choices = UnitTables.choices(key);
    if (!choices.isEmpty()) {
      return ambiguous(shown, key, kind, choices);
    }
    return other(shown, key, kind);
  }

  private static Problem wrongKind(String shown, QuantityKind<?> kind, UnitDefinition<?> found) {
    boolean ounce = kind == QuantityKind.VOLUME && found.symbol().equals("oz");
    Problem problem =
        ounce
            ? Problem.of(UnitsProblem.OUNCE_FOR_VOLUME, shown)
            : UnitsProblem.wrongKind(shown, kind.id(), found.kind().id());
    return problem.with("units", units(kind));
  }

  private static Problem ambiguous(
      String shown, String key, QuantityKind<?> kind, List<UnitDefinition<?>> choices) {
    if (choices.get(0).kind() != kind) {
      return wrongKind(shown, kind, choices.get(0));
    }
    return Problem.of(UnitsProblem.AMBIGUOUS_UNIT, shown)
        .with("unit", key)
        .with("choices", joined(choices));
  }

  private static Problem other(String shown, String key, QuantityKind<?> kind) {
    if (TemperatureScale.find(key) != null) {
      return UnitsProblem.wrongKind(shown, kind.id(), "temperature").with("units", units(kind));
    }
    if (ShareReader.isFraction(key)) {
      return UnitsProblem.wrongKind(shown, kind.id(), "fraction").with("units", units(kind));
    }
    if (kind == QuantityKind.DENSITY && DensityState.endsText(key)) {
      return Problem.of(UnitsProblem.DENSITY_STATE, shown);
    }
    return unknown(shown, key, kind.id(), UnitTables.spellings(kind), units(kind));
  }

  static Problem unknown(
      String shown, String key, String expected, List<String> spellings, String units) {
    String nearest = Nearest.of(key, spellings);
    return Problem.of(UnitsProblem.UNKNOWN_UNIT, shown)
        .with("unit", Shown.text(key))
        .with("expected", expected)
        .with("nearest", nearest == null ? units : nearest)
        .with("units", units);
  }

  /** The metric units of a kind, which are at hand without loading the others. */
  private static String units(QuantityKind<?> kind) {
    List<UnitDefinition<?>> units = new ArrayList<>();
    for (UnitDefinition<?> unit : MetricUnits.TABLE.definitions()) {
      if (unit.kind() == kind && units.size() < MOST_NAMED) {
        units.add(unit);
      }
    }
    return joined(units);
  }

  private static String joined(List<UnitDefinition<?>> units) {
    return units.stream().map(UnitDefinition::symbol).collect(Collectors.joining(", "));
  }
}
