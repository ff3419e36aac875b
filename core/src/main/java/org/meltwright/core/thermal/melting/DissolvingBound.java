// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.melting;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.material.DefinedTemperature;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.source.Sourced;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.TemperatureRange;

/**
 * The temperature from which a resin dissolves in the melt: a lower bound only, never a reason to
 * heat more.
 *
 * <p>A resin dissolves well below its own melting figure. What is shown never lies above the
 * ceiling: where dissolving is too slow there, crush finer, stir and wait. Where the whole figure
 * lies above it, nothing is shown, and the bound says so.
 *
 * <p>A report holds one for each resin; here damar, of which 75 to 90 °C is common practice, under
 * a ceiling of 85 °C, and a hard copal:
 *
 * <pre>{@code
 * MaterialCatalogue shelf = MaterialCatalogue.standard();
 * Composition resins =
 *     Composition.ofParts(List.of(shelf.require("damar"), shelf.require("copal-hard")), 1, 1);
 * List<DissolvingBound> bounds = MeltingReport.of(resins, ofCelsius(85)).dissolving();
 * bounds.get(0).shown(); // 75.0–85.0 °C
 * bounds.get(0).isCut(); // true
 * bounds.get(1).dissolves(); // false
 * DissolvingBound cool = MeltingReport.of(resins, ofCelsius(60)).dissolving().get(0);
 * cool.isAboveCeiling(); // true
 * cool.shown().isEmpty(); // true
 * }</pre>
 *
 * <p>This class is immutable and thread-safe.
 */
public final class DissolvingBound {

  private final Material material;
  private final TemperaturePoint ceiling;
  private final @Nullable Sourced<DefinedTemperature> figure;

  static DissolvingBound of(Material material, TemperaturePoint ceiling) {
    return new DissolvingBound(
        material, ceiling, material.find(PropertyKey.DISSOLVES_FROM).orElse(null));
  }

  private DissolvingBound(
      Material material, TemperaturePoint ceiling, @Nullable Sourced<DefinedTemperature> figure) {
    this.material = material;
    this.ceiling = ceiling;
    this.figure = figure;
  }

  /**
   * Returns the resin.
   *
   * @return the material
   */
  public Material material() {
    return material;
  }

  /**
   * Tells whether the resin dissolves in a melt at all: some run only far above any ceiling.
   *
   * @return whether no source says that it does not
   */
  public boolean dissolves() {
    return dissolves(material);
  }

  static boolean dissolves(Material material) {
    return material.find(PropertyKey.DISSOLVES_IN_MELT).filter(f -> !f.value()).isEmpty();
  }

  /**
   * Returns the figure as its source states it.
   *
   * @return the figure; empty if nobody knows one
   */
  public Optional<Sourced<DefinedTemperature>> figure() {
    return Optional.ofNullable(figure);
  }

  /**
   * Returns the lower bound to show, cut off at the ceiling.
   *
   * @return the range in which the bound lies, no part of it above the ceiling; empty if unknown,
   *     if all of it lies above the ceiling, or if the resin does not dissolve
   */
  public Optional<TemperatureRange> shown() {
    return figure()
        .filter(f -> dissolves() && !isAboveCeiling())
        .map(f -> f.value().range())
        .map(r -> new TemperatureRange(cut(r.low()), cut(r.high())));
  }

  /**
   * Tells whether the ceiling cut the figure off, in part or wholly.
   *
   * @return whether a part of the figure lies above the ceiling
   */
  public boolean isCut() {
    return figure().filter(f -> f.value().range().high().isAbove(ceiling)).isPresent();
  }

  /**
   * Tells whether all of the figure lies above the ceiling: at the ceiling the resin does not
   * dissolve.
   *
   * @return whether even the low end of the figure lies above the ceiling
   */
  public boolean isAboveCeiling() {
    return figure().filter(f -> f.value().range().low().isAbove(ceiling)).isPresent();
  }

  private TemperaturePoint cut(TemperaturePoint point) {
    return point.isAbove(ceiling) ? ceiling : point;
  }

  @Override
  public String toString() {
    if (!dissolves()) {
      return material + " does not dissolve in a melt";
    }
    return isAboveCeiling()
        ? material + " dissolves only above the ceiling of " + ceiling
        : material + " dissolves from " + shown().map(TemperatureRange::toString).orElse("unknown");
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof DissolvingBound that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<@Nullable Object> stated() {
    return Arrays.asList(material, ceiling, figure);
  }
}
