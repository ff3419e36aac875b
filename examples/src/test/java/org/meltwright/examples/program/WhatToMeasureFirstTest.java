// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.meltwright.examples.Output;

class WhatToMeasureFirstTest {

  private static String output() {
    return Output.of(() -> WhatToMeasureFirst.main(new String[0])).replace("\r", "");
  }

  @Test
  void prints_what_the_guide_shows() throws IOException {
    String guide = Files.readString(Path.of("../docs/guide/what-to-measure-first.md"));

    assertThat(guide.replace("\r", "")).contains(output().strip());
  }

  @Test
  void measured_strokes_leave_a_narrower_range_and_another_thing_to_measure() {
    String output = output();

    assertThat(output.indexOf("how thick a stroke is decides")).isPositive();
    assertThat(output.substring(output.indexOf("weighed:")))
        .doesNotContain("how thick a stroke is");
  }
}
