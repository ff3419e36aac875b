// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.safety.heating.ReviewLaw.Comparison;
import org.meltwright.units.TemperaturePoint;

/**
 * A plan with a datum left out.
 *
 * @param plan the poorer plan
 * @param mild the plan with values in the place of the datum, its mildest among them
 * @param own the rules that are about the datum itself
 */
record LeftOut(Clauses plan, List<Clauses> mild, Set<String> own) {

  /** A row of a table and the rows that are worse. */
  private static final Map<String, Set<String>> WORSE =
      Map.of(
          "above-target", Set.of("hard-ceiling"),
          "heat-gun-outlet", Set.of("heat-gun-at-full"),
          "pot-floor", Set.of("pot-floor-hot"),
          "thermometer-tolerance",
              Set.of("ceiling-within-tolerance", "above-target", "hard-ceiling"),
          "ceiling-within-tolerance", Set.of("hard-ceiling"),
          "estimated-temperature", Set.of("missing-temperature"),
          "missing-temperature", Set.of("hard-ceiling"),
          "window-may-be-closed", Set.of("window-closed"),
          "colder-than-window", Set.of("window-closed", "pot-floor", "pot-floor-hot"));

  static Stream<LeftOut> of(Clauses plan) {
    return plan.all().stream().flatMap(clause -> of(plan, clause));
  }

  private static Stream<LeftOut> of(Clauses plan, String clause) {
    String[] words = clause.split(" ");
    return switch (words[0]) {
      case "mix" -> flashPoints(plan, clause);
      case "liquid" -> liquid(plan, clause);
      case "surface" -> surface(plan, clause, words);
      case "offset" ->
          Stream.of(of(plan.without(clause), each(plan, clause, "offset ", -60, -30, -9, 0)));
      case "thermometer" -> Stream.of(of(plan.without(clause), one(plan, clause, "thermometer 0")));
      case "pot" -> pot(plan, clause, words);
      case "full" -> Stream.of(of(plan.without(clause), one(plan, clause, "full 50")));
      case "hours" -> Stream.of(of(plan.without(clause), one(plan, clause, "hours 0")));
      case "room" -> room(plan, clause, words);
      case "people" -> people(plan, clause, words);
      case "no-others" -> Stream.of(of(plan.without(clause), List.of(plan)));
      case "limits" -> Stream.empty();
      default ->
          Plans.isSource(words[0])
              ? source(plan, clause, words)
              : Stream.of(
                  of(plan.without(clause).without("no-others"), one(plan, clause, "no " + clause)));
    };
  }

  private static LeftOut of(Clauses plan, List<Clauses> mild, String... own) {
    return new LeftOut(plan, mild, Set.of(own));
  }

  private static List<Clauses> one(Clauses plan, String clause, String mild) {
    return List.of(plan.replace(clause, mild));
  }

  private static List<Clauses> each(Clauses plan, String clause, String word, int... values) {
    List<Clauses> mild = new ArrayList<>();
    for (int value : values) {
      mild.add(plan.replace(clause, word + value));
    }
    return mild;
  }

  /** The flash point of each material, and those of all. */
  private static Stream<LeftOut> flashPoints(Clauses plan, String clause) {
    String[] parts = clause.substring("mix ".length()).split(", ");
    Stream<LeftOut> one =
        Stream.of(parts)
            .map(
                part ->
                    of(
                        plan.replace(clause, clause.replace(part, flash(part, "none"))),
                        one(plan, clause, clause.replace(part, flash(part, "400")))));
    String none = String.join(", ", Stream.of(parts).map(part -> flash(part, "none")).toList());
    return Stream.concat(one, Stream.of(of(plan.replace(clause, "mix " + none), List.of())));
  }

  private static String flash(String part, String flash) {
    String[] words = part.split(" ");
    return words[0].replaceFirst("@.*", "") + "@" + flash + " " + words[1];
  }

