// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.lang.reflect.Method;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.meltwright.units.MassFraction;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.TemperaturePoint;

/**
 * How long the first use of the catalogue takes in a fresh virtual machine.
 *
 * <p>Counted is the time that the reading thread is on a processor, so that a busy machine does not
 * fail the test; the time on the clock is printed beside it.
 */
class LoadingTimeTest {

  private static final int FORKS = 5;

  /**
   * Ten times the goal of 50 ms: the figures measured stand in docs/reference/performance.md, and a
   * busy machine must not fail the test.
   */
  private static final long ALLOWED_MICROS = 500_000;

  /**
   * The best of some forks, and no more than it takes: others slow it down, nothing speeds it up.
   */
  @Test
  void standard_firstUse_takesUnderTenTimesIts50Milliseconds() {
    long best = Long.MAX_VALUE;
    for (int i = 0; i < FORKS && best > ALLOWED_MICROS; i++) {
      best = Math.min(best, fork());
    }
    assertThat(best).isBetween(1L, ALLOWED_MICROS);
  }

  private static long fork() {
    try {
      Process process =
          new ProcessBuilder(
                  Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                  "-cp",
                  classPath(),
                  Probe.class.getName())
              .redirectError(ProcessBuilder.Redirect.INHERIT)
              .start();
      String output =
          new String(process.getInputStream().readAllBytes(), StandardCharsets.US_ASCII).strip();
      System.out.println("catalogue read, µs on the processor and on the clock: " + output);
      return Long.parseLong(output.split(" ", -1)[0]);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  /** All that this test runs on, whether as modules or as a class path. */
  private static String classPath() {
    Path tests = Path.of("target", "test-classes");
    return String.join(
        File.pathSeparator,
        System.getProperty("jdk.module.path", ""),
        System.getProperty("java.class.path", ""),
        tests.toAbsolutePath().toString());
  }

  /**
   * Loads the units library, then the catalogue, and prints how long the second took.
   *
   * <p>By reflection, since the module that holds the tests does not read {@code java.management}.
   */
  static final class Probe {

    private Probe() {}

    public static void main(String[] arguments) throws ReflectiveOperationException {
      Method getBean =
          Class.forName("java.lang.management.ManagementFactory").getMethod("getThreadMXBean");
      Method processorTime =
          Class.forName("java.lang.management.ThreadMXBean").getMethod("getCurrentThreadCpuTime");
      Object threads = getBean.invoke(null);
      processorTime.invoke(threads);
      QuantityKind.DENSITY.ofSi(TemperaturePoint.ofCelsius(20).kelvin() * MassFraction.ONE.value());
      long clock = System.nanoTime();
      long processor = (long) processorTime.invoke(threads);
      int size = MaterialCatalogue.standard().all().size();
      long used = (long) processorTime.invoke(threads) - processor;
      long passed = System.nanoTime() - clock;
      System.out.println(size > 0 ? used / 1000 + " " + passed / 1000 : "-1 -1");
    }
  }
}
