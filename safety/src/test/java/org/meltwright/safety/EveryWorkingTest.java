// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.Function;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.meltwright.core.explain.Explanation;
import org.meltwright.core.laws.ExplanationLaws;
import org.meltwright.safety.exposure.Agent;
import org.meltwright.safety.exposure.CircuitLoad;
import org.meltwright.safety.exposure.DilutionVentilation;
import org.meltwright.safety.exposure.ExposureLimit;

/** What holds for the working of every result of this module that explains itself. */
class EveryWorkingTest {

  private static final int DRAWS = Integer.getInteger("random.draws", 500);

  /** A kind of result, and how to draw one of random inputs. */
  private record Explained(String name, Function<Random, Explanation> drawn) {
    @Override
    public String toString() {
      return name;
    }
  }

  static List<Explained> results() {
    return List.of(
        new Explained("CircuitLoad", EveryWorkingTest::circuit),
        new Explained("DilutionVentilation", EveryWorkingTest::dilution));
  }

  private static Explanation circuit(Random r) {
    CircuitLoad load = CircuitLoad.of(100 + r.nextInt(200), 5 + r.nextInt(20), 1 + r.nextDouble());
    int devices = r.nextInt(5);
    for (int i = 0; i < devices; i++) {
      OptionalDouble power =
          r.nextInt(4) == 0 ? OptionalDouble.empty() : OptionalDouble.of(3000 * r.nextDouble());
      load = load.with(new CircuitLoad.Device("plate", power, r.nextBoolean()));
    }
    return load.explanation();
  }

  private static Explanation dilution(Random r) {
    ExposureLimit limit =
        new ExposureLimit(
            Agent.vapour("ethanol", 20 + 200 * r.nextDouble()),
            100 + 900 * r.nextDouble(),
            ExposureLimit.Unit.PPM,
            ExposureLimit.Averaging.EIGHT_HOURS,
            "as entered",
            LocalDate.of(2026, 5, 4));
    return new DilutionVentilation(limit, 500 * r.nextDouble(), 1 + 9 * r.nextDouble())
        .explanation();
  }

  @ParameterizedTest
  @MethodSource("results")
  void every_step_can_be_worked_out_anew(Explained result) {
    Random random = new Random(7);
    for (int i = 0; i < DRAWS; i++) {
      ExplanationLaws.canBeWorkedOutAnew(result.drawn.apply(random));
    }
  }

  @ParameterizedTest
  @MethodSource("results")
  void the_working_speaks_both_languages(Explained result) {
    Random random = new Random(8);
    for (int i = 0; i < 20; i++) {
      ExplanationLaws.speaksBothLanguages(result.drawn.apply(random));
    }
  }
}
