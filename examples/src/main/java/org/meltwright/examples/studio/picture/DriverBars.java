// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.picture;

import java.util.List;
import java.util.stream.Collectors;
import org.meltwright.core.explain.Drivers;
import org.meltwright.core.explain.Drivers.Driver;
import org.meltwright.examples.studio.page.Block.Picture;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.examples.studio.page.Svg;

/**
 * What an estimate hangs on as bars on one scale, the input that decides most first: measure that
 * one better.
 */
public final class DriverBars {

  private static final double BAR = 14;

  /** How many inputs have a bar of their own; the others are told together. */
  private static final int SHOWN = 5;

  private final Drivers drivers;
  private final Say say;
  private final List<Driver> shown;
  private final Svg.Builder svg;
  private double y;

  /**
   * Draws what an estimate hangs on.
   *
   * @param drivers the drivers of the estimate
   * @param say the language of the page
   * @return the picture
   */
  public static Picture of(Drivers drivers, Say say) {
    DriverBars bars = new DriverBars(drivers, say);
    return new Picture(bars.draw(), bars.alternative());
  }

  private DriverBars(Drivers drivers, Say say) {
    this.drivers = drivers;
    this.say = say;
    this.shown = drivers.ranked().stream().limit(SHOWN).toList();
    this.svg =
        Svg.builder(
            say.words("drivers.title", "result", result()),
            say.words("drivers.description"),
            Paper.WIDTH);
  }

  private String result() {
    return drivers.result().name().in(say.locale());
  }

  private Svg draw() {
    y = Paper.heading(svg, say.words("drivers.heading", "result", result()));
    line("start", say.words("drivers.worst", "range", drivers.worst().text(say.locale())));
    shown.forEach(this::bar);
    drivers.ranked().stream()
        .skip(SHOWN)
        .findFirst()
        .ifPresent(d -> line("start", say.words("drivers.others", "share", percent(d))));
    line("soft start", say.words("drivers.sum"));
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
    line("soft start", say.words("drivers.known", places(driver)));
  }

  private String name(Driver driver) {
    return driver.input().symbol().name().in(say.locale());
  }

  private Object[] places(Driver driver) {
    return new Object[] {
      "input", name(driver),
      "range", driver.input().rangeText(say.locale()),
      "left", driver.ifKnown().text(say.locale()),
      "share", percent(driver)
    };
  }

  /** What hardly matters may widen a range by a hair: no per cent below zero. */
  private static String percent(Driver driver) {
    return Math.round(100 * Math.max(0, driver.shrink())) + " %";
  }

  private String alternative() {
    if (shown.isEmpty()) {
      return say.words("drivers.nothing", "result", result());
    }
    String inputs =
        shown.stream()
            .map(d -> say.words("drivers.one", places(d)))
            .collect(Collectors.joining("; "));
    return say.words(
        "drivers.said",
        "result",
        result(),
        "range",
        drivers.worst().text(say.locale()),
        "inputs",
        inputs);
  }
}
