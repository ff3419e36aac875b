// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.meltwright.examples.Output;

class ResultsAsJsonTest {

  @Test
  void main_prints_the_tree_and_the_total_read_from_it_as_the_guide_shows() throws Exception {
    String output = Output.of(() -> ResultsAsJson.main(new String[0]));
    String page =
        Files.readString(
            Path.of("..", "docs", "guide", "results-as-json.md"), StandardCharsets.UTF_8);

    assertThat(output)
        .contains("\"amount\" : \"9.12\"", "\"massKilograms\" : 0.09125", "18.70 EUR");
    assertThat(page).contains(output.strip());
  }
}
