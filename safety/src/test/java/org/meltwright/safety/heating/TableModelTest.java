// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.meltwright.safety.heating.PlainPot.Heat;
import org.meltwright.safety.heating.PlainPot.Melting;
import org.meltwright.safety.heating.PlainPot.Method;
import org.meltwright.safety.heating.PlainPot.Mix;
import org.meltwright.safety.heating.PlainPot.Range;
import org.meltwright.safety.heating.TableModel.Answer;
import org.meltwright.safety.heating.TableModel.Limits;
import org.meltwright.safety.heating.TableModel.Rule;

/**
 * The review says what the second model says: each flag with each other, and each stated
 * temperature at each threshold that it can pass, a hair below it and a hair above.
 */
class TableModelTest {

  private static final Mix WAX =
      new Mix("beeswax-yellow", 204.0, false, new Range(62, 65), Melting.KNOWN, false);

  /**
   * Figures as the catalogue has them; the clear point of a blend is asked of its working window.
   */
  private static final List<Mix> MIXES =
      List.of(
          WAX,
          blend("beeswax-yellow 9, gum-turpentine 1", 30.6, Melting.OILY),
          blend("beeswax-yellow 8, linseed-oil 1", 204.0, Melting.OILY),
          blend("paraffin 1, linseed-oil 8", 193.3, Melting.OILY),
          blend("beeswax-yellow 19, linseed-oil 1", 204.0, Melting.KNOWN),
          new Mix("paraffin", 193.3, false, new Range(43, 71), Melting.KNOWN, true),
          new Mix("microcrystalline", 220.0, false, new Range(60, 93), Melting.KNOWN, true),
          new Mix("carnauba", 282.0, false, new Range(80, 86), Melting.KNOWN, false),
          new Mix("own:stuff", null, true, null, Melting.UNKNOWN, false),
          new Mix("own:stuff@160", 160.0, false, null, Melting.UNKNOWN, false),
          new Mix(
              "beeswax-yellow 9, own:stuff 1",
              204.0,
              true,
              new Range(62, 65),
              Melting.KNOWN,
              false),
          new Mix("titanium-white-rutile", null, false, null, Melting.NO_WAX, false));

  private static Mix blend(String words, double flash, Melting melting) {
    var clear = HeatingPlan.of(Plans.mix(words)).workingWindow().orElseThrow().clearPoint();
    Range range = new Range(clear.low().celsius(), clear.high().celsius());
    boolean manyGrades = words.startsWith("paraffin");
    return new Mix(words, flash, false, range, melting, manyGrades);
  }

  private static final List<Limits> LIMITS =
      List.of(
          Limits.STANDARD,
          new Limits(80, 85, 100, 60, 8),
          new Limits(88, 93.3, 110, 50, 5),
          new Limits(90, 93.3, 80, 50, 5),
          new Limits(70, 70, 110, 140, 15));

  /** Both sides of each age at which the limits change. */
  private static final List<@Nullable Integer> AGES =
      Arrays.asList(null, 2, 3, 6, 7, 11, 12, 15, 16, 40);

  private static final List<Flags> FEW =
      List.of(
          new Flags(Heat.UNSTATED, false, false, false, Method.UNSTATED, false, true),
          new Flags(Heat.PLATE, true, true, false, Method.UNSTATED, false, true),
          new Flags(Heat.PLATE, true, false, true, Method.PROBE, false, false),
          new Flags(Heat.COOKER, false, false, true, Method.METAL, false, false),
          new Flags(Heat.PALETTE, true, true, true, Method.MATT, false, true),
          new Flags(Heat.PALETTE, true, true, true, Method.UNSTATED, false, false),
          new Flags(Heat.BATH, true, false, false, Method.UNSTATED, false, false),
          new Flags(Heat.NUMBERS, false, false, true, Method.PROBE, true, false));

  /** At a threshold, and beside it beyond the slack of a limit. */
  private static final double[] BESIDE = {0, -1e-5, 1e-5};

  /** The same, and beside it within the slack. */
  private static final double[] CLOSE_BESIDE = {0, -1e-5, 1e-5, -1e-8, 1e-8};

  private static final Set<String> RESTATED =
      Stream.of(Rule.values()).map(Rule::id).collect(Collectors.toSet());

  @Test
  void review_is_that_of_the_model_for_each_flag_at_each_threshold() {
    List<Case> cases = new ArrayList<>();
    allFlags()
        .forEach(
            flags -> cases.add(new Case(flags.pot(WAX, null, false), Limits.STANDARD, BESIDE)));
    assertThat(compareAll(cases)).isGreaterThan(90_000);
  }

  @Test
  void review_is_that_of_the_model_for_each_mix_and_each_limit_at_each_threshold() {
    List<Case> cases = new ArrayList<>();
    for (Mix mix : MIXES) {
      for (Limits limits : LIMITS) {
        FEW.forEach(
            flags -> cases.add(new Case(flags.pot(mix, null, false), limits, CLOSE_BESIDE)));
      }
    }
    assertThat(compareAll(cases)).isGreaterThan(100_000);
  }

  @Test
  void review_is_that_of_the_model_for_each_age_and_each_limit_at_each_threshold() {
    List<Case> cases = new ArrayList<>();
    for (Integer age : AGES) {
      for (Limits limits : LIMITS.subList(0, 2)) {
        FEW.forEach(flags -> cases.add(new Case(flags.pot(WAX, age, false), limits, BESIDE)));
        FEW.forEach(flags -> cases.add(new Case(flags.pot(WAX, age, true), limits, BESIDE)));
      }
    }
    assertThat(compareAll(cases)).isGreaterThan(40_000);
  }

