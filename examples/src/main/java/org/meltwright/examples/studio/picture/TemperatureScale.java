// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.thermal.melting.WorkingWindow;
import org.meltwright.examples.studio.page.Block.Picture;
import org.meltwright.examples.studio.page.Lettering;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.examples.studio.page.Svg;
import org.meltwright.safety.heating.BindingTemperature;
import org.meltwright.safety.heating.HeatingReview;
import org.meltwright.safety.heating.PotFloor;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.TemperatureRange;

/**
 * The temperatures of all pots of a day on one scale: a strip for each with a pin at its wax, a
 * mark at its floor and where its mix can be worked; target and hard ceiling stand across each.
 */
public final class TemperatureScale {

  private static final double STRIP = 16;
  private static final double GAP = 9;
  private static final double ARROW = 8;

  private final Say say;
  private final List<Pot> pots;
  private final Degrees degrees;
  private final Svg.Builder svg;
  private double y;

  /**
   * One pot.
   *
   * @param name what is in it
   * @param review the review of its heating
   * @param window where its mix can be worked; null if nothing in it melts or nobody knows where
   */
  public record Pot(String name, HeatingReview review, @Nullable WorkingWindow window) {

    private TemperaturePoint top() {
      return PotFacts.top(review, window);
    }

    private Optional<TemperaturePoint> wax() {
      return review.bindingTemperature().map(BindingTemperature::value);
    }
  }

  /**
   * Draws the temperatures of a day.
   *
   * @param say the reader's language
   * @param pots its pots, at least one
   * @return the picture, for a place where the numbers of each pot stand beside it
   */
  public static Picture of(Say say, List<Pot> pots) {
    return new TemperatureScale(say, pots).picture();
  }

  private TemperatureScale(Say say, List<Pot> pots) {
    this.say = say;
    this.pots = List.copyOf(pots);
    this.degrees = Degrees.showing(shown());
    this.svg =
        Svg.builder(
            say.words("scale.title"),
            say.words(
                "scale.description",
                "low",
                Math.round(degrees.lowCelsius()),
                "high",
                Math.round(degrees.highCelsius())),
            Paper.WIDTH);
  }

  private Picture picture() {
    return new Picture(draw(), limits() + " " + words()).besideItsNumbers();
  }

  /** What the scale must reach. */
  private List<TemperaturePoint> shown() {
    List<TemperaturePoint> shown = new ArrayList<>();
    for (Pot pot : pots) {
      shown.add(pot.review().target());
      shown.add(pot.review().hardCeiling());
      pot.wax().ifPresent(shown::add);
      pot.review().potFloor().map(PotFloor::value).ifPresent(shown::add);
      if (pot.window() != null) {
        shown.add(pot.window().lowerBound().low());
        shown.add(pot.window().lowerBound().high());
      }
    }
    return shown;
  }

  private Svg draw() {
    y = Paper.heading(svg, say.words("scale.heading")) + 4;
    flags();
    pots.forEach(this::pot);
    axis();
    key();
    return svg.build(y);
  }

  private TemperaturePoint target() {
    return pots.stream()
        .map(p -> p.review().target())
        .min(TemperaturePoint::compareTo)
        .orElseThrow();
  }

  private TemperaturePoint hardCeiling() {
    return pots.stream()
        .map(p -> p.review().hardCeiling())
        .min(TemperaturePoint::compareTo)
        .orElseThrow();
  }

