// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntToDoubleFunction;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.explain.Drivers;
import org.meltwright.core.explain.EstimateInput;
import org.meltwright.core.explain.EstimateInput.Direction;
import org.meltwright.core.explain.Symbol;
import org.meltwright.core.material.Material;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Density;
import org.meltwright.units.Estimate;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.VolumeFraction;

/**
 * A composition seen by volume, in one state of matter: shares by volume and density, by additive
 * volumes.
 *
 * <pre>
 * 1/ρ = Σ wᵢ/ρᵢ        φᵢ = (wᵢ/ρᵢ) · ρ
 * </pre>
 *
 * <p>w share by mass, φ share by volume, ρ density in kg/m³. For example, 1 : 7 by mass of 1060 and
 * 960 kg/m³ is 971.456 kg/m³, the first with 11.4558 % of the volume. Valid where volumes add up:
 * no air between pieces, no reaction.
 *
 * <p>In code:
 *
 * <pre>{@code
 * Material resin = MaterialCatalogue.standard().require("damar");
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * Composition medium = Composition.ofParts(List.of(resin, wax), 1, 7);
 * VolumeView solid = medium.volumeView(DensityTable.of(1060, 960));
 * solid.densityKilogramsPerCubicMetre(); // 971.456 kg/m³
 * solid.volumeFraction(resin).percent(); // 11.4558 %
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class VolumeView {

  private static final Symbol DENSITY = Symbol.beside(VolumeView.class, "density", "kg/m³");

  private final Composition composition;
  private final DensityTable densities;

  /** What each line of a kilogram takes, in m³. */
  private final double[] volumes;

  private final double density;

  VolumeView(Composition composition, DensityTable densities) {
    this.composition = composition;
    this.densities = densities;
    this.volumes = new double[composition.size()];
    double sum = 0;
    double errors = 0;
    for (int i = 0; i < volumes.length; i++) {
      double volume = composition.massFractionValue(i) * densities.volume(i);
      volumes[i] = volume;
      double next = sum + volume;
      errors += ExactSum.error(sum, volume, next);
      sum = next;
    }
    this.density = 1 / ExactSum.rounded(sum, errors, volumes);
  }

  /**
   * Returns what is seen.
   *
   * @return the composition
   */
  public Composition composition() {
    return composition;
  }

  /**
   * Returns the share of the material at a place.
   *
   * @param index the place, from zero
   * @return its share by volume, from 0 to 1, every density at the middle of its range
   */
  public double volumeFractionValue(int index) {
    return volumes[index] * density;
  }

  /**
   * Returns the share of a material.
   *
   * @param material the material: every line of it, or of its lot if it names one
   * @return its share by volume, every density at the middle of its range; zero if it is not in the
   *     mix
   */
  public VolumeFraction volumeFraction(Material material) {
    double volume = composition.lines().sumOver(material, volumes);
    return VolumeFraction.of(Amounts.clamp(volume * density));
  }

  /**
   * Returns how much of a material is in a volume of the whole, such as 25 g in each 100 ml.
   *
   * @param material the material: every line of it, or of its lot if it names one
   * @return its mass per volume of the whole, every density at the middle of its range; zero if it
   *     is not in the mix
   */
  public Quantity<Density> massPerVolume(Material material) {
    return QuantityKind.DENSITY.ofSi(composition.massFractionValue(material) * density);
  }

  /**
   * Returns the density with every material at the middle of its range.
   *
   * @return kg/m³
   */
  public double densityKilogramsPerCubicMetre() {
    return density;
  }

  /**
   * Returns the density, with every material at the low, the middle and the high end of its range.
   *
   * @return the density
   */
  public Estimate<Density> density() {
    double low = density(densities::low);
    double high = density(densities::high);
    return new Estimate<>(
        QuantityKind.DENSITY, Math.min(low, density), density, Math.max(high, density));
  }

  /**
   * Returns what the density hangs on.
   *
   * @return the drivers: the density of each material
   */
  public Drivers densityDrivers() {
    return drivers(DENSITY, Direction.RAISES, density -> density);
  }

  /**
   * What a result that follows from the density hangs on; more of each density moves it one way.
   */
  Drivers drivers(Symbol result, Direction direction, DoubleUnaryOperator ofDensity) {
    List<EstimateInput> inputs = new ArrayList<>();
    for (int i = 0; i < volumes.length; i++) {
      Symbol one = DENSITY.of(Bilingual.of(composition.materials().get(i)::name));
      inputs.add(EstimateInput.of(one, densities.low(i), densities.high(i), direction));
    }
    return Drivers.of(
        result, inputs, values -> ofDensity.applyAsDouble(density(i -> values.of(inputs.get(i)))));
  }

  private double density(IntToDoubleFunction densityOf) {
    return density(volumes.length, composition::massFractionValue, densityOf);
  }

  /** The density of shares by mass whose volumes add up. */
  static double density(int count, IntToDoubleFunction share, IntToDoubleFunction densityOf) {
    ExactSum volume = new ExactSum();
    for (int i = 0; i < count; i++) {
      volume.add(share.applyAsDouble(i) * (1 / densityOf.applyAsDouble(i)));
    }
    return 1 / volume.value();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof VolumeView that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(composition, densities);
  }

  @Override
  public String toString() {
    return "volumes of " + composition;
  }
}
