// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A runtime image without {@code jdk.localedata} writes the same German. */
class WithoutLocaleDataTest {

  @Test
  void german_is_the_same_with_and_without_the_locale_data_of_the_jdk() throws Exception {
    List<String> with = lines("java.se,jdk.localedata");
    List<String> without = lines("java.se");

    assertThat(with).first().isEqualTo("JDK: 0,5");
    assertThat(without).first().isEqualTo("JDK: 0.5");
    assertThat(without.subList(1, without.size())).isEqualTo(with.subList(1, with.size()));
    assertThat(without)
        .contains(
            "mass: 12,5 g",
            "share: 12,5 Masse-%",
            "read: 1.5 kg",
            "found: 120,5",
            "problem: Der Wert (Masse) ist keine endliche Zahl.");
    assertThat(without).anyMatch(line -> line.matches("finding: .*150,3 °C \\(302,5 °F\\).*"));
  }

  private static List<String> lines(String modules) throws Exception {
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Dfile.encoding=UTF-8",
                "--limit-modules",
                modules,
                "-cp",
                System.getProperty("java.class.path"),
                WithoutLocaleData.class.getName())
            .redirectErrorStream(true)
            .start();
    String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(output).isZero();
    return output.lines().toList();
  }
}
