// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import java.util.Arrays;
import java.util.Locale;

/**
 * Prints the tables of docs/reference/performance.md: how long single purchases take, how many are
 * proved, and what a general integer solver makes of the same ones.
 */
public final class PurchaseTables {

  private static final int INSTANCES = 20;

  private PurchaseTables() {}

  /**
   * Prints the tables.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    own(10);
    System.out.println("| materials | median ms | slowest ms | proved |");
    for (int materials : new int[] {5, 10, 20, 40}) {
      System.out.println(own(materials));
    }
    System.out.println("| materials | own ms | general ms | ratio | general dearer |");
    for (int materials : new int[] {2, 3, 4}) {
      System.out.println(against(materials));
    }
  }

  private static String own(int materials) {
    double[] millis = new double[INSTANCES];
    int proved = 0;
    for (int i = 0; i < INSTANCES; i++) {
      PurchaseQuestion question =
          PurchaseInstance.of(i + 1, materials, 3, 6, 50_000).question();
      long start = System.nanoTime();
      proved += question.cheapest().isProvedOptimal() ? 1 : 0;
      millis[i] = (System.nanoTime() - start) / 1e6;
    }
    Arrays.sort(millis);
    double median = millis[INSTANCES / 2];
    double slowest = millis[INSTANCES - 1];
    return String.format(
        Locale.ROOT,
        "| %d | %.1f | %.1f | %d of %d |",
        materials,
        median,
        slowest,
        proved,
        INSTANCES);
  }

  private static String against(int materials) {
    double own = 0;
    double general = 0;
    int dearer = 0;
    for (int seed = 1; seed <= 5; seed++) {
      PurchaseInstance instance = PurchaseInstance.of(seed, materials, 3, 3, 3000);
      long start = System.nanoTime();
      PurchasePlan plan = instance.question().cheapest();
      long between = System.nanoTime();
      int[] counts = GeneralSolver.solve(instance.model());
      general += (System.nanoTime() - between) / 1e6;
      own += (between - start) / 1e6;
      double found =
          counts.length == 0 ? Double.NaN : instance.model().costOf(counts) / 1e6;
      dearer += found > plan.total().getAmount().doubleValue() + 0.05 ? 1 : 0;
    }
    return String.format(
        Locale.ROOT,
        "| %d | %.2f | %.1f | %.0f | %d of 5 |",
        materials,
        own / 5,
        general / 5,
        general / own,
        dearer);
  }
}
