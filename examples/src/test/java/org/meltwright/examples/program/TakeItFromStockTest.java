// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.meltwright.examples.Output;

class TakeItFromStockTest {

  @Test
  void main_cakesBagsAndATube_printsWhatIsTakenAndMissing() {
    String printed = Output.of(() -> TakeItFromStock.main(new String[0]));
    // arithmetic: 630 g of medium, 264 g there; of the other 366 g a ninth is resin
    assertThat(printed)
        .contains("take: 264.0 g of last month's cakes")
        .contains("take: 40.7 g of tears")
        .contains("take: 310.0 g of opened bag")
        .contains("take: 15.3 g of new bag")
        .contains("missing: 9.1 g of oil-paint-ultramarine")
        .contains("runs out first: oil-paint-ultramarine");
  }
}
