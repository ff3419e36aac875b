// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import static org.meltwright.safety.hazard.PlainParts.NEVER;
import static org.meltwright.safety.hazard.PlainParts.endOfRange;
import static org.meltwright.safety.hazard.PlainParts.limit;
import static org.meltwright.safety.hazard.PlainParts.ownLimit;
import static org.meltwright.safety.hazard.PlainParts.ownOfItsCategory;
import static org.meltwright.safety.hazard.PlainParts.reached;
import static org.meltwright.safety.hazard.PlainParts.relevant;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.meltwright.safety.hazard.PlainMixture.Facts;
import org.meltwright.safety.hazard.PlainMixture.Known;
import org.meltwright.safety.hazard.PlainMixture.Limit;
import org.meltwright.safety.hazard.PlainParts.Part;

/**
 * The rules for mixtures of Regulation (EC) No 1272/2008, Annex I, on the day 1 May 2026, stated a
 * second time: as plain as the text allows, one method a class, with its limits in the code beside
 * its paragraph. It knows no type of the library, and was written from the text of the rules before
 * their author read how the library does it.
 *
 * <p>The answer of a class is a category, "-" for none, "?" where something unknown could matter;
 * "1|1B" where the rules leave open which of two is named. Shares are per cent by mass, upper end
 * of a range; a limit is reached at its value, with a slack of 1e-9 on the cautious side.
 */
final class PlainRules {

  private static final String NONE = "-";
  private static final String OPEN = "?";
  private static final Set<String> CORROSION = Set.of("1", "1A", "1B", "1C");

  private final Facts facts;
  private final PlainParts parts;
  private final Map<String, String> answers = new LinkedHashMap<>();

  private PlainRules(PlainMixture mixture) {
    facts = mixture.facts();
    parts = PlainParts.of(mixture);
  }

  /** The answer of each class, by its id. */
  static Map<String, String> answers(PlainMixture mixture) {
    PlainRules rules = new PlainRules(mixture);
    rules.acute("acute-oral", "oral");
    rules.acute("acute-dermal", "dermal");
    rules.acute("acute-inhalation", "gas", "vapour", "dust");
    rules.skin();
    rules.eye();
    rules.sensitisation("respiratory-sensitisation", "Resp. Sens.");
    rules.sensitisation("skin-sensitisation", "Skin Sens.");
    rules.cancerAndMutation("mutagenicity", "Muta.");
    rules.cancerAndMutation("carcinogenicity", "Carc.");
    rules.answer("reproduction", PlainReproduction.category(rules.parts), 0.3);
    rules.alone("lactation", "Lact.", 0.3);
    rules.organs("stot-single", "STOT SE");
    rules.organsThree("stot-single-irritation", "H335");
    rules.organsThree("stot-single-narcosis", "H336");
    rules.organs("stot-repeated", "STOT RE");
    rules.aspiration();
    rules.aquaticAcute();
    rules.aquaticChronic();
    rules.alone("ozone", "Ozone", 0.1);
    rules.endocrine("endocrine-human", "ED HH");
    rules.endocrine("endocrine-environment", "ED ENV");
    rules.alone("pbt", "PBT", 0.1);
    rules.alone("vpvb", "vPvB", 0.1);
    rules.alone("pmt", "PMT", 0.1);
    rules.alone("vpvm", "vPvM", 0.1);
    rules.flammableLiquid();
    rules.duties();
    return rules.answers;
  }

  /** Whose names a label gives as setting off an allergy, and whose data sheet it announces. */
  private void duties() {
    PlainDuties duties = new PlainDuties(parts, facts.state().equals("gas"));
    boolean classified =
        answers.values().stream().anyMatch(a -> !a.equals(NONE) && !a.equals(OPEN));
    answers.put("elicitors", duties.elicitors());
    answers.put("announced", classified ? "" : duties.announced());
  }

  /** A category that was reached stands; else what is unknown from a share on leaves it open. */
  private void answer(String hazardClass, String category, double openFrom) {
    boolean open = category.equals(NONE) && parts.anyOpen(hazardClass, openFrom);
    answers.put(hazardClass, open ? OPEN : category);
  }

