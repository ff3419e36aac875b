// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.setting;

import java.util.Locale;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.IntStream;
import org.meltwright.core.thermal.setting.FreezeClock.Resolution;
import org.meltwright.units.TemperaturePoint;

/** Prints cost against error of five grids, and 10,000 scenarios on one core and on two. */
public final class OpenTimeTables {

  private static final Resolution CONVERGED = new Resolution(320, 0.00125);
  private static final int[] CELLS = {10, 20, 40, 80, 160};
  private static final int SCENARIOS = 10_000;
  private static final int BATCHES = 25;

  private OpenTimeTables() {}

  /**
   * Prints both tables.
   *
   * @param arguments none needed
   */
  public static void main(String[] arguments) throws Exception {
    System.out.println("| panel | cells | half set, error % | fully set, error % | ms |");
    System.out.println("|---|---|---|---|---|");
    for (PanelKind kind : PanelKind.values()) {
      FreezeClock converged = clock(kind, 5e-4, 85, CONVERGED);
      for (int cells : CELLS) {
        print(kind, cells, converged);
      }
    }
    if (arguments.length > 0 && arguments[0].equals("grids")) {
      return;
    }
    double one = Double.POSITIVE_INFINITY;
    double two = Double.POSITIVE_INFINITY;
    double allOne = 0;
    double allTwo = 0;
    for (int i = 0; i < BATCHES; i++) {
      double alone = scenarios(1);
      double both = scenarios(2);
      one = Math.min(one, alone);
      two = Math.min(two, both);
      allOne += alone;
      allTwo += both;
    }
    System.out.printf(
        Locale.ROOT,
        "%n%d scenarios in %d batches: %.1f s on one core, %.1f s on two: %.2f times%n"
            + "best batch: %.2f s on one, %.2f s on two: %.2f times%n",
        SCENARIOS,
        BATCHES,
        allOne,
        allTwo,
        allOne / allTwo,
        one,
        two,
        one / two);
  }

  private static void print(PanelKind kind, int cells, FreezeClock converged) {
    Resolution resolution = new Resolution(cells, 0.02);
    FreezeClock clock = clock(kind, 5e-4, 85, resolution);
    double best = Double.POSITIVE_INFINITY;
    for (int i = 0; i < 60; i++) {
      long start = System.nanoTime();
      clock = clock(kind, 5e-4, 85, resolution);
      best = Math.min(best, (System.nanoTime() - start) / 1e6);
    }
    System.out.printf(
        Locale.ROOT,
        "| %s | %d | %.2f | %.2f | %.2f |%n",
        kind,
        cells,
        100 * (clock.half() / converged.half() - 1),
        100 * (clock.full() / converged.full() - 1),
        best);
  }

  private static FreezeClock clock(
      PanelKind kind, double film, double melt, Resolution resolution) {
    return OpenTime.clock(
        MeltFigures.TYPICAL.central(),
        film,
        melt,
        Panel.of(kind, 0.01, TemperaturePoint.ofCelsius(20)),
        10,
        20,
        resolution);
  }

  private static double scenarios(int cores) throws InterruptedException, ExecutionException {
    ForkJoinPool pool = new ForkJoinPool(cores);
    long start = System.nanoTime();
    run(pool, SCENARIOS / BATCHES);
    double seconds = (System.nanoTime() - start) / 1e9;
    pool.shutdown();
    return seconds;
  }

  private static void run(ForkJoinPool pool, int count)
      throws InterruptedException, ExecutionException {
    pool.submit(
            () ->
                IntStream.range(0, count)
                    .parallel()
                    .mapToDouble(
                        i ->
                            clock(
                                    PanelKind.values()[i % 5],
                                    1e-4 + 1e-3 * i / count,
                                    70 + i % 20,
                                    Resolution.USUAL)
                                .full())
                    .sum())
        .get();
  }
}
