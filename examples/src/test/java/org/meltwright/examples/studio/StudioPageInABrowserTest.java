// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.meltwright.examples.studio.page.HtmlPage;

/** The page of the demo studio as a browser lays it out; skipped where none works. */
class StudioPageInABrowserTest {

  private static final Pattern PAPER =
      Pattern.compile("/MediaBox ?\\[0 0 (\\d+(?:\\.\\d+)?) (\\d+(?:\\.\\d+)?)]");

  @TempDir static Path folder;

  private static Browser browser;
  private static Path page;

  @BeforeAll
  static void drawTheDemo() {
    Optional<Browser> found = Browser.find(folder);
    assumeTrue(found.isPresent(), "no browser that works on this machine");
    browser = found.orElseThrow();
    page = folder.resolve("demo.html");
    Run.of("--page", page.toString(), Run.STUDIOS.resolve("demo-studio.json").toString());
  }

  /** The page in a frame as wide as a phone or a desk, with a script beside it that measures. */
  private static Path measured(Path of, int width, int screen) throws IOException {
    try (InputStream in = HtmlPage.class.getResourceAsStream("measure.html")) {
      String text =
          new String(in.readAllBytes(), StandardCharsets.UTF_8)
              .replace("WIDTH", Integer.toString(width))
              .replace("SCREEN", Integer.toString(screen))
              .replace("PAGE", Files.readString(of).replace("&", "&amp;").replace("\"", "&quot;"));
      return Files.writeString(folder.resolve("measure-" + width + ".html"), text);
    }
  }

  private static Path written(String language, String studio) {
    Path to = folder.resolve(language + "-" + studio + ".html");
    Run.of(
        "--language",
        language,
        "--page",
        to.toString(),
        "--class-sheet",
        folder.resolve(language + "-class.html").toString(),
        Run.STUDIOS.resolve("demo-studio.json").toString());
    return to;
  }

  /** The first weights end within the screen of a phone of 390 × 844 and a desk of 1280 × 900. */
  @ParameterizedTest
  @CsvSource({"390, 844, light", "390, 844, dark", "1280, 900, light"})
  void first_weights_are_on_the_first_screen_and_nothing_is_too_wide_small_or_pale(
      int width, int screen, String scheme) throws Exception {
    String setting = scheme.equals("dark") ? "0" : "1";
    for (String language : List.of("en", "de")) {
      Path unfolded = unfolded(written(language, "measured"));
      String document =
          browser.document(
              measured(unfolded, width, screen),
              "--window-size=1400,3200",
              "--blink-settings=preferredColorScheme=" + setting);
      int pictures = Jsoup.parse(Files.readString(unfolded)).select("svg").size();
      List<String> lines = Jsoup.parse(document).select("body > ul > li").eachText();

      assertThat(lines)
          .as(language)
          .singleElement()
          .asString()
          .matches(
              "looked at \\d{3,} words in %d pictures on %s, least \\d+\\.\\d+ px"
                  .formatted(pictures, scheme));
    }
  }

  /** All that is folded, opened: it has to fit as well. */
  private static Path unfolded(Path of) throws IOException {
    return Files.writeString(
        folder.resolve("unfolded.html"),
        Files.readString(of, StandardCharsets.UTF_8).replace("<details>", "<details open>"),
        StandardCharsets.UTF_8);
  }

  /** The sizes of the sheets of a printed page. */
  private static List<MatchResult> printed(Path of) throws Exception {
    Path pdf = folder.resolve("printed.pdf");
    browser.print(of, pdf);
    return PAPER.matcher(Files.readString(pdf, StandardCharsets.ISO_8859_1)).results().toList();
  }

  @Test
  void the_demo_prints_on_a4_a_sheet_for_each_card_and_at_most_eight_in_all() throws Exception {
    List<MatchResult> sheets = printed(page);

    assertThat(sheets).hasSizeBetween(7, 8);
    assertThat(sheets)
        .allSatisfy(
            sheet -> {
              assertThat(Double.parseDouble(sheet.group(1))).isBetween(594.0, 596.0);
              assertThat(Double.parseDouble(sheet.group(2))).isBetween(841.0, 843.0);
            });
  }

  /** What is folded is printed on wish. */
  @Test
  void unfolded_it_prints_more() throws Exception {
    assertThat(printed(unfolded(page))).hasSizeGreaterThan(10);
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "de"})
  void the_class_sheet_prints_on_two_pages_or_three_where_letters_are_wide(String language)
      throws Exception {
    written(language, "for-class");

    assertThat(printed(folder.resolve(language + "-class.html"))).hasSizeBetween(2, 3);
  }
}
