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
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityFormatter;
import org.meltwright.units.QuantityParser;

/**
 * A {@link Composition} as it is written down, not checked yet.
 *
 * <p>For example:
 *
 * <pre>{@code
 * CompositionDraft.PartDraft resin = new CompositionDraft.PartDraft("damar", "bag 7", "20 %");
 * CompositionDraft.PartDraft wax = new CompositionDraft.PartDraft("beeswax-yellow", null, "80 %");
 * Composition medium =
 *     new CompositionDraft(List.of(resin, wax))
 *         .toComposition(QuantityParser.localeFree(), MaterialCatalogue.standard()::require);
 * medium.massFraction(MaterialCatalogue.standard().require("damar")).percent(); // 20 %
 * medium.toDraft().parts().get(0).lot(); // bag 7
 * }</pre>
 *
 * <p>Immutable if its list is.
 *
 * @param parts what it is made of; the shares make up the whole within 0.1 %
 */
public record CompositionDraft(@Nullable List<PartDraft> parts) {

  /**
   * A material in a composition.
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

  static CompositionDraft of(Composition whole) {
    requireOneOfEach(whole.materials());
    List<PartDraft> parts = new ArrayList<>();
    for (int i = 0; i < whole.size(); i++) {
      Material material = whole.materials().get(i);
      parts.add(
          new PartDraft(
              material.id(),
              material.lot().orElse(null),
              QuantityFormatter.exact().format(MassFraction.of(whole.massFractionValue(i)))));
    }
    return new CompositionDraft(List.copyOf(parts));
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
   * Returns the composition.
   *
   * @param parser reads the shares
   * @param materials finds the materials
   * @return the composition
   * @throws ProblemException if a field is missing or wrong, or the shares make no whole; it
   *     carries all problems found, each at its field
   */
  public Composition toComposition(QuantityParser parser, MaterialLookup materials) {
    FieldReader at = FieldReader.of(parser);
    List<Part> read = at.each("parts", parts, part -> Part.of(part, parser, materials));
    return at.make(
        () ->
            Composition.ofShares(
                read.stream().map(Part::material).toList(),
                read.stream().mapToDouble(Part::share).toArray()));
  }
}
