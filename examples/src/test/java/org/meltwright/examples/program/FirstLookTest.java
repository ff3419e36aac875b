// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.meltwright.examples.Output;

class FirstLookTest {

  @Test
  void prints_the_working_of_the_batch_and_the_gravest_finding() {
    assertThat(Output.of(() -> FirstLook.main(new String[0])).lines())
        .contains("    = 821.25 g − 3.65 g − 0 g − 0 g", "    = 817.6 g")
        .anySatisfy(line -> assertThat(line).startsWith("DANGER hard-ceiling: "));
  }

  @Test
  void readme_shows_what_it_really_prints() throws IOException {
    String readme = Files.readString(Path.of("..", "README.md"), StandardCharsets.UTF_8);

    assertThat(readme).contains(Output.of(() -> FirstLook.main(new String[0])));
  }

  @Test
  void readme_shows_as_many_lines_as_it_says() throws IOException {
    String readme = Files.readString(Path.of("..", "README.md"), StandardCharsets.UTF_8);
    String look = readme.substring(readme.indexOf("## A first look"));
    String code = look.substring(look.indexOf("```java\n") + 8, look.indexOf("\n```\n"));

    assertThat(look).contains("Eleven lines of [FirstLook.java]");
    assertThat(code.lines().filter(line -> !line.isBlank())).hasSize(11);
  }
}
