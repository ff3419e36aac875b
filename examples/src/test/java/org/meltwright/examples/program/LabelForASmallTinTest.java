// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.meltwright.examples.Output;

class LabelForASmallTinTest {

  @Test
  void main_printsALabelThatKeepsFireAndWater_withItsReasons() {
    String output = Output.of(() -> LabelForASmallTin.main(new String[0]));
    assertThat(output.lines().filter(line -> line.matches("P\\d{3}\\S* .*")).toList())
        .extracting(line -> line.split(" ", 2)[0])
        .containsExactly("P102", "P210", "P273", "P280", "P305+P351+P338", "P501");
    assertThat(output)
        .contains("Contains: turpentine, oil")
        .contains("held to be in no class")
        .contains("P210: never left out: Flammable liquids")
        .contains("P305+P351+P338: there was room for it")
        .contains("Pack: [TACTILE_WARNING]")
        .doesNotContain("H304")
        .doesNotContain("Melt on a plate")
        .doesNotContain("INCOMPLETE");
  }
}
