// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.material.MaterialLookup;
import org.meltwright.units.FieldReader;
import org.meltwright.units.MetricUnits;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityFormatter;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityParser;

/**
 * A {@link Mixture} as it is written down, not checked yet.
 *
 * <p>For example:
 *
 * <pre>{@code
 * CompositionDraft.PartDraft resin = new CompositionDraft.PartDraft("damar", "bag 7", "20 %");
 * CompositionDraft.PartDraft wax = new CompositionDraft.PartDraft("beeswax-yellow", null, "80 %");
 * MixtureDraft draft = new MixtureDraft("250 g", List.of(resin, wax));
 * Mixture pot =
 *     draft.toMixture(QuantityParser.localeFree(), MaterialCatalogue.standard()::require);
 * pot.massKilograms(MaterialCatalogue.standard().require("damar")); // 0.05 kg
 * pot.toDraft().parts().get(0).lot(); // bag 7
 * }</pre>
 *
 * <p>Immutable if its list is.
 *
 * @param mass its mass, such as "250 g"
 * @param parts what it is made of; the shares make up the whole within 0.1 %
 */
public record MixtureDraft(
    @Nullable String mass, @Nullable List<CompositionDraft.PartDraft> parts) {

  static MixtureDraft of(Mixture mixture) {
    return new MixtureDraft(
        QuantityFormatter.exact()
            .format(QuantityKind.MASS, mixture.massKilograms(), MetricUnits.GRAM),
        mixture.composition().toDraft().parts());
  }

  /**
   * Returns the mixture.
   *
   * @param parser reads mass and shares
   * @param materials finds the materials
   * @return the mixture
   * @throws ProblemException if a field is missing or wrong, or the shares make no whole; it
   *     carries all problems found, each at its field
   */
  public Mixture toMixture(QuantityParser parser, MaterialLookup materials) {
    FieldReader at = FieldReader.of(parser);
    Optional<Double> kilograms = at.parse("mass", mass, (p, t) -> Amounts.require(p.parseMass(t)));
    Optional<Composition> whole =
        at.problems()
            .attempt("", () -> new CompositionDraft(parts).toComposition(parser, materials));
    return at.make(() -> new Mixture(whole.get(), kilograms.get()));
  }
}
