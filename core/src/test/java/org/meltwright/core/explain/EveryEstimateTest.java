// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.meltwright.core.explain.Drivers.Driver;
import org.meltwright.core.explain.Drivers.Needed;

/** What holds for the drivers of every estimate of the library. */
class EveryEstimateTest {

  private static final int DRAWS = 20_000;

  /** Of what takes a while, so many by default; the profile of random tests takes all. */
  private static final int SLOW_DRAWS = Integer.getInteger("random.draws", 400);

  /** An input that hardly matters may turn the other way. */
  private static final double HARDLY = 0.02;

  static List<Estimated> estimates() {
    return Estimated.all();
  }

  static List<Estimated> quick() {
    return estimates().stream().filter(e -> !e.freezes()).toList();
  }

  static List<Estimated> slow() {
    return estimates().stream().filter(Estimated::freezes).toList();
  }

  private static void isClose(double told, double wanted, double size) {
    assertThat(told).isCloseTo(wanted, within(1e-9 * Math.abs(size) + 1e-300));
  }

  @ParameterizedTest
  @MethodSource("estimates")
  void worstRange_isThatOfTheEstimate(Estimated estimate) {
    double[] numbers = estimate.numbers().apply(Optional.empty());
    Drivers drivers = estimate.drivers();

    isClose(drivers.worst().low(), numbers[0], numbers[2]);
    isClose(drivers.central(), numbers[1], numbers[2]);
    isClose(drivers.worst().high(), numbers[2], numbers[2]);
  }

  @ParameterizedTest
  @MethodSource("estimates")
  void toldShrink_isTheRecomputedOne(Estimated estimate) {
    double[] numbers = estimate.numbers().apply(Optional.empty());
    double width = numbers[2] - numbers[0];

    assertThat(estimate.drivers().ranked()).isNotEmpty();
    for (Driver driver : estimate.drivers().ranked()) {
      double[] known = estimate.numbers().apply(Optional.of(driver.input()));
      double shrink = (width - (known[2] - known[0])) / width;

      assertThat(driver.shrink()).as(driver.input().toString()).isCloseTo(shrink, within(1e-9));
    }
  }

  @ParameterizedTest
  @MethodSource("estimates")
  void theOneThatShrinksMost_standsFirst_andNoneWidens(Estimated estimate) {
    List<Double> shrinks = estimate.drivers().ranked().stream().map(Driver::shrink).toList();

    assertThat(shrinks).isSortedAccordingTo((a, b) -> Double.compare(b, a));
    assertThat(shrinks).allSatisfy(s -> assertThat(s).isBetween(-HARDLY, 1.0));
  }

  @ParameterizedTest
  @MethodSource("estimates")
  void evaluations_staySmall(Estimated estimate) {
    AtomicInteger count = new AtomicInteger();
    Drivers drivers = counted(estimate.drivers(), count);
    int varied = drivers.ranked().size();

    assertThat(count.getAndSet(0)).isLessThanOrEqualTo(3 * 3 + 3 * varied);
    drivers.likely();
    assertThat(count.get()).isLessThanOrEqualTo(64);
  }

  private static Drivers counted(Drivers drivers, AtomicInteger count) {
    return Drivers.of(
        drivers.result(),
        drivers.inputs(),
        v -> {
          count.incrementAndGet();
          return drivers.model().of(v);
        });
  }

  @ParameterizedTest
  @MethodSource("estimates")
  void anEstimateLessItself_isExactlyNothing(Estimated estimate) {
    Drivers nothing = estimate.drivers().minus(estimate.drivers());

    assertThat(nothing.worst().low()).isZero();
    assertThat(nothing.worst().high()).isZero();
    assertThat(nothing.likely().width()).isZero();
  }

  @ParameterizedTest
  @MethodSource("quick")
  void likelyRange_isThatOf20000Draws(Estimated estimate) {
    isDrawn(estimate, DRAWS);
  }

  @ParameterizedTest
  @MethodSource("slow")
  @Tag("random")
  void likelyRange_isThatOfDraws(Estimated estimate) {
    isDrawn(estimate, SLOW_DRAWS);
  }

  /** Each end within a twentieth of the width of the worst range. */
  private static void isDrawn(Estimated estimate, int count) {
    Drivers drivers = estimate.drivers();
    double[] drawn = Draws.likely(drivers, count, 20_260_501);
    Drivers.Range likely = drivers.likely();
    double width = drivers.worst().width();
    String found =
        String.format(
            Locale.ROOT,
            "%s: %d draws %.4g to %.4g, likely %.4g to %.4g, off by %.2f %% and %.2f %% of %.4g",
            estimate,
            count,
            drawn[0],
            drawn[1],
            likely.low(),
            likely.high(),
            100 * (likely.low() - drawn[0]) / width,
            100 * (likely.high() - drawn[1]) / width,
            width);

    assertThat(likely.low()).as(found).isCloseTo(drawn[0], within(0.05 * width));
    assertThat(likely.high()).as(found).isCloseTo(drawn[1], within(0.05 * width));
  }

  @ParameterizedTest
  @MethodSource("quick")
  void whatIsNeeded_keepsTheWorstRangeWithinWhatWasAsked(Estimated estimate) {
    Drivers drivers = estimate.drivers();
    Driver first = drivers.ranked().get(0);
    double asked = (drivers.worst().width() + first.ifKnown().width()) / 4;
    Needed needed = drivers.needed(first.input(), asked);

    assertThat(needed.rest()).isCloseTo(first.ifKnown().width() / 2, within(1e-12 * asked));
    EstimateInput within = first.input().within(needed.halfWidth().orElseThrow());
    double low = at(drivers, first.input(), within.forLow(), true);
    double high = at(drivers, first.input(), within.forHigh(), false);
    assertThat((high - low) / 2).isCloseTo(asked, within(1e-4 * asked));
  }

  private static double at(Drivers drivers, EstimateInput known, double value, boolean low) {
    return drivers.model().of(i -> i.equals(known) ? value : low ? i.forLow() : i.forHigh());
  }

  @ParameterizedTest
  @MethodSource("estimates")
  void whatToMeasureFirst_isSaidInBothLanguages(Estimated estimate) {
    String english = estimate.drivers().measureFirst(Locale.ENGLISH).orElseThrow();
    String german = estimate.drivers().measureFirst(Locale.GERMAN).orElseThrow();

    assertThat(english).contains("of this range").doesNotContain("{", "[");
    assertThat(german).contains("Spanne").doesNotContain("{", "[");
  }

  /** Every input of the library's own has its way to be known, save prices and costs. */
  @Test
  void inputs_sayHowToKnowThemBetter() {
    for (Estimated estimate : estimates()) {
      if (!estimate.name().equals("saving")) {
        for (EstimateInput input : estimate.drivers().inputs()) {
          assertThat(input.symbol().advice("x", Locale.ENGLISH)).as(input.toString()).isPresent();
          assertThat(input.symbol().advice("x", Locale.GERMAN)).as(input.toString()).isPresent();
        }
      }
    }
  }

  /** The name of what enters stands in the bundle, so that a German reader is told it in German. */
  @Test
  void names_areGermanForAGermanReader() {
    for (Estimated estimate : estimates()) {
      Drivers drivers = estimate.drivers();
      assertThat(drivers.result().name().german()).isNotEqualTo(drivers.result().toString());
    }
  }
}
