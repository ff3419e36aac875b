// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.melting;

import java.util.List;
import java.util.Optional;
import org.meltwright.core.material.DefinedTemperature;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.material.TemperatureDefinition;
import org.meltwright.core.source.Sourced;
import org.meltwright.units.MassFraction;

/**
 * A component of a mix that melts, with every melting figure known of it, each under its own
 * definition.
 *
 * <p>Figures of two definitions do not compare: an onset of 45 °C, a capillary range of 62–65 °C
 * and a calorimetric peak of 70 °C can all belong to one material.
 *
 * <p>A report holds one for each component that melts; here carnauba wax, a tenth of the mix, of
 * which five figures are known:
 *
 * <pre>{@code
 * MaterialCatalogue shelf = MaterialCatalogue.standard();
 * Composition mix =
 *     Composition.ofParts(List.of(shelf.require("beeswax"), shelf.require("carnauba")), 9, 1);
 * ComponentMelting carnauba = MeltingReport.of(mix, ofCelsius(90)).melting().get(1);
 * carnauba.share(); // 10.0 % by mass
 * carnauba.endOfMelting().orElseThrow().value(); // 80.0–86.0 °C (NOT_STATED)
 * carnauba.figures().get(3).value(); // 87.85 °C (DSC_PEAK)
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param material what melts
 * @param share its share of the mix by mass
 * @param figures its melting figures in order of preference; empty if nobody knows one
 */
public record ComponentMelting(
    Material material, MassFraction share, List<Sourced<DefinedTemperature>> figures) {

  public ComponentMelting {
    figures = List.copyOf(figures);
  }

  /**
   * Returns what is known of how a material melts.
   *
   * @param material what melts
   * @param share its share of the mix by mass
   * @return the material with all its melting figures
   */
  public static ComponentMelting of(Material material, MassFraction share) {
    return new ComponentMelting(material, share, material.figures(PropertyKey.MELTING_RANGE));
  }

  /**
   * Returns the figure that tells where melting ends: the first that a rule may use and whose
   * definition is not an onset or a softening.
   *
   * @return the figure; empty if none tells
   */
  public Optional<Sourced<DefinedTemperature>> endOfMelting() {
    return figures.stream()
        .filter(f -> f.isUsableForRules() && tellsEnd(f.value().definition()))
        .findFirst();
  }

  /**
   * Returns the figure that tells where melting begins: an onset if one is known, else the low end
   * of the preferred range.
   *
   * @return the figure; empty if none is known
   */
  public Optional<Sourced<DefinedTemperature>> startOfMelting() {
    return figures.stream()
        .filter(f -> f.value().definition() == TemperatureDefinition.ONSET)
        .findFirst()
        .or(this::endOfMelting);
  }

  private static boolean tellsEnd(TemperatureDefinition definition) {
    return switch (definition) {
      case CAPILLARY_RANGE,
          DROP_POINT,
          CONGEALING_POINT,
          COOLING_CURVE,
          DSC_PEAK,
          MELTING_POINT,
          CLEAR_POINT,
          NOT_STATED ->
          true;
      default -> false;
    };
  }
}
