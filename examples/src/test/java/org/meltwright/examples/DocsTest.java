// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Pages lead where they say, and the code on them is code that is compiled and run. */
class DocsTest {

  private static final Path ROOT = Path.of("..");
  private static final Pattern LINK = Pattern.compile("(?<!!)\\[[^\\]]*]\\(([^)\\s]+)\\)");
  private static final Pattern HEADING = Pattern.compile("(?m)^#{1,6} +(.+)$");
  private static final Pattern JAVA = Pattern.compile("(?ms)^```java\\n(.*?)^```");

  private static List<Path> files(String suffix) {
    try (Stream<Path> all = Files.walk(ROOT)) {
      return all.filter(p -> p.toString().endsWith(suffix))
          .filter(p -> Stream.of("/target/", "/.git/").noneMatch(p.toString()::contains))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String read(Path file) {
    try {
      return Files.readString(file, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String withoutCode(String page) {
    return page.replaceAll("(?ms)^```.*?^```", "").replaceAll("`[^`]*`", "");
  }

  @Test
  void every_link_to_a_file_of_ours_leads_to_a_file_and_its_heading() {
    List<String> broken = new ArrayList<>();
    for (Path page : files(".md")) {
      Matcher link = LINK.matcher(withoutCode(read(page)));
      while (link.find()) {
        if (!link.group(1).matches("[a-z]+:.*") && !leadsSomewhere(page, link.group(1))) {
          broken.add(page + " -> " + link.group(1));
        }
      }
    }

    assertThat(broken).isEmpty();
  }

  private static boolean leadsSomewhere(Path page, String target) {
    String[] parts = target.split("#", 2);
    Path file = parts[0].isEmpty() ? page : page.resolveSibling(parts[0]).normalize();
    return Files.exists(file)
        && (parts.length == 1
            || !file.toString().endsWith(".md")
            || hasHeading(file, parts[1])
            || hasAnchor(file, parts[1]));
  }

  /** A row of a table has no heading: it carries an anchor of its own. */
  private static boolean hasAnchor(Path file, String anchor) {
    return read(file).contains("<a id=\"" + anchor + "\"></a>");
  }

  private static boolean hasHeading(Path file, String anchor) {
    String page = read(file);
    if (page.contains("id=\"" + anchor + "\"")) {
      return true;
    }
    return HEADING
        .matcher(page)
        .results()
        .map(h -> h.group(1).toLowerCase(Locale.ROOT))
        .map(h -> h.replaceAll("[^\\p{L}\\p{N} _-]", "").replace(' ', '-'))
        .anyMatch(anchor::equals);
  }

  @Test
  void java_code_on_a_page_stands_in_a_source_file() {
    List<String> sources = files(".java").stream().map(f -> dense(read(f))).toList();
    List<String> strangers = new ArrayList<>();
    for (Path page : files(".md")) {
      Matcher block = JAVA.matcher(read(page));
      while (block.find()) {
        String code = dense(block.group(1));
        if (sources.stream().noneMatch(source -> source.contains(code))) {
          strangers.add(page + ": " + block.group(1));
        }
      }
    }

    assertThat(strangers).isEmpty();
  }

  /** Code without white space, so that a page may break lines as suits it. */
  private static String dense(String code) {
    return code.replaceAll("\\s+", "");
  }

  @Test
  void readme_has_one_command_under_each_of_its_two_headings() {
    String readme = read(ROOT.resolve("README.md"));

    for (String heading : List.of("Run it", "Test it")) {
      Matcher block =
          Pattern.compile("(?ms)^## " + heading + "$.*?^```sh\\n(.*?)^```").matcher(readme);
      assertThat(block.find()).as(heading).isTrue();
      assertThat(block.group(1).strip().lines()).hasSize(1);
    }
  }
}
