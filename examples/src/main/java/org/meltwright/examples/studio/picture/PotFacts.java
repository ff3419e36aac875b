// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.core.material.DefinedTemperature;
import org.meltwright.core.material.Material;
import org.meltwright.core.source.Sourced;
import org.meltwright.core.thermal.melting.ComponentMelting;
import org.meltwright.core.thermal.melting.DissolvingBound;
import org.meltwright.core.thermal.melting.MeltingReport;
import org.meltwright.core.thermal.melting.WorkingWindow;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.safety.heating.BindingTemperature;
import org.meltwright.safety.heating.HeatingReview;
import org.meltwright.safety.heating.PotFloor;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.TemperatureRange;

/** What is known and unknown of the temperatures of one pot, a line each. */
final class PotFacts {

  /** How a line is drawn. */
  enum Shape {
    /** A pin at one temperature. */
    PIN,
    /** A bar over a range. */
    BAR,
    /** A bar that goes on upwards. */
    BAR_AND_MORE,
    /** A bar that goes on up to the target; nothing is dissolved above it. */
    BAR_TO_TARGET,
    /** The window: doubtful over the range, good from its end to the target. */
    WINDOW,
    /** All above is to be kept away from. */
    LIMIT,
    /** A question mark. */
    UNKNOWN,
    /** Nothing but the words. */
    WORDS
  }

  /**
   * One line.
   *
   * @param name what it is
   * @param value what is known, in words
   * @param shape how it is drawn
   * @param range where; null if unknown
   * @param isOfTheMix whether it is a figure of the mix and stands nowhere else on the sheet
   */
  record Line(
      String name,
      String value,
      Shape shape,
      @Nullable TemperatureRange range,
      boolean isOfTheMix) {}

  private static final Locale READER = Locale.ENGLISH;

  private final List<Line> lines = new ArrayList<>();

  /** All lines of a review, with a question mark for a window that is not known. */
  static List<Line> of(HeatingReview review, @Nullable WorkingWindow window) {
    PotFacts facts = new PotFacts();
    facts.wax(review.bindingTemperature());
    facts.floor(review);
    if (window == null) {
      facts.add("Working window", "unknown", Shape.UNKNOWN, null);
    } else {
      facts.window(window, top(review, window));
    }
    MeltingReport report = MeltingReport.of(review.plan().mix(), review.target());
    report.melting().forEach(facts::melting);
    report.dissolving().forEach(facts::dissolving);
    facts.flash(review);
    return facts.lines;
  }

  /** What may be worked up to: no window is good above what the flash points allow. */
  static TemperaturePoint top(HeatingReview review, @Nullable WorkingWindow window) {
    TemperaturePoint ceiling = review.workingCeiling();
    return window == null || ceiling.isBelow(window.upperBound()) ? ceiling : window.upperBound();
  }

  private PotFacts() {}

  private void wax(Optional<BindingTemperature> wax) {
    wax.ifPresentOrElse(
        t ->
            add(
                "Wax",
                Say.celsius(t.value()) + (t.isMeasured() ? ", measured" : ", estimated"),
                Shape.PIN,
                TemperatureRange.of(t.value())),
        () -> add("Wax", "unknown", Shape.UNKNOWN, null));
  }

  /** A heated palette has no pot. */
  private void floor(HeatingReview review) {
    if (review.plan().uses(HeatSource.Kind.HEATED_PALETTE)) {
      return;
    }
    review
        .potFloor()
        .ifPresentOrElse(
            this::floor, () -> add("Floor of the pot", "unknown", Shape.UNKNOWN, null));
  }

  private void floor(PotFloor floor) {
    TemperaturePoint value = floor.value();
    add(
        "Floor of the pot",
        floor.isKnown() ? "up to " + Say.celsius(value) : Say.atLeast(value),
        floor.isKnown() ? Shape.PIN : Shape.BAR_AND_MORE,
        TemperatureRange.of(floor.value()));
  }

  private void window(WorkingWindow window, TemperaturePoint top) {
    String from = Say.temperature(window.lowerBound());
    String upTo = Say.celsius(top);
    boolean isOpen = top.isAbove(window.lowerBound().low());
    String value =
        switch (isOpen ? window.state() : WorkingWindow.State.CLOSED) {
          case OPEN -> "from " + from + " up to " + upTo;
          case MAY_BE_CLOSED -> "may be closed: from " + from + " up to " + upTo;
          case CLOSED -> "closed: would begin at " + from;
        };
    add("Working window", value, Shape.WINDOW, window.lowerBound());
  }

  private void melting(ComponentMelting component) {
    Optional<DefinedTemperature> end = component.endOfMelting().map(Sourced::value);
    end.ifPresentOrElse(
        f ->
            ofTheMix(
                component.material(),
                "melts " + (f.isOpenAbove() ? "from " : "") + Say.celsius(f.range()) + how(f),
                f.isOpenAbove() ? Shape.BAR_AND_MORE : Shape.BAR,
                f.range()),
        () -> ofTheMix(component.material(), "end of melting unknown", Shape.UNKNOWN, null));
  }

  private static String how(DefinedTemperature figure) {
    return ", " + figure.definition().id().replace('-', ' ');
  }

  private void dissolving(DissolvingBound bound) {
    if (!bound.dissolves()) {
      ofTheMix(bound.material(), "does not dissolve in a melt", Shape.WORDS, null);
      return;
    }
    bound
        .shown()
        .ifPresentOrElse(
            r ->
                ofTheMix(
                    bound.material(), "dissolves from " + Say.celsius(r), Shape.BAR_TO_TARGET, r),
            () -> ofTheMix(bound.material(), "dissolves from: unknown", Shape.UNKNOWN, null));
  }

  private void flash(HeatingReview review) {
    review
        .lowestFlashPoint()
        .ifPresent(
            t -> {
              TemperaturePoint limit = review.plan().table().flashLimit(t);
              lines.add(
                  new Line(
                      "Lowest flash point known",
                      Say.celsius(t) + said(review, limit),
                      Shape.LIMIT,
                      TemperatureRange.of(limit),
                      true));
            });
    if (!review.withoutFlashPoint().isEmpty()) {
      String names =
          review.withoutFlashPoint().stream()
              .map(m -> m.name(READER))
              .collect(Collectors.joining("; "));
      lines.add(new Line("Flash point unknown", names, Shape.UNKNOWN, null, true));
    }
  }

  /** Only where the flash point binds is its limit one to stay below: else the target is lower. */
  private static String said(HeatingReview review, TemperaturePoint limit) {
    return (limit.isBelow(review.target()) ? "; stay below " : "; its margin begins at ")
        + Say.celsius(limit);
  }

  private void add(String name, String value, Shape shape, @Nullable TemperatureRange range) {
    lines.add(new Line(name, value, shape, range, false));
  }

  private void ofTheMix(
      Material material, String value, Shape shape, @Nullable TemperatureRange range) {
    lines.add(new Line(material.name(READER), value, shape, range, true));
  }
}
