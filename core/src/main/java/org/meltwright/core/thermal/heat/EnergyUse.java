// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.heat;

import static org.meltwright.core.thermal.heat.HeatSupply.CHECK;

import java.util.List;
import java.util.stream.Stream;
import javax.measure.quantity.Energy;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.explain.Drivers;
import org.meltwright.core.explain.Drivers.Model;
import org.meltwright.core.explain.EstimateInput;
import org.meltwright.core.explain.EstimateInput.Direction;
import org.meltwright.core.explain.Symbol;
import org.meltwright.core.numeric.Texts;
import org.meltwright.core.thermal.ThermalProblem;
import org.meltwright.units.Estimate;
import org.meltwright.units.MetricUnits;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.TemperaturePoint;

/**
 * Energy drawn from a meter, as an estimate.
 *
 * <p>Two hours at 85 °C in a room of 20 °C: 1.2 × 65 W make 0.156 kWh in the pot, and between 0.26
 * and 0.39 kWh on the meter.
 *
 * <pre>{@code
 * EnergyUse holding = EnergyUse.ofHolding(1.2, ofCelsius(85), ofCelsius(20), 7200, 0.4, 0.6);
 * holding.lowKilowattHours(); // 0.26 kWh
 * holding.centralKilowattHours(); // 0.312 kWh
 * holding.highKilowattHours(); // 0.39 kWh
 * holding.plus(holding).centralKilowattHours(); // 0.624 kWh
 * }</pre>
 *
 * <p>Two are equal if energy and inputs are. This class is immutable and thread-safe.
 */
public final class EnergyUse {

  private static final Symbol ENERGY = Symbol.beside(ThermalProblem.class, "energy", "J");
  private static final Symbol EFFICIENCY = Symbol.beside(ThermalProblem.class, "efficiency", "");

  private final List<EstimateInput> inputs;
  private final Model model;
  private final Estimate<Energy> energy;

  /**
   * Returns what holding a pot warm draws.
   *
   * <p>Formula: E = UA (T − Ta) t / η. For example, 1.2 W/K at 85 °C in a room of 20 °C for two
   * hours at an efficiency of 0.4 to 0.6 is 0.312 kWh at the middle efficiency.
   *
   * @param lossWattsPerKelvin what the pot loses for each kelvin above the room, in W/K
   * @param held the temperature held
   * @param room the temperature of the room, not above it
   * @param seconds how long, in s, not negative
   * @param lowEfficiency the lowest share of the power that reaches the pot, above 0
   * @param highEfficiency the highest share, up to 1
   * @return the energy
   * @throws org.meltwright.units.ProblemException if a figure cannot be
   */
  public static EnergyUse ofHolding(
      double lossWattsPerKelvin,
      TemperaturePoint held,
      TemperaturePoint room,
      double seconds,
      double lowEfficiency,
      double highEfficiency) {
    CHECK.between(lossWattsPerKelvin, 0, 1e7, "heat loss in W/K");
    CHECK.between(seconds, 0, 1e9, "time in s");
    double excess =
        CHECK.between(held.minus(room).kelvin(), 0, 2000, "temperature above the room in K");
    double heat = lossWattsPerKelvin * excess * seconds;
    return ofHeat(List.of(), values -> heat, lowEfficiency, highEfficiency);
  }

  static EnergyUse ofHeat(
      List<EstimateInput> inputs, Model heat, double lowEfficiency, double highEfficiency) {
    CHECK.between(lowEfficiency, 1e-3, 1, "lowest efficiency");
    CHECK.between(highEfficiency, 1e-3, 1, "highest efficiency");
    CHECK.ordered(lowEfficiency, highEfficiency, "efficiency");
    EstimateInput efficiency =
        EstimateInput.of(EFFICIENCY, lowEfficiency, highEfficiency, Direction.LOWERS);
    return new EnergyUse(
        Stream.concat(inputs.stream(), Stream.of(efficiency)).toList(),
        values -> heat.of(values) / values.of(efficiency));
  }

  private EnergyUse(List<EstimateInput> inputs, Model model) {
    this.inputs = inputs;
    this.model = model;
    this.energy =
        new Estimate<>(
            QuantityKind.ENERGY,
            model.of(EstimateInput::forLow),
            model.of(EstimateInput::central),
            model.of(EstimateInput::forHigh));
  }

  /**
   * Returns the sum of two uses, low to low and high to high.
   *
   * @param other the other use
   * @return the sum
   */
  public EnergyUse plus(EnergyUse other) {
    return new EnergyUse(
        Stream.concat(inputs.stream(), other.inputs.stream()).distinct().toList(),
        values -> model.of(values) + other.model.of(values));
  }

  /**
   * Returns the energy.
   *
   * @return low, central and high
   */
  public Estimate<Energy> energy() {
    return energy;
  }

  /**
   * Returns what the energy hangs on.
   *
   * @return the drivers: the efficiency, and what the heat hangs on
   */
  public Drivers drivers() {
    return Drivers.of(ENERGY, inputs, model);
  }

  /**
   * Returns the low value.
   *
   * @return the energy, in kWh
   */
  public double lowKilowattHours() {
    return QuantityKind.ENERGY.fromSi(energy.lowSi(), MetricUnits.KILOWATT_HOUR);
  }

  /**
   * Returns the central value.
   *
   * @return the energy, in kWh
   */
  public double centralKilowattHours() {
    return QuantityKind.ENERGY.fromSi(energy.centralSi(), MetricUnits.KILOWATT_HOUR);
  }

  /**
   * Returns the high value.
   *
   * @return the energy, in kWh
   */
  public double highKilowattHours() {
    return QuantityKind.ENERGY.fromSi(energy.highSi(), MetricUnits.KILOWATT_HOUR);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof EnergyUse that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(energy, inputs);
  }

  @Override
  public String toString() {
    return Texts.three(lowKilowattHours()) + " to " + Texts.three(highKilowattHours()) + " kWh";
  }
}
