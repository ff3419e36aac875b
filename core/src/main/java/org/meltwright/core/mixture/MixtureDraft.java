// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialLookup;
import org.meltwright.core.material.MaterialProblem;
import org.meltwright.units.FieldReader;
import org.meltwright.units.MassFraction;
import org.meltwright.units.MetricUnits;
import org.meltwright.units.Problem;
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
 * MixtureDraft.PartDraft resin = new MixtureDraft.PartDraft("damar", "bag 7", "20 %");
 * MixtureDraft.PartDraft wax = new MixtureDraft.PartDraft("beeswax-yellow", null, "80 %");
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
public record MixtureDraft(@Nullable String mass, @Nullable List<PartDraft> parts) {

  /**
   * A material in a mixture.
   *
   * @param of the id of the material
   * @param lot its lot; absent if none is named
   * @param share its share by mass, such as "20 %"
   */
  public record PartDraft(@Nullable String of, @Nullable String lot, @Nullable String share) {}

  /** A material and its share that were read. */
  private record Part(Material material, double share) {

    static Part of(PartDraft draft, QuantityParser parser, MaterialLookup materials) {
      FieldReader at = FieldReader.of(parser);
      Optional<Material> named = at.read("of", draft.of, materials::require);
      Optional<String> bag = at.optional().value("lot", draft.lot);
      Optional<MassFraction> part =
          at.parse("share", draft.share, QuantityParser::parseMassFraction);
      return at.make(
          () -> new Part(bag.map(named.get()::withLot).orElseGet(named::get), part.get().value()));
    }
  }

  static MixtureDraft of(Mixture mixture) {
    requireOneOfEach(mixture.composition().materials());
    QuantityFormatter exact = QuantityFormatter.exact();
    List<PartDraft> parts = new ArrayList<>();
    Composition whole = mixture.composition();
    for (int i = 0; i < whole.size(); i++) {
      Material material = whole.materials().get(i);
      parts.add(
          new PartDraft(
              material.id(),
              material.lot().orElse(null),
              exact.format(MassFraction.of(whole.massFractionValue(i)))));
    }
    return new MixtureDraft(
        exact.format(QuantityKind.MASS, mixture.massKilograms(), MetricUnits.GRAM),
        List.copyOf(parts));
  }

  /** In a draft an id and a lot name one material. */
  private static void requireOneOfEach(List<Material> materials) {
    Map<String, Material> seen = new HashMap<>();
    for (Material material : materials) {
      Material before = seen.putIfAbsent(material.toString(), material);
      if (before != null && !before.equals(material)) {
        throw new ProblemException(
            Problem.of(MaterialProblem.REFERENCE_SHARED, material.toString()));
      }
    }
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
    List<Part> read = at.each("parts", parts, part -> Part.of(part, parser, materials));
    return at.make(
        () ->
            new Mixture(
                Composition.ofShares(
                    read.stream().map(Part::material).toList(),
                    read.stream().mapToDouble(Part::share).toArray()),
                kilograms.get()));
  }
}
