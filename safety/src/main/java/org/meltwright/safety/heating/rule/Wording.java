// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.text.Normalizer;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.PerMaterial;

/**
 * What a material calls itself, in whole English or German words of its id or one of its names. A
 * word after a "not" does not count: "unbleached" and "nicht gebleicht" are not bleached.
 */
enum Wording {
  /** Alkyd paint or medium; German compounds begin with the word. */
  ALKYD("alkyd(?!frei)\\S*"),
  /** Acrylic paint, medium or polymer. */
  ACRYLIC("acryl\\S*"),
  /** Varnish; German compounds end with the word. */
  VARNISH("varnish(?:es)?|\\S*firnis(?:se|sen)?"),
  /** Wax thinned with solvent, for work without heat. */
  SOLVENT_THINNED("cold wax|coldwax|kaltwachs\\S*|solvent thinned|lös(?:e|ungs)mittelverdünnt\\S*"),
  /** Bleached wax, by anything but the sun, which leaves nothing in it. */
  BLEACHED("(?<! (?:sun|sonnen) )(?:bleached|gebleicht(?:e[mnrs]?)?)"),
  /** Oil paint that mixes with water. */
  WATER_MIXABLE(
      "water ?mixable|water soluble oils?|wasser ?mischbar\\S*|wasservermalbar\\S*"
          + "|wasserlösliche[nrs]? ölfarben?");

  private static final String NOT = "(?<! (?:un|non|not|nicht|without|ohne))";
  private static final Pattern BETWEEN_WORDS = Pattern.compile("[^\\p{L}\\p{N}]+");
  private static final PerMaterial<Set<Wording>> FOUND = PerMaterial.of(Wording::find);

  private final Pattern pattern;

  Wording(String words) {
    pattern = Pattern.compile(NOT + " (?:" + words + ") ");
  }

  boolean isIn(Material material) {
    return FOUND.get(material).contains(this);
  }

  private static Set<Wording> find(Material material) {
    List<String> texts =
        Stream.concat(
                Stream.of(
                    material.id(), material.name(Locale.ENGLISH), material.name(Locale.GERMAN)),
                material.otherNames().stream())
            .map(Wording::spaced)
            .toList();
    EnumSet<Wording> found = EnumSet.allOf(Wording.class);
    found.removeIf(words -> texts.stream().noneMatch(text -> words.pattern.matcher(text).find()));
    return found;
  }

  private static String spaced(String text) {
    String composed = Normalizer.normalize(text, Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
    return " " + BETWEEN_WORDS.matcher(composed).replaceAll(" ").strip() + " ";
  }
}
