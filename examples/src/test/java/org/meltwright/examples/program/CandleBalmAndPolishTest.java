// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.meltwright.examples.Output;

class CandleBalmAndPolishTest {

  /** Arithmetic: 24 × 70 ml × 0.86 g/ml ÷ 0.98, and so on. */
  @Test
  void weighs_out_three_other_crafts() {
    assertThat(Output.of(() -> CandleBalmAndPolish.main(new String[0])).lines())
        .containsExactly(
            "candle: soy-wax 1179 g beeswax-yellow 295 g",
            "balm: sunflower-oil 558 g beeswax-yellow 186 g",
            "polish: beeswax-yellow 612 g carnauba 153 g linseed-oil 255 g");
  }
}
