// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.label;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.meltwright.examples.Output;
import org.meltwright.safety.hazard.Pictogram;

class PrintLabelTest {

  @TempDir Path folder;

  @Test
  void main_writesTheLabelWithItsPictogram() throws IOException {
    Path file = folder.resolve("rosin.html");
    assertThat(Output.of(() -> PrintLabel.main(new String[] {file.toString()})))
        .contains("Written: rosin.html");
    Document page = Jsoup.parse(Files.readString(file));
    assertThat(page.select("svg.pictogram title").eachText())
        .containsExactly("GHS07: exclamation mark");
    assertThat(page.select("p.signal").text()).isEqualTo("Warning");
    assertThat(page.select("ul.hazards li").eachText())
        .containsExactly("H317 May cause an allergic skin reaction.");
    assertThat(page.select("ul.precautions li").eachText())
        .extracting(line -> line.split(" ", 2)[0])
        .containsExactly("P102", "P280", "P302+P352", "P333+P313", "P501");
    assertThat(page.select(".incomplete")).isEmpty();
    assertThat(page.text())
        .contains("Contains: Colophony")
        .contains("Not a toy.")
        .contains("A screening aid, not a legal classification.");
    assertThat(page.select("script, link, img")).isEmpty();
  }

  @ParameterizedTest
  @EnumSource(Pictogram.class)
  void pictogram_isABlackSymbolOnWhiteInARedFrame(Pictogram pictogram) {
    Document svg =
        Jsoup.parse(PictogramDrawing.svg(pictogram, Locale.GERMAN), "", Parser.xmlParser());
    assertThat(svg.select("svg > path").attr("stroke")).isEqualTo("#e30613");
    assertThat(svg.select("svg > path").attr("fill")).isEqualTo("#fff");
    assertThat(svg.select("svg > g").attr("fill")).isEqualTo("#000");
    assertThat(svg.select("svg > g > *")).isNotEmpty();
    assertThat(svg.select("title").text()).startsWith(pictogram.name() + ": ");
  }
}
