// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning.blend;

import org.meltwright.core.numeric.LinearAnswer;
import org.meltwright.units.Bilingual;

/**
 * What proves that a blend is best: its bounds are kept, no price of a bound has the wrong sign,
 * and the aim equals what the prices prove that no blend can fall below.
 *
 * <p>All three are reckoned anew from the numbers of the question, not taken from the search. Each
 * is relative to the numbers that it stands in; of several steps, as of wishes by rank, the worst.
 *
 * <p>For example, of a medium of two materials:
 *
 * <pre>{@code
 * Material resin = MaterialCatalogue.standard().require("damar");
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * List<BlendPart> parts =
 *     List.of(
 *         BlendPart.of(resin).at(UnitPrice.parse("32 EUR/kg")),
 *         BlendPart.of(wax).at(UnitPrice.parse("12.50 EUR/kg")));
 * Wish hard = Wish.share(ShareOf.RESIN, Wish.percent(11, 14));
 * BlendAnswer answer = BlendQuestion.of(parts, List.of(hard)).cheapest();
 * BlendCertificate proof = ((BlendAnswer.Found) answer).certificate();
 * proof.holds(); // true
 * proof.cases(); // 1
 * }</pre>
 *
 * @param boundsMissed by how much the worst bound is missed, relative; zero or a hair
 * @param pricesMissed by how much the worst price has the wrong sign, relative; zero or a hair
 * @param gap how far the aim lies from what the prices prove, relative; zero or a hair
 * @param cases how many choices of parts were tried: the blend is the best of all of them
 */
public record BlendCertificate(double boundsMissed, double pricesMissed, double gap, long cases) {

  /** The largest error with which a certificate holds. */
  public static final double ALLOWED = LinearAnswer.PROVED;

  static final BlendCertificate NOTHING_YET = new BlendCertificate(0, 0, 0, 1);

  BlendCertificate with(LinearAnswer answer) {
    return new BlendCertificate(
        Math.max(boundsMissed, answer.primalError()),
        Math.max(pricesMissed, answer.dualError()),
        Math.max(gap, Math.abs(answer.gap())),
        cases);
  }

  BlendCertificate ofCases(long tried) {
    return new BlendCertificate(boundsMissed, pricesMissed, gap, tried);
  }

  /**
   * Tells whether all of it is within {@link #ALLOWED}.
   *
   * @return whether the blend is proved best; a blend found is
   */
  public boolean holds() {
    return boundsMissed <= ALLOWED && pricesMissed <= ALLOWED && gap <= ALLOWED;
  }

  /**
   * Says it.
   *
   * @return one sentence
   */
  public Bilingual inWords() {
    return BlendTexts.text(
        cases == 1 ? "certificate" : "certificate.cases",
        "cases",
        Bilingual.of(Long.toString(cases)),
        "error",
        Bilingual.of(
            String.format(
                java.util.Locale.ROOT,
                "%.0e",
                Math.max(boundsMissed, Math.max(pricesMissed, gap)))));
  }
}