  /** The names of the two ceilings, each on a line of its own and clear of the other's mark. */
  private void flags() {
    double target = degrees.x(target());
    double hard = degrees.x(hardCeiling());
    String targetText = say.words("scale.target", "target", say.celsius(target()));
    String hardText = say.words("scale.hard", "ceiling", say.celsius(hardCeiling()));
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

  private void pot(Pot pot) {
    String wax = new PotFacts(say, pot.review()).wax();
    y = Paper.nameAndValue(svg, y + GAP, pot.name(), wax) + 7;
    strip(pot);
    pot.review().potFloor().ifPresent(this::floor);
    pot.wax().ifPresentOrElse(this::pin, this::unknown);
    y += STRIP + 4;
  }

  /** The strip itself: where the mix can be worked, where it is too hot, and the two ceilings. */
  private void strip(Pot pot) {
    svg.rectangle("strip", Degrees.LEFT, y, Degrees.RIGHT - Degrees.LEFT, STRIP);
    if (!pot.review().isBlocked()) {
      Optional.ofNullable(pot.window()).ifPresent(w -> window(w.lowerBound(), pot.top()));
    }
    double hard = degrees.x(pot.review().hardCeiling());
    svg.rectangle("too-hot", hard, y, Degrees.RIGHT - hard, STRIP);
    svg.hatching("too-hot-hatch", hard, y, Degrees.RIGHT - hard, STRIP, 7);
    double target = degrees.x(pot.review().target());
    svg.line("target", target, y - 2, target, y + STRIP + 2);
    svg.line("hard", hard, y - 2, hard, y + STRIP + 2);
  }

  /** Doubtful from the low end of its lower bound on, good from the high end up to the top. */
  private void window(TemperatureRange begins, TemperaturePoint top) {
    TemperaturePoint doubtfulTo = begins.high().isAbove(top) ? top : begins.high();
    if (top.isAbove(begins.low())) {
      double x = degrees.x(begins.low());
      double w = degrees.x(doubtfulTo) - x;
      svg.rectangle("doubtful", x, y, w, STRIP);
      svg.hatching("doubtful-hatch", x, y, w, STRIP, 5);
    }
    if (top.isAbove(begins.high())) {
      double x = degrees.x(begins.high());
      svg.rectangle("window", x, y, degrees.x(top) - x, STRIP);
    }
  }

  private void pin(TemperaturePoint point) {
    double x = degrees.x(point);
    svg.line("pin", x, y - 2, x, y + STRIP);
    pinHead(x, y);
    offScale(point);
  }

  private void pinHead(double x, double top) {
    svg.polygon("pin-head", List.of(x - 6, top - 3, x + 6, top - 3, x, top + 6));
  }

  private void unknown() {
    svg.rectangle("unknown", Degrees.LEFT, y, Degrees.RIGHT - Degrees.LEFT, STRIP);
    svg.text("strong middle", (Degrees.LEFT + Degrees.RIGHT) / 2, y + STRIP - 4, "?");
  }

  /** A mark at the floor, and dots up to the end if it may be hotter. */
  private void floor(PotFloor floor) {
    double x = degrees.x(floor.value());
    floorMark(x, y + STRIP);
    if (!floor.isKnown() && Degrees.RIGHT - 2 - x > ARROW) {
      double middle = y + STRIP / 2;
      svg.line("more", x, middle, Degrees.RIGHT - 2 - ARROW, middle);
      arrow(Degrees.RIGHT - 2, -ARROW);
    }
    offScale(floor.value());
  }

  private void floorMark(double x, double foot) {
    svg.polygon("floor", List.of(x - 5, foot + 3, x + 5, foot + 3, x, foot - 7));
  }

  private void arrow(double tip, double tail) {
    double middle = y + STRIP / 2;
    svg.polygon("arrow", List.of(tip + tail, middle - 4, tip, middle, tip + tail, middle + 4));
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
      svg.text("soft " + look, x, y + 17, say.degrees(point));
    }
    y += 21;
  }

  /** What each mark means, a line each. */
  private void key() {
    key("scale.key.wax");
    pinHead(11, y - 7);
    key("scale.key.floor");
    floorMark(11, y - 2);
    key("scale.key.window");
    svg.rectangle("window", 0, y - 9, 22, 10);
    key("scale.key.doubtful");
    svg.rectangle("doubtful", 0, y - 9, 22, 10);
    svg.hatching("doubtful-hatch", 0, y - 9, 22, 10, 5);
    y += 6;
  }

  private void key(String words) {
    y += Lettering.LINE + 1;
    svg.text("start", 30, y, say.words(words));
  }

  private String limits() {
    return say.words(
        "scale.limits", "target", say.celsius(target()), "ceiling", say.celsius(hardCeiling()));
  }

  private String words() {
    return pots.stream().map(this::words).collect(Collectors.joining(" "));
  }

  private String words(Pot pot) {
    PotFacts facts = new PotFacts(say, pot.review());
    String floor = facts.floor().map(f -> say.words("scale.pot.floor", "floor", f)).orElse("");
    return say.words(
        "scale.pot",
        "name",
        pot.name(),
        "wax",
        facts.wax(),
        "floor",
        floor,
        "window",
        facts.window(pot.window()));
  }
}
