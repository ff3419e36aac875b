// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import static org.meltwright.safety.heating.Checks.CHECK;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
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
 * What is to be heated, with what, in what, by whom and where, as far as it is stated.
 *
 * <p>Only the mix is needed. What is not stated stays unknown; the review says what it could not
 * assess for want of it. For example:
 *
 * <pre>{@code
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * HeatingPlan plan =
 *     HeatingPlan.builder(Composition.of(wax)).liquidReading(ofCelsius(88)).build();
 * plan.liquidReading(); // 88.0 °C
 * }</pre>
 *
 * <p>This class is immutable and thread-safe.
 */
public final class HeatingPlan {

  private final Composition mix;
  private final Contents contents;
  private final @Nullable HeatSource heat;
  private final List<HeatSource> tools;
  private final @Nullable Vessel vessel;
  private final double fillLevel;
  private final @Nullable Thermometer thermometer;
  private final @Nullable TemperaturePoint liquidReading;
  private final @Nullable TemperaturePoint surfaceReading;
  private final @Nullable TemperatureDifference measuredOffset;
  private final double hoursHeld;
  private final @Nullable Room room;
  private final @Nullable People people;
  private final Set<Circumstance> circumstances;

  /**
   * Starts a plan.
   *
   * @param mix what is to be heated
   * @return a builder
   */
  public static Builder builder(Composition mix) {
    return new Builder(mix);
  }

  /**
   * Returns a plan of which only the mix is known.
   *
   * @param mix what is to be heated
   * @return the plan
   */
  public static HeatingPlan of(Composition mix) {
    return builder(mix).build();
  }

  /**
   * Returns the plan of a mix that has a temperature, of which nothing else is stated.
   *
   * @param mix what is heated
   * @param melt what a thermometer in the melt reads
   * @return the plan
   */
  public static HeatingPlan of(Composition mix, TemperaturePoint melt) {
    return builder(mix).liquidReading(melt).build();
  }

  private HeatingPlan(Builder builder) {
    this.mix = builder.mix;
    this.contents = new Contents(mix);
    this.heat = builder.heat;
    this.tools = List.copyOf(builder.tools);
    this.vessel = builder.vessel;
    this.fillLevel = builder.fillLevel;
    this.thermometer = builder.thermometer;
    this.liquidReading = builder.liquidReading;
    this.surfaceReading = builder.surfaceReading;
    this.measuredOffset = builder.measuredOffset;
    this.hoursHeld = builder.hoursHeld;
    this.room = builder.room;
    this.people = builder.people;
    this.circumstances = Set.copyOf(builder.circumstances);
  }

  /**
   * Returns what is to be heated.
   *
   * @return the composition
   */
  public Composition mix() {
    return mix;
  }

  /**
   * Returns what is in the mix, as rules ask it.
   *
   * @return the contents
   */
  public Contents contents() {
    return contents;
  }

  /**
   * Returns what keeps the melt hot.
   *
   * @return the heat source; empty if it is not stated
   */
  public Optional<HeatSource> heat() {
    return Optional.ofNullable(heat);
  }

  /**
   * Returns the tools that heat the work: irons, guns, torches, lamps.
   *
   * @return the tools, in the order given; may be empty
   */
  public List<HeatSource> tools() {
    return tools;
  }

  /**
   * Returns the vessel.
   *
   * @return the vessel; empty if it is not stated
   */
  public Optional<Vessel> vessel() {
    return Optional.ofNullable(vessel);
  }

  /**
   * Returns how full the vessel is, hot.
   *
   * @return the fill level, where 1 is full to the brim; empty if it is not stated
   */
  public OptionalDouble fillLevel() {
    return Double.isNaN(fillLevel) ? OptionalDouble.empty() : OptionalDouble.of(fillLevel);
  }

  /**
   * Returns the thermometer.
   *
   * @return the thermometer; empty if there is none or it is not stated
   */
  public Optional<Thermometer> thermometer() {
    return Optional.ofNullable(thermometer);
  }

  /**
   * Returns what was measured in the liquid wax.
   *
   * @return the reading; empty if nothing was measured there
   */
  public Optional<TemperaturePoint> liquidReading() {
    return Optional.ofNullable(liquidReading);
  }

