// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.source.Knowledge;

/** The general limits of one class, as a rule file states them. */
final class ClassRule {

  /** How the shares of several ingredients combine. */
  enum Mode {
    ADDITIVE,
    HIGHEST,
    ACUTE,
    FLAMMABLE,
    TEST
  }

  private final HazardClass hazardClass;
  private final Mode mode;
  private final List<Category> levels;
  private final double openFromPercent;
  private final String paragraph;
  private final Knowledge knowledge;
  private final Map<LimitKey, Double> numbers = new HashMap<>();

  ClassRule(List<String> row) {
    hazardClass = HazardClass.ofId(row.get(1));
    mode = Mode.valueOf(row.get(2).toUpperCase(Locale.ROOT));
    levels = TextTable.items(row.get(3), ",").stream().map(Category::of).toList();
    openFromPercent = Double.parseDouble(row.get(4));
    paragraph = row.get(5);
    knowledge = Knowledge.valueOf(row.get(6));
  }

  void add(List<String> row) {
    Category of = Category.of(row.get(2));
    Category reached = row.size() > 4 ? Category.of(row.get(3)) : of;
    numbers.put(
        new LimitKey(LimitKey.Kind.ofId(row.get(0)), of, reached),
        Double.parseDouble(row.get(row.size() - 1)));
  }

  HazardClass hazardClass() {
    return hazardClass;
  }

  boolean isAdditive() {
    return mode == Mode.ADDITIVE;
  }

  /** Whether only a test of the mixture can tell. */
  boolean needsTest() {
    return mode == Mode.TEST;
  }

  /** The categories, most severe first. */
  List<Category> levels() {
    return levels;
  }

  int rank(Category level) {
    return levels.indexOf(level);
  }

  double openFromPercent() {
    return openFromPercent;
  }

  String paragraph() {
    return paragraph;
  }

  Knowledge knowledge() {
    return knowledge;
  }

  /** The general limit of an ingredient of a category for reaching a level, in per cent. */
  OptionalDouble limit(Category category, Category level, @Nullable PhysicalState state) {
    OptionalDouble ofGas = get(LimitKey.Kind.LIMIT_GAS, category, level);
    return state == PhysicalState.GAS && ofGas.isPresent()
        ? ofGas
        : get(LimitKey.Kind.LIMIT, category, level);
  }

  OptionalDouble nonAdditive(Category category, Category level) {
    return get(LimitKey.Kind.NON_ADDITIVE, category, level);
  }

  double cutOff(Category category) {
    return get(LimitKey.Kind.CUT_OFF, category, category).orElse(0);
  }

  OptionalDouble elicitation(Category category) {
    return get(LimitKey.Kind.ELICITATION, category, category);
  }

  OptionalDouble onRequest(Category category) {
    return get(LimitKey.Kind.ON_REQUEST, category, category);
  }

  private OptionalDouble get(LimitKey.Kind kind, Category of, Category reached) {
    Double value = numbers.get(new LimitKey(kind, of, reached));
    return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
  }
}
