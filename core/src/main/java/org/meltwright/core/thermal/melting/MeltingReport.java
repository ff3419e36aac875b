// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.melting;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.meltwright.core.explain.Explanation;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.mixture.Composition;
import org.meltwright.units.Bilingual;
import org.meltwright.units.MassFraction;
import org.meltwright.units.TemperaturePoint;

/**
 * How a mix melts: the range of every component that melts, and the temperature from which each
 * resin dissolves.
 *
 * <p>There is no melting point of the blend here, and no average: in a compatible melt a dissolved
 * resin lowers the temperature at which the last crystals vanish by a kelvin or two, where the
 * mass-weighted rule would raise it by five. For the bounds to work between see {@link
 * WorkingWindow}.
 *
 * <p>A material that is a mix itself and states no figure of its own is looked into: its
 * constituents count at the middle of their ranges.
 *
 * <p>A medium of one part of damar to eight of beeswax, under a ceiling of 90 °C:
 *
 * <pre>{@code
 * MaterialCatalogue shelf = MaterialCatalogue.standard();
 * Composition medium =
 *     Composition.ofParts(List.of(shelf.require("damar"), shelf.require("beeswax")), 1, 8);
 * MeltingReport report = MeltingReport.of(medium, ofCelsius(90));
 * ComponentMelting wax = report.melting().get(0);
 * wax.endOfMelting().orElseThrow().value(); // 62.0–65.0 °C (CAPILLARY_RANGE)
 * report.dissolving(); // [damar dissolves from 75.0–90.0 °C]
 * report.unknown(); // []
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param melting the components that melt, in the order of the mix
 * @param dissolving the resins, in the order of the mix
 * @param ceiling the highest temperature that may be shown
 */
public record MeltingReport(
    List<ComponentMelting> melting, List<DissolvingBound> dissolving, TemperaturePoint ceiling) {

  public MeltingReport {
    melting = List.copyOf(melting);
    dissolving = List.copyOf(dissolving);
  }

  /**
   * Returns the report of a mix.
   *
   * @param composition what the mix is made of
   * @param ceiling the highest temperature that may be shown
   * @return the report
   */
  public static MeltingReport of(Composition composition, TemperaturePoint ceiling) {
    return ofInside(inside(composition), ceiling);
  }

  /** The mix with what states how it melts or dissolves, and what is inside all else. */
  static Composition inside(Composition composition) {
    return composition.expandedUnless(
        m ->
            !m.figures(PropertyKey.MELTING_RANGE).isEmpty()
                || m.find(PropertyKey.DISSOLVES_FROM).isPresent()
                || m.find(PropertyKey.DISSOLVES_IN_MELT).isPresent());
  }

  private static MeltingReport ofInside(Composition composition, TemperaturePoint ceiling) {
    List<ComponentMelting> melting = new ArrayList<>();
    List<DissolvingBound> dissolving = new ArrayList<>();
    for (int i = 0; i < composition.size(); i++) {
      Material material = composition.materials().get(i);
      if (composition.massFractionValue(i) == 0) {
        continue;
      }
      if (melts(material)) {
        melting.add(
            ComponentMelting.of(material, MassFraction.of(composition.massFractionValue(i))));
      } else if (material.family() == MaterialFamily.RESIN) {
        dissolving.add(DissolvingBound.of(material, ceiling));
      }
    }
    return new MeltingReport(melting, dissolving, ceiling);
  }

  /**
   * Says whether a material melts in a mix. A resin may carry a melting figure too; it dissolves
   * all the same.
   *
   * @param material the material
   * @return whether it melts
   */
  public static boolean melts(Material material) {
    return material.family() == MaterialFamily.WAX
        || (material.family() == MaterialFamily.OTHER
            && !material.figures(PropertyKey.MELTING_RANGE).isEmpty());
  }

  /**
   * Returns the materials whose figure is missing.
   *
   * @return what melts without a figure for the end of melting, and resins without a bound
   */
  public List<Material> unknown() {
    List<Material> unknown = new ArrayList<>(withoutEnd());
    dissolving.stream()
        .filter(d -> d.dissolves() && d.figure().isEmpty())
        .forEach(d -> unknown.add(d.material()));
    return unknown;
  }

  /**
   * Returns what melts and nobody knows where its melting ends.
   *
   * @return the materials, in the order of the mix
   */
  public List<Material> withoutEnd() {
    return melting.stream()
        .filter(m -> m.endOfMelting().isEmpty())
        .map(ComponentMelting::material)
        .toList();
  }

  /**
   * Tells whether a clear point of the whole mix can be estimated.
   *
   * @return whether something melts, and each component that does has a figure for the end of it
   */
  public boolean tellsClearPoint() {
    return !melting.isEmpty() && withoutEnd().isEmpty();
  }

  /**
   * Explains the report.
   *
   * @return every figure with its definition and source, and what is missing
   */
  public Explanation explanation() {
    Explanation.Builder text = MeltingWorking.builder("working.melting", Map.of());
    MeltingWorking.melting(melting, text);
    dissolving.forEach(bound -> MeltingWorking.dissolving(bound, ceiling, text));
    unknown().stream()
        .distinct()
        .forEach(
            m -> text.caution("working.melting.unknown", Map.of("name", Bilingual.of(m::name))));
    return text.caution("working.melting.no-average").build();
  }
}
