// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.meltwright.core.explain.Drivers.Range;
import org.meltwright.core.explain.EstimateInput.Direction;

/** The range that holds 95 % of cases, against published numbers and made-up models. */
class LikelyRangeTest {

  private static final Symbol SUM = Symbol.beside(LikelyRangeTest.class, "sum", "");

  /** An even input of a standard uncertainty. */
  private static EstimateInput even(String name, double uncertainty) {
    double half = Math.sqrt(3) * uncertainty;
    return EstimateInput.of(
        Symbol.beside(LikelyRangeTest.class, name, ""), -half, half, Direction.RAISES);
  }

  private static Range sum(EstimateInput... inputs) {
    return Drivers.of(SUM, List.of(inputs), v -> Stream.of(inputs).mapToDouble(v::of).sum())
        .likely();
  }

  private static String to(int decimals, double value) {
    return String.format(Locale.ROOT, "%." + decimals + "f", value);
  }

  /**
   * JCGM 101:2008, 9.2.3, table 3: four even inputs of unit standard uncertainty, −3.88 to 3.88.
   */
  @Test
  void fourEvenInputs_asPublished() {
    Range range = sum(even("a", 1), even("b", 1), even("c", 1), even("d", 1));

    assertThat(to(2, range.low())).isEqualTo("-3.88");
    assertThat(to(2, range.high())).isEqualTo("3.88");
  }

  /** JCGM 101:2008, 9.2.4, table 4: one of the four is ten times wider, −17.0 to 17.0. */
  @Test
  void oneInputTenTimesWider_asPublished() {
    Range range = sum(even("a", 1), even("b", 1), even("c", 1), even("d", 10));

    assertThat(to(1, range.low())).isEqualTo("-17.0");
    assertThat(to(1, range.high())).isEqualTo("17.0");
  }

  /**
   * The sum of two even inputs is a triangle: 95 % of it lie within 1 − √0.05 of its half-width.
   */
  @Test
  void twoEvenInputs_makeATriangle() {
    double half = 2 * Math.sqrt(3) * (1 - Math.sqrt(0.05));

    assertThat(sum(even("a", 1), even("b", 1)).high()).isCloseTo(half, within(2e-3));
    EstimateInput triangle = even("a", 2).withSpread(Spread.TRIANGULAR);
    assertThat(sum(triangle).high()).isCloseTo(half, within(2e-3));
  }

  /** The 95 % of what lies within two standard uncertainties: ± 1.6786 of them. */
  @Test
  void normalInput_isCutOffAtTwoStandardUncertainties() {
    EstimateInput normal = even("a", 2 / Math.sqrt(3)).withSpread(Spread.NORMAL);

    assertThat(sum(normal).high()).isCloseTo(1.6786, within(2e-3));
  }

  private static double[] quantilesOfDraws(Drivers drivers) {
    return Draws.likely(drivers, 20_000, 7);
  }

  static Stream<Drivers> models() {
    EstimateInput size = positive("size", 2, 20, Direction.LOWERS);
    EstimateInput density = positive("density", 2500, 5200, Direction.LOWERS);
    EstimateInput melt = positive("melt", 800, 900, Direction.RAISES);
    EstimateInput viscosity = positive("viscosity", 0.008, 0.03, Direction.RAISES);
    EstimateInput power = positive("power", 60, 160, Direction.LOWERS);
    EstimateInput loss = positive("loss", 0.4, 0.65, Direction.RAISES);
    List<EstimateInput> many =
        Stream.iterate(1, i -> i <= 45, i -> i + 1)
            .map(i -> positive("part " + i, 1 - 0.01 * i, 1 + 0.01 * i, Direction.RAISES))
            .toList();
    return Stream.of(
        model(
            "falls by its square",
            v -> v.of(viscosity) / Math.pow(v.of(size), 2) / (v.of(density) - v.of(melt)),
            size,
            density,
            melt,
            viscosity),
        model(
            "comes to rest",
            v -> Math.log(v.of(power) / (v.of(power) - 60 * v.of(loss))) / v.of(loss),
            power,
            loss),
        model("has a kink", v -> Math.max(0, v.of(power) - 100) + v.of(size), power, size),
        model(
            "sums up many",
            v -> many.stream().mapToDouble(v::of).sum(),
            many.toArray(EstimateInput[]::new)),
        model(
            "multiplies many",
            v -> many.stream().mapToDouble(v::of).reduce(1, (a, b) -> a * b),
            many.toArray(EstimateInput[]::new)));
  }

  private static EstimateInput positive(String name, double low, double high, Direction way) {
    return EstimateInput.of(Symbol.beside(LikelyRangeTest.class, name, ""), low, high, way);
  }

  private static Drivers model(String name, Drivers.Model model, EstimateInput... inputs) {
    return Drivers.of(Symbol.beside(LikelyRangeTest.class, name, ""), List.of(inputs), model);
  }

  @ParameterizedTest
  @MethodSource("models")
  void ends_areWithinATwentiethOfTheWorstRange_of20000Draws(Drivers drivers) {
    double[] drawn = quantilesOfDraws(drivers);
    double allowed = 0.05 * drivers.worst().width();

    assertThat(drivers.likely().low()).isCloseTo(drawn[0], within(allowed));
    assertThat(drivers.likely().high()).isCloseTo(drawn[1], within(allowed));
  }

  @Test
  void whatHasNoEndInMostCases_hasNoLikelyEnd() {
    EstimateInput speed = positive("speed", -3, 1, Direction.LOWERS);
    Drivers never = model("never", v -> v.of(speed) > 0 ? 1 / v.of(speed) : 1.0 / 0, speed);

    assertThat(never.likely().high()).isInfinite();
    assertThat(never.likely().low()).isCloseTo(1 / 0.9, within(0.15));
  }
}
