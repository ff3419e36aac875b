// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.meltwright.core.batch.StatedAmount.InMass;
import org.meltwright.core.batch.StatedAmount.InVolume;
import org.meltwright.core.batch.StatedAmount.MassInVolume;
import org.meltwright.core.batch.StatedAmount.MassShare;
import org.meltwright.core.batch.StatedAmount.Parts;
import org.meltwright.core.batch.StatedAmount.Rest;
import org.meltwright.core.batch.StatedAmount.UpToMass;
import org.meltwright.core.batch.StatedAmount.UpToVolume;
import org.meltwright.core.batch.StatedAmount.VolumeParts;
import org.meltwright.core.batch.StatedAmount.VolumeShare;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/** What the lines of a recipe weigh, in a unit of their own, by what each states. */
final class LineMasses {

  private LineMasses() {}

  static double[] of(List<RecipePart> parts) {
    if (parts.stream().allMatch(p -> p.amount() instanceof Parts)) {
      return parts.stream().mapToDouble(p -> ((Parts) p.amount()).parts()).toArray();
    }
    if (parts.stream().allMatch(p -> p.amount() instanceof VolumeParts)) {
      return ofVolumeParts(parts);
    }
    if (parts.stream().allMatch(p -> isAmount(p.amount()))) {
      return parts.stream().mapToDouble(LineMasses::kilograms).toArray();
    }
    return new Shares(parts).masses();
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

  static double density(RecipePart part, DensityBasis basis) {
    return part.ingredient().composition().volumeView(basis).densityKilogramsPerCubicMetre();
  }

  /** Tells whether a line states a mass or a volume. */
  static boolean isAmount(StatedAmount amount) {
    return amount instanceof InMass || amount instanceof InVolume;
  }

  /** What a line weighs that states a mass or a volume. */
  static double kilograms(RecipePart part) {
    return part.amount() instanceof InVolume volume
        ? volume.cubicMetres() * density(part, volume.basis())
        : ((InMass) part.amount()).kilograms();
  }

  static ProblemException mixed(List<RecipePart> parts) {
    String stated = String.join(" + ", parts.stream().map(p -> p.amount().toString()).toList());
    return new ProblemException(Problem.of(BatchProblem.MIXED_AMOUNTS, stated));
  }

  /**
   * What lines weigh that state shares of one whole; a mass or a volume is a share where another
   * line is made up to the whole.
   *
   * <p>With mass shares w, volume shares x, densities ρ and one rest r, all for 1 kg of the whole
   * of volume V:
   *
   * <pre>
   * mⱼ = ρⱼ xⱼ V        mᵣ = 1 − Σ w − V Σ ρⱼ xⱼ        V = Σ w/ρ + V Σ x + mᵣ/ρᵣ
   * </pre>
   */
  private static final class Shares {

    /** What a sum of shares may miss the whole by, from rounding in a computer alone. */
    private static final double SLACK = 1e-9;

    private static final MathContext DIGITS = new MathContext(9);

    private final List<RecipePart> parts;
    private final int[] rests;
    private final Optional<DensityBasis> basis;
    private final double[] density;
    private final double[] byMass;
    private final double[] byVolume;
    private final double massShares;
    private final double volumeShares;

    Shares(List<RecipePart> parts) {
      this.parts = parts;
      this.rests = IntStream.range(0, parts.size()).filter(i -> isRest(amount(i))).toArray();
      requireOneWhole();
      this.basis = basis();
      this.density =
          basis.map(b -> each(i -> LineMasses.density(parts.get(i), b))).orElse(each(i -> 1));
      this.byMass = each(this::massShare);
      this.byVolume = each(this::volumeShare);
      this.massShares = Arrays.stream(byMass).sum();
      this.volumeShares = Arrays.stream(byVolume).sum();
    }

    private StatedAmount amount(int line) {
      return parts.get(line).amount();
    }

    private double[] each(IntToDoubleFunction value) {
      return IntStream.range(0, parts.size()).mapToDouble(value).toArray();
    }

    private static boolean isRest(StatedAmount amount) {
      return amount instanceof Rest || amount instanceof UpToMass || amount instanceof UpToVolume;
    }

    /** Parts are shares of nothing, and an amount is one only of a whole that is stated. */
    private void requireOneWhole() {
      boolean isStated = rests.length == 1 && !(amount(rests[0]) instanceof Rest);
      for (RecipePart part : parts) {
        StatedAmount amount = part.amount();
        boolean isParts = amount instanceof Parts || amount instanceof VolumeParts;
        if (isParts || (LineMasses.isAmount(amount) && !isStated)) {
          throw LineMasses.mixed(parts);
        }
      }
    }

    /** The state of the volumes, one for all: shares of one whole are measured in one state. */
    private Optional<DensityBasis> basis() {
      List<DensityBasis> all =
          parts.stream().flatMap(p -> basis(p.amount()).stream()).distinct().toList();
      if (all.size() > 1) {
        throw LineMasses.mixed(parts);
      }
      return all.stream().findFirst();
    }

    private static Optional<DensityBasis> basis(StatedAmount amount) {
      if (amount instanceof VolumeShare share) {
        return Optional.of(share.basis());
      }
      if (amount instanceof MassInVolume mass) {
        return Optional.of(mass.basis());
      }
      return amount instanceof UpToVolume total ? Optional.of(total.basis()) : Optional.empty();
    }

    private double massShare(int line) {
      if (amount(line) instanceof MassShare stated) {
        return stated.share().value();
      }
      return LineMasses.isAmount(amount(line)) && amount(rests[0]) instanceof UpToMass total
          ? LineMasses.kilograms(parts.get(line)) / total.kilograms()
          : 0;
    }

    private double volumeShare(int line) {
      if (amount(line) instanceof VolumeShare stated) {
        return stated.share().value();
      }
      if (amount(line) instanceof MassInVolume stated) {
        return stated.kilogramsPerCubicMetre() / density[line];
      }
      return LineMasses.isAmount(amount(line)) && amount(rests[0]) instanceof UpToVolume total
          ? LineMasses.kilograms(parts.get(line)) / total.cubicMetres() / density[line]
          : 0;
    }

    double[] masses() {
      boolean isByMass = parts.stream().anyMatch(p -> isByMass(p.amount()));
      requireWhole(isByMass && basis.isPresent());
      if (basis.isEmpty()) {
        return withRest(byMass, 1 - massShares);
      }
      return isByMass ? ofBoth() : ofVolumes();
    }

    private boolean isByMass(StatedAmount amount) {
      return amount instanceof MassShare || amount instanceof UpToMass;
    }

    private double[] ofVolumes() {
      double[] volumes = withRest(byVolume, 1 - volumeShares);
      return each(i -> volumes[i] * density[i]);
    }

    /** With shares on both bases only a rest can make a whole, unless by chance. */
    private void requireWhole(boolean isOnBoth) {
      double sum = isOnBoth ? Math.max(massShares, volumeShares) : massShares + volumeShares;
      boolean isWhole =
          rests.length == 1
              ? sum < 1
              : rests.length == 0 && !isOnBoth && Math.abs(sum - 1) <= SLACK;
      if (!isWhole) {
        throw notWhole();
      }
    }

    private double[] withRest(double[] shares, double rest) {
      double[] all = shares.clone();
      if (rests.length == 1) {
        all[rests[0]] = rest;
      }
      return all;
    }

    private double[] ofBoth() {
      double volumeOfMasses = 0;
      double massPerVolume = 0;
      double restDensity = density[rests[0]];
      for (int i = 0; i < density.length; i++) {
        volumeOfMasses += byMass[i] / density[i];
        massPerVolume += byVolume[i] * density[i];
      }
      double volume =
          (volumeOfMasses + (1 - massShares) / restDensity)
              / (1 - volumeShares + massPerVolume / restDensity);
      double rest = 1 - massShares - volume * massPerVolume;
      if (!(rest > 0)) {
        throw notWhole();
      }
      return withRest(each(i -> byMass[i] + byVolume[i] * density[i] * volume), rest);
    }

    private ProblemException notWhole() {
      Bilingual found =
          Bilingual.list(
              percent(massShares).plus(" % m/m"),
              percent(volumeShares).plus(" % v/v"),
              BatchProblem.CHECK.name(
                  rests.length == 0
                      ? "no rest"
                      : rests.length == 1 ? "one rest" : "several rests"));
      return new ProblemException(Problem.of(BatchProblem.SHARES, found));
    }

    private static Bilingual percent(double share) {
      return Bilingual.of(BigDecimal.valueOf(share * 100).round(DIGITS).doubleValue());
    }
  }
}
