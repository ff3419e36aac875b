// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.meltwright.examples.Output;

class MakeOrBuyMediumTest {

  @Test
  void main_printsBothCostsOnOneBasis() {
    assertThat(Output.of(() -> MakeOrBuyMedium.main(new String[0])).lines())
        .containsExactly(
            "own        EUR 27.34/kg net",
            "ready-made EUR 75.00/kg landed",
            "even at 1.7 kg a year",
            "bars from abroad",
            "beeswax",
            "work");
  }
}
