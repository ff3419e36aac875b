// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.meltwright.examples.studio.day.ClassSheet;
import org.meltwright.examples.studio.day.Sheet;
import org.meltwright.examples.studio.file.StudioFile;
import org.meltwright.examples.studio.page.Say;

/** The class of the demo file: its sheet, what the program prints, and what changes make of it. */
abstract class ClassOfTheDemo {

  @TempDir static Path folder;

  static String json;

  static ClassSheet sheet;

  static Run run;

  static Document page;

  static String html;

  @BeforeAll
  static void runTheDemo() throws IOException {
    json = Files.readString(Run.STUDIOS.resolve("demo-studio.json"), StandardCharsets.UTF_8);
    sheet = classOf(json);
    run = runOf(json);
    html = Files.readString(folder.resolve("class.html"), StandardCharsets.UTF_8);
    page = Jsoup.parse(html);
  }

  static ClassSheet classOf(String json) throws IOException {
    byte[] bytes = json.getBytes(StandardCharsets.UTF_8);
    return Sheet.of(StudioFile.read(new ByteArrayInputStream(bytes)), Say.ENGLISH)
        .forClass()
        .orElseThrow();
  }

  static Run runOf(String json) throws IOException {
    Path file = Files.writeString(folder.resolve("studio.json"), json, StandardCharsets.UTF_8);
    return Run.of(
        "--page",
        folder.resolve("page.html").toString(),
        "--class-sheet",
        folder.resolve("class.html").toString(),
        file.toString());
  }

  /** Runs a changed demo and reads its class sheet. */
  static Document changed(String from, String to, int exitCode) throws IOException {
    assertThat(json).contains(from);
    Run changed = runOf(json.replace(from, to));
    assertThat(changed.exitCode()).as(changed.err()).isEqualTo(exitCode);
    return Jsoup.parse(Files.readString(folder.resolve("class.html"), StandardCharsets.UTF_8));
  }

  static String chapter(Document of, String title) {
    for (Element section : of.select("section, details")) {
      if (section.select("> h2, > summary").text().equals(title)) {
        return section.text();
      }
    }
    throw new AssertionError("no chapter " + title);
  }

  static String row(Document of, String first) {
    for (Element row : of.select("tbody tr")) {
      if (row.select("th").text().startsWith(first)) {
        return row.text();
      }
    }
    throw new AssertionError("no row " + first);
  }

  /** The class sheet of a changed file, which need not be free of blocks. */
  static String written(String changed) throws IOException {
    assertThat(changed).isNotEqualTo(json);
    Run run = runOf(changed);
    assertThat(run.exitCode()).as(run.err()).isNotEqualTo(StudioSheet.BAD_INPUT);
    return Files.readString(folder.resolve("class.html"), StandardCharsets.UTF_8);
  }
}
