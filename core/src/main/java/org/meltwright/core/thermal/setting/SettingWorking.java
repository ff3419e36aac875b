// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.setting;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.measure.quantity.Time;
import org.meltwright.core.explain.Drivers;
import org.meltwright.core.explain.Explanation;
import org.meltwright.core.explain.Figure;
import org.meltwright.core.explain.Symbol;
import org.meltwright.core.thermal.ThermalProblem;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Estimate;
import org.meltwright.units.Messages;

/** How the times of this package came about, which is no formula; loaded when somebody asks. */
final class SettingWorking {

  private static final Messages WORDS = Messages.beside(ThermalProblem.class);

  static final Symbol POURED = symbol("temperature of the pour", "°C");
  static final Symbol LAID = symbol("temperature of the melt", "°C");
  static final Symbol PANEL = symbol("temperature of the panel", "°C");
  static final Symbol AIR = symbol("temperature of the air", "°C");

  private static final Symbol SOLID = symbol("time until the cake is solid", "s").withDigits(3);
  private static final Symbol HALF = symbol("time until half set", "s").withDigits(3);
  private static final Symbol FULL = symbol("time until fully set", "s").withDigits(3);

  private SettingWorking() {}

  static Explanation.Builder builder(String title) {
    return Explanation.builder(ThermalProblem.class, title, Map.of());
  }

  static Explanation.Method conduction(Estimate<Time> solid, Estimate<Time> byPlank) {
    Drivers.Range plank = new Drivers.Range(byPlank.lowSi(), byPlank.highSi(), "s");
    return new Explanation.Method(
        WORDS.both("working.conduction", Map.of()),
        Figure.ends(SOLID, solid),
        WORDS.both("working.cake.checked", Map.of("range", Bilingual.of(plank::text))));
  }

  static Explanation.Method freezing(Estimate<Time> half, Estimate<Time> full) {
    List<Figure> found =
        Stream.of(Figure.ends(HALF, half), Figure.ends(FULL, full)).flatMap(List::stream).toList();
    return new Explanation.Method(
        WORDS.both("working.conduction", Map.of()),
        found,
        WORDS.both("working.open-time.checked", Map.of()));
  }

  static Explanation finish(Explanation.Builder text, MeltFigures melt, Estimate<Time> longest) {
    if (Double.isInfinite(longest.highSi())) {
      text.conclusion("working.endless", Map.of());
    }
    melt.assumed().forEach(a -> text.caution("working.assumed", Map.of("what", Bilingual.of(a))));
    melt.sources().forEach(text::source);
    return text.build();
  }

  private static Symbol symbol(String name, String unit) {
    return Symbol.beside(ThermalProblem.class, name, unit);
  }
}
