// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.naming;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;

/** The list is read when a name comes that is none of the catalogue's, and not before. */
class LoadedWhenAskedTest {

  private static final String LIST = "org.meltwright.safety.naming.NameList ";

  @Test
  void catalogueMaterials_neverLoadTheList() throws Exception {
    assertThat(loadedBy("catalogue")).contains("asked").noneMatch(line -> line.contains(LIST));
  }

  @Test
  void otherName_loadsTheList() throws Exception {
    assertThat(loadedBy("other")).contains("asked").anyMatch(line -> line.contains(LIST));
  }

  private static List<String> loadedBy(String what) throws Exception {
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xlog:class+load",
                "-cp",
                classPath(),
                Probe.class.getName(),
                what)
            .redirectErrorStream(true)
            .start();
    String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(output).isZero();
    return output.lines().toList();
  }

  /** All that this test runs on, whether as modules or as a class path. */
  private static String classPath() {
    return String.join(
        File.pathSeparator,
        System.getProperty("jdk.module.path", ""),
        System.getProperty("java.class.path", ""),
        Path.of("target", "test-classes").toAbsolutePath().toString());
  }

  /** Asks in a fresh machine. */
  static final class Probe {

    private Probe() {}

    public static void main(String[] arguments) {
      for (Material material : MaterialCatalogue.standard().all()) {
        HazardNames.of(material);
      }
      if (arguments[0].equals("other")) {
        HazardNames.of(Material.builder("jar").names("Mennige", "").build());
      }
      System.out.println("asked");
    }
  }
}
