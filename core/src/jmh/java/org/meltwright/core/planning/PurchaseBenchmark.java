// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The cheapest plan for 5 to 40 materials from three suppliers in six sizes, needs up to 50 kg: the
 * mean over {@value #INSTANCES} made-up purchases.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 5)
@Measurement(iterations = 3, time = 5)
@Fork(1)
public class PurchaseBenchmark {

  static final int INSTANCES = 20;

  /** How many materials are needed. */
  @Param({"5", "10", "20", "40"})
  public int materials;

  private final List<PurchaseQuestion> questions = new ArrayList<>();

  /** Makes the purchases. */
  @Setup
  public void makeUp() {
    for (int seed = 1; seed <= INSTANCES; seed++) {
      questions.add(PurchaseInstance.of(seed, materials, 3, 6, 50_000).question());
    }
  }

  /** Plans them all, from prices as given to the plan written out. */
  @Benchmark
  @OperationsPerInvocation(INSTANCES)
  public int cheapest() {
    int proved = 0;
    for (PurchaseQuestion question : questions) {
      proved += question.cheapest().isProvedOptimal() ? 1 : 0;
    }
    return proved;
  }
}
