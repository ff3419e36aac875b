// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.core.equipment.HeatSource.Kind;
import org.meltwright.units.Messages;
import org.meltwright.units.TemperaturePoint;

/**
 * The temperature of the wax that the limits are held against, and how it was found.
 *
 * <p>In a pot it is the liquid, measured; else the plate plus the measured offset; else the wax
 * counts as hot as the floor. On a heated palette it is the highest of what was measured on the
 * surface over one thermostat cycle, set point plus overshoot, and the liquid. In a water bath only
 * what was measured in the wax counts. For example, a plate that reads 110 °C with a measured
 * offset of −18 K gives 92 °C, estimated.
 *
 * <p>In code:
 *
 * <pre>{@code
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * HeatSource plate =
 *     HeatSource.of("hot plate", HeatSource.Kind.HOT_PLATE).withSetPoint(ofCelsius(110));
 * HeatingPlan plan =
 *     HeatingPlan.builder(Composition.of(wax))
 *         .heat(plate)
 *         .measuredOffset(TemperatureDifference.ofKelvin(-18))
 *         .build();
 * plan.bindingTemperature().get().value(); // 92.0 °C
 * plan.bindingTemperature().get().isEstimated(); // true
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param value the temperature
 * @param basis how it was got
 */
public record BindingTemperature(TemperaturePoint value, Basis basis) {

  /** From how far below the set point on a surface reading asks for a look at the probe, in K. */
  private static final double FAR_BELOW_KELVIN = 15;

  /** How a binding temperature was got. */
  public enum Basis {
    /** Measured in the liquid wax. */
    LIQUID_MEASURED("liquid-measured", true),
    /** Measured on the surface of the palette, the highest over one thermostat cycle. */
    PALETTE_MEASURED("palette-measured", true),
    /** Measured in the liquid on a palette whose surface was not measured: a lower bound. */
    LIQUID_ON_PALETTE("liquid-on-palette", false),
    /** Set point plus overshoot of the palette. */
    PALETTE_SET_POINT_AND_OVERSHOOT("palette-set-point-and-overshoot", false),
    /** Set point plus overshoot of the palette, which a reliable surface reading does not pass. */
    PALETTE_STATED_AND_MEASURED("palette-stated-and-measured", true),
    /** The plate's reading plus the measured offset. */
    PLATE_AND_OFFSET("plate-and-offset", false),
    /** As hot as the floor of the pot: nothing better is known. */
    AS_HOT_AS_FLOOR("as-hot-as-floor", false),
    /** The set point alone, a lower bound: the overshoot is not stated. */
    AT_LEAST_SET_POINT("at-least-set-point", false),
    /** A surface reading that counts upwards only, a lower bound. */
    AT_LEAST_SURFACE("at-least-surface", false),
    /** A reading in the liquid that counts at a ceiling, too cold for molten wax: a lower bound. */
    AT_LEAST_LIQUID("at-least-liquid", false);

    private final String id;
    private final boolean measured;

    Basis(String id, boolean measured) {
      this.id = id;
      this.measured = measured;
    }

    /**
     * Returns the stable id.
     *
     * @return lower case and hyphens, for example {@code liquid-measured}
     */
    public String id() {
      return id;
    }

    /**
     * Tells whether a thermometer read it.
     *
     * @return whether it was measured
     */
    public boolean isMeasured() {
      return measured;
    }

    /**
     * Says how the temperature was got.
     *
     * @param locale the reader's language: German for {@code de}, English for all others
     * @return one phrase
     */
    public String text(Locale locale) {
      return Messages.beside(BindingTemperature.class).text("basis." + name(), locale);
    }
  }

  /**
   * Tells whether it is an estimate.
   *
   * @return whether no thermometer read it
   */
  public boolean isEstimated() {
    return !basis.isMeasured();
  }

  /**
   * Tells whether a thermometer read it.
   *
   * @return whether it was measured
   */
  public boolean isMeasured() {
    return basis.isMeasured();
  }

