// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.meltwright.core.material.IdentifierScheme;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.source.Sourced;
import org.meltwright.units.TemperaturePoint;

/** What the catalogue of materials knows of a substance that was given by its number alone. */
final class Catalogued {

  private static final Map<String, List<Material>> BY_CAS =
      MaterialCatalogue.standard().all().stream()
          .flatMap(
              m ->
                  m.identifiers(IdentifierScheme.CAS).stream()
                      .map(cas -> Map.entry(cas.value(), m)))
          .collect(
              Collectors.groupingBy(
                  Map.Entry::getKey,
                  Collectors.mapping(Map.Entry::getValue, Collectors.toUnmodifiableList())));

  private Catalogued() {}

  static List<Material> of(SubstanceHazards s) {
    return s.casNumbers().stream()
        .flatMap(cas -> BY_CAS.getOrDefault(cas, List.of()).stream())
        .toList();
  }

  /** The material itself, else those of the number. */
  static List<Material> of(HazardIngredient i) {
    return i.material().map(List::of).orElseGet(() -> of(i.hazards()));
  }

  /** The shortest of the names, which says least of a kind. */
  static Optional<String> germanName(SubstanceHazards s) {
    return s.germanName()
        .or(
            () ->
                of(s).stream()
                    .map(m -> m.name(Locale.GERMAN))
                    .min(
                        Comparator.comparing(String::length)
                            .thenComparing(Comparator.naturalOrder())));
  }

  /** The lowest flash point that a rule may use. */
  static Optional<TemperaturePoint> flashPoint(HazardIngredient i) {
    return of(i).stream().flatMap(Catalogued::flashPoints).min(TemperaturePoint::compareTo);
  }

  private static Stream<TemperaturePoint> flashPoints(Material m) {
    return m.usableFigures(PropertyKey.FLASH_POINT).stream()
        .map(Sourced::value)
        .map(d -> d.range().low());
  }
}
