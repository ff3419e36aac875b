// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning.blend;

import static org.meltwright.units.MetricUnits.grams;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.Correction;
import org.meltwright.core.mixture.Mixture;
import org.meltwright.core.mixture.ShareOf;
import org.meltwright.units.MassFraction;

/**
 * Prints the times of docs/reference/performance.md: questions for blends of twenty parts with
 * fifteen wishes, the first one after a first call of the library, and warm.
 */
public final class BlendTables {

  private static final int QUESTIONS = 200;
  private static final int ROUNDS = 40;

  private BlendTables() {}

  /**
   * Prints the times.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    correction();
    RandomBlend[] all = new RandomBlend[QUESTIONS];
    for (int i = 0; i < QUESTIONS; i++) {
      all[i] = RandomBlend.of(i + 1, 20, 15);
    }
    int one = Integer.getInteger("question", 0);
    BlendQuestion question = all[one].question();
    long start = now();
    BlendAnswer first = question.cheapest();
    print("first answer, " + first.getClass().getSimpleName(), (now() - start) / 1e6);
    for (boolean everyLot : new boolean[] {false, true}) {
      double[] found = new double[ROUNDS];
      double[] impossible = new double[ROUNDS];
      for (int round = 0; round < ROUNDS; round++) {
        round(all, everyLot, round, found, impossible);
      }
      String how = everyLot ? "for every lot, with the middle beside it" : "in the middle";
      print("found, " + how, median(found));
      print("impossible with its reasons, " + how, median(impossible));
    }
  }

  /** A first call of the library that has nothing to do with blends. */
  private static void correction() {
    MaterialCatalogue shelf = MaterialCatalogue.standard();
    Composition resin = Composition.of(shelf.require("damar"));
    Composition wax = Composition.of(shelf.require("beeswax-yellow"));
    Mixture pot = Mixture.of(Composition.blend(List.of(resin, wax), 1, 10), grams(600));
    Correction.toShare(pot, ShareOf.RESIN, MassFraction.ofPercent(12.5), resin);
  }

  private static void round(
      RandomBlend[] all, boolean everyLot, int round, double[] found, double[] impossible) {
    double[] millis = new double[2];
    int[] counts = new int[2];
    for (RandomBlend each : all) {
      BlendQuestion question = everyLot ? each.question().forEveryLot() : each.question();
      long start = now();
      BlendAnswer answer = question.cheapest();
      int kind = answer instanceof BlendAnswer.Found ? 0 : 1;
      millis[kind] += (now() - start) / 1e6;
      counts[kind]++;
    }
    found[round] = millis[0] / counts[0];
    impossible[round] = millis[1] / counts[1];
  }

  /** Processor time of this thread, which a busy machine does not lengthen. */
  private static long now() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  private static double median(double... rounds) {
    double[] warm = Arrays.copyOfRange(rounds, rounds.length / 2, rounds.length);
    Arrays.sort(warm);
    return warm[warm.length / 2];
  }

  private static void print(String what, double millis) {
    System.out.printf(Locale.ROOT, "%s: %.3f ms%n", what, millis);
  }
}
