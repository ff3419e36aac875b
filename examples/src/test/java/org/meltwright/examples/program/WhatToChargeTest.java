// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.meltwright.examples.Output;

class WhatToChargeTest {

  @Test
  void main_printsWhereThePriceGoes() {
    assertThat(Output.of(() -> WhatToCharge.main(new String[0])).lines())
        .containsExactly(
            "cost    EUR 4.46",
            "wished  EUR 9.44",
            "on tag  EUR 9.50",
            "tax     EUR 1.52",
            "fees    EUR 1.25",
            "profit  EUR 2.27",
            "margin  33.7 %",
            "at 6.00 an hour earns EUR 22.26",
            "the table is paid by [15, 5] cakes and sets");
  }
}
