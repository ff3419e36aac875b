// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.meltwright.core.material.DefinedTemperature;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.source.Sourced;
import org.meltwright.units.TemperaturePoint;

/**
 * The flash points of a mix: the lowest that a rule may use, and the materials that burn and have
 * none.
 *
 * <p>What does not burn is not asked. An oil paint is judged by its oil. For example:
 *
 * <pre>{@code
 * Material damar = MaterialCatalogue.standard().require("damar");
 * var points = org.meltwright.safety.heating.rule.FlashPoints.of(Composition.of(damar));
 * points.unknown(); // [damar]
 * }</pre>
 *
 * <p>Public within the module, since the review in the package above asks it too; the package is
 * not exported. An app asks {@link org.meltwright.safety.heating.HeatingReview#lowestFlashPoint}
 * and {@link org.meltwright.safety.heating.HeatingReview#withoutFlashPoint}.
 */
public final class FlashPoints {

  private final List<TemperaturePoint> known = new ArrayList<>();
  private final List<Material> unknown = new ArrayList<>();

  /**
   * Asks a mix.
   *
   * @param mix the mix
   * @return its flash points
   */
  public static FlashPoints of(Composition mix) {
    FlashPoints points = new FlashPoints();
    Mix.materials(mix).forEach(points::add);
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
        Mix.parts(material)
            .filter(part -> part.family() == MaterialFamily.DRYING_OIL)
            .distinct()
            .toList();
    boolean judgedByItsOil = material.family() == MaterialFamily.OIL_PAINT && !oils.isEmpty();
    return judgedByItsOil ? oils : List.of(material);
  }

  private static boolean doesNotBurn(Material material) {
    return material
        .find(PropertyKey.COMBUSTIBILITY)
        .filter(figure -> figure.value().equals("does not burn"))
        .isPresent();
  }

  private static Stream<TemperaturePoint> usable(Material material) {
    return material.usableFigures(PropertyKey.FLASH_POINT).stream()
        .map(Sourced::value)
        .map(DefinedTemperature::range)
        .map(range -> range.low());
  }

  /**
   * Returns the lowest flash point that a rule may use.
   *
   * @return the low end of its range; empty if there is none
   */
  public Optional<TemperaturePoint> lowest() {
    return known.stream().min(TemperaturePoint::compareTo);
  }

  /**
   * Returns what burns, or may burn, and has no usable flash point.
   *
   * @return the materials, by id
   */
  public List<Material> unknown() {
    return List.copyOf(unknown);
  }
}
