// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;
import org.meltwright.core.batch.LineRounding.ExactLine;
import org.meltwright.units.ScaleInterval;

/** What rounding for the balances keeps, whatever is weighed. */
class LineRoundingProperties {

  @Property(tries = 2000)
  void printed_lines_add_up_near_the_exact_total(@ForAll("batches") List<ExactLine> batch) {
    List<RoundedLine> rounding = LineRounding.of(batch);
    double coarsest =
        batch.stream()
            .filter(line -> line.kilograms() > 0)
            .mapToDouble(line -> line.interval().intervalKilograms())
            .max()
            .orElse(0);
    double printed = 0;
    for (RoundedLine line : rounding) {
      printed += line.printedKilograms();
      double steps = line.printedKilograms() / line.interval().intervalKilograms();
      assertThat(steps).isCloseTo(Math.rint(steps), within(1e-6)).isGreaterThanOrEqualTo(0);
      assertThat(line.exactKilograms() == 0 && line.printedKilograms() > 0).isFalse();
    }

    double exact = batch.stream().mapToDouble(ExactLine::kilograms).sum();
    assertThat(printed).isCloseTo(exact, within(coarsest / 2 + 1e-9));
  }

  @Property(tries = 1000)
  void lines_of_one_interval_are_off_by_less_than_a_step(
      @ForAll @Size(min = 1, max = 12)
          List<@Scale(9) @DoubleRange(min = 0, max = 5) Double> kilograms) {
    ScaleInterval gram = ScaleInterval.ofKilograms(0.001);
    List<ExactLine> batch = new ArrayList<>();
    kilograms.forEach(mass -> batch.add(new ExactLine(mass, gram)));

    for (RoundedLine line : LineRounding.of(batch)) {
      assertThat(Math.abs(line.errorKilograms())).isLessThanOrEqualTo(0.001 * (1 + 1e-9));
    }
  }

  @Provide
  Arbitrary<List<ExactLine>> batches() {
    Arbitrary<Double> masses =
        Arbitraries.oneOf(
            Arbitraries.doubles().between(0, 3).ofScale(6),
            Arbitraries.doubles().between(0, 0.002).ofScale(6));
    Arbitrary<ScaleInterval> intervals =
        Arbitraries.of(1e-5, 1e-4, 1e-3, 2e-3, 5e-3, 0.0028349523125)
            .map(ScaleInterval::ofKilograms);
    return Combinators.combine(masses, intervals).as(ExactLine::new).list().ofMaxSize(30);
  }
}
