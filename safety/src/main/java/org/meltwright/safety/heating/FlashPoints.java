// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.meltwright.core.material.Combustibility;
import org.meltwright.core.material.DefinedTemperature;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.PerMaterial;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.source.Sourced;
import org.meltwright.safety.naming.HazardNames;
import org.meltwright.units.TemperaturePoint;

/**
 * The flash points of some materials: the lowest that a rule may use, and those that burn and have
 * none. What does not burn is not asked. An oil paint is judged by its oil.
 *
 * @param lowest the lowest flash point that a rule may use, at the low end of its range
 * @param lowestAutoignition the lowest autoignition temperature that a rule may use, at the low end
 * @param unknown what burns, or may burn, and has no usable flash point, in the order given
 */
record FlashPoints(
    Optional<TemperaturePoint> lowest,
    Optional<TemperaturePoint> lowestAutoignition,
    List<Material> unknown) {

  private static final FlashPoints NONE =
      new FlashPoints(Optional.empty(), Optional.empty(), List.of());

  private static final PerMaterial<FlashPoints> OF_ONE = PerMaterial.of(FlashPoints::ofOne);

  static FlashPoints of(List<Material> materials) {
    FlashPoints all = NONE;
    for (Material material : materials) {
      all = all.and(OF_ONE.get(material));
    }
    return all;
  }

  private FlashPoints and(FlashPoints other) {
    return new FlashPoints(
        lower(lowest, other.lowest),
        lower(lowestAutoignition, other.lowestAutoignition),
        Stream.concat(unknown.stream(), other.unknown.stream()).toList());
  }

  private static Optional<TemperaturePoint> lower(
      Optional<TemperaturePoint> one, Optional<TemperaturePoint> other) {
    if (one.isEmpty() || other.isEmpty()) {
      return one.or(() -> other);
    }
    return other.get().isBelow(one.get()) ? other : one;
  }

  private static FlashPoints ofOne(Material material) {
    List<Material> asked = asked(material);
    Optional<TemperaturePoint> named = FragranceNames.flashPoint(material);
    boolean isUnknown =
        named.isEmpty()
            && asked.stream().anyMatch(m -> usable(m, PropertyKey.FLASH_POINT).findAny().isEmpty());
    return new FlashPoints(
        lower(lowest(asked, PropertyKey.FLASH_POINT), named),
        lowest(asked, PropertyKey.AUTOIGNITION),
        isUnknown ? List.of(material) : List.of());
  }

  private static Optional<TemperaturePoint> lowest(
      List<Material> asked, PropertyKey<DefinedTemperature> key) {
    return asked.stream().flatMap(m -> usable(m, key)).min(TemperaturePoint::compareTo);
  }

  private static List<Material> asked(Material material) {
    if (doesNotBurn(material) || isDryAndStaysSo(material)) {
      return List.of();
    }
    List<Material> oils =
        Contents.parts(material)
            .filter(part -> part.family() == MaterialFamily.DRYING_OIL)
            .distinct()
            .toList();
    boolean judgedByItsOil = material.family() == MaterialFamily.OIL_PAINT && !oils.isEmpty();
    return judgedByItsOil ? oils : Namesakes.of(material).orElse(List.of(material));
  }

  /** A pigment or filler that does not melt has no flash point to ask for. */
  private static boolean isDryAndStaysSo(Material material) {
    boolean dry =
        material.family() == MaterialFamily.PIGMENT
            || material.family() == MaterialFamily.FILLER
            || (material.family() == MaterialFamily.OTHER
                && HazardNames.ordinaryPigment(material).isPresent());
    return dry
        && material.find(PropertyKey.MELTING_RANGE).isEmpty()
        && material.find(PropertyKey.FLASH_POINT).isEmpty();
  }

  private static boolean doesNotBurn(Material material) {
    return material
        .find(PropertyKey.COMBUSTIBILITY)
        .filter(figure -> figure.value() == Combustibility.DOES_NOT_BURN)
        .isPresent();
  }

  private static Stream<TemperaturePoint> usable(
      Material material, PropertyKey<DefinedTemperature> key) {
    return material.usableFigures(key).stream()
        .map(Sourced::value)
        .map(DefinedTemperature::range)
        .map(range -> range.low());
  }
}
