// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.meltwright.core.material.Combustibility;
import org.meltwright.core.material.DefinedTemperature;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.source.Sourced;
import org.meltwright.units.TemperaturePoint;

/**
 * The flash points of some materials: the lowest that a rule may use, and those that burn and have
 * none. What does not burn is not asked. An oil paint is judged by its oil.
 */
final class FlashPoints {

  private final List<TemperaturePoint> known = new ArrayList<>();
  private final List<Material> unknown = new ArrayList<>();

  static FlashPoints of(List<Material> materials) {
    FlashPoints points = new FlashPoints();
    materials.forEach(points::add);
    return points;
  }

  private FlashPoints() {}

  private void add(Material material) {
    List<Material> asked = asked(material);
    Optional<TemperaturePoint> lowest =
        asked.stream().flatMap(FlashPoints::usable).min(TemperaturePoint::compareTo);
    lowest.ifPresent(known::add);
    if (asked.stream().anyMatch(m -> usable(m).findAny().isEmpty())) {
      unknown.add(material);
    }
  }

  private static List<Material> asked(Material material) {
    if (doesNotBurn(material)) {
      return List.of();
    }
    List<Material> oils =
        Contents.parts(material)
            .filter(part -> part.family() == MaterialFamily.DRYING_OIL)
            .distinct()
            .toList();
    boolean judgedByItsOil = material.family() == MaterialFamily.OIL_PAINT && !oils.isEmpty();
    return judgedByItsOil ? oils : List.of(material);
  }

  private static boolean doesNotBurn(Material material) {
    return material
        .find(PropertyKey.COMBUSTIBILITY)
        .filter(figure -> figure.value() == Combustibility.DOES_NOT_BURN)
        .isPresent();
  }

  private static Stream<TemperaturePoint> usable(Material material) {
    return material.usableFigures(PropertyKey.FLASH_POINT).stream()
        .map(Sourced::value)
        .map(DefinedTemperature::range)
        .map(range -> range.low());
  }

  /** Returns the lowest that a rule may use, at the low end of its range. */
  Optional<TemperaturePoint> lowest() {
    return known.stream().min(TemperaturePoint::compareTo);
  }

  /** Returns what burns, or may burn, and has no usable flash point, in the order given. */
  List<Material> unknown() {
    return List.copyOf(unknown);
  }
}
