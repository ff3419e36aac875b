// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.Optional;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.thermal.melting.WorkingWindow;
import org.meltwright.units.Limit;
import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.TemperaturePoint;

/**
 * From which temperature on a reading in the liquid can be one of molten wax: policy, for waxes
 * stay liquid a little below their clear point.
 */
final class MoltenBound {

  /** How far below the clear point a reading is believed. */
  private static final TemperatureDifference UNDERCOOLING = TemperatureDifference.ofKelvin(10);

  /** The bound where nothing is known of the melting, and the highest one for an oily mix. */
  static final TemperaturePoint UNKNOWN = TemperaturePoint.ofCelsius(40);

  /**
   * From this share on of what is liquid at room temperature a mix is soft, not molten or solid.
   */
  private static final double OILY = 0.1;

  private MoltenBound() {}

  /** A reading at or above a ceiling always counts, whatever melts there. */
  static boolean isMolten(
      TemperaturePoint reading, Optional<TemperaturePoint> bound, HeatingLimits limits) {
    return Limit.exceeds(reading, limits.target())
        || Limit.reaches(reading, limits.hardCeiling())
        || isReached(reading, bound);
  }

  /** Whether a reading can be one of molten wax. */
  static boolean isReached(TemperaturePoint reading, Optional<TemperaturePoint> bound) {
    return bound.filter(b -> !Limit.reaches(reading, b)).isEmpty();
  }

  /** The lowest reading of the molten mix; empty where it has no wax, and any reading stands. */
  static Optional<TemperaturePoint> of(Contents contents, Optional<WorkingWindow> window) {
    if (contents.holding(MoltenBound::mayBeWax).isEmpty()) {
      return Optional.empty();
    }
    Optional<TemperaturePoint> own =
        window.map(w -> TemperatureTable.below(w.clearPoint().low(), UNDERCOOLING));
    boolean oily = Limit.reaches(contents.share(MoltenBound::isLiquid).low().value(), OILY);
    return oily
        ? own.filter(bound -> bound.isBelow(UNKNOWN)).or(() -> Optional.of(UNKNOWN))
        : own.or(() -> Optional.of(UNKNOWN));
  }

  /** Of what fits no family nothing says that it is no wax. */
  private static boolean mayBeWax(Material material) {
    return material.family() == MaterialFamily.WAX || material.family() == MaterialFamily.OTHER;
  }

  /** Whether a material is liquid at room temperature, as far as its family or its melting says. */
  private static boolean isLiquid(Material material) {
    return switch (material.family()) {
      case DRYING_OIL, SOLVENT, WATER -> true;
      case OTHER -> meltsBelowRoom(material);
      default -> false;
    };
  }

  private static boolean meltsBelowRoom(Material material) {
    return material
        .find(PropertyKey.MELTING_RANGE)
        .filter(melting -> melting.value().range().high().celsius() < 20)
        .isPresent();
  }
}
