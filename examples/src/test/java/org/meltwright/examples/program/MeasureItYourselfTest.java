// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.meltwright.core.material.Comparison;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.examples.Output;

class MeasureItYourselfTest {

  private static final Path GUIDE = Path.of("..", "docs", "guide", "measure-it-yourself.md");

  @Test
  void guide_showsWhatTheProgramPrints() throws IOException {
    assertThat(Files.readString(GUIDE))
        .contains(Output.of(() -> MeasureItYourself.main(new String[0])).strip());
  }

  @Test
  void guide_materialsFile_isReadAndCompared() throws IOException {
    String guide = Files.readString(GUIDE);
    int start = guide.indexOf("source: ada-cup");
    String file = guide.substring(start, guide.indexOf("```", start));

    MaterialCatalogue studio = MaterialCatalogue.standard().plus(file);
    Material bag = studio.require("beeswax-yellow, lot 7");

    assertThat(Comparison.of(bag, PropertyKey.LIQUID_DENSITY))
        .hasValueSatisfying(c -> assertThat(c.agreement()).isEqualTo(Comparison.Agreement.AGREES));
  }
}