  /**
   * Returns the highest surface temperature measured on the plate over one thermostat cycle.
   *
   * @return the reading; empty if nothing was measured there
   */
  public Optional<TemperaturePoint> surfaceReading() {
    return Optional.ofNullable(surfaceReading);
  }

  /**
   * Returns how much hotter the liquid was than the plate's reading when both were measured once.
   *
   * @return the offset, usually negative; empty if it was never measured
   */
  public Optional<TemperatureDifference> measuredOffset() {
    return Optional.ofNullable(measuredOffset);
  }

  /**
   * Returns how long the melt is held.
   *
   * @return the hours; empty if they are not stated
   */
  public OptionalDouble hoursHeld() {
    return Double.isNaN(hoursHeld) ? OptionalDouble.empty() : OptionalDouble.of(hoursHeld);
  }

  /**
   * Returns the room.
   *
   * @return the room; empty if it is not stated
   */
  public Optional<Room> room() {
    return Optional.ofNullable(room);
  }

  /**
   * Returns the people.
   *
   * @return the people; empty if they are not stated
   */
  public Optional<People> people() {
    return Optional.ofNullable(people);
  }

  /**
   * Returns what else is stated.
   *
   * @return the circumstances; may be empty
   */
  public Set<Circumstance> circumstances() {
    return circumstances;
  }

  /**
   * Tells whether a circumstance is stated.
   *
   * @param circumstance the circumstance
   * @return whether it is stated
   */
  public boolean has(Circumstance circumstance) {
    return circumstances.contains(circumstance);
  }

  /**
   * Tells whether a tool of a kind is used.
   *
   * @param kind the kind
   * @return whether one of the tools is of this kind
   */
  public boolean uses(HeatSource.Kind kind) {
    return tools.stream().anyMatch(tool -> tool.kind() == kind);
  }

  /**
   * Returns the temperature table that the plan is held against.
   *
   * @return {@link TemperatureTable#STANDARD}
   */
  public TemperatureTable table() {
    return TemperatureTable.STANDARD;
  }

  /**
   * Returns the temperature that the one temperature table binds.
   *
   * @return the temperature and how it was got; empty if nothing tells it
   */
  public Optional<BindingTemperature> bindingTemperature() {
    return BindingTemperature.of(this);
  }

  /**
   * Returns the floor of the pot at its hottest.
   *
   * @return the floor; empty if there is none or nothing tells it
   */
  public Optional<PotFloor> potFloor() {
    return PotFloor.of(this);
  }

  /**
   * Returns a builder that starts from this plan.
   *
   * @return a builder
   */
  public Builder toBuilder() {
    Builder copy = new Builder(mix);
    copy.heat = heat;
    copy.tools.addAll(tools);
    copy.vessel = vessel;
    copy.fillLevel = fillLevel;
    copy.thermometer = thermometer;
    copy.liquidReading = liquidReading;
    copy.surfaceReading = surfaceReading;
    copy.measuredOffset = measuredOffset;
    copy.hoursHeld = hoursHeld;
    copy.room = room;
    copy.people = people;
    copy.circumstances.addAll(circumstances);
    return copy;
  }

  /**
   * Returns a copy with another mix.
   *
   * @param other what is to be heated instead
   * @return the new plan
   */
  public HeatingPlan withMix(Composition other) {
    Builder copy = toBuilder();
    copy.mix = other;
    return copy.build();
  }

  @Override
  public String toString() {
    return "heating of " + mix + bindingTemperature().map(t -> " at " + t).orElse("");
  }

  /** Collects the parts of a plan; not thread-safe. */
  public static final class Builder {

    private final List<HeatSource> tools = new ArrayList<>();
    private final Set<Circumstance> circumstances = EnumSet.noneOf(Circumstance.class);
    private Composition mix;
    private @Nullable HeatSource heat;
    private @Nullable Vessel vessel;
    private double fillLevel = Double.NaN;
    private @Nullable Thermometer thermometer;
    private @Nullable TemperaturePoint liquidReading;
    private @Nullable TemperaturePoint surfaceReading;
    private @Nullable TemperatureDifference measuredOffset;
    private double hoursHeld = Double.NaN;
    private @Nullable Room room;
    private @Nullable People people;