  /**
   * Works out the binding temperature of a plan.
   *
   * @param plan the plan
   * @param molten what was measured in the liquid, if it counts
   * @param isBelieved whether that can be molten wax; else it counts upwards only
   * @param floor the floor of the pot
   * @return the temperature; empty if nothing tells it
   */
  static Optional<BindingTemperature> of(
      HeatingPlan plan,
      Optional<TemperaturePoint> molten,
      boolean isBelieved,
      Optional<PotFloor> floor) {
    Optional<HeatSource.Kind> kind = plan.heat().map(HeatSource::kind);
    if (kind.filter(k -> k == Kind.HEATED_PALETTE).isPresent()) {
      return ofPalette(plan, molten);
    }
    boolean bath = kind.filter(k -> k == Kind.WATER_BATH).isPresent();
    Optional<BindingTemperature> read =
        as(molten, isBelieved ? Basis.LIQUID_MEASURED : Basis.AT_LEAST_LIQUID);
    return bath || isBelieved ? read : hottest(Stream.of(estimated(plan, floor), read));
  }

  /** The hotter of what is stated of the surface, of what was measured there, and of the liquid. */
  private static Optional<BindingTemperature> ofPalette(
      HeatingPlan plan, Optional<TemperaturePoint> molten) {
    boolean known = isSurfaceKnown(plan);
    Basis read = plan.isSurfaceReadingReliable() ? Basis.PALETTE_MEASURED : Basis.AT_LEAST_SURFACE;
    Basis stated =
        known ? Basis.PALETTE_STATED_AND_MEASURED : Basis.PALETTE_SET_POINT_AND_OVERSHOOT;
    Optional<HeatSource> heat = plan.heat();
    Optional<BindingTemperature> surface = as(plan.surfaceReading(), read);
    return hottest(
        Stream.of(
            surface.filter(BindingTemperature::isMeasured),
            as(heat.flatMap(HeatSource::highestSurface), stated),
            as(heat.flatMap(HeatSource::setPoint), Basis.AT_LEAST_SET_POINT),
            surface,
            as(molten, known ? Basis.LIQUID_MEASURED : Basis.LIQUID_ON_PALETTE)));
  }

  /** The hottest, the first of equal ones. */
  private static Optional<BindingTemperature> hottest(Stream<Optional<BindingTemperature>> known) {
    return known
        .flatMap(Optional::stream)
        .reduce((one, other) -> other.value().isAbove(one.value()) ? other : one);
  }

  /**
   * Whether a reliable reading tells how hot the surface gets. Below a set point without an
   * overshoot it cannot be the highest over one cycle; far below one with an overshoot it is a cold
   * start, or a probe that does not touch.
   */
  private static boolean isSurfaceKnown(HeatingPlan plan) {
    double mostBelow =
        plan.heat().flatMap(HeatSource::overshoot).isPresent() ? FAR_BELOW_KELVIN : 0;
    return plan.isSurfaceReadingReliable()
        && plan.heat()
            .flatMap(HeatSource::setPoint)
            .flatMap(set -> plan.surfaceReading().map(set::minus))
            .filter(below -> below.kelvin() > mostBelow)
            .isEmpty();
  }

  private static Optional<BindingTemperature> estimated(
      HeatingPlan plan, Optional<PotFloor> floor) {
    return as(plateAndOffset(plan), Basis.PLATE_AND_OFFSET)
        .or(() -> floor.map(f -> new BindingTemperature(f.value(), basis(f, plan))));
  }

  /** The plate's reading plus the measured offset; a problem if that lies below absolute zero. */
  static Optional<TemperaturePoint> plateAndOffset(HeatingPlan plan) {
    return plateReading(plan).flatMap(plate -> plan.measuredOffset().map(plate::plus));
  }

  /** What the offset was measured from: the dial, or the surface where that reads more. */
  static Optional<TemperaturePoint> plateReading(HeatingPlan plan) {
    return Stream.of(plan.heat().flatMap(HeatSource::setPoint), plan.surfaceReading())
        .flatMap(Optional::stream)
        .max(TemperaturePoint::compareTo);
  }

  private static Basis basis(PotFloor floor, HeatingPlan plan) {
    if (floor.isKnown() || plan.heat().filter(heat -> !heat.kind().hasDegrees()).isPresent()) {
      return Basis.AS_HOT_AS_FLOOR;
    }
    boolean read = plan.surfaceReading().filter(floor.value()::equals).isPresent();
    return read ? Basis.AT_LEAST_SURFACE : Basis.AT_LEAST_SET_POINT;
  }

  private static Optional<BindingTemperature> as(Optional<TemperaturePoint> value, Basis basis) {
    return value.map(t -> new BindingTemperature(t, basis));
  }

  @Override
  public String toString() {
    return value + " (" + basis.text(Locale.ENGLISH) + ")";
  }
}