  private static int compareAll(List<Case> cases) {
    return cases.parallelStream().mapToInt(Case::compareAtThresholds).sum();
  }

  /** What is stated at all. */
  private record Flags(
      Heat heat,
      boolean set,
      boolean overshoot,
      boolean surface,
      Method method,
      boolean offset,
      boolean thermometer) {

    static Flags of(Heat heat, Method method, int bits) {
      IntStream each = IntStream.range(0, 5).map(bit -> bits >> bit & 1);
      List<Boolean> on = each.mapToObj(bit -> bit == 1).toList();
      return new Flags(heat, on.get(0), on.get(1), on.get(2), method, on.get(3), on.get(4));
    }

    /** An overshoot goes with a set point, a set point with degrees, a method with a reading. */
    boolean fit() {
      boolean degrees = heat != Heat.NUMBERS && heat != Heat.UNSTATED;
      return (!set || degrees) && (!overshoot || set) && (surface || method == Method.UNSTATED);
    }

    /** A pot at about 80 °C. */
    PlainPot pot(Mix mix, @Nullable Integer age, boolean adultsAlone) {
      return new PlainPot(
          mix,
          heat,
          set ? 80.0 : null,
          overshoot ? 2.0 : null,
          null,
          surface ? 81.0 : null,
          method,
          offset ? -4.0 : null,
          thermometer ? 1.5 : null,
          age,
          adultsAlone);
    }
  }

  private static List<Flags> allFlags() {
    List<Flags> all = new ArrayList<>();
    for (Heat heat : Heat.values()) {
      for (Method method : Method.values()) {
        IntStream.range(0, 32).forEach(bits -> all.add(Flags.of(heat, method, bits)));
      }
    }
    return all.stream().filter(Flags::fit).toList();
  }

  /** A pot and the limits of the rules that it is held against. */
  private record Case(PlainPot pot, Limits own, double[] besides) {

    /** Returns how many reviews were compared. */
    int compareAtThresholds() {
      int compared = 0;
      for (double threshold : thresholds(pot, own)) {
        for (double beside : besides) {
          List<PlainPot> pots = eachStatedAt(pot, threshold + beside);
          pots.forEach(at -> compare(at, own));
          compared += pots.size();
        }
      }
      return compared;
    }
  }

  private static Set<Double> thresholds(PlainPot pot, Limits own) {
    TableModel model = TableModel.of(pot, own);
    Limits limits = model.limits();
    Set<Double> thresholds = new TreeSet<>(List.of(40.0, 85.0, 110.0));
    thresholds.addAll(List.of(limits.target(), limits.ceiling(), limits.floor()));
    thresholds.add(limits.ceiling() * 9 / 5 + 32);
    Optional.ofNullable(pot.mix().flash()).ifPresent(f -> thresholds.add(f - limits.margin()));
    Optional.ofNullable(model.moltenBound()).ifPresent(thresholds::add);
    Optional.ofNullable(pot.mix().clear()).ifPresent(c -> thresholds.add(c.low() + 10));
    return thresholds;
  }

  /** Each stated temperature in turn at a value, with a reading in the liquid and without. */
  private static List<PlainPot> eachStatedAt(PlainPot pot, double celsius) {
    List<PlainPot> pots = new ArrayList<>(List.of(pot.withLiquid(celsius)));
    if (pot.tolerance() != null) {
      pots.add(pot.withLiquid(celsius - pot.tolerance()));
    }
    for (Double liquid : new Double[] {null, 78.0}) {
      PlainPot read = pot.withLiquid(liquid);
      if (pot.set() != null) {
        pots.add(read.withSet(celsius - (pot.overshoot() == null ? 0 : pot.overshoot())));
        pots.add(read.withSet(celsius + 15).withSurface(celsius));
      }
      if (pot.surface() != null) {
        pots.add(read.withSurface(celsius));
      }
      if (pot.offset() != null) {
        pots.add(read.withOffset(celsius - 81));
      }
    }
    return pots;
  }

  private static void compare(PlainPot pot, Limits own) {
    String words = pot.words() + "; limits " + own.words();
    HeatingReview review = Plans.review(words);
    Answer expected = TableModel.of(pot, own).answer();
    if (!answer(review).rounded().equals(expected.rounded())) {
      assertThat(answer(review).rounded()).as(words).isEqualTo(expected.rounded());
    }
    for (Finding finding : review.findings()) {
      boolean restated = RESTATED.contains(finding.ruleId());
      if (restated && !rank(finding).equals(Rule.of(finding.ruleId()).rank())) {
        fail(words + " ranks otherwise: " + finding);
      }
    }
  }

  private static String rank(Finding finding) {
    return finding.severity() + (finding.isBlocking() ? " blocks" : "");
  }

  private static Answer answer(HeatingReview review) {
    Set<String> found = new TreeSet<>();
    review.findings().forEach(f -> found.add(f.ruleId()));
    found.retainAll(RESTATED);
    Set<String> open = new TreeSet<>();
    review.notAssessed().forEach(n -> open.addAll(n.ruleIds()));
    open.retainAll(RESTATED);
    return new Answer(
        found,
        open,
        review.bindingTemperature().map(t -> t.value().celsius()).orElse(null),
        review.bindingTemperature().filter(BindingTemperature::isEstimated).isPresent(),
        review.potFloor().map(f -> f.value().celsius()).orElse(null),
        review.potFloor().filter(PotFloor::isKnown).isPresent());
  }
}
