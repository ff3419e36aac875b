// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.heat;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.measure.Quantity;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.material.PropertyRange;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.Sourced;
import org.meltwright.units.QuantityRange;

/**
 * The figures that the materials of a mix state, or that are assumed of them, looked up one by one:
 * it remembers what was assumed, and what the figures rest on.
 *
 * <p>Beeswax states how much heat melts it; damar states no specific heat:
 *
 * <pre>{@code
 * MixFigures figures = new MixFigures();
 * Material wax = MaterialCatalogue.standard().require("beeswax");
 * Material resin = MaterialCatalogue.standard().require("damar");
 * figures.find(wax, PropertyKey.HEAT_OF_FUSION).orElseThrow().lowSi(); // 141000 J/kg
 * figures.find(resin, PropertyKey.SOLID_SPECIFIC_HEAT).isPresent(); // false
 * figures.assumed(); // [damar solid-specific-heat]
 * }</pre>
 *
 * <p>Compared by identity: it is a memory, and what it remembers grows.
 */
public final class MixFigures {

  private final Set<String> assumed = new LinkedHashSet<>();
  private final Set<Source> sources = new LinkedHashSet<>();

  /** Creates a memory of nothing yet. */
  public MixFigures() {}

  /**
   * Looks for what a material states; where it states nothing, that is noted as assumed.
   *
   * @param <Q> the kind of the figure
   * @param material the material
   * @param key the property
   * @return the range; empty where something is to be assumed
   */
  public <Q extends Quantity<Q>> Optional<QuantityRange<Q>> find(
      Material material, PropertyKey<PropertyRange<Q>> key) {
    Optional<Sourced<PropertyRange<Q>>> stated = material.find(key);
    stated.map(Sourced::source).ifPresent(sources::add);
    if (stated.isEmpty()) {
      assumed.add(material.id() + " " + key.id());
    }
    return stated.map(figure -> figure.value().range());
  }

  /**
   * Notes what an assumption rests on.
   *
   * @param source its source
   */
  public void restOn(Source source) {
    sources.add(source);
  }

  /**
   * Returns what was assumed.
   *
   * @return material and property of each assumed figure
   */
  public List<String> assumed() {
    return List.copyOf(assumed);
  }

  /**
   * Returns what the figures rest on.
   *
   * @return the sources, in the order asked
   */
  public List<Source> sources() {
    return List.copyOf(sources);
  }
}
