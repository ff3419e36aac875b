// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What the README says of modules, of what they pull in and how big it is, is so. */
class EmbeddingTest {

  private static final Path ROOT = Path.of("..");
  private static final List<String> MODULES = List.of("units", "core", "safety");
  private static final Pattern ROW =
      Pattern.compile("(?m)^\\| `([a-z.-]+)` \\| (\\d+) \\| .* \\| ([A-Za-z0-9.-]+) \\|$");
  private static final Pattern DEPENDENCY = Pattern.compile("(?s)<dependency>(.*?)</dependency>");
  private static final Pattern ARTIFACT = Pattern.compile("<artifactId>(.*?)</artifactId>");

  private static String read(String file) throws IOException {
    return Files.readString(ROOT.resolve(file), StandardCharsets.UTF_8);
  }

  /** The size in kB of each jar of the table. */
  private static Map<String, Integer> table() throws IOException {
    Map<String, Integer> sizes = new LinkedHashMap<>();
    ROW.matcher(read("README.md"))
        .results()
        .forEach(m -> sizes.put(m.group(1), Integer.valueOf(m.group(2))));
    return sizes;
  }

  private static Stream<Path> classPath() {
    String surefire = System.getProperty("surefire.test.class.path");
    String all = surefire == null ? System.getProperty("java.class.path") : surefire;
    return Stream.of(all.split(File.pathSeparator, -1)).map(Path::of);
  }

  private static Optional<Path> jar(String artifact) throws IOException {
    Pattern name = Pattern.compile(Pattern.quote(artifact) + "-\\d[\\w.]*(?:-SNAPSHOT)?\\.jar");
    Stream<Path> places = classPath();
    if (artifact.startsWith("meltwright-")) {
      Path target = ROOT.resolve(artifact.substring("meltwright-".length())).resolve("target");
      places = Stream.of(target.toFile().listFiles()).map(File::toPath);
    }
    return places.filter(p -> name.matcher(p.getFileName().toString()).matches()).findFirst();
  }

  @Test
  void jars_are_as_big_as_the_readme_says() throws IOException {
    for (Map.Entry<String, Integer> row : table().entrySet()) {
      Optional<Path> jar = jar(row.getKey());
      boolean notPackagedYet = row.getKey().startsWith("meltwright-") && jar.isEmpty();
      if (!notPackagedYet) {
        assertThat(jar).as(row.getKey()).isPresent();
        assertThat(Files.size(jar.get()) / 1000.0)
            .as(row.getKey())
            .isCloseTo(row.getValue(), withPercentage(20));
      }
    }
  }

  @Test
  void sum_of_the_jars_is_what_the_readme_says() throws IOException {
    int kilobytes = table().values().stream().mapToInt(Integer::intValue).sum();

    assertThat(read("README.md"))
        .contains(String.format(Locale.ROOT, "%.1f MB in all", kilobytes / 1000.0));
  }

  @Test
  void what_the_poms_pull_in_stands_in_the_readme() throws IOException {
    for (String module : MODULES) {
      String pom = read(module + "/pom.xml").replaceAll("(?s)<profiles>.*</profiles>", "");
      assertThat(pom).contains("<artifactId>meltwright-" + module + "</artifactId>");
      DEPENDENCY
          .matcher(pom)
          .results()
          .map(m -> m.group(1))
          .filter(d -> !d.contains("<scope>") && !d.contains("<optional>"))
          .flatMap(d -> ARTIFACT.matcher(d).results().map(a -> a.group(1)))
          .forEach(a -> assertThat(tableHas(a)).as("%s of %s", a, module).isTrue());
    }
  }

  private static boolean tableHas(String artifact) {
    try {
      return table().containsKey(artifact);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void pom_of_the_readme_has_our_version_and_our_compiler_plugin() throws IOException {
    String dense = read("README.md").replaceAll("\\s+", "");
    String pom = read("pom.xml").replaceAll("\\s+", "");
    String compiler = "<artifactId>maven-compiler-plugin</artifactId>";
    String version = pom.substring(pom.indexOf(compiler) + compiler.length()).split("</v", 2)[0];
    String own = "<artifactId>meltwright</artifactId>";

    assertThat(dense).contains(compiler + version + "</version>");
    assertThat(dense)
        .contains(
            "<artifactId>meltwright-safety</artifactId>"
                + pom.substring(pom.indexOf(own) + own.length()).split("</v", 2)[0]
                + "</version>");
  }

  @Test
  void modules_of_the_readme_are_those_that_are_built() throws IOException {
    String readme = read("README.md");
    for (String module : MODULES) {
      assertThat(readme)
          .contains("| `meltwright-" + module + "` (`org.meltwright." + module + "`)");
      assertThat(read(module + "/src/main/java/module-info.java"))
          .contains("module org.meltwright." + module + " {");
    }
  }
}
