// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.examples.studio.day.CircuitSheet;
import org.meltwright.examples.studio.day.ClassSheet;
import org.meltwright.examples.studio.day.PaintSheet;
import org.meltwright.examples.studio.page.Block.Grid;
import org.meltwright.examples.studio.page.Phrase;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.safety.exposure.CircuitLoad;

/** What hangs on which circuit, and what it comes to. */
final class CircuitPlan {

  private final ClassSheet sheet;
  private final Say say;

  CircuitPlan(ClassSheet sheet, Say say) {
    this.sheet = sheet;
    this.say = say;
  }

  /** Returns the table, one row for each circuit and one for what hangs on none. */
  Grid grid() {
    List<List<String>> rows = new ArrayList<>();
    sheet.circuits().forEach(c -> rows.add(row(c)));
    sheet.onNoCircuit().forEach((s, n) -> rows.add(noCircuit(power(s, n), verdict(s))));
    sheet.withoutSource().forEach(p -> rows.add(noCircuit(sourceOf(p), "circuit.no-source")));
    if (rows.isEmpty()) {
      rows.add(noCircuit("", "circuit.list-them"));
    }
    return new Grid(
        say.words("circuit.caption"),
        say.all(
            "circuit.name", "circuit.hangs", "circuit.load", "circuit.allowed", "circuit.verdict"),
        rows);
  }

  private List<String> noCircuit(String what, String verdict) {
    return List.of(
        say.words("circuit.none"),
        what,
        "–",
        "–",
        say.words("not-assessed.label") + ": " + say.words(verdict));
  }

  private String sourceOf(PaintSheet paint) {
    return say.words("circuit.source-of", "paint", paint.name());
  }

  private static String verdict(HeatSource source) {
    return isGasPerhaps(source) ? "circuit.gas" : "circuit.where";
  }

  /** Gas has no electrical power; whether an open ring without one is of gas is not stated. */
  private static boolean isGasPerhaps(HeatSource source) {
    return source.kind() == HeatSource.Kind.OPEN_COIL_OR_GAS && source.powerWatts().isEmpty();
  }

  /** What is found of the load, in a row. */
  String found() {
    List<String> words = new ArrayList<>();
    sheet.circuits().forEach(c -> words.add(c.circuit().name() + ": " + c.word(say)));
    sheet.onNoCircuit().forEach((s, n) -> words.add(open(s, n)));
    sheet.withoutSource().forEach(p -> words.add(open(p)));
    return words.isEmpty()
        ? say.words("not-assessed.label") + ": " + say.words("circuit.none")
        : String.join("; ", words);
  }

  private String open(PaintSheet paint) {
    return say.words(
        "circuit.open", "name", paint.name(), "why", Phrase.of("circuit.no-source-stated"));
  }

  /** What is open about pieces on no circuit. */
  private String open(HeatSource source, int count) {
    String why = isGasPerhaps(source) ? "circuit.gas-or-coil" : "circuit.on-none";
    return say.words("circuit.open", "name", count(count) + source.name(), "why", Phrase.of(why));
  }

  private static String count(int count) {
    return count > 1 ? count + " × " : "";
  }

  private List<String> row(CircuitSheet c) {
    CircuitLoad load = c.load();
    double watts = load.nameplateWatts();
    String known = watts(watts, c);
    return List.of(
        say.words(
            "circuit.rating",
            "name",
            c.circuit().name(),
            "volts",
            c.circuit().volts(),
            "amperes",
            c.circuit().amperes()),
        pieces(c),
        c.isPowerKnown() ? known : say.words("circuit.at-least", "load", known),
        c.isShareStated()
            ? watts(load.continuousWatts(), c)
            : say.words("circuit.rating-alone", "load", say.decimals(load.ratedWatts(), 0) + " W"),
        c.verdict(say));
  }

  private String watts(double watts, CircuitSheet c) {
    return say.decimals(watts, 0) + " W, " + say.decimals(watts / c.circuit().volts(), 1) + " A";
  }

  String pieces(CircuitSheet c) {
    Map<HeatSource, Integer> counts = new LinkedHashMap<>();
    c.circuit().sources().forEach(s -> counts.merge(s, 1, Integer::sum));
    List<String> pieces = new ArrayList<>();
    counts.forEach((source, count) -> pieces.add(power(source, count)));
    pieces.add(
        say.words("circuit.all-else")
            + ": "
            + watts(c.circuit().otherWatts(), "circuit.else-unknown"));
    return String.join("; ", pieces);
  }

  private String watts(OptionalDouble watts, String unknown) {
    return watts.isPresent() ? say.decimals(watts.getAsDouble(), 0) + " W" : say.words(unknown);
  }

  private String power(HeatSource source, int count) {
    return count(count)
        + source.name()
        + " ("
        + watts(source.powerWatts(), "circuit.power-unknown")
        + ")";
  }
}
