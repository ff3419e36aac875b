// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.thermal.melting.WorkingWindow;
import org.meltwright.examples.studio.page.Block.Picture;
import org.meltwright.examples.studio.page.Lettering;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.examples.studio.page.Svg;
import org.meltwright.safety.heating.HeatingReview;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.TemperatureRange;

/**
 * The temperatures of one pot on one scale: a strip each for the wax, the floor of the pot, the
 * working window, what melts, what dissolves and the flash point, with target and hard ceiling
 * across all.
 */
public final class TemperatureScale {

  private static final double STRIP = 14;
  private static final double GAP = 9;
  private static final double ARROW = 8;

  private final HeatingReview review;
  private final @Nullable WorkingWindow window;
  private final TemperaturePoint top;
  private final List<PotFacts.Line> lines;
  private final Degrees degrees;
  private final Svg.Builder svg;
  private double y;

  /**
   * Draws the temperatures of a pot.
   *
   * @param review the review of its heating
   * @param window where its mix can be worked
   * @return the picture; without pictures its figures of the mix are said, the others stand in the
   *     review
   */
  public static Picture of(HeatingReview review, WorkingWindow window) {
    return new TemperatureScale(review, window).picture();
  }

  /**
   * Draws the temperatures of a pot of which no working window is known: nothing in it melts, or
   * nobody knows where.
   *
   * @param review the review of its heating
   * @return the picture, with a question mark for the window and nothing shaded as good
   */
  public static Picture of(HeatingReview review) {
    return new TemperatureScale(review, null).picture();
  }

  private TemperatureScale(HeatingReview review, @Nullable WorkingWindow window) {
    this.review = review;
    this.window = window;
    this.top = PotFacts.top(review, window);
    this.lines = PotFacts.of(review, window);
    this.degrees = Degrees.showing(shown());
    this.svg =
        Svg.builder(
            "Temperatures of the pot",
            "Strips above each other on one scale from "
                + Math.round(degrees.lowCelsius())
                + " to "
                + Math.round(degrees.highCelsius())
                + " °C. A dashed line is the target, a thick one the hard ceiling; what is hatched"
                + " behind it is too hot. Ranges are bars, an unknown is a question mark.",
            Paper.WIDTH);
  }

  private Picture picture() {
    return new Picture(
        draw(), limits() + " " + words(line -> true), words(PotFacts.Line::isOfTheMix));
  }

  /** What the scale must reach; a flash point far above is pointed at with an arrow. */
  private List<TemperaturePoint> shown() {
    List<TemperaturePoint> shown = new ArrayList<>();
    shown.add(review.target());
    shown.add(review.hardCeiling());
    for (PotFacts.Line line : lines) {
      TemperatureRange range = line.range();
      if (range != null && (line.shape() != PotFacts.Shape.LIMIT || near(range.high()))) {
        shown.add(range.low());
        shown.add(range.high());
      }
    }
    return shown;
  }

  private boolean near(TemperaturePoint limit) {
    return limit.minus(review.hardCeiling()).kelvin() < 30;
  }

  private Svg draw() {
    y = Paper.heading(svg, "Temperatures of the pot, °C") + 4;
    flags();
    lines.forEach(this::line);
    axis();
    return svg.build(y);
  }

  /** The names of the two ceilings, each on a line of its own and clear of the other's mark. */
  private void flags() {
    double target = degrees.x(review.target());
    double hard = degrees.x(review.hardCeiling());
    String targetText = "target " + Say.celsius(review.target());
    String hardText = "hard ceiling " + Say.celsius(review.hardCeiling());
    boolean left = Lettering.boldWidth(hardText) + 6 < hard;
    double first = y + Lettering.LINE;
    double second = first + Lettering.LINE;
    double foot = second + 8;
    double targetLine = left ? second : first;
    double hardLine = left ? first : second;
    svg.line("target", target, targetLine - 10, target, foot);
    svg.line("hard", hard, hardLine - 10, hard, foot);
    String look = left ? "end" : "start";
    double aside = left ? -5 : 5;
    svg.text(look, target + aside, targetLine, targetText);
    svg.text("strong " + look, hard + aside, hardLine, hardText);
    y = foot - GAP + 2;
  }

  private void line(PotFacts.Line line) {
    y = Paper.nameAndValue(svg, y + GAP, line.name(), line.value()) + 6;
    if (line.shape() == PotFacts.Shape.UNKNOWN) {
      svg.rectangle("unknown", Degrees.LEFT, y, Degrees.RIGHT - Degrees.LEFT, STRIP);
      svg.text("strong middle", (Degrees.LEFT + Degrees.RIGHT) / 2, y + STRIP - 3, "?");
    } else {
      strip(line.shape() == PotFacts.Shape.WINDOW);
      shape(line.shape(), line.range());
    }
    y += STRIP;
  }