  // 3.1 Acute toxicity -------------------------------------------------------------------------

  private void acute(String hazardClass, String... forms) {
    int worst =
        Stream.of(forms)
            .mapToInt(form -> PlainAcute.category(parts, hazardClass, form))
            .min()
            .orElseThrow();
    answer(hazardClass, worst <= 4 ? "" + worst : NONE, 1);
  }

  // 3.2 and 3.3 Skin and eye --------------------------------------------------------------------

  private static final Set<String> SKIN = Set.of("Skin Corr.", "Skin Irrit.");
  private static final Set<String> CORRODING = Set.of("Skin Corr.");
  private static final Set<String> EYE = Set.of("Eye Dam.", "Eye Irrit.");

  /**
   * Sum of share / limit; what does not add up is held by itself as well, by its own limit or those
   * of Table 3.2.4 or 3.3.4, and stays in the sum: to leave it out would be milder.
   */
  private boolean together(Set<String> names, Limits limits) {
    double sum = 0;
    for (Part p : parts.all()) {
      double single = p.counted() / limits.of(p.known(), false);
      if (!p.known().additive && reached(single, 1)) {
        return true;
      }
      sum += relevant(p, names) ? p.counted() / limits.of(p.known(), true) : 0;
    }
    return reached(sum, 1);
  }

  /** The limit of a substance, in the sum or by itself. */
  private interface Limits {
    double of(Known known, boolean inSum);
  }

  /** Table 3.2.3; where additivity does not hold Table 3.2.4. */
  private boolean skinReaches(String target) {
    Set<String> from =
        switch (target) {
          case "1A" -> Set.of("1A");
          case "1B" -> Set.of("1A", "1B");
          case "1C" -> Set.of("1A", "1B", "1C");
          default -> CORROSION;
        };
    return together(
        SKIN,
        (k, inSum) -> {
          boolean corrosive = from.contains(k.category("Skin Corr."));
          double general = !corrosive ? NEVER : inSum ? 5 : 1;
          boolean own = ownLimit(k, SKIN, Set.of(target)) < NEVER || ownOfItsCategory(k, CORRODING);
          return Math.min(
              ownLimit(k, SKIN, from), own && ownLimit(k, SKIN, from) < NEVER ? NEVER : general);
        });
  }

  private boolean skinIrritates() {
    return together(
        SKIN,
        (k, inSum) -> {
          double irritant = !k.has("Skin Irrit.") ? NEVER : inSum ? 10 : 3;
          double general = k.has("Skin Corr.") ? 1 : irritant;
          return limit(k, SKIN, Set.of("2"), CORROSION, general);
        });
  }

  /** 3.2.3.1.2: in the absence of any other information. */
  private boolean extremePh() {
    return facts.ph() != null
        && !facts.phLifted()
        && (facts.ph() <= 2 * (1 + 1e-9) || reached(facts.ph(), 11.5));
  }

  private void skin() {
    String category =
        Stream.of("1A", "1B", "1C", "1").filter(this::skinReaches).findFirst().orElse(NONE);
    if (category.equals(NONE)) {
      category = extremePh() ? "1" : skinIrritates() ? "2" : NONE;
    }
    answer("skin", category, 1);
  }

  /** Table 3.3.3: corrosive to skin and damaging to eyes add up, each substance once. */
  private boolean eyeReaches(boolean damage) {
    return together(
        EYE,
        (k, inSum) -> {
          if (damage) {
            return damageFrom(k, inSum);
          }
          boolean severe = k.has("Skin Corr.") || k.has("Eye Dam.");
          double irritant = !k.has("Eye Irrit.") ? NEVER : inSum ? 10 : 3;
          double general = severe ? Math.min(1, damageFrom(k, inSum)) : irritant;
          return limit(k, EYE, Set.of("2"), Set.of("1"), general);
        });
  }

