// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** Held against decimals, which lose nothing. */
class ExactSumTest {

  /** Numbers whose sums lie on, and a hair beside, the middle between two doubles. */
  private static final double[] AWKWARD = {
    0,
    1,
    1.5,
    0x1p-53,
    0x1p-54,
    0x1.8p-53,
    0x1p-105,
    0x1p-106,
    0x1p-107,
    0x1p-200,
    0x1p-1000,
    0.1,
    1 / 3.0,
    1e16,
    1e-16,
    Double.MIN_VALUE,
    0x1p-1022,
    1e290
  };

  @Provide
  Arbitrary<double[]> awkward() {
    return Arbitraries.of(Arrays.stream(AWKWARD).boxed().toList())
        .array(Double[].class)
        .ofMinSize(1)
        .ofMaxSize(9)
        .map(ExactSumTest::unboxed);
  }

  @Provide
  Arbitrary<double[]> alike() {
    return Arbitraries.randomValue(Random::nextDouble)
        .array(Double[].class)
        .ofMinSize(1)
        .ofMaxSize(40)
        .map(ExactSumTest::unboxed);
  }

  /** Numbers from 1e-30 to 1e30, whose small ends a plain sum loses. */
  @Provide
  Arbitrary<double[]> apart() {
    return Arbitraries.randomValue(r -> r.nextDouble() * Math.pow(10, r.nextInt(60) - 30))
        .array(Double[].class)
        .ofMinSize(1)
        .ofMaxSize(12)
        .map(ExactSumTest::unboxed);
  }

  private static double[] unboxed(Double[] values) {
    return Arrays.stream(values).mapToDouble(Double::doubleValue).toArray();
  }

  @Property(tries = 5000)
  void ofAwkwardNumbersIsTheDoubleNearestToTheSum(@ForAll("awkward") double[] values) {
    check(values);
  }

  @Property
  void ofNumbersOfOneSizeIsTheDoubleNearestToTheSum(@ForAll("alike") double[] values) {
    check(values);
  }

  @Property
  void ofNumbersFarApartIsTheDoubleNearestToTheSum(@ForAll("apart") double[] values) {
    check(values);
  }

  private static void check(double[] values) {
    double expected =
        DoubleStream.of(values)
            .mapToObj(BigDecimal::new)
            .reduce(BigDecimal.ZERO, BigDecimal::add)
            .doubleValue();
    assertThat(ExactSum.of(values)).isEqualTo(expected);
    ExactSum sum = new ExactSum();
    List<Double> shuffled = new ArrayList<>(DoubleStream.of(values).boxed().toList());
    Collections.shuffle(shuffled, new Random(7));
    shuffled.forEach(sum::add);
    assertThat(sum.value()).isEqualTo(expected);
    assertThat(ExactSum.of(unboxed(shuffled.toArray(Double[]::new)))).isEqualTo(expected);
  }

  @Test
  void of_halfALastPlace_isRoundedByWhatLiesFarBelow() {
    assertThat(ExactSum.of(1, 0x1p-53)).isEqualTo(1);
    assertThat(ExactSum.of(1, 0x1p-53, 0x1p-200)).isEqualTo(1 + 0x1p-52);
    assertThat(ExactSum.of(0x1p-200, 0x1p-53, 1)).isEqualTo(1 + 0x1p-52);
  }

  @Test
  void of_tenTimesATenth_isWhatTheDoublesSayAndNoPlainSum() {
    double[] tenths = new double[10];
    Arrays.fill(tenths, 0.1);
    assertThat(ExactSum.of(tenths)).isEqualTo(1);
    assertThat(0.1 + 0.1 + 0.1 + 0.1 + 0.1 + 0.1 + 0.1 + 0.1 + 0.1 + 0.1).isNotEqualTo(1);
  }
}
