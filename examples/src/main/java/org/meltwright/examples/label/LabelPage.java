// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.label;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import org.meltwright.safety.hazard.HazardLabel;

/** A hazard label as one HTML file with its pictograms: no script, no network. */
public final class LabelPage {

  private final HazardLabel label;
  private final Locale locale;
  private final StringBuilder out = new StringBuilder();

  private LabelPage(HazardLabel label, Locale locale) {
    this.label = label;
    this.locale = locale;
  }

  /**
   * Returns a label as HTML.
   *
   * <p>The words are those of the text label, line by line; only the pictograms are drawn.
   *
   * @param label the label
   * @param locale its language: German for {@code de}, English for all others
   * @return the whole document
   */
  public static String of(HazardLabel label, Locale locale) {
    LabelPage page = new LabelPage(label, locale);
    page.write();
    return page.out.toString();
  }

  private void write() {
    String language = locale.getLanguage().equals("de") ? "de" : "en";
    String title = escape(label.details().productName(locale).orElse(""));
    out.append("<!DOCTYPE html>\n<html lang=\"").append(language).append("\">\n<head>\n");
    out.append("<meta charset=\"utf-8\">\n<title>").append(title).append("</title>\n<style>\n");
    out.append(style()).append("</style>\n</head>\n<body>\n<article>\n");
    incomplete();
    out.append("<h1>").append(title).append("</h1>\n");
    pictograms();
    label.signalWord().ifPresent(w -> paragraph("signal", w.word(locale)));
    statements("hazards", label.hazardStatements());
    statements("supplements", label.supplementalStatements());
    statements("precautions", label.precautionaryStatements());
    rest();
    out.append("</article>\n</body>\n</html>\n");
  }

  private void incomplete() {
    if (!label.isComplete()) {
      String gaps =
          label.gaps().stream().map(g -> escape(g.text(locale))).collect(Collectors.joining(" "));
      out.append("<p class=\"incomplete\">").append(gaps).append("</p>\n");
    }
  }

  private void pictograms() {
    out.append("<div class=\"pictograms\">");
    label.pictograms().forEach(p -> out.append(PictogramDrawing.svg(p, locale)));
    out.append("</div>\n");
  }

  private void statements(String kind, List<String> codes) {
    if (codes.isEmpty()) {
      return;
    }
    out.append("<ul class=\"").append(kind).append("\">\n");
    codes.forEach(
        code ->
            out.append("<li>")
                .append(code)
                .append(' ')
                .append(escape(label.text(code, locale)))
                .append("</li>\n"));
    out.append("</ul>\n");
  }

  /** Everything else that the text label says, in its order. */
  private void rest() {
    List<String> shown =
        label.statements().stream().map(code -> code + " " + label.text(code, locale)).toList();
    String word = label.signalWord().map(w -> w.word(locale)).orElse("");
    out.append("<div class=\"small\">\n");
    label
        .text(locale)
        .lines()
        .filter(line -> !shown.contains(line) && !line.equals(word))
        .forEach(line -> paragraph("line", line.strip()));
    out.append("</div>\n");
  }

  private void paragraph(String kind, String text) {
    out.append("<p class=\"").append(kind).append("\">").append(escape(text)).append("</p>\n");
  }

  private static String escape(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }

  private static String style() {
    try (InputStream css = LabelPage.class.getResourceAsStream("label.css")) {
      return new String(
          Objects.requireNonNull(css, "label.css").readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
