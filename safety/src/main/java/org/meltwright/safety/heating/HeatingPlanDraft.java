// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Consumer;
import javax.measure.Quantity;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.core.equipment.HeatSourceDraft;
import org.meltwright.core.equipment.Thermometer;
import org.meltwright.core.equipment.ThermometerDraft;
import org.meltwright.core.equipment.Vessel;
import org.meltwright.core.equipment.VesselDraft;
import org.meltwright.core.material.MaterialLookup;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.CompositionDraft;
import org.meltwright.units.FieldReader;
import org.meltwright.units.MetricUnits;
import org.meltwright.units.ProblemException;
import org.meltwright.units.Quantities;
import org.meltwright.units.QuantityFormatter;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityParser;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.TemperatureScale;

/**
 * A {@link HeatingPlan} as it is written down, not checked yet.
 *
 * <p>Only the mix is needed; what is absent is not stated, and a review says what it could not
 * assess for want of it. Limits are no part of it: they come from the rule set that reviews it.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * HeatingPlan plan =
 *     HeatingPlan.builder(Composition.of(wax)).liquidReading(ofCelsius(88)).hoursHeld(3).build();
 * HeatingPlanDraft draft = plan.toDraft();
 * draft.liquidReading(); // 88 °C
 * draft.held(); // 3 h
 * draft.toPlan(QuantityParser.localeFree(), MaterialCatalogue.standard()::require)
 *     .equals(plan); // true
 * }</pre>
 *
 * <p>Immutable if its lists are.
 *
 * @param mix what is to be heated
 * @param heat what keeps the melt hot
 * @param tools the tools that heat the work
 * @param vessel the vessel
 * @param fillLevel how full it is, hot: a number, where 1 is full to the brim
 * @param thermometer the thermometer
 * @param liquidReading what was measured in the liquid wax, such as "88 °C"
 * @param surfaceReading the highest surface temperature measured over one thermostat cycle
 * @param surfaceMethod how it was measured, a word of {@link SurfaceMethod}
 * @param measuredOffset how much hotter the liquid was than the plate's reading, such as "-6 K"
 * @param held how long the melt is held, such as "3 h"
 * @param room the room
 * @param people the people
 * @param circumstances what is wrong, words of {@link Circumstance}
 * @param without what somebody looked for and is not the case, words of {@link Circumstance}; what
 *     stands among the circumstances too counts as stated
 */
