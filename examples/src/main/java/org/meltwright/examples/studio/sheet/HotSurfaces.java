// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.examples.studio.day.ClassSheet;
import org.meltwright.examples.studio.day.Sheet;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.safety.exposure.BurnThresholds;
import org.meltwright.safety.exposure.BurnThresholds.Outcome;
import org.meltwright.safety.exposure.BurnThresholds.Surface;
import org.meltwright.units.TemperaturePoint;

/** How hot the bare metal of a day gets; what is not stated is named and never below a limit. */
final class HotSurfaces {

  /** Contact of half a second: a touch. */
  private static final double TOUCH_SECONDS = 0.5;

  private final Say say;
  private final Set<HeatSource> sources;
  private final List<String> notStated = new ArrayList<>();

  HotSurfaces(Sheet sheet, ClassSheet forClass, Say say) {
    this.say = say;
    this.sources = new LinkedHashSet<>(forClass.tools());
    sheet.jobs().forEach(j -> sources.add(j.job().heating().source()));
    forClass.paints().stream()
        .map(p -> p.paint().source())
        .filter(Objects::nonNull)
        .forEach(sources::add);
    forClass
        .withoutSource()
        .forEach(p -> notStated.add(say.words("surfaces.no-source", "paint", p.name())));
    sources.forEach(this::open);
  }

  private void open(HeatSource source) {
    if (source.setPoint().isEmpty()) {
      notStated.add(say.words("surfaces.no-set-point", "source", source.name()));
    } else if (source.overshoot().isEmpty()) {
      notStated.add(say.words("surfaces.no-overshoot", "source", source.name()));
    }
  }

  /** What was found, in words. */
  String found() {
    String said = hottest().map(this::found).orElseGet(() -> say.words("not-assessed.label"));
    String open =
        notStated.isEmpty()
            ? ""
            : "; " + say.words("surfaces.not-stated", "what", String.join(", ", notStated));
    String threshold = say.temperature(BurnThresholds.threshold(Surface.BARE_METAL, TOUCH_SECONDS));
    return said + open + "; " + say.words("surfaces.threshold", "range", threshold);
  }

  /** The hottest surface, at least: an overshoot that is not stated is not in it. */
  private Optional<TemperaturePoint> hottest() {
    return sources.stream()
        .flatMap(s -> s.highestSurface().or(s::setPoint).stream())
        .max(Comparator.naturalOrder());
  }

  private String found(TemperaturePoint hottest) {
    boolean isWhole = notStated.isEmpty();
    Outcome outcome = BurnThresholds.outcome(Surface.BARE_METAL, hottest, TOUCH_SECONDS);
    return say.words(
        isWhole ? "surfaces.up-to" : "surfaces.at-least",
        "found",
        outcome(outcome, isWhole),
        "degrees",
        say.decimals(hottest.celsius(), 0));
  }

  private String outcome(Outcome outcome, boolean isWhole) {
    if (outcome == Outcome.BURNS) {
      return say.words("surfaces.burns");
    }
    if (!isWhole) {
      return say.words("not-assessed.label");
    }
    return say.words(outcome == Outcome.MAY_BURN ? "surfaces.may-burn" : "surfaces.below");
  }
}
