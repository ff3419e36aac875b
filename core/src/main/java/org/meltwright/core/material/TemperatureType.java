// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityParser;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.TemperatureRange;

/** Temperatures with what was measured: "62 to 65 °C, capillary-range" or "≥ 250 °C, open cup". */
record TemperatureType(@Nullable TemperatureDefinition usual, Set<TemperatureDefinition> allowed)
    implements PropertyType<DefinedTemperature> {

  private static final String CELSIUS = "°C";

  @Override
  public DefinedTemperature parse(String text) {
    if (text.startsWith(Span.AT_MOST)) { // nothing tells the low end, and zero is no bound
      throw new ProblemException(Problem.of(MaterialProblem.LOW_END, text));
    }
    int comma = text.indexOf(',');
    Span span = Span.parse(comma < 0 ? text : text.substring(0, comma).strip());
    TemperatureDefinition definition = definition(comma < 0 ? "" : text.substring(comma + 1), text);
    TemperatureRange range = range(span, comma < 0 ? text : text.substring(0, comma).strip());
    return span.openAbove()
        ? DefinedTemperature.atLeast(range.low(), definition)
        : new DefinedTemperature(range, definition);
  }

  private TemperatureDefinition definition(String word, String text) {
    if (word.isBlank() && usual != null) {
      return usual;
    }
    TemperatureDefinition definition =
        Words.parse(TemperatureDefinition.class, word.isBlank() ? text : word.strip());
    requireAllowed(definition);
    return definition;
  }

  @Override
  public void require(DefinedTemperature value) {
    requireAllowed(value.definition());
  }

  /** A drop point is no flash point. */
  private void requireAllowed(TemperatureDefinition definition) {
    if (!allowed.contains(definition)) {
      String words =
          allowed.stream().map(TemperatureDefinition::id).collect(Collectors.joining(", "));
      throw new ProblemException(
          Problem.of(MaterialProblem.WORD, definition.id()).with("words", words));
    }
  }

  /** The signs of the catalogue are read here, without a parser; others as everywhere. */
  private static TemperatureRange range(Span span, String text) {
    return switch (span.rest()) {
      case CELSIUS ->
          new TemperatureRange(
              TemperaturePoint.ofCelsius(span.low(0)), TemperaturePoint.ofCelsius(span.high(0)));
      case "K" ->
          new TemperatureRange(
              TemperaturePoint.ofKelvin(span.low(0)), TemperaturePoint.ofKelvin(span.high(0)));
      default -> asEverywhere(span.openAbove() ? text.substring(">=".length()) : text, text);
    };
  }

  private static TemperatureRange asEverywhere(String amount, String text) {
    try {
      return QuantityParser.localeFree().parseTemperatureRange(amount.strip());
    } catch (ProblemException e) {
      throw new ProblemException(Problem.of(MaterialProblem.UNIT, text).with("units", "°C, °F, K"));
    }
  }

  @Override
  public String format(DefinedTemperature value) {
    return (value.isOpenAbove() ? ">= " : "")
        + format(value.range())
        + " "
        + CELSIUS
        + (value.definition() == usual ? "" : ", " + value.definition().id());
  }

  static String format(TemperatureRange range) {
    return Span.format(range.low().celsius(), range.high().celsius(), 0);
  }

  @Override
  public DefinedTemperature span(DefinedTemperature one, DefinedTemperature other) {
    TemperatureRange a = one.range();
    TemperatureRange b = other.range();
    TemperatureRange range =
        new TemperatureRange(
            a.low().isBelow(b.low()) ? a.low() : b.low(),
            a.high().isAbove(b.high()) ? a.high() : b.high());
    boolean same = one.definition() == other.definition();
    return new DefinedTemperature(
        range,
        same ? one.definition() : TemperatureDefinition.NOT_STATED,
        one.isOpenAbove() || other.isOpenAbove());
  }
}