  /** On a palette a liquid hotter than what is stated of the surface refutes that. */
  private static Stream<LeftOut> liquid(Clauses plan, String clause) {
    HeatingPlan stated = Plans.parse(plan.toString());
    TemperaturePoint liquid = stated.liquidReading().orElseThrow();
    boolean onPalette =
        stated.heat().filter(h -> h.kind() == HeatSource.Kind.HEATED_PALETTE).isPresent();
    Clauses rest = onPalette ? withoutRefuted(plan, stated, liquid) : plan;
    int[] values = {-200, 39, 45, 55, 62, 72, 75, 80, 85};
    return Stream.of(
        of(
            rest.without(clause),
            each(rest, clause, "liquid ", values),
            "reading-not-molten",
            "reading-other-scale"));
  }

  private static Stream<LeftOut> surface(Clauses plan, String clause, String[] words) {
    HeatingPlan stated = Plans.parse(plan.toString());
    TemperaturePoint surface = stated.surfaceReading().orElseThrow();
    Clauses rest = withoutRefuted(plan, stated, surface);
    List<Clauses> mild =
        Stream.of("-200", "39", "60", "72", "75", "80", "85")
            .map(celsius -> rest.replace(clause, "surface " + celsius + " probe"))
            .toList();
    List<Clauses> methods =
        Stream.of("probe", "matt", "metal")
            .map(method -> plan.replace(clause, words[0] + " " + words[1] + " " + method))
            .toList();
    return Stream.of(
        of(rest.without(clause), mild),
        of(plan.replace(clause, words[0] + " " + words[1]), methods));
  }

  /** A reading that refutes a stated overshoot, or a colder reading, is one datum with it. */
  private static Clauses withoutRefuted(
      Clauses plan, HeatingPlan stated, TemperaturePoint reading) {
    boolean overshoot =
        stated.heat().flatMap(HeatSource::highestSurface).filter(reading::isAbove).isPresent();
    boolean surface = stated.surfaceReading().filter(reading::isAbove).isPresent();
    Clauses rest = overshoot ? withoutOvershoot(plan) : plan;
    return surface ? rest.without(plan.find("surface").orElseThrow()) : rest;
  }

  private static Clauses withoutOvershoot(Clauses plan) {
    String heat = plan.all().stream().filter(c -> Plans.isHeat(Clauses.word(c))).findFirst().get();
    return plan.replace(heat, heat.replaceFirst(" \\+.*", ""));
  }

  /** What is stated of a surface and refutes a colder reading of it is one datum with that. */
  private static Clauses withoutColderReading(
      Clauses plan, String clause, Function<HeatSource, Optional<TemperaturePoint>> stated) {
    HeatingPlan parsed = Plans.parse(plan.toString());
    Optional<TemperaturePoint> read = parsed.surfaceReading();
    boolean refutes =
        Plans.isHeat(Clauses.word(clause))
            && parsed
                .heat()
                .flatMap(stated)
                .filter(t -> read.filter(t::isAbove).isPresent())
                .isPresent();
    return refutes ? plan.without(plan.find("surface").orElseThrow()) : plan;
  }

  private static Stream<LeftOut> pot(Clauses plan, String clause, String[] words) {
    List<LeftOut> all = new ArrayList<>();
    all.add(of(plan.without(clause), one(plan, clause, "pot stainless_steel none flat")));
    List<List<String>> known =
        List.of(
            List.of("stainless_steel", "glass", "plastic", "paper"),
            List.of("none", "enamel", "plastic", "non-stick"),
            List.of("flat", "round"));
    for (int i = 1; i < words.length; i++) {
      int place = i;
      List<Clauses> mild =
          known.get(i - 1).stream()
              .map(value -> plan.replace(clause, withWord(words, place, value)))
              .toList();
      all.add(of(plan.replace(clause, withWord(words, i, "unknown")), mild, "unknown-coating"));
    }
    return all.stream();
  }

  private static String withWord(String[] words, int place, String value) {
    String[] other = words.clone();
    other[place] = value;
    return String.join(" ", other);
  }

  private static Stream<LeftOut> room(Clauses plan, String clause, String[] words) {
    List<Clauses> airy = one(plan, clause, "room 60 2000");
    return words.length == 2
        ? Stream.of(of(plan.without(clause), airy))
        : Stream.of(
            of(plan.without(clause), airy),
            of(plan.replace(clause, words[0] + " " + words[1]), airy));
  }

