// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialLookup;
import org.meltwright.units.FieldReader;
import org.meltwright.units.MassFraction;
import org.meltwright.units.MetricUnits;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityFormatter;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityParser;

/**
 * {@link Losses} as they are written down, not checked yet.
 *
 * <p>For example:
 *
 * <pre>{@code
 * LossesDraft.InsolublesDraft dirt = new LossesDraft.InsolublesDraft("damar", null, "4 %");
 * Losses losses =
 *     new LossesDraft(List.of(dirt), "15 g", "2 %", null)
 *         .toLosses(QuantityParser.localeFree(), MaterialCatalogue.standard()::require);
 * losses.filmKilograms(1.0); // 0.02 kg
 * }</pre>
 *
 * <p>Immutable if its list is.
 *
 * @param insolubles what stays behind of each material; absent for nothing
 * @param filmAtLeast the least mass that stays on pot and tools, such as "15 g"; absent for none
 * @param film the share of the pot's content that stays on pot and tools; absent for none
 * @param straining the share of the pot's content that is lost in straining; absent for none
 */
public record LossesDraft(
    @Nullable List<InsolublesDraft> insolubles,
    @Nullable String filmAtLeast,
    @Nullable String film,
    @Nullable String straining) {

  /**
   * What stays behind of one material.
   *
   * @param of the id of the material
   * @param lot the lot that it holds for; absent if for all
   * @param share the share by mass that stays behind, such as "4 %"
   */
  public record InsolublesDraft(
      @Nullable String of, @Nullable String lot, @Nullable String share) {}

  static LossesDraft of(Losses losses) {
    QuantityFormatter exact = QuantityFormatter.exact();
    double film = losses.fixedFilmKilograms();
    return new LossesDraft(
        insolubles(losses),
        film == 0 ? null : exact.format(QuantityKind.MASS, film, MetricUnits.GRAM),
        share(losses.filmShare()),
        share(losses.strainingShare()));
  }

  private static @Nullable List<InsolublesDraft> insolubles(Losses losses) {
    List<InsolublesDraft> all =
        losses.insolubles().entrySet().stream()
            .map(
                e ->
                    new InsolublesDraft(
                        e.getKey().id(),
                        e.getKey().lot().orElse(null),
                        QuantityFormatter.exact().format(MassFraction.of(e.getValue()))))
            .toList();
    return all.isEmpty() ? null : all;
  }

  private static @Nullable String share(double share) {
    return share == 0 ? null : QuantityFormatter.exact().format(MassFraction.of(share));
  }

  /**
   * Returns the losses.
   *
   * @param parser reads the quantities
   * @param materials finds the materials
   * @return the losses
   * @throws ProblemException if a field is missing or wrong; it carries all problems found, each at
   *     its field
   */
  public Losses toLosses(QuantityParser parser, MaterialLookup materials) {
    FieldReader at = FieldReader.of(parser);
    FieldReader may = at.optional();
    List<Insolubles> dirt =
        may.each("insolubles", insolubles, d -> Insolubles.of(d, parser, materials));
    Optional<Double> least =
        may.parse("filmAtLeast", filmAtLeast, (p, t) -> Losses.checkedFilm(p.parseMass(t)));
    MassFraction onTools =
        may.parse("film", film, QuantityParser::parseMassFraction).orElse(MassFraction.ZERO);
    MassFraction strained =
        may.parse("straining", straining, QuantityParser::parseMassFraction)
            .orElse(MassFraction.ZERO);
    return at.make(
        () -> {
          Losses losses =
              Losses.NONE
                  .withFilm(QuantityKind.MASS.ofSi(least.orElse(0.0)), onTools)
                  .withStraining(strained);
          for (Insolubles each : dirt) {
            losses = losses.withInsolubles(each.material, each.share);
          }
          return losses;
        });
  }

  private record Insolubles(Material material, MassFraction share) {

    static Insolubles of(InsolublesDraft draft, QuantityParser parser, MaterialLookup materials) {
      FieldReader at = FieldReader.of(parser);
      Optional<Material> named = at.read("of", draft.of, materials::require);
      Optional<String> lot = at.optional().value("lot", draft.lot);
      Optional<MassFraction> part =
          at.parse("share", draft.share, QuantityParser::parseMassFraction);
      return at.make(
          () ->
              new Insolubles(
                  lot.map(l -> named.get().withLot(l)).orElseGet(named::get), part.get()));
    }
  }
}
