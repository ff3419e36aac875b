// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SayTest {

  private static final double OUNCE = 0.028349523125;

  @Test
  void a_mass_is_written_as_its_balance_shows_it() {
    assertThat(Say.grams(0.09125, 0.0001)).isEqualTo("91.3 g");
    assertThat(Say.grams(0.73, 0.001)).isEqualTo("730 g");
    assertThat(Say.grams(14.8 * OUNCE, 0.1 * OUNCE)).isEqualTo("14.8 oz");
    assertThat(Say.interval(0.1 * OUNCE)).isEqualTo("0.1 oz");
  }

  @Test
  void an_estimate_has_three_significant_figures() {
    assertThat(Say.significant(71.208)).isEqualTo("71.2");
    assertThat(Say.significant(1234.5)).isEqualTo("1230");
    assertThat(Say.significant(0)).isEqualTo("0");
  }
}
