// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.meltwright.examples.Output;

class RescueAPotTest {

  @Test
  void main_potAtThirtyFivePerCent_printsWhatToAdd() {
    String printed = Output.of(() -> RescueAPot.main(new String[0]));
    // arithmetic: 2.5 g per gram
    assertThat(printed)
        .contains("before: 35.0 % oil paint")
        .contains("add 500 g of medium")
        .contains("after: 10.0 % oil paint")
        .contains("nearest: 35 % by mass");
  }
}
