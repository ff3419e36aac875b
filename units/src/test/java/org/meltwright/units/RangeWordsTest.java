// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How a range and what lies outside it are written. */
class RangeWordsTest {

  @ParameterizedTest
  @CsvSource({
    "0, 1e-9, 1e3, 0, 0.000000001 to 1000",
    "2e7, 0.001, 1e7, 20000000, 0.001 to 10000000",
    "-0.5, 0, 1, -0.5, 0 to 1",
    "1e300, 0, 1e22, 1e300, 0 to 1e22"
  })
  void a_range_is_written_without_exponent_as_far_as_people_write_it_out(
      double value, double low, double high, String found, String allowed) {
    ProblemException refused =
        catchThrowableOfType(
            ProblemException.class,
            () -> UnitsProblem.CHECK.between(value, low, high, "capacity in m³"));

    assertThat(refused.problems().get(0).found()).isEqualTo(found);
    assertThat(refused.problems().get(0).allowed(Locale.ENGLISH)).isEqualTo(allowed);
  }
}