  /**
   * Its own limit; else the end of its own range of irritation; else the general one, or a lower
   * limit of its own for corrosion of the skin, which implies damage to the eye.
   */
  private static double damageFrom(Known k, boolean inSum) {
    double general = !k.has("Skin Corr.") && !k.has("Eye Dam.") ? NEVER : inSum ? 3 : 1;
    double corrosion = ownLimit(k, Set.of("Skin Corr."), CORROSION);
    double end = general < NEVER ? endOfRange(k, EYE) : NEVER;
    double without = end < NEVER ? end : general < NEVER ? Math.min(general, corrosion) : NEVER;
    return limit(k, EYE, Set.of("1"), Set.of(), without);
  }

  private void eye() {
    boolean corrosive = CORROSION.contains(answers.get("skin"));
    boolean damage = corrosive || extremePh() || eyeReaches(true);
    answer("eye", damage ? "1" : eyeReaches(false) ? "2" : NONE, 1);
  }

  // 3.4 to 3.9 and 4.2: the highest share of one substance ----------------------------------------

  private boolean anyReaches(ToDoubleFunction<Known> limit) {
    return parts.all().stream().anyMatch(p -> reached(p.counted(), limit.applyAsDouble(p.known())));
  }

  /** Table 3.4.5. */
  private void sensitisation(String hazardClass, String name) {
    boolean gas = facts.state().equals("gas") && name.equals("Resp. Sens.");
    List<String> found = new ArrayList<>();
    for (String target : List.of("1A", "1", "1B")) {
      double general = target.equals("1A") ? 0.1 : gas ? 0.2 : 1;
      boolean is =
          anyReaches(
              k ->
                  limit(
                      k,
                      Set.of(name),
                      Set.of(target),
                      Set.of(),
                      k.category(name).equals(target) ? general : NEVER));
      if (is) {
        found.add(target);
      }
    }
    String category =
        found.isEmpty() ? NONE : found.contains("1A") ? "1A" : String.join("|", found);
    answer(hazardClass, category, 0.1);
  }

  /** Tables 3.5.2 and 3.6.2. */
  private void cancerAndMutation(String hazardClass, String name) {
    answer(hazardClass, highest(name, Map.of("1A", 0.1, "1B", 0.1, "2", 1.0)), 0.1);
  }

  private String highest(String name, Map<String, Double> limits) {
    for (String target : List.of("1A", "1B", "1", "2")) {
      Double general = limits.get(target);
      if (general != null
          && anyReaches(
              k ->
                  limit(
                      k,
                      Set.of(name),
                      Set.of(target),
                      Set.of(),
                      k.category(name).equals(target) ? general : NEVER))) {
        return target;
      }
    }
    return NONE;
  }

  /** Table 3.11.2 and 4.2.2. */
  private void endocrine(String hazardClass, String name) {
    answer(hazardClass, highest(name, Map.of("1", 0.1, "2", 1.0)), 0.1);
  }

  private void alone(String hazardClass, String name, double from) {
    boolean is =
        anyReaches(
            k -> {
              double own = ownLimit(k, Set.of(name), Set.of("", "1"));
              return own < NEVER ? own : k.has(name) ? from : NEVER;
            });
    answer(hazardClass, is ? (name.equals("Ozone") ? "1" : "is") : NONE, from);
  }

  /**
   * Tables 3.8.3 and 3.9.4: what is category 1 is category 2 from 1 % on. Article 10: a limit of
   * its own for its category stands in place of all general ones of the class.
   */
  private void organs(String hazardClass, String name) {
    Set<String> names = Set.of(name);
    boolean one =
        anyReaches(k -> limit(k, names, Set.of("1"), Set.of(), k.has(name, "1") ? 10 : NEVER));
    boolean two =
        anyReaches(
            k -> {
              boolean own = ownLimit(k, names, Set.of(k.has(name, "1") ? "1" : "2")) < NEVER;
              double general = own ? NEVER : k.has(name, "1") ? 1 : k.has(name, "2") ? 10 : NEVER;
              return limit(k, names, Set.of("2"), Set.of("1"), general);
            });
    answer(hazardClass, one ? "1" : two ? "2" : NONE, 1);
  }

