// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import java.util.Optional;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.MaterialState;
import org.meltwright.units.QuantityRange;
import org.meltwright.units.TemperatureRange;

/**
 * A range of a physical property, with the state and the temperature it holds for.
 *
 * <p>For example:
 *
 * <pre>{@code
 * QuantityRange<Density> stated =
 *     QuantityRange.of(
 *         QuantityKind.DENSITY, gramsPerMillilitre(0.82), gramsPerMillilitre(0.85));
 * PropertyRange<Density> melt =
 *     PropertyRange.of(stated, MaterialState.LIQUID).at(TemperatureRange.of(ofCelsius(80)));
 * melt.range().middleSi(); // 835 kg/m³
 * PropertyKey.LIQUID_DENSITY.format(melt); // 0.82 to 0.85 g/ml at 80 °C
 * }</pre>
 *
 * <p>This class is immutable and thread-safe.
 *
 * @param <Q> the kind of quantity
 */
public final class PropertyRange<Q extends Quantity<Q>> {

  private final QuantityRange<Q> range;
  private final MaterialState state;
  private final @Nullable TemperatureRange at;

  /**
   * Returns a range whose temperature is not stated.
   *
   * @param <Q> the kind of quantity
   * @param range the range
   * @param state the state it holds for
   * @return the property range
   */
  public static <Q extends Quantity<Q>> PropertyRange<Q> of(
      QuantityRange<Q> range, MaterialState state) {
    return new PropertyRange<>(range, state, null);
  }

  private PropertyRange(
      QuantityRange<Q> range, MaterialState state, @Nullable TemperatureRange at) {
    this.range = range;
    this.state = state;
    this.at = at;
  }

  /**
   * Returns the range.
   *
   * @return low and high in the SI unit of the kind
   */
  public QuantityRange<Q> range() {
    return range;
  }

  /** {@return the state that the figure holds for} */
  public MaterialState state() {
    return state;
  }

  /**
   * Returns the temperature that the figure holds at.
   *
   * @return the temperature; empty if the source does not state it
   */
  public Optional<TemperatureRange> at() {
    return Optional.ofNullable(at);
  }

  /**
   * Returns a copy that holds at a temperature.
   *
   * @param temperature the temperature
   * @return the new property range
   */
  public PropertyRange<Q> at(TemperatureRange temperature) {
    return new PropertyRange<>(range, state, temperature);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof PropertyRange<?> that
        && range.equals(that.range)
        && state == that.state
        && at().equals(that.at());
  }

  @Override
  public int hashCode() {
    return range.hashCode() * 31 + state.hashCode();
  }

  @Override
  public String toString() {
    return range + " " + state + at().map(t -> " at " + t).orElse("");
  }
}
