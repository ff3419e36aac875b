// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Organs and routes as the entries name them, with their German names. */
final class OrganNames {

  private static final Map<String, String> GERMAN =
      Map.ofEntries(
          Map.entry("kidney", "Niere"),
          Map.entry("bone", "Knochen"),
          Map.entry("central nervous system", "Zentralnervensystem"),
          Map.entry("nervous system", "Nervensystem"),
          Map.entry("upper respiratory tract", "obere Atemwege"),
          Map.entry("respiratory tract", "Atemwege"),
          Map.entry("blood system", "Blutsystem"),
          Map.entry("blood", "Blut"),
          Map.entry("larynx", "Kehlkopf"),
          Map.entry("lungs", "Lunge"),
          Map.entry("liver", "Leber"),
          Map.entry("thyroid", "Schilddrüse"),
          Map.entry("eyes", "Augen"),
          Map.entry("skin", "Haut"),
          Map.entry("hearing organs", "Hörorgane"),
          Map.entry("inhalation", "bei Einatmen"),
          Map.entry("oral", "bei Verschlucken"),
          Map.entry("dermal", "bei Hautkontakt"));

  private static final Map<String, String> ENGLISH_ROUTES =
      Map.of(
          "inhalation", "by inhalation", "oral", "if swallowed", "dermal", "in contact with skin");

  private OrganNames() {}

  /** The English name of an organ or route that a sheet names in English or German. */
  static Optional<String> english(String name) {
    String key = name.strip().toLowerCase(Locale.ROOT);
    return GERMAN.entrySet().stream()
        .filter(e -> e.getKey().equals(key) || e.getValue().toLowerCase(Locale.ROOT).equals(key))
        .map(Map.Entry::getKey)
        .findFirst();
  }

  static boolean isNamed(String english) {
    return GERMAN.containsKey(english);
  }

  static String name(String english, Locale locale) {
    return HazardTexts.isGerman(locale)
        ? GERMAN.getOrDefault(english, "")
        : ENGLISH_ROUTES.getOrDefault(english, english);
  }
}
