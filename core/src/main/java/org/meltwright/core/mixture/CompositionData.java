// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.Density;
import org.meltwright.units.Estimate;

/**
 * What a mix consists of, by mass and by volume, as plain data: any JSON library writes it.
 *
 * <pre>{@code
 * Material resin = MaterialCatalogue.standard().require("damar");
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * Composition medium = Composition.ofParts(List.of(resin, wax), 1, 7);
 * DensityBasis basis =
 *     DensityBasis.SOLID
 *         .with(resin, gramsPerMillilitre(1.06))
 *         .with(wax, gramsPerMillilitre(0.96));
 *
 * CompositionData data = CompositionData.of(medium, basis);
 * data.basis(); // solid
 * data.shares().get(0).massFraction(); // 0.125
 * data.shares().get(0).volumeFraction(); // 0.114558
 * data.densityKilogramsPerCubicMetre(); // 971.456 kg/m³
 * }</pre>
 *
 * <p>Shares by volume hold only in the state of matter that is stated with them.
 *
 * <p>Immutable and thread-safe.
 *
 * @param basis the state of matter that volumes are counted in: {@code solid}, {@code liquid} or
 *     {@code bulk}
 * @param shares the materials, in the order of the mix, at least one
 * @param lowDensityKilogramsPerCubicMetre the density with every material at the low end of its
 *     range, in kg/m³
 * @param densityKilogramsPerCubicMetre the density with every material at the middle of its range,
 *     in kg/m³
 * @param highDensityKilogramsPerCubicMetre the density with every material at the high end of its
 *     range, in kg/m³
 */
public record CompositionData(
    String basis,
    List<Share> shares,
    double lowDensityKilogramsPerCubicMetre,
    double densityKilogramsPerCubicMetre,
    double highDensityKilogramsPerCubicMetre) {

  /**
   * How much of a material is in the mix.
   *
   * @param material the id of the material; several lines may be versions or lots of one
   * @param lot the lot; null if none is named
   * @param massFraction its share by mass, from 0 to 1
   * @param volumeFraction its share by volume on the basis, from 0 to 1, every density at the
   *     middle of its range
   */
  public record Share(
      String material, @Nullable String lot, double massFraction, double volumeFraction) {}

  public CompositionData {
    shares = List.copyOf(shares);
  }

  /**
   * Returns a composition as data.
   *
   * @param composition the composition
   * @param basis the state of matter that volumes are counted in, and where the densities come from
   * @return its shares and its density
   * @throws org.meltwright.units.ProblemException if a density is missing; the problem names
   *     material and property
   */
  public static CompositionData of(Composition composition, DensityBasis basis) {
    VolumeView view = composition.volumeView(basis);
    Estimate<Density> density = view.density();
    List<Share> shares = new ArrayList<>();
    for (int i = 0; i < composition.size(); i++) {
      shares.add(
          new Share(
              composition.materials().get(i).id(),
              composition.materials().get(i).lot().orElse(null),
              composition.massFractionValue(i),
              Amounts.clamp(view.volumeFractionValue(i))));
    }
    return new CompositionData(
        basis.state().name().toLowerCase(Locale.ROOT),
        shares,
        density.lowSi(),
        density.centralSi(),
        density.highSi());
  }
}
