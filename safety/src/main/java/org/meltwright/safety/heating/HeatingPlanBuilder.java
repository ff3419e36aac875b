// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import static org.meltwright.safety.heating.HeatingProblem.CHECK;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.core.equipment.Thermometer;
import org.meltwright.core.equipment.Vessel;
import org.meltwright.core.mixture.Composition;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.TemperaturePoint;

/**
 * Collects what is stated of a heating. What is not set stays unknown, and the review says what it
 * could not assess for want of it.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * HeatingPlan plan =
 *     HeatingPlan.builder(Composition.of(wax))
 *         .liquidReading(ofCelsius(82))
 *         .people(People.alone())
 *         .withoutOthers()
 *         .build();
 * plan.denies(Circumstance.UNATTENDED); // true
 * plan.room().isPresent(); // false
 * }</pre>
 *
 * <p>Mutable, for one thread; not a value: two builders are never equal.
 *
 * <p>Compared by identity: a builder changes.
 */
public final class HeatingPlanBuilder {

  final List<HeatSource> tools = new ArrayList<>();
  final EnumSet<Circumstance> circumstances = EnumSet.noneOf(Circumstance.class);
  final EnumSet<Circumstance> denied = EnumSet.noneOf(Circumstance.class);
  Composition mix;
  @Nullable HeatSource heat;
  @Nullable Vessel vessel;
  OptionalDouble fillLevel = OptionalDouble.empty();
  @Nullable Thermometer thermometer;
  @Nullable TemperaturePoint liquidReading;
  @Nullable TemperaturePoint surfaceReading;
  @Nullable SurfaceMethod surfaceMethod;
  @Nullable TemperatureDifference measuredOffset;
  OptionalDouble hoursHeld = OptionalDouble.empty();
  @Nullable Room room;
  @Nullable People people;
  HeatingLimits limits = HeatingLimits.standard();
  @Nullable TemperaturePoint targetOfAdults;

  HeatingPlanBuilder(Composition mix) {
    this.mix = mix;
  }

  /**
   * Sets what keeps the melt hot.
   *
   * @param source a plate, a palette, a slow cooker, a bath
   * @return this builder
   */
  public HeatingPlanBuilder heat(HeatSource source) {
    heat = source;
    return this;
  }

  /**
   * Adds a tool that heats the work.
   *
   * @param tool an iron, a gun, a torch, a lamp
   * @return this builder
   */
  public HeatingPlanBuilder tool(HeatSource tool) {
    tools.add(tool);
    return this;
  }

  /**
   * Sets the vessel.
   *
   * @param pot the vessel
   * @return this builder
   */
  public HeatingPlanBuilder vessel(Vessel pot) {
    vessel = pot;
    return this;
  }

  /**
   * Sets how full the vessel is, hot.
   *
   * @param level the fill level, where 1 is full to the brim: 0.7, not 70; from 0 to 2. For more,
   *     say the volume: {@link #filled}
   * @return this builder
   * @throws ProblemException if it lies outside
   */
  public HeatingPlanBuilder fillLevel(double level) {
    fillLevel = OptionalDouble.of(checkedFill(level));
    return this;
  }

  /**
   * Sets vessel and fill level from the hot volume in it.
   *
   * @param pot the vessel
   * @param hot the volume of the melt, hot
   * @return this builder
   * @throws ProblemException if the volume is negative or not finite
   */
  public HeatingPlanBuilder filled(Vessel pot, Quantity<Volume> hot) {
    fillLevel = OptionalDouble.of(pot.fillLevel(hot));
    return vessel(pot);
  }

  /**
   * Sets the thermometer.
   *
   * @param instrument the thermometer
   * @return this builder
   */
  public HeatingPlanBuilder thermometer(Thermometer instrument) {
    thermometer = instrument;
    return this;
  }

  /**
   * Sets what was measured in the liquid wax.
   *
   * @param reading the reading
   * @return this builder
   */
  public HeatingPlanBuilder liquidReading(TemperaturePoint reading) {
    liquidReading = reading;
    return this;
  }

  /**
   * Sets the highest surface temperature measured over one thermostat cycle, of which nobody says
   * how it was taken: it counts upwards only.
   *
   * @param reading the reading
   * @return this builder
   */
  public HeatingPlanBuilder surfaceReading(TemperaturePoint reading) {
    surfaceReading = reading;
    surfaceMethod = null;
    return this;
  }

  /**
   * Sets the highest surface temperature measured over one thermostat cycle.
   *
   * @param reading the reading
   * @param method how it was taken
   * @return this builder
   */
  public HeatingPlanBuilder surfaceReading(TemperaturePoint reading, SurfaceMethod method) {
    surfaceReading = reading;
    surfaceMethod = method;
    return this;
  }

  /**
   * Sets the offset of the liquid from the plate's reading, measured once with both. For a dial
   * without degrees, read the plate's surface.
   *
   * @param liquidLessPlate liquid less plate, negative where the liquid is cooler
   * @return this builder
   */
  public HeatingPlanBuilder measuredOffset(TemperatureDifference liquidLessPlate) {
    measuredOffset = liquidLessPlate;
    return this;
  }

  /**
   * Sets how long the melt is held.
   *
   * @param hours the hours, from 0 to 100000
   * @return this builder
   * @throws ProblemException if they lie outside
   */
  public HeatingPlanBuilder hoursHeld(double hours) {
    hoursHeld = OptionalDouble.of(checkedHours(hours));
    return this;
  }

  /**
   * Sets the room.
   *
   * @param place the room
   * @return this builder
   */
  public HeatingPlanBuilder room(Room place) {
    room = place;
    return this;
  }

  /**
   * Sets the people.
   *
   * @param who the people
   * @return this builder
   */
  public HeatingPlanBuilder people(People who) {
    people = who;
    return this;
  }

  /**
   * States a circumstance, which is always a wrong: yes, it is the case.
   *
   * @param circumstance what is wrong
   * @return this builder
   */
  public HeatingPlanBuilder circumstance(Circumstance circumstance) {
    circumstances.add(circumstance);
    denied.remove(circumstance);
    return this;
  }

  /**
   * Denies a circumstance: somebody looked, and no, it is not the case.
   *
   * @param circumstance what is not wrong
   * @return this builder
   */
  public HeatingPlanBuilder without(Circumstance circumstance) {
    denied.add(circumstance);
    circumstances.remove(circumstance);
    return this;
  }

  /**
   * Denies all circumstances that were not stated before.
   *
   * @return this builder
   */
  public HeatingPlanBuilder withoutOthers() {
    denied.addAll(EnumSet.complementOf(circumstances));
    return this;
  }

  /**
   * Returns the plan.
   *
   * @return what was collected so far
   * @throws ProblemException if there is a reading in the liquid and the thermometer measures
   *     elsewhere, or plate and offset make a temperature below absolute zero
   */
  public HeatingPlan build() {
    if (liquidReading != null
        && thermometer != null
        && thermometer.place() != Thermometer.Place.LIQUID) {
      String elsewhere = thermometer.place().name().toLowerCase(Locale.ROOT);
      throw new ProblemException(Problem.of(HeatingProblem.READING_PLACE, CHECK.name(elsewhere)));
    }
    HeatingPlan plan = new HeatingPlan(this);
    BindingTemperature.plateAndOffset(plan);
    return plan;
  }

  static double checkedFill(double level) {
    return CHECK.between(level, 0, 2, "fill level (1 is full)");
  }

  static double checkedHours(double hours) {
    return CHECK.between(hours, 0, 1e5, "hours held");
  }
}
