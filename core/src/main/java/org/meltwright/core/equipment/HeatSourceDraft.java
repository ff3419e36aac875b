// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.equipment;

import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.FieldReader;
import org.meltwright.units.MetricUnits;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityFormatter;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityParser;
import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.TemperatureScale;

/**
 * A {@link HeatSource} as it is written down, not checked yet.
 *
 * <p>For example, what is not stated stays unknown:
 *
 * <pre>{@code
 * HeatSource plate =
 *     new HeatSourceDraft("hot plate", "hot-plate", "85 °C", null, "1.5 kW")
 *         .toHeatSource(QuantityParser.localeFree());
 * plate.powerWatts().getAsDouble(); // 1500 W
 * plate.overshoot().isPresent(); // false
 * plate.toDraft().setPoint(); // 85 °C
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param id what the studio calls it
 * @param kind its kind, a word of {@link HeatSource.Kind}, such as "hot-plate"
 * @param setPoint what its thermostat is set to, such as "85 °C"; absent if it has none or it is
 *     not stated
 * @param overshoot how far its surface rises above the set point, such as "8 K"; absent if it is
 *     not stated, which is not zero
 * @param power its electrical power, above zero, such as "1.5 kW"; absent if it is not stated
 */
public record HeatSourceDraft(
    @Nullable String id,
    @Nullable String kind,
    @Nullable String setPoint,
    @Nullable String overshoot,
    @Nullable String power) {

  static HeatSourceDraft of(HeatSource source) {
    QuantityFormatter exact = QuantityFormatter.exact();
    OptionalDouble watts = source.powerWatts();
    return new HeatSourceDraft(
        source.name(),
        FieldReader.wordOf(source.kind()),
        source.setPoint().map(t -> exact.format(t, TemperatureScale.CELSIUS)).orElse(null),
        source.overshoot().map(d -> exact.format(d, TemperatureScale.KELVIN)).orElse(null),
        watts.isPresent()
            ? exact.format(QuantityKind.POWER, watts.getAsDouble(), MetricUnits.WATT)
            : null);
  }

  /**
   * Returns the heat source.
   *
   * @param parser reads temperatures and power
   * @return the heat source
   * @throws ProblemException if name or kind is missing, a field is wrong, or degrees are stated of
   *     what has numbers; it carries all problems found, each at its field
   */
  public HeatSource toHeatSource(QuantityParser parser) {
    FieldReader at = FieldReader.of(parser);
    Optional<String> name = at.value("id", id);
    Optional<HeatSource.Kind> what = at.word("kind", kind, HeatSource.Kind.class);
    Optional<TemperaturePoint> point =
        at.optional().parse("setPoint", setPoint, QuantityParser::parseTemperature);
    Optional<TemperatureDifference> rise =
        at.optional()
            .parse(
                "overshoot",
                overshoot,
                (p, t) -> HeatSource.checkedOvershoot(p.parseTemperatureDifference(t)));
    Optional<Double> watts =
        at.optional().parse("power", power, (p, t) -> HeatSource.checkedPower(p.parsePower(t)));
    return at.make(
        () -> {
          HeatSource source = HeatSource.of(name.get(), what.get());
          source = point.isPresent() ? source.withSetPoint(point.get()) : source;
          source = rise.isPresent() ? source.withOvershoot(rise.get()) : source;
          return watts.isPresent() ? source.withPowerWatts(watts.get()) : source;
        });
  }
}
