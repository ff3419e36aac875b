// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import static org.meltwright.core.material.MaterialProblem.CHECK;

import org.meltwright.core.source.Sourced;

/**
 * A figure of a catalogue, with the material and the property it belongs to.
 *
 * <p>For example, how the catalogue ranks what is in print on the flash point of beeswax:
 *
 * <pre>{@code
 * List<CatalogueFigure<?>> flashPoints =
 *     MaterialCatalogue.standard().figures().stream()
 *         .filter(f -> f.material().id().equals("beeswax-yellow"))
 *         .filter(f -> f.key() == PropertyKey.FLASH_POINT)
 *         .toList();
 * flashPoints.get(0).text(); // 204 °C, not-stated
 * flashPoints.get(1).rank(); // 2
 * flashPoints.get(1).sourced().barredBecause(); // the lower of two conflicting values rules
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param <V> the type of the value
 * @param material the material
 * @param key the property
 * @param rank its place in the order of preference, 1 for the first
 * @param sourced the value with its source
 */
public record CatalogueFigure<V>(
    Material material, PropertyKey<V> key, int rank, Sourced<V> sourced) {

  /** Draws a problem if the rank is below 1. */
  public CatalogueFigure {
    CHECK.between(rank, 1, 1e6, "rank of a figure");
  }

  /**
   * Returns the value as a materials file writes it.
   *
   * @return for example "62 to 65 °C, capillary-range"
   */
  public String text() {
    return key.format(sourced.value());
  }

  @Override
  public String toString() {
    return material + " " + key + " " + rank + ": " + text() + " [" + sourced.source().id() + "]";
  }
}
