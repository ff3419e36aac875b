// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import static org.meltwright.safety.hazard.PlainParts.NEVER;
import static org.meltwright.safety.hazard.PlainParts.reached;

import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.meltwright.safety.hazard.PlainMixture.Known;
import org.meltwright.safety.hazard.PlainMixture.Limit;
import org.meltwright.safety.hazard.PlainParts.Part;

/**
 * 3.7 Harm to reproduction, stated a second time: harm to the unborn child (D) and to fertility (F)
 * each by itself, and a harm of which neither is said (U).
 */
final class PlainReproduction {

  private PlainReproduction() {}

  /**
   * The category with its statement, such as "1B H360Df"; without it where an ingredient does not
   * say which harm it means; "-" for none.
   */
  static String category(PlainParts parts) {
    String d = effect(parts, 'D');
    String f = effect(parts, 'F');
    String u = effect(parts, 'U');
    String category =
        Stream.of("1A", "1B", "2")
            .filter(c -> c.equals(d) || c.equals(f) || c.equals(u))
            .findFirst()
            .orElse("-");
    boolean stated = u.isEmpty() && !category.equals("-");
    return stated ? category + " " + statement(!category.equals("2"), d, f) : category;
  }

  private static String statement(boolean severe, String d, String f) {
    String letterD = letter(severe, d, "D");
    String letterF = letter(severe, f, "F");
    boolean childFirst = letterD.equals("D") && letterF.equals("f");
    return (severe ? "H360" : "H361") + (childFirst ? "Df" : letterF + letterD);
  }

  private static String letter(boolean severe, String category, String effect) {
    if (category.isEmpty()) {
      return "";
    }
    return severe && !category.equals("2") ? effect : effect.toLowerCase(Locale.ROOT);
  }

  /**
   * Table 3.7.2; notes 11 and 12 of Annex VI add up within boron and within an entry, whichever
   * harm each substance names.
   */
  private static String effect(PlainParts parts, char effect) {
    return Stream.of("1A", "1B", "2").filter(c -> reaches(parts, effect, c)).findFirst().orElse("");
  }

  private static boolean reaches(PlainParts parts, char effect, String target) {
    Map<String, Double> sums = new TreeMap<>();
    Set<String> speaking = new TreeSet<>();
    for (Part p : parts.all()) {
      double limit = limit(p.known(), effect, target);
      double counting = limit < NEVER ? limit : limitOfAny(p.known(), target);
      sums.merge(group(p.known()), p.counted() / counting, Double::sum);
      if (limit < NEVER) {
        speaking.add(group(p.known()));
      }
    }
    return speaking.stream().anyMatch(group -> reached(sums.get(group), 1));
  }

  private static double limitOfAny(Known k, String target) {
    return Stream.of('D', 'F', 'U').mapToDouble(e -> limit(k, e, target)).min().orElseThrow();
  }

  private static String group(Known k) {
    if (k.notes.contains("11")) {
      return "note 11";
    }
    return k.notes.contains("12") ? "note 12 " + k.entry : k.id;
  }

  private static double limit(Known k, char effect, String target) {
    double own = own(k, l -> of(l.category(), l.statement(), effect).equals(target));
    if (own < NEVER) {
      return own;
    }
    boolean has =
        k.categories.stream()
            .filter(c -> c.name().equals("Repr."))
            .anyMatch(c -> of(c.category(), c.statement(), effect).equals(target));
    double ownOfAny = own(k, l -> of(l.category(), l.statement(), 'U').equals(target));
    double general = target.equals("2") ? 3 : 0.3;
    return !has ? NEVER : ownOfAny < NEVER ? ownOfAny : general;
  }

  private static double own(Known k, Predicate<Limit> which) {
    return k.limits.stream()
        .filter(l -> l.name().equals("Repr."))
        .filter(which)
        .mapToDouble(Limit::from)
        .min()
        .orElse(NEVER);
  }

  /** The category that a text gives an effect; empty for none. */
  private static String of(String category, String statement, char effect) {
    String letters = statement.substring(4);
    if (letters.isEmpty()) {
      return effect == 'U' ? category : "";
    }
    if (letters.indexOf(effect) >= 0) {
      return category;
    }
    return letters.indexOf(Character.toLowerCase(effect)) >= 0 ? "2" : "";
  }
}
