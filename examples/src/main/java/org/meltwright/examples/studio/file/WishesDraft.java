// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.file;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is wished of a recipe that is to be found, as it was written.
 *
 * @param make how much is to be made, a mass
 * @param from what may go in: ids of the shelf, and of recipes of which something is left over
 * @param first what is to be used up first, in this order
 * @param resin the share of resin
 * @param oilPaint the share of oil paint, as it comes from the tube
 * @param freeOil the share of oil, inside paints too
 * @param pigment the share of pigment, inside paints too
 * @param costAtMost the most that a kilogram may cost, what is left over counted as paid for
 * @param partsAtMost the most parts that it may have
 * @param usual the recipe that it stands in for
 */
public record WishesDraft(
    @Nullable String make,
    @Nullable List<@Nullable String> from,
    @Nullable List<@Nullable String> first,
    @Nullable BoundsDraft resin,
    @Nullable BoundsDraft oilPaint,
    @Nullable BoundsDraft freeOil,
    @Nullable BoundsDraft pigment,
    @Nullable String costAtMost,
    @Nullable Integer partsAtMost,
    @Nullable String usual) {

  /**
   * Bounds of a share by mass.
   *
   * @param atLeast the least share
   * @param atMost the most
   */
  public record BoundsDraft(@Nullable String atLeast, @Nullable String atMost) {}

  /**
   * What is left of an earlier batch.
   *
   * @param recipe the id of its recipe
   * @param mass how much is left
   */
  public record LeftoverDraft(@Nullable String recipe, @Nullable String mass) {}
}
