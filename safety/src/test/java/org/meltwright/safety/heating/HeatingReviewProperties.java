// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.mixture.Composition;

/** Laws of the heating review, over plans of every kind. */
class HeatingReviewProperties {

  private static final HeatingRules RULES = HeatingRules.standard();

  @Provide
  Arbitrary<String> plans() {
    return Combinators.combine(mixes(), heats(), facts())
        .as((mix, heat, facts) -> "mix " + mix + "; " + heat + "; " + String.join("; ", facts));
  }

  private static Arbitrary<String> mixes() {
    return Arbitraries.of(
            "beeswax-yellow",
            "beeswax-bleached",
            "carnauba 1",
            "damar 1",
            "colophony 1",
            "oil-paint-ultramarine",
            "oil-paint-lead-white",
            "oil-paint 2",
            "titanium-white-rutile",
            "cadmium-red",
            "pigment-unspecified",
            "own:something",
            "microcrystalline",
            "gum-turpentine",
            "water",
            "paraffin",
            "copal-hard",
            "soy-wax 3",
            "prussian-blue",
            "oil-paint-water-mixable")
        .list()
        .ofMinSize(1)
        .ofMaxSize(5)
        .uniqueElements()
        .map(list -> String.join(", ", list));
  }

  private static Arbitrary<String> heats() {
    return Arbitraries.of(
        "plate 80 +5",
        "plate 90 +10",
        "plate 100 +15",
        "plate 88",
        "plate",
        "palette 85 +4",
        "palette 95",
        "bath",
        "cooker",
        "ring",
        "plate 85 +2; offset -9");
  }

  private static Arbitrary<List<String>> facts() {
    return Arbitraries.of(
            "liquid 60",
            "surface 96",
            "thermometer 2",
            "pot steel plastic flat",
            "pot unknown unknown unknown",
            "pot steel none round",
            "pot paper none flat",
            "pot aluminium non-stick flat",
            "full 50",
            "full 90",
            "hours 3",
            "room 60 300",
            "room 60",
            "people 1 12 0",
            "people 0 0 2 11",
            "people 1 0 6",
            "torch",
            "gun 300 +20",
            "gun",
            "iron 75 +5",
            "iron 105",
            "lamp",
            "dry-powder",
            "paper-liner",
            "open-solvent-near",
            "unattended",
            "wet-tools")
        .list()
        .ofMaxSize(6)
        .uniqueElements();
  }

  @Property(tries = 300)
  void hotter_wax_never_lowers_the_worst_severity_among_upper_limits(
      @ForAll("plans") String text,
      @ForAll @DoubleRange(min = 20, max = 300) double cool,
      @ForAll @DoubleRange(min = 0, max = 100) double more) {
    HeatingPlan plan = Plans.parse(text);
    Optional<Severity> before = worstUpperLimit(at(plan, cool));
    Optional<Severity> after = worstUpperLimit(at(plan, cool + more));
    assertThat(rank(after))
        .as("%s at %s and %s more", text, cool, more)
        .isLessThanOrEqualTo(rank(before));
  }

  private static HeatingReview at(HeatingPlan plan, double celsius) {
    var point = Plans.point(Double.toString(celsius));
    return RULES.review(plan.toBuilder().liquidReading(point).surfaceReading(point).build());
  }

  private static Optional<Severity> worstUpperLimit(HeatingReview review) {
    return review.findings().stream()
        .filter(f -> f.info().topic() == RuleInfo.Topic.UPPER_LIMIT)
        .map(Finding::severity)
        .sorted()
        .findFirst();
  }

  private static int rank(Optional<Severity> severity) {
    return severity.map(Severity::ordinal).orElse(Severity.values().length);
  }

  @Property(tries = 500)
  void with_a_datum_removed_a_finding_stays_or_becomes_not_assessed_of_the_same_rule(
      @ForAll("plans") String text) {
    HeatingPlan plan = Plans.parse(text);
    for (var removal : REMOVALS) {
      HeatingReview poorer = RULES.review(removal.apply(plan));
      for (Finding finding : RULES.review(plan).findings()) {
        String id = finding.ruleId();
        if (!id.equals("estimated-temperature") && !id.equals("missing-temperature")) {
          assertThat(
                  poorer.finding(id).isPresent()
                      || poorer.isNotAssessed(id)
                      || isOvertaken(id, poorer))
              .as("%s of %s%n%s%n%s", id, text, poorer.findings(), poorer.notAssessed())
              .isTrue();
        }
      }
    }
  }

  /** A milder row of the table gives way where the estimate reaches a worse row. */
  private static boolean isOvertaken(String id, HeatingReview poorer) {
    return switch (id) {
      case "above-target" -> poorer.finding("hard-ceiling").isPresent();
      case "pot-floor" -> poorer.finding("pot-floor-hot").isPresent();
      default -> false;
    };
  }

