// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import org.meltwright.units.Check;
import org.meltwright.units.ProblemCode;

/**
 * The problems that compositions, mixtures and corrections report.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Material resin = MaterialCatalogue.standard().require("damar");
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * List<Problem> problems = new ArrayList<>();
 * try {
 *   Composition.ofPercents(List.of(resin, wax), 10, 80);
 * } catch (ProblemException e) {
 *   problems.addAll(e.problems());
 * }
 * problems.get(0).code(); // NOT_A_WHOLE
 * problems.get(0).what(Locale.ENGLISH); // The shares do not make up the whole.
 * }</pre>
 */
public enum MixtureProblem implements ProblemCode {
  /** No part is larger than zero. */
  NO_PARTS("mixture.no-parts"),
  /** A part or an amount that is negative, not finite or beyond all measure. */
  AMOUNT("mixture.amount"),
  /** Shares in per cent that do not make up 100. */
  NOT_A_WHOLE("mixture.not-a-whole"),
  /** Not as many amounts as materials. */
  COUNT("mixture.count"),
  /** Materials that are not given by the names of a ratio's two sides. */
  RATIO_SIDES("mixture.ratio-sides"),
  /** Not as many high ends as low ends of densities. */
  DENSITY_COUNT("mixture.density-count"),
  /** A material that the mix does not hold. */
  NOT_IN_MIX("mixture.not-in-mix"),
  /** More is to be taken than there is. */
  MORE_THAN_THERE_IS("mixture.more-than-there-is"),
  /** A share above the cap that was set for it. */
  ABOVE_CAP("mixture.above-cap"),
  /** A share that no amount of the additions reaches. */
  OUT_OF_REACH("mixture.out-of-reach"),
  /** A mix that nothing is to be driven out of by drying or boiling. */
  NOT_TO_BE_DRIED("mixture.not-to-be-dried"),
  /** Contents so far apart that errors of rounding decide. */
  UNDECIDED("mixture.undecided"),
  /** A material that is itself a mix of which the parts are not stated. */
  CONSTITUENTS_UNKNOWN("mixture.constituents-unknown"),
  /** More was lost in draining than there was of it. */
  DRAINED_TOO_MUCH("mixture.drained-too-much");

  /** The guards of this package. */
  static final Check CHECK = Check.beside(MixtureProblem.class);

  private final String id;

  MixtureProblem(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
