// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.meltwright.examples.Output;

class WhatMustTheLabelSayTest {

  @Test
  void main_printsTheLabelInTwoLanguagesWithItsArithmetic() {
    String output = Output.of(() -> WhatMustTheLabelSay.main(new String[0]));
    assertThat(output.lines())
        .contains(
            "Pictograms: GHS09 (environment)",
            "Warning",
            "H410 Very toxic to aquatic life with long lasting effects.",
            "P273 Avoid release to the environment.",
            "P501 Dispose of contents and container to a collection point for hazardous waste.",
            "Achtung",
            "H410 Sehr giftig für Wasserorganismen mit langfristiger Wirkung.",
            "Hazard to water, long-term: category 1 (H410)");
    assertThat(output)
        .contains("Zinc white (PW4) 30 %")
        .contains("= 30 % ÷ 25 %")
        .contains("Not assessed:")
        .doesNotContain("INCOMPLETE");
  }
}
