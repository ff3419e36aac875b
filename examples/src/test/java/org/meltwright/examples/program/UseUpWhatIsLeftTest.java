// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.meltwright.examples.Output;

class UseUpWhatIsLeftTest {

  @Test
  void main_oldCakesAndScrapings_printsAmountsWhatTheySaveAndWhatContradicts() {
    String printed = Output.of(() -> UseUpWhatIsLeft.main(new String[0]));
    // arithmetic: 4 % of 900 g are 36 g of oil, 30 % of 120 g of paint, 40 % of 300 g of scrapings;
    // resin 60 g + 22.5 g + 17 g are 11.06 % of 900 g
    assertThat(printed)
        .contains("300 g of old cakes", "300 g of scrapings", "17 g of damar")
        .contains("283 g of beeswax-yellow")
        .contains("one point less would save 0.192 EUR/kg; that holds from 9.167 % by mass")
        .contains("That it holds for every lot costs 1.77 EUR/kg")
        .contains("Proved the best")
        .contains("saves EUR 13.71")
        .contains("oil-paint-noted")
        .contains("scrapings mindestens 400 g: allein müsste er nachgeben bis 300 g");
  }
}
