// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.NoSuchElementException;
import java.util.concurrent.atomic.AtomicInteger;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.meltwright.core.explain.Drivers.Driver;
import org.meltwright.core.explain.Drivers.Needed;
import org.meltwright.core.explain.EstimateInput.Direction;
import org.meltwright.units.ProblemException;

class DriversTest {

  private static final EstimateInput FILM = input("film", "m", 2e-4, 5e-4, Direction.RAISES);
  private static final EstimateInput AIR = input("air", "W/(m² K)", 5, 15, Direction.LOWERS);
  private static final Symbol TIME = Symbol.beside(DriversTest.class, "time", "s");
  private static final Drivers DRAG =
      Drivers.of(TIME, List.of(AIR, FILM), v -> 1e8 * v.of(FILM) * v.of(FILM) / v.of(AIR));

  private static EstimateInput input(
      String name, String unit, double low, double high, Direction direction) {
    return EstimateInput.of(Symbol.beside(DriversTest.class, name, unit), low, high, direction);
  }

  @Test
  void worstRange_hasEveryInputAtItsWorseEnd() {
    assertThat(DRAG.worst().low()).isCloseTo(4.0 / 15, within(1e-12));
    assertThat(DRAG.worst().high()).isCloseTo(25.0 / 5, within(1e-12));
    assertThat(DRAG.central()).isCloseTo(12.25 / 10, within(1e-12));
  }

  @Test
  void rangeIfKnown_hasThatInputAtItsCentralValue() {
    assertThat(DRAG.ranked()).extracting(Driver::input).containsExactly(FILM, AIR);
    Driver film = DRAG.ranked().get(0);
    double width = 12.25 / 5 - 12.25 / 15;

    assertThat(film.ifKnown().width()).isCloseTo(width, within(1e-12));
    assertThat(film.shrink()).isCloseTo(1 - width / (5 - 4.0 / 15), within(1e-12));
  }

  @Test
  void shrinks_doNotAddUpToOne() {
    assertThat(DRAG.ranked().stream().mapToDouble(Driver::shrink).sum()).isGreaterThan(1.2);
  }

  @Test
  void inputThatIsExact_drivesNothing() {
    EstimateInput gravity = input("gravity", "m/s²", 9.81, 9.81, Direction.RAISES);
    Drivers weight = Drivers.of(TIME, List.of(FILM, gravity), v -> v.of(FILM) * v.of(gravity));

    assertThat(weight.ranked()).extracting(Driver::input).containsExactly(FILM);
    assertThat(weight.inputs()).containsExactly(FILM, gravity);
  }

  @Test
  void inputThatEntersTwice_isVariedOnce() {
    EstimateInput again = input("film", "m", 2e-4, 5e-4, Direction.RAISES);
    Drivers nothing = Drivers.of(TIME, List.of(FILM, again), v -> v.of(FILM) - v.of(again));

    assertThat(nothing.inputs()).hasSize(1);
    assertThat(nothing.worst()).isEqualTo(new Drivers.Range(0, 0, "s"));
    assertThat(nothing.likely()).isEqualTo(new Drivers.Range(0, 0, "s"));
  }

  @Test
  void whatHasNoEnd_lessItself_isNothing() {
    Drivers never = Drivers.of(TIME, List.of(AIR), v -> v.of(AIR) < 10 ? 1.0 / 0 : 1);

    assertThat(never.worst().high()).isInfinite();
    assertThat(never.minus(never).worst().width()).isZero();
  }

  @Test
  void inputOfBoth_isVariedOnceInASumAndInADifference() {
    Drivers twice = DRAG.plus(DRAG);
    EstimateInput warm = input("warmth", "", 2, 3, Direction.RAISES);
    Drivers longer =
        Drivers.of(
            TIME,
            List.of(AIR, FILM, warm),
            v -> v.of(warm) * 1e8 * v.of(FILM) * v.of(FILM) / v.of(AIR));

    assertThat(twice.inputs()).hasSize(2);
    assertThat(twice.worst().high()).isCloseTo(10, within(1e-12));
    assertThat(longer.minus(DRAG).worst().low()).isCloseTo(4.0 / 15, within(1e-12));
    assertThat(longer.minus(DRAG).worst().high()).isCloseTo(2 * 25.0 / 5, within(1e-12));
    assertThat(DRAG.minus(longer).worst().low()).isCloseTo(-2 * 25.0 / 5, within(1e-12));
  }

