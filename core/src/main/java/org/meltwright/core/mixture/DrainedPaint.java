// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.material.Constituent;
import org.meltwright.core.material.MassFractionRange;
import org.meltwright.core.material.Material;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Limit;
import org.meltwright.units.MassFraction;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;

/**
 * A paint that lay on paper to lose oil: what it lost in weight is oil, what is left is counted.
 *
 * <p>For example, 20 g with 20 to 25 % oil that weigh 18 g after draining hold 2 to 3 g of oil in
 * 18 g: 11.1 to 16.7 %. Little pigment may stain the paper; if much does, the loss is not oil
 * alone.
 *
 * <p>For example, a tube white with 18 to 30 % oil:
 *
 * <pre>{@code
 * Material white = MaterialCatalogue.standard().require("oil-paint-titanium-white");
 * DrainedPaint drained = DrainedPaint.of(white, grams(20), grams(18));
 * drained.oilLeft().low().percent(); // 8.9 %
 * drained.oilLeft().high().percent(); // 22.2 %
 * drained.material().id(); // oil-paint-titanium-white-drained
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class DrainedPaint {

  private final Material paint;
  private final double beforeKilograms;
  private final double afterKilograms;
  private final MassFractionRange oilLeft;

  /**
   * Returns a drained paint.
   *
   * @param paint the paint as it came, with stated constituents
   * @param before its mass before draining, above zero
   * @param after its mass after draining, above zero, not above that before
   * @return the drained paint
   * @throws ProblemException if its constituents are not stated, it grew heavier, or it lost more
   *     than it held of oil
   */
  public static DrainedPaint of(Material paint, Quantity<Mass> before, Quantity<Mass> after) {
    return new DrainedPaint(paint, before, after);
  }

  private DrainedPaint(Material paint, Quantity<Mass> before, Quantity<Mass> after) {
    this.paint = paint;
    this.beforeKilograms = Amounts.require(before);
    this.afterKilograms = Amounts.require(after);
    if (!(afterKilograms > 0)) {
      throw new ProblemException(Problem.of(MixtureProblem.AMOUNT, Bilingual.of(after)));
    }
    if (Limit.exceeds(afterKilograms, beforeKilograms)) {
      throw new ProblemException(
          Problem.of(MixtureProblem.MORE_THAN_THERE_IS, Bilingual.of(after))
              .with("most", Bilingual.of(before)));
    }
    this.oilLeft = oilLeft(ShareOf.FREE_OIL.contentOf(paint), after.getUnit());
  }

  private MassFractionRange oilLeft(MassFractionRange oil, Unit<Mass> told) {
    double lost = beforeKilograms - afterKilograms;
    double most = oil.high().value() * beforeKilograms;
    if (Limit.exceeds(lost, most)) {
      throw new ProblemException(
          Problem.of(MixtureProblem.DRAINED_TOO_MUCH, Bilingual.of(QuantityKind.MASS, lost, told))
              .with("counted", ShareOf.FREE_OIL.inWords())
              .with("most", Bilingual.of(QuantityKind.MASS, most, told)));
    }
    double low = (oil.low().value() * beforeKilograms - lost) / afterKilograms;
    double high = (most - lost) / afterKilograms;
    return new MassFractionRange(
        MassFraction.of(Amounts.clamp(low)), MassFraction.of(Amounts.clamp(high)));
  }

  /**
   * Returns the mass that it lost.
   *
   * @return the loss, in kg
   */
  public double lostKilograms() {
    return Math.max(0, beforeKilograms - afterKilograms);
  }

  /**
   * Returns the share of oil that is left in it.
   *
   * @return the share by mass of the drained paint
   */
  public MassFractionRange oilLeft() {
    return oilLeft;
  }

  /**
   * Returns the drained paint as a material of its own, for compositions: same names, family and
   * role, the constituents as they are now. Figures of the paint as a whole are left out, since
   * they no longer hold.
   *
   * @return the material, with "-drained" behind its id
   */
  public Material material() {
    Material.Builder builder =
        Material.builder(paint.id() + "-drained")
            .names(
                paint.name(java.util.Locale.ENGLISH) + ", drained",
                paint.name(java.util.Locale.GERMAN) + ", entölt")
            .family(paint.family(), paint.role());
    paint.colourIndexName().ifPresent(builder::colourIndexName);
    MassFractionRange oil = ShareOf.FREE_OIL.contentOf(paint);
    for (Constituent part : paint.constituents()) {
      builder.constituent(part.material(), shareNow(part, oil));
    }
    Material drained = builder.build();
    return paint.lot().map(drained::withLot).orElse(drained);
  }

  private MassFractionRange shareNow(Constituent part, MassFractionRange oil) {
    boolean isOil = ShareOf.FREE_OIL.contentOf(part.material()).low().value() > 0;
    double low = isOil ? factor(oilLeft.low(), oil.low()) : beforeKilograms / afterKilograms;
    double high = isOil ? factor(oilLeft.high(), oil.high()) : beforeKilograms / afterKilograms;
    return new MassFractionRange(
        MassFraction.of(Amounts.clamp(part.share().low().value() * low)),
        MassFraction.of(Amounts.clamp(part.share().high().value() * high)));
  }

  private static double factor(MassFraction now, MassFraction then) {
    return then.value() > 0 ? now.value() / then.value() : 0;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof DrainedPaint that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(paint, beforeKilograms, afterKilograms, oilLeft);
  }

  @Override
  public String toString() {
    return paint + " drained from " + beforeKilograms + " kg to " + afterKilograms + " kg";
  }
}
