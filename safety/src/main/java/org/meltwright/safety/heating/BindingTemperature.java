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
 * The temperature that the one temperature table binds, and how it was got.
 *
 * <p>In a pot it is the liquid, measured; else the plate's reading plus the measured offset; else
 * the wax counts as hot as the floor. On a heated palette it is the highest surface temperature
 * over one thermostat cycle, measured; else set point plus overshoot; a hotter liquid on it binds.
 * For example, a plate that reads 110 °C with a measured offset of −18 K gives 92 °C, estimated.
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
    /** The plate's reading plus the measured offset. */
    PLATE_AND_OFFSET("plate-and-offset", false),
    /** As hot as the floor of the pot: nothing better is known. */
    AS_HOT_AS_FLOOR("as-hot-as-floor", false),
    /** The set point alone, a lower bound: the overshoot is not stated. */
    AT_LEAST_SET_POINT("at-least-set-point", false);

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
   * @return the temperature; empty if nothing tells it
   */
  static Optional<BindingTemperature> of(HeatingPlan plan) {
    boolean palette = plan.heat().filter(h -> h.kind() == Kind.HEATED_PALETTE).isPresent();
    return palette ? ofPalette(plan) : ofPot(plan);
  }

  private static Optional<BindingTemperature> ofPalette(HeatingPlan plan) {
    Optional<TemperaturePoint> setPoint = plan.heat().flatMap(HeatSource::setPoint);
    Optional<TemperaturePoint> highest = plan.heat().flatMap(HeatSource::highestSurface);
    Optional<BindingTemperature> surface =
        first(
            Stream.of(
                as(plan.surfaceReading(), Basis.PALETTE_MEASURED),
                as(highest, Basis.PALETTE_SET_POINT_AND_OVERSHOOT),
                as(setPoint, Basis.AT_LEAST_SET_POINT)));
    Basis basis =
        plan.surfaceReading().isPresent() ? Basis.LIQUID_MEASURED : Basis.LIQUID_ON_PALETTE;
    Optional<BindingTemperature> liquid = as(plan.liquidReading(), basis);
    return Stream.of(surface, liquid)
        .flatMap(Optional::stream)
        .reduce((one, other) -> other.value().isAbove(one.value()) ? other : one);
  }

  private static Optional<BindingTemperature> ofPot(HeatingPlan plan) {
    Optional<TemperaturePoint> setPoint = plan.heat().flatMap(HeatSource::setPoint);
    Optional<TemperaturePoint> plateReading = plan.surfaceReading().or(() -> setPoint);
    Optional<TemperaturePoint> estimate =
        plateReading.flatMap(plate -> plan.measuredOffset().map(plate::plus));
    return first(
        Stream.of(
            as(plan.liquidReading(), Basis.LIQUID_MEASURED),
            as(estimate, Basis.PLATE_AND_OFFSET),
            as(
                PotFloor.of(plan).filter(PotFloor::isKnown).map(PotFloor::value),
                Basis.AS_HOT_AS_FLOOR),
            as(setPoint, Basis.AT_LEAST_SET_POINT)));
  }

  private static Optional<BindingTemperature> as(Optional<TemperaturePoint> value, Basis basis) {
    return value.map(t -> new BindingTemperature(t, basis));
  }

  private static Optional<BindingTemperature> first(
      Stream<Optional<BindingTemperature>> inOrderOfPreference) {
    return inOrderOfPreference.flatMap(Optional::stream).findFirst();
  }

  @Override
  public String toString() {
    return value + " (" + basis.text(Locale.ENGLISH) + ")";
  }
}
