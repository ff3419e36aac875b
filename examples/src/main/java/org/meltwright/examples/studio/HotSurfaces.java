// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.safety.exposure.BurnThresholds;
import org.meltwright.safety.exposure.BurnThresholds.Outcome;
import org.meltwright.safety.exposure.BurnThresholds.Surface;
import org.meltwright.units.TemperaturePoint;

/** How hot the bare metal of a day gets; what is not stated is named and never below a limit. */
final class HotSurfaces {

  /** Contact of half a second: a touch. */
  private static final double TOUCH_SECONDS = 0.5;

  private final Set<HeatSource> sources;
  private final List<String> notStated = new ArrayList<>();

  HotSurfaces(Sheet sheet, ClassSheet forClass) {
    this.sources = new LinkedHashSet<>(forClass.tools());
    sheet.jobs().forEach(j -> sources.add(j.job().heating().source()));
    forClass.paints().stream()
        .map(p -> p.paint().source())
        .filter(Objects::nonNull)
        .forEach(sources::add);
    forClass.withoutSource().forEach(p -> notStated.add("the heat source of " + p.name()));
    sources.forEach(this::open);
  }

  private void open(HeatSource source) {
    if (source.setPoint().isEmpty()) {
      notStated.add("the set point of " + source.name());
    } else if (source.overshoot().isEmpty()) {
      notStated.add("the overshoot of " + source.name());
    }
  }

  /** What was found, in words. */
  String found() {
    Optional<TemperaturePoint> hottest = hottest();
    String said = hottest.map(this::found).orElse("NOT ASSESSED");
    String open = notStated.isEmpty() ? "" : "; not stated: " + String.join(", ", notStated);
    return said
        + open
        + "; bare metal burns at a touch from "
        + Say.temperature(BurnThresholds.threshold(Surface.BARE_METAL, TOUCH_SECONDS));
  }

  /** The hottest surface, at least: an overshoot that is not stated is not in it. */
  private Optional<TemperaturePoint> hottest() {
    return sources.stream()
        .flatMap(s -> s.highestSurface().or(s::setPoint).stream())
        .max(Comparator.naturalOrder());
  }

  private String found(TemperaturePoint hottest) {
    boolean isWhole = notStated.isEmpty();
    String degrees =
        (isWhole ? ": up to " : ": at least ") + Say.decimals(hottest.celsius(), 0) + " °C";
    Outcome outcome = BurnThresholds.outcome(Surface.BARE_METAL, hottest, TOUCH_SECONDS);
    if (outcome == Outcome.BURNS) {
      return "burns at a touch" + degrees;
    }
    if (!isWhole) {
      return "NOT ASSESSED" + degrees;
    }
    return outcome == Outcome.MAY_BURN
        ? "may burn at a touch" + degrees
        : "below the threshold of a touch, not of a longer one" + degrees;
  }
}
