// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.picture;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.meltwright.core.explain.Drivers;
import org.meltwright.core.explain.Drivers.Driver;
import org.meltwright.examples.studio.page.Block.Picture;
import org.meltwright.examples.studio.page.Svg;
import org.meltwright.units.Messages;

/**
 * What an estimate hangs on as bars on one scale, the input that decides most first: measure that
 * one better.
 */
public final class DriverBars {

  private static final Messages WORDS = Messages.beside(DriverBars.class);
  private static final double BAR = 14;

  /** How many inputs have a bar of their own; the others are told together. */
  private static final int SHOWN = 5;

  private final Drivers drivers;
  private final Locale reader;
  private final List<Driver> shown;
  private final Svg.Builder svg;
  private double y;

  /**
   * Draws what an estimate hangs on.
   *
   * @param drivers the drivers of the estimate
   * @param reader the reader's language: German for {@code de}, English for all others
   * @return the picture
   */
  public static Picture of(Drivers drivers, Locale reader) {
    DriverBars bars = new DriverBars(drivers, reader);
    return new Picture(bars.draw(), bars.alternative());
  }

  private DriverBars(Drivers drivers, Locale reader) {
    this.drivers = drivers;
    this.reader = reader;
    this.shown = drivers.ranked().stream().limit(SHOWN).toList();
    this.svg =
        Svg.builder(
            words("drivers.title", Map.of("result", result())),
            words("drivers.description", Map.of()),
            Paper.WIDTH);
  }

  private String words(String key, Map<String, String> places) {
    return WORDS.text(key, reader, places);
  }

  private String result() {
    return drivers.result().name().in(reader);
  }

  private Svg draw() {
    y = Paper.heading(svg, words("drivers.heading", Map.of("result", result())));
    line("start", words("drivers.worst", Map.of("range", drivers.worst().text(reader))));
    shown.forEach(this::bar);
    drivers.ranked().stream()
        .skip(SHOWN)
        .findFirst()
        .ifPresent(d -> line("start", words("drivers.others", Map.of("share", percent(d)))));
    line("soft start", words("drivers.sum", Map.of()));
    return svg.build(y + 4);
  }

  private void line(String look, String text) {
    y = Paper.lines(svg, look, 0, y + 3, Paper.WIDTH, text);
  }

  private void bar(Driver driver) {
    y = Paper.nameAndValue(svg, y + 8, name(driver), percent(driver)) + 5;
    double width = Math.max(0, driver.shrink()) * Paper.WIDTH;
    svg.rectangle("needed", 0, y, width, BAR);
    svg.rectangle("outline", 0, y, Paper.WIDTH, BAR);
    y += BAR;
    line("soft start", words("drivers.known", places(driver)));
  }

  private String name(Driver driver) {
    return driver.input().symbol().name().in(reader);
  }

  private Map<String, String> places(Driver driver) {
    return Map.of(
        "input", name(driver),
        "range", driver.input().rangeText(reader),
        "left", driver.ifKnown().text(reader),
        "share", percent(driver));
  }

  /** What hardly matters may widen a range by a hair: no per cent below zero. */
  private static String percent(Driver driver) {
    return Math.round(100 * Math.max(0, driver.shrink())) + " %";
  }

  private String alternative() {
    if (shown.isEmpty()) {
      return words("drivers.nothing", Map.of("result", result()));
    }
    String inputs =
        shown.stream().map(d -> words("drivers.one", places(d))).collect(Collectors.joining("; "));
    return words(
        "drivers.said",
        Map.of("result", result(), "range", drivers.worst().text(reader), "inputs", inputs));
  }
}
