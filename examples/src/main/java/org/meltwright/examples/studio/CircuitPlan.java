// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.examples.studio.page.Block.Grid;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.safety.exposure.CircuitLoad;

/** What hangs on which circuit, and what it comes to. */
final class CircuitPlan {

  private static final String WHERE =
      "NOT ASSESSED: say where it hangs, unless it is one piece for several.";

  private static final String GAS =
      "NOT ASSESSED: gas or an open coil is not stated; say its power and where it hangs.";

  private CircuitPlan() {}

  /** Returns the table, one row for each circuit and one for what hangs on none. */
  static Grid grid(ClassSheet sheet) {
    List<List<String>> rows = new ArrayList<>();
    sheet.circuits().forEach(c -> rows.add(row(c)));
    sheet
        .onNoCircuit()
        .forEach((s, n) -> rows.add(noCircuit(power(s, n), isGasPerhaps(s) ? GAS : WHERE)));
    sheet
        .withoutSource()
        .forEach(
            p ->
                rows.add(
                    noCircuit(
                        p.name() + ": heat source not stated",
                        "NOT ASSESSED: say what keeps it hot, and where it hangs.")));
    if (rows.isEmpty()) {
      rows.add(List.of("no circuit stated", "", "", "", "NOT ASSESSED: list the circuits."));
    }
    return new Grid(
        "Nameplates added up; everything counts as running for hours.",
        List.of("Circuit", "Hangs on it", "Load", "Allowed for hours", "Verdict"),
        rows);
  }

  private static List<String> noCircuit(String what, String verdict) {
    return List.of("no circuit stated", what, "", "", verdict);
  }

  /** Gas has no electrical power; whether an open ring without one is of gas is not stated. */
  private static boolean isGasPerhaps(HeatSource source) {
    return source.kind() == HeatSource.Kind.OPEN_COIL_OR_GAS && source.powerWatts().isEmpty();
  }

  /** What is open about pieces on no circuit, in a line. */
  static String open(HeatSource source, int count) {
    return count(count)
        + source.name()
        + ": NOT ASSESSED: "
        + (isGasPerhaps(source) ? "gas or an open coil is not stated" : "on no circuit stated");
  }

  private static String count(int count) {
    return count > 1 ? count + " × " : "";
  }

  private static List<String> row(CircuitSheet c) {
    CircuitLoad load = c.load();
    double watts = load.nameplateWatts();
    boolean isWhole = c.isPowerKnown();
    return List.of(
        c.circuit().name() + ", " + c.circuit().volts() + " V, " + c.circuit().amperes() + " A",
        pieces(c),
        (isWhole ? "" : "at least ")
            + Say.decimals(watts, 0)
            + " W, "
            + Say.decimals(watts / c.circuit().volts(), 1)
            + " A",
        c.isShareStated()
            ? Say.decimals(load.continuousWatts(), 0)
                + " W, "
                + Say.decimals(load.continuousWatts() / c.circuit().volts(), 1)
                + " A"
            : "not stated; the rating holds " + Say.decimals(load.ratedWatts(), 0) + " W",
        c.verdict());
  }

  static String pieces(CircuitSheet c) {
    Map<HeatSource, Integer> counts = new LinkedHashMap<>();
    c.circuit().sources().forEach(s -> counts.merge(s, 1, Integer::sum));
    List<String> pieces = new ArrayList<>();
    counts.forEach((source, count) -> pieces.add(power(source, count)));
    pieces.add(
        c.circuit().otherWatts().isEmpty()
            ? "all else: not stated"
            : "all else: " + Say.decimals(c.circuit().otherWatts().getAsDouble(), 0) + " W");
    return String.join("; ", pieces);
  }

  private static String power(HeatSource source, int count) {
    OptionalDouble watts = source.powerWatts();
    String each =
        watts.isPresent() ? Say.decimals(watts.getAsDouble(), 0) + " W" : "power not stated";
    return count(count) + source.name() + " (" + each + ")";
  }
}
