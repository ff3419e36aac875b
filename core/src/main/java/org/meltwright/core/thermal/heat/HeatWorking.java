// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.heat;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.measure.quantity.Energy;
import org.meltwright.core.explain.Explanation;
import org.meltwright.core.explain.Figure;
import org.meltwright.core.explain.Formula;
import org.meltwright.core.explain.Symbol;
import org.meltwright.core.thermal.ThermalProblem;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Estimate;
import org.meltwright.units.Messages;

/** The formulas of this package, loaded when somebody asks how a number came about. */
final class HeatWorking {

  private static final Messages WORDS = Messages.beside(ThermalProblem.class);

  static final Symbol MASS = symbol("mass", "kg");

  private static final Symbol SOLID = symbol("heat that warms the solid", "J");
  private static final Symbol FUSION = symbol("heat that melts", "J");
  private static final Symbol MELT = symbol("heat that warms the melt", "J");
  private static final Symbol VESSEL = symbol("heat that warms the vessel", "J");
  private static final Symbol ALL = symbol("heat in all", "J");

  private static final Formula SUM = new Formula(ALL, SOLID.plus(FUSION).plus(MELT).plus(VESSEL));

  private HeatWorking() {}

  static Explanation.Builder builder(String title, Map<String, Bilingual> values) {
    return Explanation.builder(ThermalProblem.class, title, values);
  }

  static Explanation.Method curve(HeatDemand demand) {
    List<Figure> found =
        Stream.of(
                Figure.ends(SOLID, demand.solidHeat()),
                Figure.ends(FUSION, demand.fusionHeat()),
                Figure.ends(MELT, demand.meltHeat()),
                Figure.ends(VESSEL, demand.vesselHeat()))
            .flatMap(List::stream)
            .toList();
    return new Explanation.Method(
        WORDS.both("working.heat.curve", Map.of()),
        found,
        WORDS.both("working.heat.checked", Map.of()));
  }

  static void total(Estimate<Energy> heat, Explanation.Builder text) {
    Figure.ends(ALL, heat).forEach(end -> text.step(SUM, end));
  }

  private static Symbol symbol(String name, String unit) {
    return Symbol.beside(ThermalProblem.class, name, unit);
  }
}
