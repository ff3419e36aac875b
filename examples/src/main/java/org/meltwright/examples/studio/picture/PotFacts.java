// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.core.material.DefinedTemperature;
import org.meltwright.core.source.Sourced;
import org.meltwright.core.thermal.melting.ComponentMelting;
import org.meltwright.core.thermal.melting.DissolvingBound;
import org.meltwright.core.thermal.melting.MeltingReport;
import org.meltwright.core.thermal.melting.WorkingWindow;
import org.meltwright.examples.studio.page.Block.Fact;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.safety.heating.HeatingReview;
import org.meltwright.safety.heating.PotFloor;
import org.meltwright.units.TemperaturePoint;

/** What is known and unknown of the temperatures of one pot and its mix, in words. */
public final class PotFacts {

  private final Say say;
  private final HeatingReview review;

  /**
   * Returns what melts, dissolves and flashes in a mix.
   *
   * @param say the reader's language
   * @param review the review of its heating
   * @return a line for each, with what is not known among them
   */
  public static List<Fact> ofTheMix(Say say, HeatingReview review) {
    PotFacts facts = new PotFacts(say, review);
    MeltingReport report = MeltingReport.of(review.plan().mix(), review.target());
    List<Fact> lines = new ArrayList<>();
    report.melting().forEach(m -> lines.add(facts.melting(m)));
    report.dissolving().forEach(d -> lines.add(facts.dissolving(d)));
    facts.flash().ifPresent(lines::add);
    facts.noFlash().ifPresent(lines::add);
    return lines;
  }

  PotFacts(Say say, HeatingReview review) {
    this.say = say;
    this.review = review;
  }

  /** What may be worked up to: no window is good above what the flash points allow. */
  static TemperaturePoint top(HeatingReview review, @Nullable WorkingWindow window) {
    TemperaturePoint ceiling = review.workingCeiling();
    return window == null || ceiling.isBelow(window.upperBound()) ? ceiling : window.upperBound();
  }

  String wax() {
    return review
        .bindingTemperature()
        .map(
            t ->
                say.words(
                    t.isMeasured() ? "pot.measured" : "pot.estimated",
                    "wax",
                    say.celsius(t.value())))
        .orElseGet(() -> say.words("pot.unknown"));
  }

  /** Where the floor is at its hottest; a heated palette has none. */
  Optional<String> floor() {
    return review.plan().uses(HeatSource.Kind.HEATED_PALETTE)
        ? Optional.empty()
        : Optional.of(review.potFloor().map(this::floor).orElseGet(() -> say.words("pot.unknown")));
  }

  private String floor(PotFloor floor) {
    return floor.isKnown()
        ? say.words("pot.up-to", "high", say.celsius(floor.value()))
        : say.atLeast(floor.value());
  }

  String window(@Nullable WorkingWindow window) {
    if (window == null) {
      return say.words("pot.unknown");
    }
    TemperaturePoint top = top(review, window);
    boolean isOpen = top.isAbove(window.lowerBound().low());
    WorkingWindow.State state = isOpen ? window.state() : WorkingWindow.State.CLOSED;
    return say.words(
        switch (state) {
          case OPEN -> "pot.window.open";
          case MAY_BE_CLOSED -> "pot.window.may-be-closed";
          case CLOSED -> "pot.window.closed";
        },
        "from",
        say.temperature(window.lowerBound()),
        "top",
        say.celsius(top));
  }

  private Fact melting(ComponentMelting component) {
    Optional<DefinedTemperature> end = component.endOfMelting().map(Sourced::value);
    return new Fact(
        component.material().name(say.locale()),
        end.map(this::melting).orElseGet(() -> say.words("pot.melts.unknown")));
  }

  private String melting(DefinedTemperature figure) {
    return say.words(
        figure.isOpenAbove() ? "pot.melts.from" : "pot.melts",
        "range",
        say.celsius(figure.range()),
        "how",
        say.words("temperature-definition." + figure.definition().id()));
  }

  private Fact dissolving(DissolvingBound bound) {
    String said =
        bound.dissolves()
            ? bound
                .shown()
                .map(range -> say.words("pot.dissolves", "range", say.celsius(range)))
                .orElseGet(() -> say.words("pot.dissolves.unknown"))
            : say.words("pot.dissolves.never");
    return new Fact(bound.material().name(say.locale()), said);
  }

  /** Only where the flash point binds is its limit one to stay below: else the target is lower. */
  private Optional<Fact> flash() {
    return review
        .lowestFlashPoint()
        .map(
            t -> {
              TemperaturePoint limit = review.plan().table().flashLimit(t);
              return new Fact(
                  say.words("pot.flash"),
                  say.words(
                      limit.isBelow(review.target()) ? "pot.flash.binds" : "pot.flash.margin",
                      "flash",
                      say.celsius(t),
                      "limit",
                      say.celsius(limit)));
            });
  }

  private Optional<Fact> noFlash() {
    return review.withoutFlashPoint().isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Fact(
                say.words("pot.flash.unknown"),
                say.words("row", "parts", review.withoutFlashPoint())));
  }
}
