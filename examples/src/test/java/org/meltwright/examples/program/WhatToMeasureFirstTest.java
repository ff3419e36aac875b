// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.meltwright.core.explain.Drivers;
import org.meltwright.core.explain.EstimateInput;
import org.meltwright.core.explain.EstimateInput.Direction;
import org.meltwright.core.explain.Symbol;
import org.meltwright.examples.Output;

class WhatToMeasureFirstTest {

  private static final Symbol DEPTH = symbol("depth", "m");
  private static final Symbol DENSITY = symbol("density", "kg/m³");
  private static final Symbol MASS = symbol("mass", "kg");

  private static Symbol symbol(String name, String unit) {
    return Symbol.beside(WhatToMeasureFirstTest.class, name, unit);
  }

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

  @Test
  void estimate_of_ones_own_tells_what_it_hangs_on() {
    EstimateInput depth = EstimateInput.of(DEPTH, 0.020, 0.030, Direction.RAISES);
    EstimateInput density = EstimateInput.of(DENSITY, 820, 850, Direction.RAISES);
    Drivers mass =
        Drivers.of(MASS, List.of(density, depth), v -> 0.06 * v.of(depth) * v.of(density));

    assertThat(mass.measureFirst(Locale.ENGLISH))
        .contains("Find this out first: depth. It decides nine tenths of this range.");
  }
}
