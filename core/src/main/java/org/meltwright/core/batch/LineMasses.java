// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.meltwright.core.batch.StatedAmount.MassShare;
import org.meltwright.core.batch.StatedAmount.Parts;
import org.meltwright.core.batch.StatedAmount.Rest;
import org.meltwright.core.batch.StatedAmount.VolumeParts;
import org.meltwright.core.batch.StatedAmount.VolumeShare;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * What the lines of a recipe weigh, in a unit of their own, by what each states.
 *
 * <p>With mass shares w, volume shares x, densities ρ and one rest r, all for 1 kg of the whole of
 * volume V:
 *
 * <pre>
 * mⱼ = ρⱼ xⱼ V        mᵣ = 1 − Σ w − V Σ ρⱼ xⱼ        V = Σ w/ρ + V Σ x + mᵣ/ρᵣ
 * </pre>
 */
final class LineMasses {

  /** What a sum of shares may miss the whole by, from rounding in a computer alone. */
  private static final double SLACK = 1e-9;

  private static final MathContext DIGITS = new MathContext(9);

  private final List<RecipePart> parts;
  private final double massShares;
  private final double volumeShares;

  static double[] of(List<RecipePart> parts) {
    if (parts.stream().allMatch(p -> p.amount() instanceof Parts)) {
      return parts.stream().mapToDouble(p -> ((Parts) p.amount()).parts()).toArray();
    }
    if (parts.stream().allMatch(p -> p.amount() instanceof VolumeParts)) {
      return ofVolumeParts(parts);
    }
    if (parts.stream().noneMatch(LineMasses::countsParts)) {
      return new LineMasses(parts).ofShares();
    }
    throw new ProblemException(Problem.of(BatchProblem.MIXED_AMOUNTS, stated(parts)));
  }

  private static boolean countsParts(RecipePart part) {
    return part.amount() instanceof Parts || part.amount() instanceof VolumeParts;
  }

  private static String stated(List<RecipePart> parts) {
    return String.join(" + ", parts.stream().map(p -> p.amount().toString()).toList());
  }

  private static double[] ofVolumeParts(List<RecipePart> parts) {
    double whole = parts.stream().mapToDouble(p -> ((VolumeParts) p.amount()).parts()).sum();
    return parts.stream()
        .mapToDouble(p -> whole > 0 ? ofVolume(p, (VolumeParts) p.amount()) / whole : 0)
        .toArray();
  }

  private static double ofVolume(RecipePart part, VolumeParts amount) {
    return amount.parts() * density(part, amount.basis());
  }

  private static double density(RecipePart part, DensityBasis basis) {
    return part.ingredient().composition().volumeView(basis).densityKilogramsPerCubicMetre();
  }

  private LineMasses(List<RecipePart> parts) {
    this.parts = parts;
    this.massShares = parts.stream().mapToDouble(p -> massShare(p).orElse(0)).sum();
    this.volumeShares = parts.stream().mapToDouble(p -> volumeShare(p).orElse(0)).sum();
  }

  private static OptionalDouble massShare(RecipePart part) {
    return part.amount() instanceof MassShare stated
        ? OptionalDouble.of(stated.share().value())
        : OptionalDouble.empty();
  }

  private static OptionalDouble volumeShare(RecipePart part) {
    return part.amount() instanceof VolumeShare stated
        ? OptionalDouble.of(stated.share().value())
        : OptionalDouble.empty();
  }

  private double[] ofShares() {
    boolean byMass = parts.stream().anyMatch(p -> massShare(p).isPresent());
    Optional<DensityBasis> basis = basis();
    requireWhole(byMass && basis.isPresent());
    if (basis.isEmpty()) {
      return masses(p -> massShare(p).orElse(1 - massShares));
    }
    return byMass
        ? ofBoth(basis.get())
        : masses(p -> volumeShare(p).orElse(1 - volumeShares) * density(p, basis.get()));
  }

  private double[] masses(ToDoubleFunction<RecipePart> mass) {
    return parts.stream().mapToDouble(mass).toArray();
  }

  /** The state of the volumes, one for all: shares of one whole are measured in one state. */
  private Optional<DensityBasis> basis() {
    List<DensityBasis> all =
        parts.stream()
            .flatMap(p -> p.amount() instanceof VolumeShare s ? Stream.of(s.basis()) : Stream.of())
            .distinct()
            .toList();
    if (all.size() > 1) {
      throw new ProblemException(Problem.of(BatchProblem.MIXED_AMOUNTS, stated(parts)));
    }
    return all.stream().findFirst();
  }

  /** With shares on both bases only a rest can make a whole, unless by chance. */
  private void requireWhole(boolean isOnBoth) {
    long rests = rests();
    double sum = isOnBoth ? Math.max(massShares, volumeShares) : massShares + volumeShares;
    boolean isWhole = rests == 1 ? sum < 1 : rests == 0 && !isOnBoth && Math.abs(sum - 1) <= SLACK;
    if (!isWhole) {
      throw notWhole();
    }
  }

  private long rests() {
    return parts.stream().filter(p -> p.amount() instanceof Rest).count();
  }

  private int rest() {
    int place = 0;
    while (!(parts.get(place).amount() instanceof Rest)) {
      place++;
    }
    return place;
  }

  private ProblemException notWhole() {
    Bilingual found =
        Bilingual.list(
            percent(massShares).plus(" % m/m"),
            percent(volumeShares).plus(" % v/v"),
            BatchProblem.CHECK.name(
                rests() == 0 ? "no rest" : rests() == 1 ? "one rest" : "several rests"));
    return new ProblemException(Problem.of(BatchProblem.SHARES, found));
  }

  private static Bilingual percent(double share) {
    return Bilingual.of(BigDecimal.valueOf(share * 100).round(DIGITS).doubleValue());
  }

  private double[] ofBoth(DensityBasis basis) {
    double[] density = masses(p -> density(p, basis));
    double volumeOfMasses = 0;
    double massPerVolume = 0;
    double restDensity = density[rest()];
    for (int i = 0; i < density.length; i++) {
      volumeOfMasses += massShare(parts.get(i)).orElse(0) / density[i];
      massPerVolume += volumeShare(parts.get(i)).orElse(0) * density[i];
    }
    double volume =
        (volumeOfMasses + (1 - massShares) / restDensity)
            / (1 - volumeShares + massPerVolume / restDensity);
    double rest = 1 - massShares - volume * massPerVolume;
    if (!(rest > 0)) {
      throw notWhole();
    }
    double[] masses = new double[density.length];
    Arrays.setAll(
        masses,
        i ->
            massShare(parts.get(i))
                .orElse(volumeShare(parts.get(i)).orElse(0) * density[i] * volume));
    masses[rest()] = rest;
    return masses;
  }
}
