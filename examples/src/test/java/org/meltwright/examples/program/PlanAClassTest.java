// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.meltwright.examples.Output;

class PlanAClassTest {

  @Test
  void main_printsMassesPackagesAndFee() {
    assertThat(Output.of(() -> PlanAClass.main(new String[0])).lines())
        .containsExactly(
            "medium 4.910 kg",
            "1 x 66.00 EUR/5 kg",
            "1 x 17.90 EUR/500 g",
            "2 x 4.90 EUR/100 g",
            "to pay EUR 93.70, proved true",
            "fee EUR 70.00, even at 9");
  }
}
