// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import java.util.List;
import org.meltwright.core.batch.StatedAmount.InMass;
import org.meltwright.core.batch.StatedAmount.InVolume;
import org.meltwright.core.batch.StatedAmount.Parts;
import org.meltwright.core.batch.StatedAmount.VolumeParts;
import org.meltwright.core.mixture.DensityBasis;
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
    return new LineShares(parts).masses();
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
}