    private Builder(Composition mix) {
      this.mix = mix;
    }

    /**
     * Sets what keeps the melt hot.
     *
     * @param source a plate, a palette, a slow cooker, a bath; null for not stated
     * @return this builder
     */
    public Builder heat(@Nullable HeatSource source) {
      heat = source;
      return this;
    }

    /**
     * Adds a tool that heats the work.
     *
     * @param tool an iron, a gun, a torch, a lamp
     * @return this builder
     */
    public Builder tool(HeatSource tool) {
      tools.add(tool);
      return this;
    }

    /**
     * Sets the vessel.
     *
     * @param pot the vessel; null for not stated
     * @return this builder
     */
    public Builder vessel(@Nullable Vessel pot) {
      vessel = pot;
      return this;
    }

    /**
     * Sets how full the vessel is, hot.
     *
     * @param level the fill level, where 1 is full to the brim, from 0 to 1000; NaN for not stated
     * @return this builder
     * @throws ProblemException if it is negative
     */
    public Builder fillLevel(double level) {
      fillLevel = Double.isNaN(level) ? level : CHECK.between(level, 0, 1000, "fill level");
      return this;
    }

    /**
     * Sets vessel and fill level from the hot volume in it.
     *
     * @param pot the vessel
     * @param hot the volume of the melt, hot
     * @return this builder
     */
    public Builder filled(Vessel pot, Quantity<Volume> hot) {
      return vessel(pot).fillLevel(pot.fillLevel(hot));
    }

    /**
     * Sets the thermometer.
     *
     * @param instrument the thermometer; null for none or not stated
     * @return this builder
     */
    public Builder thermometer(@Nullable Thermometer instrument) {
      thermometer = instrument;
      return this;
    }

    /**
     * Sets what was measured in the liquid wax.
     *
     * @param reading the reading; null for none
     * @return this builder
     */
    public Builder liquidReading(@Nullable TemperaturePoint reading) {
      liquidReading = reading;
      return this;
    }

    /**
     * Sets the highest surface temperature measured over one thermostat cycle.
     *
     * @param reading the reading; null for none
     * @return this builder
     */
    public Builder surfaceReading(@Nullable TemperaturePoint reading) {
      surfaceReading = reading;
      return this;
    }

    /**
     * Sets the offset of the liquid from the plate's reading, measured once with both. For a dial
     * without degrees, read the plate's surface.
     *
     * @param liquidLessPlate liquid less plate, negative where the liquid is cooler; null for none
     * @return this builder
     */
    public Builder measuredOffset(@Nullable TemperatureDifference liquidLessPlate) {
      measuredOffset = liquidLessPlate;
      return this;
    }

    /**
     * Sets how long the melt is held.
     *
     * @param hours the hours, not negative; NaN for not stated
     * @return this builder
     * @throws ProblemException if they are negative
     */
    public Builder hoursHeld(double hours) {
      hoursHeld = Double.isNaN(hours) ? hours : CHECK.between(hours, 0, 1e5, "hours held");
      return this;
    }

    /**
     * Sets the room.
     *
     * @param place the room; null for not stated
     * @return this builder
     */
    public Builder room(@Nullable Room place) {
      room = place;
      return this;
    }

    /**
     * Sets the people.
     *
     * @param who the people; null for not stated
     * @return this builder
     */
    public Builder people(@Nullable People who) {
      people = who;
      return this;
    }

    /**
     * Adds a circumstance.
     *
     * @param circumstance what else is the case
     * @return this builder
     */
    public Builder circumstance(Circumstance circumstance) {
      circumstances.add(circumstance);
      return this;
    }

    /**
     * Returns the plan.
     *
     * @return what was collected so far
     * @throws ProblemException if there is a reading in the liquid and the thermometer measures
     *     elsewhere
     */
    public HeatingPlan build() {
      if (liquidReading != null
          && thermometer != null
          && thermometer.place() != Thermometer.Place.LIQUID) {
        throw new ProblemException(
            Problem.of(HeatingProblem.READING_PLACE, thermometer.place().toString()));
      }
      return new HeatingPlan(this);
    }
  }
}
