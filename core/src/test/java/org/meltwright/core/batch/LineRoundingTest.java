// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.meltwright.units.MetricUnits.grams;

import java.math.BigDecimal;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.meltwright.core.batch.LineRounding.ExactLine;
import org.meltwright.units.ScaleInterval;

class LineRoundingTest {

  private static final ScaleInterval GRAM = ScaleInterval.of(grams(1));
  private static final ScaleInterval TENTH = ScaleInterval.of(grams(0.1));

  private static ExactLine line(double grams, ScaleInterval interval) {
    return new ExactLine(BigDecimal.valueOf(grams).movePointLeft(3).doubleValue(), interval);
  }

  private static double exact(List<RoundedLine> lines) {
    return total(lines, RoundedLine::exactKilograms);
  }

  private static double printed(List<RoundedLine> lines) {
    return total(lines, RoundedLine::printedKilograms);
  }

  /** The sum of the decimals as they are written, free of binary rounding. */
  private static double total(List<RoundedLine> lines, ToDoubleFunction<RoundedLine> mass) {
    return lines.stream()
        .map(line -> BigDecimal.valueOf(mass.applyAsDouble(line)))
        .reduce(BigDecimal.ZERO, BigDecimal::add)
        .doubleValue();
  }

  @ParameterizedTest
  @CsvSource({
    "12.34,0.1,12.3",
    "12.35,0.1,12.4",
    "0.3,0.1,0.3",
    "0.25,0.1,0.3",
    "730,1,730",
    "729.5,1,730",
    "729.49,1,729",
    "7,2,8",
    "5,2,6",
    "0.04,0.1,0"
  })
  void round_takes_whole_steps_halves_up(double grams, double interval, double rounded) {
    assertThat(ScaleInterval.of(grams(interval)).round(grams(grams)).getValue().doubleValue())
        .isEqualTo(grams(rounded).getValue().doubleValue() / 1000);
  }

  @Test
  void of_shares_the_coarsest_by_largest_remainder() {
    List<RoundedLine> rounding =
        LineRounding.of(
            List.of(line(333.4, GRAM), line(333.4, GRAM), line(333.4, GRAM), line(4.56, TENTH)));

    assertThat(rounding)
        .extracting(RoundedLine::printedKilograms)
        .containsExactly(0.334, 0.333, 0.333, 0.0046);
    assertThat(exact(rounding)).isEqualTo(1.00476);
    assertThat(printed(rounding)).isEqualTo(1.0046);
    assertThat(rounding.get(0).errorKilograms()).isEqualTo(0.0006);
  }

  @Test
  void isBelowInterval_flags_a_part_that_the_balance_cannot_show() {
    List<RoundedLine> rounding =
        LineRounding.of(List.of(line(500, GRAM), line(0.04, TENTH), line(0, TENTH)));

    assertThat(rounding)
        .extracting(RoundedLine::isBelowInterval)
        .containsExactly(false, true, false);
  }

  @Test
  void of_fine_lines_that_round_to_more_than_there_is_share_their_own_total() {
    List<ExactLine> lines =
        new java.util.ArrayList<>(java.util.Collections.nCopies(100, line(0.05, TENTH)));
    lines.add(line(1, GRAM));

    List<RoundedLine> rounding = LineRounding.of(lines);

    assertThat(exact(rounding)).isEqualTo(0.006);
    assertThat(printed(rounding)).isEqualTo(0.006);
  }

  @Test
  void of_nothing_is_nothing() {
    assertThat(LineRounding.of(List.of())).isEmpty();
    assertThat(LineRounding.of(List.of(line(0, GRAM))).get(0).printedKilograms()).isZero();
  }
}
