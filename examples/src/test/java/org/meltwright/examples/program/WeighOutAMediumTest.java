// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.meltwright.examples.Output;

class WeighOutAMediumTest {

  @Test
  void main_730GramsOfWax_printsWhatToWeighAndCast() {
    String printed = Output.of(() -> WeighOutAMedium.main(new String[0]));
    // arithmetic: 730 / 8, to 0.1 g; 821.3 g less 3.65 g insolubles and 16.4 g film
    assertThat(printed)
        .contains("730.0 g of beeswax-yellow")
        .contains("91.3 g of damar")
        .contains("sprinkle it into the melt")
        .contains("821.3 g in the pot, 801.2 g after losses")
        .contains("whole cakes and one of");
  }
}