  /** The strip itself: where it is good to work, where it is too hot, and the two ceilings. */
  private void strip(boolean plain) {
    svg.rectangle("strip", Degrees.LEFT, y, Degrees.RIGHT - Degrees.LEFT, STRIP);
    if (!plain) {
      good("good");
    }
    double hard = degrees.x(review.hardCeiling());
    svg.rectangle("too-hot", hard, y, Degrees.RIGHT - hard, STRIP);
    svg.hatching("too-hot-hatch", hard, y, Degrees.RIGHT - hard, STRIP, 7);
    double target = degrees.x(review.target());
    svg.line("target", target, y - 2, target, y + STRIP + 2);
    svg.line("hard", hard, y - 2, hard, y + STRIP + 2);
  }

  /** Where it is good to work by any estimate: nowhere in a pot that is blocked. */
  private void good(String look) {
    if (window == null || review.isBlocked()) {
      return;
    }
    TemperaturePoint from = window.lowerBound().high();
    if (top.isAbove(from)) {
      svg.rectangle(look, degrees.x(from), y, degrees.x(top) - degrees.x(from), STRIP);
    }
  }

  private void shape(PotFacts.Shape shape, @Nullable TemperatureRange range) {
    if (range == null) {
      return;
    }
    switch (shape) {
      case PIN -> pin(range.low());
      case WINDOW -> window(range);
      case LIMIT -> limit(range.low());
      case BAR_AND_MORE -> bar(range, Degrees.RIGHT - 2);
      case BAR_TO_TARGET -> bar(range, degrees.x(review.target()));
      default -> bar(range, Degrees.LEFT);
    }
  }

  private void pin(TemperaturePoint point) {
    double x = degrees.x(point);
    svg.line("pin", x, y, x, y + STRIP);
    svg.polygon("pin-head", List.of(x - 6, y - 2, x + 6, y - 2, x, y + 7));
    offScale(point);
  }

  /** A bar, at least so wide that it is seen, and dots up to the end if there is room. */
  private void bar(TemperatureRange range, double end) {
    double x = degrees.x(range.low());
    double right = Math.max(x + 2, degrees.x(range.high()));
    double middle = y + STRIP / 2;
    svg.rectangle("range", x, y + 2, right - x, STRIP - 4);
    offScale(range.high());
    if (end - right > ARROW) {
      svg.line("more", right, middle, end - ARROW, middle);
      arrow(end, -ARROW);
    }
  }

  private void arrow(double tip, double tail) {
    double middle = y + STRIP / 2;
    svg.polygon("arrow", List.of(tip + tail, middle - 4, tip, middle, tip + tail, middle + 4));
  }

  private void window(TemperatureRange begins) {
    TemperaturePoint doubtfulTo = begins.high().isAbove(top) ? top : begins.high();
    if (top.isAbove(begins.low()) && !review.isBlocked()) {
      double x = degrees.x(begins.low());
      double w = degrees.x(doubtfulTo) - x;
      svg.rectangle("doubtful", x, y, w, STRIP);
      svg.hatching("doubtful-hatch", x, y, w, STRIP, 5);
    }
    good("window");
  }

  private void limit(TemperaturePoint limit) {
    if (!degrees.isOffAbove(limit)) {
      double x = degrees.x(limit);
      svg.rectangle("too-hot", x, y, Degrees.RIGHT - x, STRIP);
      svg.hatching("too-hot-hatch", x, y, Degrees.RIGHT - x, STRIP, 4);
      svg.line("hard", x, y - 2, x, y + STRIP + 2);
    }
    offScale(limit);
  }

  /** An arrow at the end that a temperature lies beyond. */
  private void offScale(TemperaturePoint point) {
    if (degrees.isOffAbove(point)) {
      arrow(Degrees.RIGHT - 2, -ARROW);
    } else if (degrees.isOffBelow(point)) {
      arrow(Degrees.LEFT + 2, ARROW);
    }
  }

  private void axis() {
    y += 6;
    svg.line("rule", Degrees.LEFT, y, Degrees.RIGHT, y);
    for (TemperaturePoint point : degrees.numbers()) {
      double x = degrees.x(point);
      svg.line("tick", x, y, x, y + 4);
      String look = x == Degrees.LEFT ? "start" : x == Degrees.RIGHT ? "end" : "middle";
      svg.text("soft " + look, x, y + 17, Say.degrees(point));
    }
    y += 21;
  }

  private String limits() {
    return "Target, not above "
        + Say.celsius(review.target())
        + "; hard ceiling "
        + Say.celsius(review.hardCeiling())
        + ".";
  }

  private String words(Predicate<PotFacts.Line> wanted) {
    return lines.stream()
        .filter(wanted)
        .map(l -> l.name() + ": " + l.value())
        .collect(Collectors.joining("; ", "", "."));
  }
}
