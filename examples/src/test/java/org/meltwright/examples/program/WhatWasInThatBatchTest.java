// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.meltwright.examples.Output;

class WhatWasInThatBatchTest {

  @Test
  void traces_a_cake_to_its_lots_through_the_medium_and_a_lot_to_its_cakes() {
    assertThat(Output.of(() -> WhatWasInThatBatch.main(new String[0])).lines())
        .contains(
            "M-17 damar: planned 11.11 %, weighed 11.30 %",
            "M-17 beeswax-yellow: planned 88.89 %, weighed 88.70 %",
            "in B-3/1: oil-paint-ultramarine (lot tube 2)",
            "in B-3/1: beeswax-yellow (lot 4)",
            "in B-3/1: damar (lot 9)",
            "with lot 9 of the resin: [B-3/1, B-3/2]");
  }
}
