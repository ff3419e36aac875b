// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import static org.meltwright.core.mixture.MixtureProblem.CHECK;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * The densities of the materials of a composition, looked up once, for calculations in a loop.
 *
 * <p>For example, how many parts of wax to one of resin bring the solid down to 971 kg/m³:
 *
 * <pre>{@code
 * Material resin = MaterialCatalogue.standard().require("damar");
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * Composition mix = Composition.ofParts(List.of(resin, wax), 1, 1);
 * DensityTable densities = DensityTable.of(1060, 960);
 * int parts = 1;
 * while (mix.volumeView(densities).densityKilogramsPerCubicMetre() > 971) {
 *   mix = mix.withParts(1, ++parts);
 * }
 * parts; // 8
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class DensityTable {

  private static final double LIGHTEST = 1e-3;
  private static final double HEAVIEST = 1e5;

  private final double[] low;
  private final double[] middle;
  private final double[] high;

  /** One over the middle, in m³/kg: so that a view divides once for a table, not for each mix. */
  private final double[] volumes;

  /**
   * Returns a table of exact densities.
   *
   * @param kilogramsPerCubicMetre the densities in kg/m³, from 0.001 to 100,000
   * @return the table
   * @throws ProblemException if a density lies outside
   */
  public static DensityTable of(double... kilogramsPerCubicMetre) {
    return of(kilogramsPerCubicMetre, kilogramsPerCubicMetre);
  }

  /**
   * Returns a table of densities with ranges.
   *
   * @param lowKilogramsPerCubicMetre the low ends in kg/m³, from 0.001 to 100,000
   * @param highKilogramsPerCubicMetre the high ends in kg/m³, as many, none below its low end
   * @return the table
   * @throws ProblemException if a density lies outside, the ends of a range are reversed, or there
   *     are not as many of them
   */
  public static DensityTable of(
      double[] lowKilogramsPerCubicMetre, double[] highKilogramsPerCubicMetre) {
    if (lowKilogramsPerCubicMetre.length != highKilogramsPerCubicMetre.length) {
      throw new ProblemException(
          Problem.of(
                  MixtureProblem.DENSITY_COUNT, Integer.toString(highKilogramsPerCubicMetre.length))
              .with("expected", Integer.toString(lowKilogramsPerCubicMetre.length)));
    }
    double[] middle = new double[lowKilogramsPerCubicMetre.length];
    for (int i = 0; i < lowKilogramsPerCubicMetre.length; i++) {
      CHECK.between(lowKilogramsPerCubicMetre[i], LIGHTEST, HEAVIEST, "density in kg/m³");
      CHECK.between(highKilogramsPerCubicMetre[i], LIGHTEST, HEAVIEST, "density in kg/m³");
      CHECK.ordered(
          lowKilogramsPerCubicMetre[i], highKilogramsPerCubicMetre[i], "density in kg/m³");
      middle[i] =
          lowKilogramsPerCubicMetre[i]
              + (highKilogramsPerCubicMetre[i] - lowKilogramsPerCubicMetre[i]) / 2;
    }
    return new DensityTable(
        lowKilogramsPerCubicMetre.clone(), middle, highKilogramsPerCubicMetre.clone());
  }

  private DensityTable(double[] low, double[] middle, double[] high) {
    this.low = low;
    this.middle = middle;
    this.high = high;
    this.volumes = new double[middle.length];
    for (int i = 0; i < volumes.length; i++) {
      volumes[i] = 1 / middle[i];
    }
  }

  /** Returns what a kilogram takes at the middle density, in m³. */
  double volume(int index) {
    return volumes[index];
  }

  /**
   * Returns how many densities it holds.
   *
   * @return the number
   */
  public int size() {
    return middle.length;
  }

  /**
   * Returns the low end of a density.
   *
   * @param index the place, from zero
   * @return kg/m³
   */
  public double low(int index) {
    return low[index];
  }

  /**
   * Returns the middle of a density's range.
   *
   * @param index the place, from zero
   * @return kg/m³
   */
  public double middle(int index) {
    return middle[index];
  }

  /**
   * Returns the high end of a density.
   *
   * @param index the place, from zero
   * @return kg/m³
   */
  public double high(int index) {
    return high[index];
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof DensityTable that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(
        DoubleStream.of(low).boxed().toList(),
        DoubleStream.of(middle).boxed().toList(),
        DoubleStream.of(high).boxed().toList(),
        DoubleStream.of(volumes).boxed().toList());
  }

  @Override
  public String toString() {
    return "densities " + Arrays.toString(middle);
  }
}
