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
  private static final Pattern JAVA =
      Pattern.compile("(?ms)^```java\\n(.*?)^```|<pre>\\{@code\\n(.*?)^}</pre>");
  private static final Pattern GUIDE_ROW =
      Pattern.compile("(?m)^\\| (.+) \\| \\[[^\\]]+]\\(([a-z0-9-]+\\.md)\\) \\|$");
  private static final Pattern PROGRAM =
      Pattern.compile("src/main/java/org/meltwright/examples/program/(\\w+)\\.java");

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
    List<Path> pages = new ArrayList<>(files(".md"));
    pages.add(ROOT.resolve("docs/overview.html"));
    for (Path page : pages) {
      Matcher block = JAVA.matcher(read(page));
      while (block.find()) {
        String code = dense(block.group(1) != null ? block.group(1) : block.group(2));
        if (sources.stream().noneMatch(source -> source.contains(code))) {
          strangers.add(page + ": " + block.group());
        }
      }
    }

    assertThat(strangers).isEmpty();
  }

  @Test
  void overview_shows_code() {
    assertThat(JAVA.matcher(read(ROOT.resolve("docs/overview.html"))).results()).isNotEmpty();
  }

  @Test
  void guide_lists_each_page_under_its_own_title() throws IOException {
    Path guide = ROOT.resolve("docs/guide");
    List<String> listed = new ArrayList<>(List.of("README.md"));
    Matcher row = GUIDE_ROW.matcher(read(guide.resolve("README.md")));
    while (row.find()) {
      listed.add(row.group(2));
      assertThat(read(guide.resolve(row.group(2))).lines().findFirst())
          .as(row.group(2))
          .hasValue("# " + row.group(1));
    }

    try (Stream<Path> pages = Files.list(guide)) {
      assertThat(pages.map(p -> p.getFileName().toString())).hasSameElementsAs(listed);
    }
  }

  @Test
  void each_program_has_a_guide_page_of_its_own_title() throws IOException {
    List<String> titles = new ArrayList<>();
    for (Path page : files(".md")) {
      if (page.getParent().endsWith("guide") && PROGRAM.matcher(read(page)).find()) {
        titles.add(read(page).lines().findFirst().orElseThrow().substring(2));
      }
    }

    assertThat(programs())
        .hasSizeGreaterThan(12)
        .filteredOn(p -> !p.endsWith("FirstLook.java"))
        .allSatisfy(p -> assertThat(titles).anyMatch(t -> opensWith(read(p), t)));
  }

  /** The programs of one question each. */
  private static List<Path> programs() throws IOException {
    try (Stream<Path> files =
        Files.list(Path.of("src/main/java/org/meltwright/examples/program"))) {
      return files
          .filter(Files::isRegularFile)
          .filter(p -> read(p).contains("static void main("))
          .sorted()
          .toList();
    }
  }

  /** Whether the comment of the class begins with a title; "Answers:" may stand before it. */
  private static boolean opensWith(String source, String title) {
    String comment = source.substring(source.indexOf("\n/**") + 4).replaceAll("\\s+\\*? *", " ");
    return comment
        .replaceFirst("^[* ]*(Answers: )?", "")
        .toLowerCase(Locale.ROOT)
        .startsWith(title.replace("?", "").toLowerCase(Locale.ROOT));
  }

  @Test
  void no_main_of_a_program_of_one_question_is_sixty_lines_long() throws IOException {
    assertThat(programs()).allSatisfy(p -> assertThat(linesOfMain(read(p))).isBetween(3L, 59L));
  }

  private static long linesOfMain(String source) {
    int from = source.indexOf("  public static void main(");
    return source.substring(from, source.indexOf("\n  }\n", from) + 4).lines().count();
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
