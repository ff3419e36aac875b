// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A material that no catalogue knows and whose name tells a hazard is told as such. */
class HazardNameInputTest {

  @TempDir Path folder;

  private String problemsOf(String material) throws IOException {
    String demo = Files.readString(Run.STUDIOS.resolve("demo-studio.json"), StandardCharsets.UTF_8);
    String json = demo.replace("\"material\": \"damar\"", "\"material\": \"" + material + "\"");
    Path file = Files.writeString(folder.resolve("studio.json"), json, StandardCharsets.UTF_8);
    Run run = Run.of(file.toString());
    assertThat(run.exitCode()).as(run.err()).isEqualTo(StudioSheet.BAD_INPUT);
    return run.err();
  }

  @ParameterizedTest
  @ValueSource(strings = {"Mennige", "Red lead", "Neapelgelb", "7758-97-6", "Brennspiritus"})
  void hazard_name_is_told_as_such(String material) throws IOException {
    assertThat(problemsOf(material)).contains("naming.hazard-name", "never heated");
  }

  @Test
  void hazard_name_stands_beside_the_nearest_names() throws IOException {
    assertThat(problemsOf("Zinnobergrün"))
        .contains("“Zinnobergrün”: named like “Chrome green")
        .contains("Nearest names: ")
        .contains("vermilion");
  }

  @Test
  void other_unknown_name_is_unknown() throws IOException {
    assertThat(problemsOf("damer")).contains("material.unknown").doesNotContain("hazard-name");
  }
}
