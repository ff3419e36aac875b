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
  private static Path measured(int width) throws IOException {
    try (InputStream in = HtmlPage.class.getResourceAsStream("measure.html")) {
      String text =
          new String(in.readAllBytes(), StandardCharsets.UTF_8)
              .replace("WIDTH", Integer.toString(width))
              .replace(
                  "PAGE", Files.readString(page).replace("&", "&amp;").replace("\"", "&quot;"));
      return Files.writeString(folder.resolve("measure-" + width + ".html"), text);
    }
  }

  @ParameterizedTest
  @CsvSource({"390, light", "390, dark", "1000, light"})
  void nothing_is_too_wide_too_small_too_pale_or_written_over(int width, String scheme)
      throws Exception {
    String setting = scheme.equals("dark") ? "0" : "1";
    String document =
        browser.document(
            measured(width),
            "--window-size=1200,3200",
            "--blink-settings=preferredColorScheme=" + setting);
    int pictures = Jsoup.parse(Files.readString(page)).select("svg").size();
    List<String> lines = Jsoup.parse(document).select("body > ul > li").eachText();

    assertThat(lines)
        .singleElement()
        .asString()
        .matches(
            "looked at \\d{3,} words in %d pictures on %s, least \\d+\\.\\d+ px"
                .formatted(pictures, scheme));
  }

  @Test
  void it_prints_on_a4() throws Exception {
    Path pdf = folder.resolve("demo.pdf");
    browser.print(page, pdf);
    List<MatchResult> sheets =
        PAPER.matcher(Files.readString(pdf, StandardCharsets.ISO_8859_1)).results().toList();

    assertThat(sheets).hasSizeBetween(8, 18);
    assertThat(sheets)
        .allSatisfy(
            sheet -> {
              assertThat(Double.parseDouble(sheet.group(1))).isBetween(594.0, 596.0);
              assertThat(Double.parseDouble(sheet.group(2))).isBetween(841.0, 843.0);
            });
  }
}
