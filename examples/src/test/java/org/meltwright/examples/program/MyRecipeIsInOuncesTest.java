// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.meltwright.examples.Output;

class MyRecipeIsInOuncesTest {

  @Test
  void says_grams_ratio_celsius_and_refuses_a_volume_as_a_mass() {
    assertThat(Output.of(() -> MyRecipeIsInOunces.main(new String[0])).lines())
        .contains(
            "2 lb of wax is 907 g, 4 oz of resin is 113 g",
            "that is 1 part of resin to 8 parts of wax",
            "200 °F is 93.3 °C",
            "that reaches the hard ceiling of 93.3 °C")
        .last()
        .asString()
        .contains("mass", "volume");
  }
}