public record HeatingPlanDraft(
    @Nullable CompositionDraft mix,
    @Nullable HeatSourceDraft heat,
    @Nullable List<HeatSourceDraft> tools,
    @Nullable VesselDraft vessel,
    @Nullable String fillLevel,
    @Nullable ThermometerDraft thermometer,
    @Nullable String liquidReading,
    @Nullable String surfaceReading,
    @Nullable String surfaceMethod,
    @Nullable String measuredOffset,
    @Nullable String held,
    @Nullable RoomDraft room,
    @Nullable PeopleDraft people,
    @Nullable List<String> circumstances,
    @Nullable List<String> without) {

  private static final QuantityFormatter EXACT = QuantityFormatter.exact();

  static HeatingPlanDraft of(HeatingPlan plan) {
    return new HeatingPlanDraft(
        plan.mix().toDraft(),
        plan.heat().map(HeatSource::toDraft).orElse(null),
        none(plan.tools().stream().map(HeatSource::toDraft).toList()),
        plan.vessel().map(Vessel::toDraft).orElse(null),
        number(plan.fillLevel()),
        plan.thermometer().map(Thermometer::toDraft).orElse(null),
        plan.liquidReading().map(HeatingPlanDraft::celsius).orElse(null),
        plan.surfaceReading().map(HeatingPlanDraft::celsius).orElse(null),
        plan.surfaceMethod().map(FieldReader::wordOf).orElse(null),
        plan.measuredOffset().map(d -> EXACT.format(d, TemperatureScale.KELVIN)).orElse(null),
        hours(plan.hoursHeld()),
        plan.room().map(Room::toDraft).orElse(null),
        plan.people().map(People::toDraft).orElse(null),
        words(plan.circumstances()),
        words(plan.denied()));
  }

  private static @Nullable String number(OptionalDouble value) {
    return value.isPresent() ? EXACT.format(value.getAsDouble()) : null;
  }

  private static @Nullable String hours(OptionalDouble value) {
    return value.isPresent()
        ? EXACT.format(Quantities.of(value.getAsDouble(), MetricUnits.HOUR))
        : null;
  }

  private static String celsius(TemperaturePoint point) {
    return EXACT.format(point, TemperatureScale.CELSIUS);
  }

  private static @Nullable List<String> words(Set<Circumstance> stated) {
    return none(stated.stream().map(FieldReader::wordOf).toList());
  }

  private static <T> @Nullable List<T> none(List<T> list) {
    return list.isEmpty() ? null : list;
  }

  /**
   * Returns the plan.
   *
   * @param parser reads the quantities
   * @param materials finds the materials
   * @return the plan, held against the standard limits until it is reviewed
   * @throws ProblemException if the mix is missing or a field is wrong; it carries all problems
   *     found, each at its field
   */
  public HeatingPlan toPlan(QuantityParser parser, MaterialLookup materials) {
    FieldReader at = FieldReader.of(parser);
    List<Consumer<HeatingPlanBuilder>> stated = new ArrayList<>();
    Optional<Composition> whole = at.read("mix", mix, d -> d.toComposition(parser, materials));
    things(at.optional(), stated);
    readings(at.optional(), stated);
    words(at.optional(), "without", without).forEach(c -> stated.add(b -> b.without(c)));
    words(at.optional(), "circumstances", circumstances)
        .forEach(c -> stated.add(b -> b.circumstance(c)));
    return at.make(
        () -> {
          HeatingPlanBuilder plan = HeatingPlan.builder(whole.get());
          stated.forEach(each -> each.accept(plan));
          return plan.build();
        });
  }

  private void things(FieldReader may, List<Consumer<HeatingPlanBuilder>> stated) {
    QuantityParser parser = may.parser();
    may.read("heat", heat, d -> d.toHeatSource(parser)).ifPresent(h -> stated.add(b -> b.heat(h)));
    may.each("tools", tools, d -> d.toHeatSource(parser))
        .forEach(tool -> stated.add(b -> b.tool(tool)));
    may.read("vessel", vessel, d -> d.toVessel(parser))
        .ifPresent(pot -> stated.add(b -> b.vessel(pot)));
    may.read("thermometer", thermometer, d -> d.toThermometer(parser))
        .ifPresent(t -> stated.add(b -> b.thermometer(t)));
    may.read("room", room, d -> d.toRoom(parser)).ifPresent(r -> stated.add(b -> b.room(r)));
    may.read("people", people, d -> d.toPeople(parser))
        .ifPresent(who -> stated.add(b -> b.people(who)));
  }

  private void readings(FieldReader may, List<Consumer<HeatingPlanBuilder>> stated) {
    may.parse(
            "fillLevel",
            fillLevel,
            (p, t) -> HeatingPlanBuilder.checkedFill(p.parseNumber(t).doubleValue()))
        .ifPresent(level -> stated.add(b -> b.fillLevel(level)));
    may.parse("liquidReading", liquidReading, QuantityParser::parseTemperature)
        .ifPresent(reading -> stated.add(b -> b.liquidReading(reading)));
    may.parse("surfaceReading", surfaceReading, QuantityParser::parseTemperature)
        .ifPresent(reading -> stated.add(b -> b.surfaceReading(reading)));
    may.word("surfaceMethod", surfaceMethod, SurfaceMethod.class)
        .ifPresent(how -> stated.add(b -> b.surfaceMethod = how));
    may.parse("measuredOffset", measuredOffset, QuantityParser::parseTemperatureDifference)
        .ifPresent(offset -> stated.add(b -> b.measuredOffset(offset)));
    may.parse("held", held, (p, t) -> checkedHours(p.parseTime(t)))
        .ifPresent(hours -> stated.add(b -> b.hoursHeld(hours)));
  }

  private static double checkedHours(Quantity<Time> time) {
    return HeatingPlanBuilder.checkedHours(QuantityKind.TIME.in(time, MetricUnits.HOUR));
  }

  private static List<Circumstance> words(
      FieldReader may, String name, @Nullable List<String> words) {
    return may.each(name, words, word -> FieldReader.constant(word, Circumstance.class));
  }
}