  private static Stream<LeftOut> people(Clauses plan, String clause, String[] words) {
    String counts = String.join(" ", List.of(words).subList(0, 4));
    LeftOut all = of(plan.without(clause), one(plan, clause, "people 0 1 0"));
    LeftOut age =
        of(
            plan.replace(clause, counts),
            List.of(plan.replace(clause, counts + " 17"), plan.replace(clause, counts + " 40")));
    LeftOut adults =
        of(
            plan.replace(clause, clause.replace(" adults", "")),
            List.of(plan),
            "reading-not-molten",
            "reading-other-scale");
    return Stream.of(all, age, adults);
  }

  /** What heats the melt, or a tool, with set point and overshoot. */
  private static Stream<LeftOut> source(Clauses plan, String clause, String[] words) {
    List<LeftOut> all = new ArrayList<>();
    if (words.length > 2) {
      String set = words[0] + " " + words[1];
      Clauses rest = withoutColderReading(plan, clause, HeatSource::highestSurface);
      all.add(of(rest.replace(clause, set), one(rest, clause, set + " +0")));
    }
    if (words.length > 1) {
      Clauses rest = withoutColderReading(plan, clause, s -> s.highestSurface().or(s::setPoint));
      List<Clauses> mild =
          Stream.of(-200, 39, 60, 75, 80)
              .map(celsius -> rest.replace(clause, words[0] + " " + celsius + " +0"))
              .toList();
      all.add(of(rest.replace(clause, words[0]), mild));
    }
    if (Plans.isHeat(words[0])) {
      List<Clauses> mild =
          Stream.of(
                  "plate -200 +0",
                  "plate 60 +0",
                  "palette 60 +0",
                  "bath",
                  "cooker 60 +0",
                  "numbers")
              .map(heat -> plan.replace(clause, heat))
              .toList();
      all.add(of(plan.without(clause), mild, "water-bath", "missing-temperature"));
    }
    return all.stream();
  }

  // --- the comparison

  Stream<Comparison> compare(HeatingReview review) {
    HeatingReview poorer = plan.review();
    List<HeatingReview> milder = mild.stream().map(Clauses::review).toList();
    return Stream.of(
        new Comparison(lost(review, poorer), plan, poorer),
        new Comparison(mildest(milder, poorer), plan, poorer));
  }

  private String lost(HeatingReview review, HeatingReview poorer) {
    List<String> lost =
        review.findings().stream()
            .filter(finding -> !own.contains(finding.ruleId()) && !isKept(finding, poorer))
            .map(Finding::ruleId)
            .toList();
    return lost.isEmpty() ? "" : "lost " + lost;
  }

  private static boolean isKept(Finding finding, HeatingReview poorer) {
    String id = finding.ruleId();
    return poorer.finding(id).isPresent()
        || poorer.isNotAssessed(id)
        || poorer.isNotAsked(id)
        || WORSE.getOrDefault(id, Set.of()).stream().anyMatch(w -> poorer.finding(w).isPresent())
        || isOfAge(finding, poorer);
  }

  /**
   * An age takes along the limits that it tightened; not asked says so where nobody is stated, and
   * not assessed where people are.
   */
  private static boolean isOfAge(Finding finding, HeatingReview poorer) {
    return !finding.tightenedLimits().isEmpty()
        && (poorer.notAsked().stream().anyMatch(n -> n.id().equals("people"))
            || poorer.notAssessed().stream().anyMatch(n -> n.property().equals("age")));
  }

  /** What each value has in common, the mildest among them, is said without the datum too. */
  private String mildest(List<HeatingReview> milder, HeatingReview poorer) {
    if (milder.isEmpty()) {
      return "";
    }
    int mildest = milder.stream().mapToInt(r -> ReviewLaw.rank(r.worstSeverity())).max().getAsInt();
    if (ReviewLaw.rank(poorer.worstSeverity()) > mildest) {
      return "milder than at each value";
    } else if (milder.stream().allMatch(HeatingReview::isBlocked) && !poorer.isBlocked()) {
      return "blocks at each value and not without";
    }
    Set<String> always = new TreeSet<>(ReviewLaw.ids(milder.get(0), f -> true));
    milder.forEach(r -> always.retainAll(ReviewLaw.ids(r, f -> true)));
    always.removeAll(own);
    always.removeIf(id -> isKept(milder.get(0).finding(id).orElseThrow(), poorer));
    return always.isEmpty() ? "" : "found at each value and not without: " + always;
  }
}
