// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.setting;

import java.util.concurrent.TimeUnit;
import org.meltwright.core.thermal.setting.FreezeClock.Resolution;
import org.meltwright.units.TemperaturePoint;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Times one film on a panel until it is fully set: one run, and the estimate of three. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class OpenTimeBenchmark {

  private static final TemperaturePoint ROOM = TemperaturePoint.ofCelsius(20);
  private static final Panel WOOD = Panel.of(PanelKind.WOOD, 0.01, ROOM);
  private static final MeltSubstance MELT = MeltFigures.TYPICAL.central();

  /** Cells of the film. */
  @Param({"10", "20", "40", "80", "160"})
  public int cells;

  /** One run at a resolution. */
  @Benchmark
  public Object film() {
    return OpenTime.clock(MELT, 5e-4, 85, WOOD, 10, 20, new Resolution(cells, 0.02));
  }

  /** The estimate at the usual resolution, whatever the parameter. */
  @Benchmark
  public Object estimate() {
    return OpenTime.of(
        Film.of(MeltFigures.TYPICAL, 3e-4, 7e-4, TemperaturePoint.ofCelsius(85)),
        WOOD,
        Surroundings.stillRoom(ROOM));
  }
}
