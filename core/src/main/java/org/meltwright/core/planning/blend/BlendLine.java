// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning.blend;

import java.util.OptionalDouble;

/**
 * How much of one part goes into a blend.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Material resin = MaterialCatalogue.standard().require("damar");
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * List<BlendPart> parts =
 *     List.of(BlendPart.of(resin).withStock(grams(200)), BlendPart.of(wax));
 * List<Wish> wishes = List.of(Wish.amount(grams(900)));
 * BlendLine line =
 *     BlendQuestion.of(parts, wishes)
 *         .weighedTo(ScaleInterval.of(grams(1)))
 *         .closest(ShareTarget.ofPercent(ShareOf.RESIN, 12.34))
 *         .require()
 *         .lines()
 *         .get(1);
 * line.part().name(); // damar
 * line.kilograms(); // 0.11106 kg
 * line.weighedKilograms(); // 0.111 kg
 * line.leftKilograms(); // 0.089 kg
 * }</pre>
 *
 * @param part the part
 * @param share its share of the blend by mass, as worked out
 * @param kilograms how much of it, as worked out, in kg
 * @param weighedKilograms how much of it in steps of the balance, in kg; the same where no balance
 *     was named
 * @param leastShare its least share in any blend that is as good
 * @param mostShare its largest share in any blend that is as good
 */
public record BlendLine(
    BlendPart part,
    double share,
    double kilograms,
    double weighedKilograms,
    double leastShare,
    double mostShare) {

  /**
   * Returns what is left.
   *
   * @return the stock less what is weighed, in kg; empty if no stock was stated
   */
  public OptionalDouble leftKilograms() {
    OptionalDouble stock = part.stockKilograms();
    return stock.isEmpty()
        ? stock
        : OptionalDouble.of(Math.max(0, stock.getAsDouble() - weighedKilograms));
  }
}
