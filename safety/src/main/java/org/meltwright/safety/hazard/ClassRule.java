// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.source.Knowledge;

/** The general limits of one class, as a rule file states them. */
final class ClassRule {

  private final HazardClass hazardClass;
  private final String mode;
  private final List<String> levels;
  private final double openFromPercent;
  private final String paragraph;
  private final Knowledge knowledge;
  private final Map<String, Double> numbers = new HashMap<>();

  static ClassRule of(List<String> row) {
    return new ClassRule(row);
  }

  private ClassRule(List<String> row) {
    hazardClass = HazardClass.ofId(row.get(1));
    mode = row.get(2);
    levels = TextTable.items(row.get(3), ",");
    openFromPercent = Double.parseDouble(row.get(4));
    paragraph = row.get(5);
    knowledge = Knowledge.valueOf(row.get(6));
  }

  void add(List<String> row) {
    String key = row.get(0) + " " + String.join(" ", row.subList(2, row.size() - 1));
    numbers.put(key, Double.parseDouble(row.get(row.size() - 1)));
  }

  HazardClass hazardClass() {
    return hazardClass;
  }

  boolean isAdditive() {
    return mode.equals("additive");
  }

  /** Whether only a test of the mixture can tell. */
  boolean needsTest() {
    return mode.equals("test");
  }

  /** The categories, most severe first. */
  List<String> levels() {
    return levels;
  }

  int rank(String level) {
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
  OptionalDouble limit(String category, String level, @Nullable PhysicalState state) {
    OptionalDouble ofGas = get("limit-gas " + category + " " + level);
    return state == PhysicalState.GAS && ofGas.isPresent()
        ? ofGas
        : get("limit " + category + " " + level);
  }

  OptionalDouble nonAdditive(String category, String level) {
    return get("non-additive " + category + " " + level);
  }

  double cutOff(String category) {
    return get("cut-off " + category).orElse(0);
  }

  OptionalDouble elicitation(String category) {
    return get("elicitation " + category);
  }

  OptionalDouble onRequest(String category) {
    return get("on-request " + category);
  }

  private OptionalDouble get(String key) {
    Double value = numbers.get(key);
    return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
  }
}
