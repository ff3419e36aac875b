// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.melting;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.meltwright.core.explain.Explanation;
import org.meltwright.core.explain.Figure;
import org.meltwright.core.explain.Formula;
import org.meltwright.core.explain.Symbol;
import org.meltwright.core.material.DefinedTemperature;
import org.meltwright.core.source.Sourced;
import org.meltwright.core.thermal.ThermalProblem;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Messages;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.TemperatureRange;

/** The formulas of this package, loaded when somebody asks how a number came about. */
final class MeltingWorking {

  private static final Messages WORDS = Messages.beside(ThermalProblem.class);

  static final Symbol CEILING = symbol("ceiling", "°C");
  static final Symbol MARGIN = symbol("margin", "K");
  static final Symbol LEAST_WIDTH = symbol("least width", "K");
  static final Symbol CLEAR = symbol("clear point", "°C");

  private static final Symbol BOUND = symbol("lower bound", "°C");
  private static final Symbol WIDTH = symbol("width of the window", "K");
  private static final Symbol MELTS_FROM = symbol("melts from", "°C");
  private static final Symbol MELTS_TO = symbol("melts to", "°C");

  static final Formula LOWER = new Formula(BOUND, CLEAR.plus(MARGIN));
  static final Formula ROOM = new Formula(WIDTH, CEILING.minus(BOUND));

  private MeltingWorking() {}

  static Explanation.Builder builder(String title, Map<String, Bilingual> values) {
    return Explanation.builder(ThermalProblem.class, title, values);
  }

  /** The clear point is searched for; the top of the highest range needs no model. */
  static Explanation.Method solubility(IdealLiquidus liquidus, Figure low, Figure high) {
    return new Explanation.Method(
        WORDS.both(
            "working.window.solubility", Map.of("name", Bilingual.of(liquidus.governing()::name))),
        List.of(low, high),
        WORDS.both(
            "working.window.checked",
            Map.of(
                "name",
                Bilingual.of(liquidus.highestMelting()::name),
                "top",
                Bilingual.of(high::number))));
  }

  static void cautions(IdealLiquidus liquidus, Explanation.Builder text) {
    text.caution("working.window.estimate");
    liquidus.assumed().stream()
        .distinct()
        .forEach(
            m -> text.caution("working.window.assumed", Map.of("name", Bilingual.of(m::name))));
    if (liquidus.mixedDefinitions()) {
      text.caution("working.window.definitions");
    }
  }

  static void melting(List<ComponentMelting> melting, Explanation.Builder text) {
    List<Bilingual> names = new ArrayList<>();
    List<Sourced<DefinedTemperature>> figures = new ArrayList<>();
    for (ComponentMelting component : melting) {
      figures.addAll(component.figures());
      component.figures().forEach(f -> names.add(Bilingual.of(component.material()::name)));
    }
    List<Bilingual> lines = Explanation.lines(names);
    for (int i = 0; i < lines.size(); i++) {
      TemperatureRange range = figures.get(i).value().range();
      Figure from = Figure.of(MELTS_FROM.of(lines.get(i)), range.low().celsius());
      Figure to = Figure.of(MELTS_TO.of(lines.get(i)), range.high().celsius());
      text.given(from, figures.get(i).source()).given(to, figures.get(i).source());
    }
  }

  static void dissolving(
      DissolvingBound bound, TemperaturePoint ceiling, Explanation.Builder text) {
    Map<String, Bilingual> places =
        Map.of(
            "name",
            Bilingual.of(bound.material()::name),
            "ceiling",
            Bilingual.of(ceiling),
            "from",
            bound
                .shown()
                .map(r -> Bilingual.range(Bilingual.of(r.low()), Bilingual.of(r.high())))
                .orElse(Bilingual.of("")));
    if (!bound.dissolves()) {
      text.caution("working.melting.not-dissolving", places);
    } else if (bound.isAboveCeiling()) {
      text.caution("working.melting.above-ceiling", places);
    } else if (bound.figure().isPresent()) {
      text.conclusion("working.melting.dissolves", places).source(bound.figure().get().source());
    }
  }

  private static Symbol symbol(String name, String unit) {
    return Symbol.beside(ThermalProblem.class, name, unit);
  }
}
