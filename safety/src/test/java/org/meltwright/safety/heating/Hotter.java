// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.units.TemperaturePoint;

/** The plans that differ from one in that a temperature of it is higher. */
final class Hotter {

  private static final double[] KELVINS = {0.1, 3, 12, 60};

  private Hotter() {}

  /** From the lower bound of the working window upward, and from where a reading is believed. */
  static Stream<Clauses> of(Clauses plan, HeatingReview review) {
    if (!isAtWindow(review)) {
      return Stream.empty();
    }
    return plan.all().stream()
        .filter(clause -> isBelieved(clause, review.plan()))
        .flatMap(clause -> hotter(clause).map(hot -> plan.replace(clause, hot)));
  }

  private static boolean isAtWindow(HeatingReview review) {
    return review
        .bindingTemperature()
        .filter(t -> isAtWindow(t.value(), review.plan()))
        .isPresent();
  }

  private static boolean isAtWindow(TemperaturePoint wax, HeatingPlan plan) {
    double from = plan.workingWindow().map(w -> w.lowerBound().low().celsius()).orElse(40.0);
    return wax.celsius() >= from;
  }

  /** Whether the clause states a temperature that is not held for a wrong reading. */
  private static boolean isBelieved(String clause, HeatingPlan plan) {
    return switch (Clauses.word(clause)) {
      case "liquid" -> isAtWindow(plan.liquidReading().orElseThrow(), plan);
      case "surface" -> !plan.isSurfaceReadingReliable() || !isBelowSetPoint(plan);
      case "offset" -> true;
      default -> isHeat(clause) && clause.contains(" ");
    };
  }

  private static boolean isBelowSetPoint(HeatingPlan plan) {
    TemperaturePoint read = plan.surfaceReading().orElseThrow();
    return plan.heat().flatMap(HeatSource::setPoint).filter(read::isBelow).isPresent();
  }

  private static boolean isHeat(String clause) {
    return Plans.isHeat(Clauses.word(clause));
  }

  /** The clause with each of its numbers higher: a reading, set point, overshoot or offset. */
  private static Stream<String> hotter(String clause) {
    String[] words = clause.split(" ");
    return IntStream.range(1, words.length)
        .filter(i -> words[i].matches("[+-]?[0-9.]+"))
        .boxed()
        .flatMap(i -> DoubleStream.of(KELVINS).mapToObj(kelvins -> raised(words, i, kelvins)));
  }

  private static String raised(String[] words, int place, double kelvins) {
    String[] raised = words.clone();
    double value = Double.parseDouble(words[place]) + kelvins;
    raised[place] = (words[place].startsWith("+") ? "+" : "") + value;
    return String.join(" ", raised);
  }
}
