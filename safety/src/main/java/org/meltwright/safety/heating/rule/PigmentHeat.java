// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.mixture.Composition;

/**
 * What is known of a pigment and heat, from the table {@code pigments-and-heat.csv} beside this
 * class.
 *
 * @param name what the pigment is called
 * @param metal the metal that makes its dust toxic; "-" for none
 * @param heat how it may be heated
 * @param colourIndexNames its Colour Index names
 * @param casNumbers its CAS numbers
 * @param ids its ids in the catalogue
 */
record PigmentHeat(
    String name,
    String metal,
    Heat heat,
    Set<String> colourIndexNames,
    Set<String> casNumbers,
    Set<String> ids) {

  private static final List<PigmentHeat> TABLE = read();

  /** How a pigment may be heated, worst first. */
  enum Heat {
    /** Not at all. */
    NEVER,
    /** Melted within the ceilings; neither flame nor hot air. */
    MELT_ONLY,
    /** No flame. */
    NO_FLAME,
    /** Within the ceilings. */
    ANY
  }

  static List<PigmentHeat> table() {
    return TABLE;
  }

  /** Returns the worst line that a material matches; empty if none does. */
  static Optional<PigmentHeat> of(Material material) {
    return TABLE.stream()
        .filter(line -> line.matches(material))
        .min(Comparator.comparing(PigmentHeat::heat));
  }

  /** Returns the materials of a mix that hold a pigment whose line matches, by id. */
  static List<Material> holding(Composition mix, Predicate<PigmentHeat> wanted) {
    return Mix.holding(mix, part -> of(part).filter(wanted).isPresent());
  }

  /**
   * Returns the materials of a mix whose pigment cannot be told: a pigment without number or name,
   * a paint without constituents.
   */
  static List<Material> unknownIn(Composition mix) {
    return Mix.materials(mix).stream().filter(PigmentHeat::isUnknown).toList();
  }

  private static boolean isUnknown(Material material) {
    boolean named =
        material.cas().isPresent()
            || material.colourIndexName().isPresent()
            || material.alternatives().stream().anyMatch(m -> of(m).isPresent())
            || of(material).isPresent();
    return switch (material.family()) {
      case PIGMENT -> !named;
      case OIL_PAINT -> !named && Mix.parts(material).noneMatch(PigmentHeat::isKnownPigment);
      default -> false;
    };
  }

  private static boolean isKnownPigment(Material part) {
    return part.family() == MaterialFamily.PIGMENT && !isUnknown(part);
  }

  private boolean matches(Material material) {
    return ids.contains(material.id())
        || anyOf(casNumbers, material.cas())
        || anyOf(colourIndexNames, material.colourIndexName());
  }

  private static boolean anyOf(Set<String> wanted, Optional<String> found) {
    return found.stream().flatMap(f -> Arrays.stream(f.split("[ /,]+"))).anyMatch(wanted::contains);
  }

  private static List<PigmentHeat> read() {
    InputStream stream =
        Objects.requireNonNull(PigmentHeat.class.getResourceAsStream("pigments-and-heat.csv"));
    try (BufferedReader reader =
        new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
      return reader
          .lines()
          .filter(line -> !line.startsWith("#"))
          .skip(1)
          .map(PigmentHeat::parse)
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static PigmentHeat parse(String line) {
    String[] cells = line.split(",", -1);
    Heat heat = Heat.valueOf(cells[2].toUpperCase(Locale.ROOT).replace('-', '_'));
    return new PigmentHeat(
        cells[0], cells[1], heat, words(cells[3]), words(cells[4]), words(cells[5]));
  }

  private static Set<String> words(String cell) {
    return Arrays.stream(cell.split(" ")).filter(w -> !w.isEmpty()).collect(Collectors.toSet());
  }
}
