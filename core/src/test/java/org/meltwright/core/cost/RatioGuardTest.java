// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.math.BigDecimal;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.meltwright.units.ProblemException;

class RatioGuardTest {

  @ParameterizedTest
  @ValueSource(strings = {"1E999999999", "1E-999999999"})
  void of_a_number_of_endless_zeros_is_refused_at_once(String text) {
    assertTimeoutPreemptively(
        Duration.ofSeconds(5),
        () ->
            assertThatThrownBy(() -> Ratio.of(new BigDecimal(text)))
                .isInstanceOf(ProblemException.class));
  }

  @Test
  void of_zero_is_zero_whatever_its_exponent() {
    assertThat(Ratio.of(new BigDecimal("0E999999999"))).isEqualTo(Ratio.ZERO);
  }

  @Test
  void of_the_smallest_double_is_taken() {
    assertThat(Ratio.of(Double.MIN_VALUE).compareTo(Ratio.ZERO)).isPositive();
  }
}
