// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import static org.meltwright.core.material.MaterialProblem.CHECK;

import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import javax.measure.Quantity;
import org.meltwright.units.MaterialState;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityParser;
import org.meltwright.units.QuantityRange;
import org.meltwright.units.TemperatureRange;

/**
 * Ranges of a physical quantity: "0.95 to 0.96 g/ml at 20 °C".
 *
 * <p>The units of the catalogue are the SI unit times a power of ten, so no converter is loaded to
 * read it; other units are read as everywhere.
 */
record QuantityType<Q extends Quantity<Q>>(QuantityKind<Q> kind, MaterialState state)
    implements PropertyType<PropertyRange<Q>> {

  private static final Map<String, Map<String, Integer>> POWERS =
      Map.of(
          "density", Map.of("g/ml", 3, "kg/m³", 0),
          "specific-heat-capacity", Map.of("kJ/(kg K)", 3, "J/(kg K)", 0),
          "specific-energy", Map.of("kJ/kg", 3, "J/kg", 0),
          "thermal-conductivity", Map.of("W/(m K)", 0),
          "dynamic-viscosity", Map.of("mPa s", -3, "Pa s", 0));
  private static final Map<String, String> WRITTEN =
      Map.of(
          "density", "g/ml",
          "specific-heat-capacity", "kJ/(kg K)",
          "specific-energy", "kJ/kg",
          "thermal-conductivity", "W/(m K)",
          "dynamic-viscosity", "mPa s");
  private static final String AT = " at ";
  private static final TemperatureType AT_TEMPERATURE =
      new TemperatureType(
          TemperatureDefinition.NOT_STATED, EnumSet.allOf(TemperatureDefinition.class));
  private static final double LARGEST = 1e40;

  @Override
  public PropertyRange<Q> parse(String text) {
    int at = text.indexOf(AT);
    PropertyRange<Q> range =
        PropertyRange.of(range(at < 0 ? text : text.substring(0, at), text), state);
    require(range);
    return at < 0 ? range : range.at(temperature(text.substring(at + AT.length())));
  }

  private QuantityRange<Q> range(String amount, String text) {
    Span span = Span.parse(amount);
    Integer power = powers().get(span.rest());
    if (power != null && !span.openAbove()) {
      return new QuantityRange<>(kind, span.low(power), span.high(power));
    }
    try {
      return QuantityParser.localeFree().parseRange(amount, kind);
    } catch (ProblemException e) {
      throw new ProblemException(
          Problem.of(MaterialProblem.UNIT, text).with("units", String.join(", ", units())));
    }
  }

  private static TemperatureRange temperature(String text) {
    return AT_TEMPERATURE.parse(text).range();
  }

  @Override
  public void require(PropertyRange<Q> value) {
    if (value.state() != state) {
      throw new ProblemException(
          Problem.of(MaterialProblem.STATE, CHECK.name(Words.of(value.state())))
              .with("state", CHECK.name(Words.of(state))));
    }
    double low = value.range().lowSi();
    if (!(low > 0 && value.range().highSi() <= LARGEST)) {
      CHECK.between(low, Double.MIN_NORMAL, LARGEST, kind.id().replace('-', ' '));
      CHECK.between(value.range().highSi(), low, LARGEST, kind.id().replace('-', ' '));
    }
  }

  private Map<String, Integer> powers() {
    return POWERS.getOrDefault(kind.id(), Map.of());
  }

  private Iterable<String> units() {
    return powers().keySet().stream().sorted().toList();
  }

  @Override
  public String format(PropertyRange<Q> value) {
    String unit = WRITTEN.getOrDefault(kind.id(), "");
    int power = powers().getOrDefault(unit, 0);
    return Span.format(value.range().lowSi(), value.range().highSi(), power)
        + " "
        + unit
        + value.at().map(t -> AT + TemperatureType.format(t) + " °C").orElse("");
  }

  @Override
  public PropertyRange<Q> span(PropertyRange<Q> one, PropertyRange<Q> other) {
    PropertyRange<Q> range =
        PropertyRange.of(
            new QuantityRange<>(
                kind,
                Math.min(one.range().lowSi(), other.range().lowSi()),
                Math.max(one.range().highSi(), other.range().highSi())),
            state);
    Optional<TemperatureRange> at = one.at();
    return at.isPresent() && isSame(at, other.at()) ? range.at(at.get()) : range;
  }

  /** By its ends: the first use of a record's own equals costs more than to read the catalogue. */
  private static boolean isSame(Optional<TemperatureRange> one, Optional<TemperatureRange> other) {
    return other.isPresent()
        && one.get().low().equals(other.get().low())
        && one.get().high().equals(other.get().high());
  }
}
