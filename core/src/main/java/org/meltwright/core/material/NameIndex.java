// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.meltwright.core.source.Sourced;
import org.meltwright.units.Nearest;

/** Finds materials by id, name, CAS, EC or Colour Index name, and the nearest names on a miss. */
final class NameIndex {

  private static final int NEAREST = 3;
  private static final int SHORT_WORD = 3;
  private static final int LONGEST_NAME = 60;
  private static final List<IdentifierScheme> SCHEMES =
      List.of(IdentifierScheme.CAS, IdentifierScheme.EC, IdentifierScheme.COLOUR_INDEX_NAME);

  private final Map<String, Set<Material>> byName = new LinkedHashMap<>();
  private final Map<String, Set<Material>> byIdentifier = new LinkedHashMap<>();

  /** Without lambdas, as all that the standard catalogue runs through when it is first asked. */
  NameIndex(Collection<Material> materials) {
    for (Material material : materials) {
      for (String name : names(material)) {
        put(byName, name, material);
      }
      if (material.lot().isEmpty()) {
        identifiers(material);
      }
    }
  }

  private void identifiers(Material material) {
    for (IdentifierScheme scheme : SCHEMES) {
      for (Sourced<String> identifier : material.identifiers(scheme)) {
        put(byIdentifier, identifier.value(), material);
      }
    }
  }

  /** A lot is found with its lot behind each name: who asks for the wax means no lot of it. */
  private static List<String> names(Material material) {
    List<String> names = new ArrayList<>(material.otherNames());
    names.add(material.id());
    names.add(material.name(Locale.ENGLISH));
    names.add(material.name(Locale.GERMAN));
    material.lot().ifPresent(lot -> names.replaceAll(name -> name + " lot " + lot));
    return names;
  }

  private static void put(Map<String, Set<Material>> map, String name, Material material) {
    String folded = fold(name);
    Set<Material> named = map.get(folded);
    if (named == null) {
      named = new LinkedHashSet<>();
      map.put(folded, named);
    }
    named.add(material);
  }

  /** All materials that answer to a name; one alone if it is the id. */
  List<Material> matches(String text) {
    String name = fold(text);
    Set<Material> named = byName.getOrDefault(name, Set.of());
    List<Material> own = named.stream().filter(m -> fold(m.toString()).equals(name)).toList();
    if (!own.isEmpty()) {
      return own;
    }
    Set<Material> all = new LinkedHashSet<>(named);
    all.addAll(byIdentifier.getOrDefault(name, Set.of()));
    return List.copyOf(all);
  }

  /**
   * The ids whose names are nearest, best first: by edit distance, or because a word is in them. If
   * the whole is near to none, each longer word of it is asked: "dammar gum" for damar.
   */
  List<String> nearest(String text) {
    List<String> whole = nearestOf(fold(text));
    return whole.isEmpty() && text.length() <= LONGEST_NAME
        ? Stream.of(text.strip().split("[\\s,;()-]+"))
            .filter(word -> word.length() > SHORT_WORD)
            .flatMap(word -> nearestOf(fold(word)).stream())
            .distinct()
            .limit(NEAREST)
            .toList()
        : whole;
  }

  private List<String> nearestOf(String name) {
    int reach = Math.max(1, name.length() / 3);
    Map<String, Integer> best = new LinkedHashMap<>();
    byName.forEach(
        (known, materials) -> {
          int distance = distance(name, known, reach);
          if (distance <= reach) {
            materials.forEach(m -> best.merge(m.toString(), distance, Math::min));
          }
        });
    return best.entrySet().stream()
        .sorted(Map.Entry.<String, Integer>comparingByValue().thenComparing(Map.Entry::getKey))
        .map(Map.Entry::getKey)
        .limit(NEAREST)
        .toList();
  }

  /** Names that differ by more letters than the reach are not compared letter by letter. */
  private static int distance(String name, String known, int reach) {
    int lengths = Math.abs(name.length() - known.length());
    if (name.length() > 2 && known.contains(name)) {
      return 1;
    }
    return lengths > reach ? lengths : Nearest.distance(name, known);
  }

  /** Case, marks, spaces and the German letters' two spellings make no difference. */
  static String fold(String text) {
    StringBuilder folded = new StringBuilder();
    for (char c : text.toLowerCase(Locale.ROOT).toCharArray()) {
      switch (c) {
        case 'ä' -> folded.append("ae");
        case 'ö' -> folded.append("oe");
        case 'ü' -> folded.append("ue");
        case 'ß' -> folded.append("ss");
        default -> {
          if (Character.isLetterOrDigit(c)) {
            folded.append(c);
          } else if (folded.length() > 0 && folded.charAt(folded.length() - 1) != ' ') {
            folded.append(' ');
          }
        }
      }
    }
    return folded.toString().strip();
  }
}