  /** 3.8.3.4.5: irritation of the airways and narcosis each by itself, 20 % as a guide. */
  private void organsThree(String hazardClass, String statement) {
    double sum = 0;
    for (Part p : parts.all()) {
      double own =
          p.known().limits.stream()
              .filter(l -> l.name().equals("STOT SE") && l.statement().equals(statement))
              .mapToDouble(Limit::from)
              .min()
              .orElse(NEVER);
      boolean has =
          p.known().categories.stream()
              .anyMatch(c -> c.name().equals("STOT SE") && c.statement().equals(statement));
      double limit = own < NEVER ? own : has ? 20 : NEVER;
      boolean counts = reached(p.share(), Math.min(1, own));
      sum += counts ? p.counted() / limit : 0;
    }
    answer(hazardClass, reached(sum, 1) ? "3" : NONE, 1);
  }

  // 3.10 Aspiration -------------------------------------------------------------------------------

  /** 3.10.3.3.1: from 10 %, and at most 20.5 mm²/s at 40 °C. */
  private void aspiration() {
    boolean thick = facts.viscosity() != null && facts.viscosity() > 20.5 * (1 + 1e-9);
    if (thick || facts.solidAt40()) {
      answers.put("aspiration", NONE);
      return;
    }
    double sum =
        parts.all().stream()
            .filter(p -> p.known().has("Asp. Tox."))
            .filter(p -> reached(p.share(), 1))
            .mapToDouble(Part::counted)
            .sum();
    String enough = facts.viscosity() == null ? OPEN : "1";
    answer("aspiration", reached(sum, 10) ? enough : NONE, 1);
  }

  // 4.1 Water -------------------------------------------------------------------------------------

  /** Table 4.1.1; relevant from 0.1 / M %. */
  private void aquaticAcute() {
    double sum = 0;
    for (Part p : parts.all()) {
      boolean counts = p.known().has("Aquatic Acute");
      boolean relevant = reached(p.share(), 0.1 / p.known().acuteM);
      sum += counts && relevant ? p.counted() * p.known().acuteM : 0;
    }
    answer("aquatic-acute", reached(sum, 25) ? "1" : NONE, 0.1);
  }

  /** Table 4.1.2; categories 2 to 4 are relevant from 1 %. */
  private void aquaticChronic() {
    double weighted = 0;
    double[] sums = new double[5];
    for (Part p : parts.all()) {
      String category = p.known().category("Aquatic Chronic");
      boolean first = category.equals("1");
      boolean counts = !category.isEmpty();
      if (counts && reached(p.share(), first ? 0.1 / p.known().chronicM : 1)) {
        weighted += first ? p.counted() * p.known().chronicM : 0;
        sums[Integer.parseInt(category)] += p.counted();
      }
    }
    String category = NONE;
    if (reached(weighted, 25)) {
      category = "1";
    } else if (reached(10 * weighted + sums[2], 25)) {
      category = "2";
    } else if (reached(100 * weighted + 10 * sums[2] + sums[3], 25)) {
      category = "3";
    } else if (reached(sums[1] + sums[2] + sums[3] + sums[4], 25)) {
      category = "4";
    }
    answer("aquatic-chronic", category, 0.1);
  }

  // 2.6 Flammable liquids -------------------------------------------------------------------------

  private double flammable() {
    return parts.all().stream()
        .filter(p -> p.known().categories.stream().anyMatch(c -> c.name().equals("Flam. Liq.")))
        .mapToDouble(PlainParts.Part::share)
        .sum();
  }

  /**
   * Table 2.6.1, and from 1 % of flammable liquids a solid is open: of the whole, by measurement. A
   * gas is assessed by other rules, not held here.
   */
  private void flammableLiquid() {
    if (facts.state().equals("solid")) {
      boolean low = facts.flash() != null && facts.flash() <= 60;
      answers.put("flammable-liquid", low || reached(flammable(), 1) ? OPEN : NONE);
    } else if (facts.flash() == null) {
      answers.put("flammable-liquid", OPEN);
    } else if (facts.flash() < 23) {
      boolean lowBoiling = facts.boil() != null && facts.boil() <= 35;
      answers.put("flammable-liquid", facts.boil() == null ? "1|2" : lowBoiling ? "1" : "2");
    } else {
      answers.put("flammable-liquid", facts.flash() <= 60 ? "3" : NONE);
    }
  }
}