  @Test
  void endless_isSettledByTheInputThatGivesItAnEnd() {
    EstimateInput loss = input("loss", "W", 0, 80, Direction.RAISES);
    Drivers time =
        Drivers.of(
            TIME,
            List.of(loss, AIR),
            v -> v.of(loss) >= 70 ? Double.POSITIVE_INFINITY : 1 / v.of(AIR) / (70 - v.of(loss)));

    assertThat(time.ranked()).extracting(Driver::shrink).containsExactly(1.0, 0.0);
    assertThat(time.ranked().get(0).input()).isEqualTo(loss);
    assertThat(time.worst().text(Locale.GERMAN)).isEqualTo("0,00095 s bis ohne Ende");
  }

  @Test
  void whatIsNeeded_bringsTheResultAsNearAsAsked() {
    Needed needed = DRAG.needed(FILM, 1.5);
    EstimateInput known = FILM.within(needed.halfWidth().orElseThrow());
    double high = 1e8 * known.high() * known.high() / 5;
    double low = 1e8 * known.low() * known.low() / 15;

    assertThat((high - low) / 2).isCloseTo(1.5, within(1e-5));
    assertThat(needed.text(Locale.ENGLISH))
        .isEqualTo("To know it within ± 1.5 s, know this within ± 69.7 µm: film.");
  }

  @Test
  void whatOneInputAloneCannotDo_saysWhatTheRestLeaves() {
    Needed needed = DRAG.needed(FILM, 0.5);

    assertThat(needed.halfWidth()).isEmpty();
    assertThat(needed.rest()).isCloseTo((12.25 / 5 - 12.25 / 15) / 2, within(1e-12));
    assertThat(needed.text(Locale.GERMAN))
        .isEqualTo(
            "Nicht hierdurch allein: film. Das Übrige lässt ± 0,817 s, gefragt sind ± 0,5 s.");
  }

  @Test
  void whatIsKnownWellEnough_mayLieAnywhereInItsRange() {
    assertThat(DRAG.needed(FILM, 10).halfWidth().orElseThrow()).isCloseTo(1.5e-4, within(1e-15));
  }

  @Test
  void strangeInput_isRefused() {
    EstimateInput other = input("other", "", 0, 1, Direction.RAISES);

    assertThatExceptionOfType(NoSuchElementException.class).isThrownBy(() -> DRAG.needed(other, 1));
    assertThatExceptionOfType(NoSuchElementException.class)
        .isThrownBy(() -> Drivers.of(TIME, List.of(FILM), v -> v.of(other)));
    assertThatExceptionOfType(ProblemException.class).isThrownBy(() -> DRAG.needed(FILM, 0));
  }

  @Test
  void evaluations_areThreeAndTwoAnInput_andAtMost64ForTheLikelyRange() {
    AtomicInteger count = new AtomicInteger();
    Drivers counted =
        Drivers.of(
            TIME,
            DRAG.inputs(),
            v -> {
              count.incrementAndGet();
              return DRAG.model().of(v);
            });

    assertThat(count.getAndSet(0)).isEqualTo(3 + 2 * 2);
    counted.likely();
    assertThat(count.get()).isEqualTo(64);
  }

  @Test
  void likelyRange_isTheSameInEachRun() {
    assertThat(DRAG.likely()).isEqualTo(DRAG.likely());
  }

  @Test
  void whatToMeasureFirst_isSaidInBothLanguages() {
    assertThat(DRAG.measureFirst(Locale.ENGLISH))
        .contains("Find this out first: film. It decides two thirds of this range.");
    assertThat(DRAG.measureFirst(Locale.GERMAN))
        .contains("Dies zuerst feststellen: film. Es bestimmt zwei Drittel dieser Spanne.");
    Drivers known = Drivers.of(TIME, List.of(), v -> 1);
    assertThat(known.measureFirst(Locale.ENGLISH)).isEmpty();
  }

  @Property
  void likely_range_lies_in_the_worst_one(
      @ForAll @DoubleRange(min = 0, max = 3) double power,
      @ForAll @DoubleRange(min = 0.01, max = 5) double from,
      @ForAll @DoubleRange(min = 0.01, max = 5) double width) {
    EstimateInput a = input("a", "", from, from + width, Direction.RAISES);
    EstimateInput b = input("b", "", 1, 2, Direction.LOWERS);
    Drivers any = Drivers.of(TIME, List.of(a, b), v -> Math.pow(v.of(a), power) / v.of(b));

    assertThat(any.likely().low()).isBetween(any.worst().low(), any.worst().high());
    assertThat(any.likely().high()).isBetween(any.likely().low(), any.worst().high());
  }
}