  private static final List<Function<HeatingPlan, HeatingPlan>> REMOVALS =
      List.of(
          plan -> plan.toBuilder().liquidReading(null).build(),
          HeatingReviewProperties::withoutSurfaceReading,
          plan -> plan.toBuilder().measuredOffset(null).build(),
          plan -> plan.toBuilder().thermometer(null).build(),
          plan -> plan.toBuilder().vessel(null).build(),
          plan -> plan.toBuilder().fillLevel(Double.NaN).build(),
          plan -> plan.toBuilder().hoursHeld(Double.NaN).build(),
          plan -> plan.toBuilder().room(null).build(),
          plan -> plan.toBuilder().people(null).build(),
          HeatingReviewProperties::withoutOvershoot,
          HeatingReviewProperties::withoutFlashPoints);

  /** A reading that refutes the stated overshoot takes it along: both were one datum. */
  private static HeatingPlan withoutSurfaceReading(HeatingPlan plan) {
    HeatingPlan without = plan.toBuilder().surfaceReading(null).build();
    boolean refuted =
        plan.surfaceReading().isPresent()
            && plan.heat()
                .flatMap(HeatSource::highestSurface)
                .filter(plan.surfaceReading().get()::isAbove)
                .isPresent();
    return refuted ? withoutOvershoot(without) : without;
  }

  private static HeatingPlan withoutOvershoot(HeatingPlan plan) {
    return plan.heat()
        .flatMap(
            heat ->
                heat.setPoint().map(t -> HeatSource.of(heat.name(), heat.kind()).withSetPoint(t)))
        .map(bare -> plan.toBuilder().heat(bare).build())
        .orElse(plan);
  }

  private static HeatingPlan withoutFlashPoints(HeatingPlan plan) {
    List<Material> bare =
        plan.mix().materials().stream().map(HeatingReviewProperties::withoutFlashPoint).toList();
    double[] shares =
        IntStream.range(0, plan.mix().size()).mapToDouble(plan.mix()::massFractionValue).toArray();
    return plan.withMix(Composition.ofParts(bare, shares));
  }

  private static Material withoutFlashPoint(Material material) {
    Material.Builder copy =
        Material.builder(material.id())
            .names(material.name(Locale.ENGLISH), material.name(Locale.GERMAN))
            .family(material.family(), material.role());
    material.cas().ifPresent(copy::cas);
    material.colourIndexName().ifPresent(copy::colourIndexName);
    material
        .constituents()
        .forEach(c -> copy.constituent(withoutFlashPoint(c.material()), c.share()));
    material.alternatives().forEach(copy::alternative);
    for (PropertyKey<?> key : material.properties()) {
      if (key != PropertyKey.FLASH_POINT) {
        copyFigures(material, key, copy);
      }
    }
    return copy.build();
  }

  private static <V> void copyFigures(Material from, PropertyKey<V> key, Material.Builder to) {
    from.figures(key).forEach(figure -> to.figure(key, figure));
  }

  @Property(tries = 200)
  void order_of_ingredients_and_of_rules_does_not_change_the_review(
      @ForAll("plans") String text, @ForAll Random random) {
    HeatingPlan plan = Plans.parse(text);
    List<Integer> order = new ArrayList<>(IntStream.range(0, plan.mix().size()).boxed().toList());
    Collections.shuffle(order, random);
    List<Material> materials = order.stream().map(plan.mix().materials()::get).toList();
    double[] parts = order.stream().mapToDouble(plan.mix()::massFractionValue).toArray();
    HeatingPlan shuffled = plan.withMix(Composition.ofParts(materials, parts));
    assertThat(words(RULES.review(shuffled))).isEqualTo(words(RULES.review(plan)));
    assertThat(words(shuffled(random).review(plan))).isEqualTo(words(RULES.review(plan)));
  }

  private static HeatingRules shuffled(Random random) {
    List<HeatingRule> loose =
        new ArrayList<>(RULES.rules().stream().filter(r -> !r.info().fixed()).toList());
    Collections.shuffle(loose, random);
    HeatingRules set = RULES.keeping(info -> false);
    for (HeatingRule rule : loose) {
      set = set.with(rule);
    }
    return set;
  }

  private static List<String> words(HeatingReview review) {
    List<String> words = new ArrayList<>();
    review
        .findings()
        .forEach(f -> words.add(f + f.reason(Locale.GERMAN) + f.remedy(Locale.GERMAN)));
    review.notAssessed().forEach(n -> words.add(n.toString()));
    return words;
  }

  @Property(tries = 200)
  void no_plan_has_an_empty_review(@ForAll("plans") String text) {
    HeatingReview review = Plans.review(text);
    assertThat(review.standingAdvice()).isNotEmpty();
    assertThat(review.findings().size() + review.notAssessed().size()).isPositive();
    assertThat(review.findings()).isSorted();
    assertThat(review.isBlocking())
        .isEqualTo(!review.findings().isEmpty() && review.findings().get(0).isBlocking());
  }
}
