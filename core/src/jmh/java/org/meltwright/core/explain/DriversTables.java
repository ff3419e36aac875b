// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.explain;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.Locale;
import java.util.function.Supplier;

/**
 * Prints what an estimate, its drivers and its likely range cost, in processor time of the one
 * thread: the middle of 41 warm rounds.
 */
public final class DriversTables {

  private static final int ROUNDS = 41;

  private DriversTables() {}

  /**
   * Prints the table.
   *
   * @param arguments none needed
   */
  public static void main(String[] arguments) {
    System.out.println("| estimate | inputs | estimate, µs | drivers, µs | likely range, µs |");
    System.out.println("|---|---|---|---|---|");
    DriversCases.all().forEach(DriversTables::print);
  }

  private static void print(DriversCases.Case one) {
    Drivers drivers = one.drivers().get();
    System.out.printf(
        Locale.ROOT,
        "| %s | %d | %.3g | %.3g | %.3g |%n",
        one.name(),
        drivers.ranked().size(),
        microseconds(one.estimate()),
        microseconds(one.drivers()),
        microseconds(drivers::likely));
  }

  private static double microseconds(Supplier<?> work) {
    int times = 1;
    while (spent(work, times) < 5_000_000) {
      times *= 2;
    }
    double[] each = new double[ROUNDS];
    for (int i = 0; i < ROUNDS; i++) {
      each[i] = spent(work, times) / 1e3 / times;
    }
    Arrays.sort(each);
    return each[ROUNDS / 2];
  }

  private static long spent(Supplier<?> work, int times) {
    long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    Object last = null;
    for (int i = 0; i < times; i++) {
      last = work.get();
    }
    if (last == null) {
      throw new IllegalStateException("nothing was made");
    }
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start;
  }
}
