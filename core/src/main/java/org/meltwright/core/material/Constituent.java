// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import java.util.List;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * A part of a material that is itself a mix, such as the oil in an oil paint.
 *
 * <p>For example, what a tube of white holds beside its pigment:
 *
 * <pre>{@code
 * Material paint = MaterialCatalogue.standard().require("oil-paint-titanium-white");
 * Constituent second = paint.constituents().get(1);
 * second.material(); // linseed-oil
 * second.share().low(); // 18.0 % by mass
 * second.share().high(); // 30.0 % by mass
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param material what the part is
 * @param share its share by mass, as a range
 */
public record Constituent(Material material, MassFractionRange share) {

  private static final double SLACK = 1e-9;

  /** Shares make up a whole if their low ends do not exceed it and their high ends reach it. */
  static void requireWhole(String id, List<Constituent> parts) {
    double least = 0;
    double most = 0;
    for (Constituent part : parts) {
      least += part.share.low().value();
      most += part.share.high().value();
    }
    if (!parts.isEmpty() && (least > 1 + SLACK || most < 1 - SLACK)) {
      Bilingual found =
          Bilingual.range(Bilingual.of(least * 100), Bilingual.of(most * 100)).plus(" %");
      throw new ProblemException(Problem.of(MaterialProblem.PARTS_SUM, found).under("/" + id));
    }
  }
}
