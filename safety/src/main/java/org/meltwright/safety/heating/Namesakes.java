// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.safety.naming.HazardNames;
import org.meltwright.safety.naming.NamedHazard;

/**
 * What the catalogue calls by the names of a material of one's own that states nothing else: "olive
 * oil" is a fatty oil whoever writes it down. Of waxes and fats only, and only where every name of
 * it is one of theirs; a name that tells a hazard other than that oil dries, a number or parts
 * stand against it.
 */
final class Namesakes {

  private static final Set<MaterialFamily> WAXES_AND_FATS =
      EnumSet.of(MaterialFamily.WAX, MaterialFamily.DRYING_OIL, MaterialFamily.OTHER);

  private Namesakes() {}

  /** The catalogue's materials of that name; empty where one's own says more than its name. */
  static Optional<List<Material>> of(Material material) {
    if (!isBareName(material)) {
      return Optional.empty();
    }
    List<Material> english = named(material.name(Locale.ENGLISH));
    List<Material> german = named(material.name(Locale.GERMAN));
    return english.isEmpty() || german.isEmpty()
        ? Optional.empty()
        : Optional.of(Stream.concat(english.stream(), german.stream()).toList());
  }

  private static boolean isBareName(Material material) {
    return WAXES_AND_FATS.contains(material.family())
        && material.find(PropertyKey.FLASH_POINT).isEmpty()
        && material.absence(PropertyKey.FLASH_POINT).isEmpty()
        && material.constituents().isEmpty()
        && material.cas().isEmpty()
        && HazardNames.of(material).stream().allMatch(NamedHazard::isDryingOil);
  }

  /** Those of a name; none if one of them is no wax or fat. */
  private static List<Material> named(String name) {
    List<Material> matches = MaterialCatalogue.standard().matches(name);
    return matches.stream().allMatch(m -> WAXES_AND_FATS.contains(m.family()))
        ? matches
        : List.of();
  }
}
