// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.LongStream;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.core.equipment.HeatSource.Kind;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.mixture.Composition;
import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.TemperaturePoint;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Reviews by all standard rules, without their texts. Composition and plan are built anew for each,
 * so that nothing which an earlier review worked out of a plan is used again; the materials stay, as
 * they do in an application.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(2)
public class HeatingReviewBenchmark {

  private static final int PLANS = 2000;

  private final List<Material> medium =
      List.of(
          MaterialCatalogue.standard().require("beeswax-yellow"),
          MaterialCatalogue.standard().require("damar"));

  private final List<HeatingPlan> plans =
      LongStream.range(0, PLANS)
          .mapToObj(seed -> Plans.parse(new RandomPlans(seed).next().toString()))
          .toList();

  private int turn;

  /** Eight parts wax, one part resin, a plate with set point and overshoot, a reading of the liquid. */
  @Benchmark
  public HeatingReview plainPot() {
    turn = (turn + 1) % 100;
    HeatSource plate =
        HeatSource.of("plate", Kind.HOT_PLATE)
            .withSetPoint(TemperaturePoint.ofCelsius(85))
            .withOvershoot(TemperatureDifference.ofKelvin(6));
    HeatingPlan plan =
        HeatingPlan.builder(Composition.ofParts(medium, 8, 1))
            .heat(plate)
            .liquidReading(TemperaturePoint.ofCelsius(80 + turn * 0.1))
            .build();
    return HeatingRules.standard().review(plan);
  }

  /** Plans of every kind, those that the laws are held to. */
  @Benchmark
  public HeatingReview randomPlan() {
    turn = (turn + 1) % PLANS;
    HeatingPlan plan = plans.get(turn);
    double[] parts = new double[plan.mix().size()];
    for (int i = 0; i < parts.length; i++) {
      parts[i] = plan.mix().massFractionValue(i);
    }
    Composition mix = Composition.ofParts(plan.mix().materials(), parts);
    return HeatingRules.standard().review(plan.withMix(mix));
  }
}
