// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.meltwright.core.material.Material;
import org.meltwright.units.Density;
import org.meltwright.units.MetricUnits;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.quantity.Quantities;

/** Shares by mass, shares by volume and density of a mix of six parts, three ways. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class CompositionBenchmark {

  /** Grams of each part; not final, so that nothing is worked out beforehand. */
  public double[] grams = {75, 15, 10, 5, 3, 2};

  /** Densities of the parts in kg/m³. */
  public double[] densities = {960, 920, 1060, 990, 4200, 930};

  private final Composition parts = Composition.ofParts(materials(), grams);
  private final DensityTable table = DensityTable.of(densities);
  private final List<Quantity<Mass>> masses = new ArrayList<>();
  private final List<Quantity<Density>> quantities = new ArrayList<>();

  /** Prepares the quantities. */
  public CompositionBenchmark() {
    for (int i = 0; i < grams.length; i++) {
      masses.add(MetricUnits.grams(grams[i]));
      quantities.add(Quantities.getQuantity(densities[i], MetricUnits.KILOGRAM_PER_CUBIC_METRE));
    }
  }

  private static List<Material> materials() {
    return List.of("a", "b", "c", "d", "e", "f").stream()
        .map(id -> Material.builder(id).build())
        .toList();
  }

  /** The library: a new composition of the same materials, and its view by volume. */
  @Benchmark
  public void library(Blackhole out) {
    Composition composition = parts.withParts(grams);
    VolumeView view = composition.volumeView(table);
    out.consume(composition);
    out.consume(view);
    out.consume(view.densityKilogramsPerCubicMetre());
  }

  /** The same sums as a plain loop over arrays. */
  @Benchmark
  public void plainLoop(Blackhole out) {
    double total = 0;
    for (double mass : grams) {
      total += mass;
    }
    double[] byMass = new double[grams.length];
    double[] byVolume = new double[grams.length];
    double volume = 0;
    for (int i = 0; i < grams.length; i++) {
      byMass[i] = grams[i] / total;
      byVolume[i] = byMass[i] / densities[i];
      volume += byVolume[i];
    }
    for (int i = 0; i < grams.length; i++) {
      byVolume[i] /= volume;
    }
    out.consume(byMass);
    out.consume(byVolume);
    out.consume(1 / volume);
  }

  /** The same sums with quantities all the way. */
  @Benchmark
  public void quantities(Blackhole out) {
    Quantity<Mass> total = masses.get(0);
    for (Quantity<Mass> mass : masses.subList(1, masses.size())) {
      total = total.add(mass);
    }
    List<Quantity<Dimensionless>> byMass = new ArrayList<>();
    List<Quantity<Volume>> volumes = new ArrayList<>();
    Quantity<Volume> volume = Quantities.getQuantity(0, MetricUnits.CUBIC_METRE);
    for (int i = 0; i < masses.size(); i++) {
      byMass.add(masses.get(i).divide(total).asType(Dimensionless.class).to(AbstractUnit.ONE));
      volumes.add(
          masses
              .get(i)
              .divide(quantities.get(i))
              .asType(Volume.class)
              .to(MetricUnits.CUBIC_METRE));
      volume = volume.add(volumes.get(i));
    }
    List<Quantity<Dimensionless>> byVolume = new ArrayList<>();
    for (Quantity<Volume> each : volumes) {
      byVolume.add(each.divide(volume).asType(Dimensionless.class).to(AbstractUnit.ONE));
    }
    out.consume(byMass);
    out.consume(byVolume);
    out.consume(total.divide(volume).asType(Density.class));
  }
}
