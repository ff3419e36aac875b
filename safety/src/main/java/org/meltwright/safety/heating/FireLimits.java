// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.Optional;
import java.util.stream.Stream;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.units.TemperaturePoint;

/**
 * From which temperatures on the vapour of a mix catches fire from a spark, and by itself.
 *
 * @param flash the lowest flash point that a rule may use; empty if none is known
 * @param autoignition the lowest autoignition temperature that a rule may use; empty if none is
 *     known
 */
record FireLimits(Optional<TemperaturePoint> flash, Optional<TemperaturePoint> autoignition) {

  static FireLimits of(Contents contents) {
    return of(contents.flashPoints());
  }

  /**
   * The worst of the waxes, fats and oils of the catalogue: for a pot of which nothing is stated.
   */
  static FireLimits ofCatalogue() {
    return Catalogue.WORST;
  }

  private static FireLimits of(FlashPoints points) {
    return new FireLimits(points.lowest(), points.lowestAutoignition());
  }

  /** Worked out when first asked. */
  private static final class Catalogue {
    static final FireLimits WORST =
        of(
            FlashPoints.of(
                Stream.of(MaterialFamily.WAX, MaterialFamily.DRYING_OIL)
                    .flatMap(family -> MaterialCatalogue.standard().byFamily(family).stream())
                    .toList()));
  }
}
