// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.core.equipment.Thermometer;
import org.meltwright.core.equipment.Vessel;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.thermal.melting.WorkingWindow;
import org.meltwright.units.Bilingual;
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
  private final List<HeatSource> sources;
  private final Set<HeatSource.Kind> kinds;
  private final @Nullable Vessel vessel;
  private final OptionalDouble fillLevel;
  private final @Nullable Thermometer thermometer;
  private final @Nullable TemperaturePoint liquidReading;
  private final @Nullable TemperaturePoint surfaceReading;
  private final @Nullable SurfaceMethod surfaceMethod;
  private final @Nullable TemperatureDifference measuredOffset;
  private final OptionalDouble hoursHeld;
  private final @Nullable Room room;
  private final @Nullable People people;
  private final Set<Circumstance> circumstances;
  private final Set<Circumstance> denied;
  private final HeatingLimits limits;
  private final TemperaturePoint targetOfAdults;
  private final TemperatureTable table;
  private volatile @Nullable PlanTemperatures temperatures;

  /**
   * Starts a plan.
   *
   * @param mix what is to be heated
   * @return a builder
   */
  public static HeatingPlanBuilder builder(Composition mix) {
    return new HeatingPlanBuilder(mix);
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

  HeatingPlan(HeatingPlanBuilder builder) {
    this.mix = builder.mix;
    this.contents = new Contents(mix);
    this.heat = builder.heat;
    this.tools = List.copyOf(builder.tools);
    this.sources = Stream.concat(Stream.ofNullable(heat), tools.stream()).toList();
    this.kinds = EnumSet.noneOf(HeatSource.Kind.class);
    sources.forEach(source -> kinds.add(source.kind()));
    this.vessel = builder.vessel;
    this.fillLevel = builder.fillLevel;
    this.thermometer = builder.thermometer;
    this.liquidReading = builder.liquidReading;
    this.surfaceReading = builder.surfaceReading;
    this.surfaceMethod = builder.surfaceMethod;
    this.measuredOffset = builder.measuredOffset;
    this.hoursHeld = builder.hoursHeld;
    this.room = builder.room;
    this.people = builder.people;
    this.circumstances = unmodifiable(builder.circumstances);
    this.denied = unmodifiable(builder.denied);
    this.limits = builder.limits;
    this.targetOfAdults = builder.targetOfAdults == null ? limits.target() : builder.targetOfAdults;
    this.table = TemperatureTable.of(limits);
  }

  /** In the order of their declaration, whatever the order in which they were stated. */
  private static Set<Circumstance> unmodifiable(EnumSet<Circumstance> stated) {
    return Collections.unmodifiableSet(EnumSet.copyOf(stated));
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

  /** {@return the vessel; empty if it is not stated} */
  public Optional<Vessel> vessel() {
    return Optional.ofNullable(vessel);
  }

  /**
   * Returns how full the vessel is, hot.
   *
   * @return the fill level, where 1 is full to the brim; empty if it is not stated
   */
  public OptionalDouble fillLevel() {
    return fillLevel;
  }

  /** {@return the thermometer; empty if there is none or it is not stated} */
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
   * Returns what was measured in the liquid wax, if it can be a reading of molten wax.
   *
   * <p>A reading more than 10 K below the low end of the mix's own clear point is none: the probe
   * hangs in the air, or the unit is another. The bound is 40 °C where nothing is known of the
   * melting, and at most that where a tenth or more is liquid at room temperature; a mix without
   * wax has none. A reading at or above a ceiling always counts. The bounds are a policy of this
   * library: waxes stay liquid a little below their clear point.
   *
   * @return the reading; empty if there is none, or if it counts as not measured
   */
  public Optional<TemperaturePoint> moltenReading() {
    return temperatures().moltenReading();
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
   * Returns how the surface was measured.
   *
   * @return the method; empty if it is not stated, and then the reading counts upwards only
   */
  public Optional<SurfaceMethod> surfaceMethod() {
    return Optional.ofNullable(surfaceMethod);
  }

  /**
   * Tells whether the surface reading can be held against a limit in both directions.
   *
   * @return whether there is one, it was taken reliably, and the heat source is no ring with
   *     numbers, which can get hotter at any time; else it counts upwards only
   */
  public boolean isSurfaceReadingReliable() {
    return surfaceReading != null
        && surfaceMethod != null
        && surfaceMethod.isReliable()
        && (heat == null || heat.kind().hasDegrees());
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
    return hoursHeld;
  }

  /** {@return the room; empty if it is not stated} */
  public Optional<Room> room() {
    return Optional.ofNullable(room);
  }

  /** {@return the people; empty if they are not stated} */
  public Optional<People> people() {
    return Optional.ofNullable(people);
  }

  /**
   * Returns what is wrong, as stated.
   *
   * @return the circumstances, in the order of their declaration; may be empty
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
   * Tells whether a circumstance is denied: somebody looked, and it is not the case.
   *
   * @param circumstance the circumstance
   * @return whether it is denied; false as well if nobody mentioned it
   */
  public boolean denies(Circumstance circumstance) {
    return denied.contains(circumstance);
  }

  /**
   * Returns everything that heats, the melt or the work.
   *
   * @return the heat source first, if it is stated, then the tools in the order given
   */
  public List<HeatSource> sources() {
    return sources;
  }

  /**
   * Tells whether something of a kind heats, the melt or the work.
   *
   * @param kind the kind
   * @return whether the heat source or one of the tools is of this kind
   */
  public boolean uses(HeatSource.Kind kind) {
    return kinds.contains(kind);
  }

  /**
   * Returns the limits that the plan is held against.
   *
   * @return those of the rule set that reviews it, tightened by the age of the youngest; the
   *     standard ones before a review
   */
  public HeatingLimits limits() {
    return limits;
  }

  /**
   * Returns the temperature table that the plan is held against.
   *
   * @return the bands that follow from the {@link #limits}
   */
  public TemperatureTable table() {
    return table;
  }

  /**
   * Returns the temperature that the one temperature table binds.
   *
   * @return the temperature and how it was got; empty if nothing tells it
   */
  public Optional<BindingTemperature> bindingTemperature() {
    return temperatures().binding();
  }

  /**
   * Returns what the number of the liquid reading would be on the other scale, if that would fit: a
   * reading too cold for molten wax, or too hot, that was probably read in the other unit.
   *
   * @return one sentence; empty if there is no reading, or it would not fit
   */
  public Optional<Bilingual> otherScale() {
    return temperatures().otherScale().map(OtherScale::text);
  }

  /**
   * Returns where the mix can be worked, up to the target of the limits. Where the age of the
   * youngest lowers that target, low heat is meant, and the window may be narrower by as much.
   *
   * @return the working window; empty if nothing melts, or what melts has no melting range
   */
  public Optional<WorkingWindow> workingWindow() {
    return temperatures().window();
  }

  /**
   * Returns the floor of the pot at its hottest.
   *
   * @return the floor; empty if there is none or nothing tells it
   */
  public Optional<PotFloor> potFloor() {
    return temperatures().floor();
  }

  /**
   * Returns a builder that starts from this plan.
   *
   * @return a builder
   */
  public HeatingPlanBuilder toBuilder() {
    HeatingPlanBuilder copy = new HeatingPlanBuilder(mix);
    copy.heat = heat;
    copy.tools.addAll(tools);
    copy.vessel = vessel;
    copy.fillLevel = fillLevel;
    copy.thermometer = thermometer;
    copy.liquidReading = liquidReading;
    copy.surfaceReading = surfaceReading;
    copy.surfaceMethod = surfaceMethod;
    copy.measuredOffset = measuredOffset;
    copy.hoursHeld = hoursHeld;
    copy.room = room;
    copy.people = people;
    copy.circumstances.addAll(circumstances);
    copy.denied.addAll(denied);
    return copy;
  }

  /**
   * Returns what the temperature that the table binds calls for.
   *
   * @return what to do at once and later; empty if nothing tells how hot the wax is
   */
  public Optional<HeatingAction> action() {
    return bindingTemperature().map(wax -> HeatingAction.of(this, wax.value()));
  }

  /**
   * Returns a copy with another mix.
   *
   * @param other what is to be heated instead
   * @return the new plan
   */
  public HeatingPlan withMix(Composition other) {
    HeatingPlanBuilder copy = toBuilder();
    copy.mix = other;
    return copy.build();
  }

  /**
   * Returns this plan as it is written down, without the limits that it is held against.
   *
   * @return the draft, which reads back as an equal plan before a review
   * @throws ProblemException if two materials of one id and lot are in the mix
   */
  public HeatingPlanDraft toDraft() {
    return HeatingPlanDraft.of(this);
  }

  Set<Circumstance> denied() {
    return denied;
  }

  /** This plan, held against the limits of a rule set and of the age of the youngest too. */
  HeatingPlan heldAgainst(HeatingLimits own) {
    HeatingLimits tightest = own.tightened(limits);
    HeatingLimits all = people == null ? tightest : tightest.tightened(people.limits());
    if (all.equals(limits)) {
      return this;
    }
    HeatingPlanBuilder copy = toBuilder();
    copy.limits = all;
    copy.targetOfAdults = tightest.target();
    return copy.build();
  }

  /** The target without what the age of the youngest does to it. */
  TemperaturePoint targetOfAdults() {
    return targetOfAdults;
  }

  /** Worked out once; two threads that meet work out the same. */
  PlanTemperatures temperatures() {
    PlanTemperatures known = temperatures;
    if (known == null) {
      known = PlanTemperatures.of(this);
      temperatures = known;
    }
    return known;
  }

  private List<?> stated() {
    return Arrays.asList(
        mix,
        sources,
        heat,
        vessel,
        fillLevel,
        thermometer,
        liquidReading,
        surfaceReading,
        surfaceMethod,
        measuredOffset,
        hoursHeld,
        room,
        people,
        circumstances,
        denied,
        limits,
        targetOfAdults);
  }

  /**
   * Compares all that is stated, and the limits.
   *
   * @param other the other object
   * @return whether both plans are the same
   */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof HeatingPlan that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  @Override
  public String toString() {
    return "heating of " + mix + bindingTemperature().map(t -> " at " + t).orElse("");
  }
}
