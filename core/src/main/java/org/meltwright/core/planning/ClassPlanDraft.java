// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.material.MaterialLookup;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.CompositionDraft;
import org.meltwright.units.FieldReader;
import org.meltwright.units.MassFraction;
import org.meltwright.units.MetricUnits;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityFormatter;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityParser;

/**
 * A {@link ClassPlan} as it is written down, not checked yet.
 *
 * <p>For example:
 *
 * <pre>{@code
 * CoverageDraft film = new CoverageDraft("0.15 mm", 8, "0.97 g/ml", "20 %", null, null);
 * ClassPlanDraft.PieceDraft panels = new ClassPlanDraft.PieceDraft(6, "400 cm²");
 * ClassPlanDraft draft = new ClassPlanDraft(12, List.of(panels), film, "60 g", null, null);
 * ClassPlan plan =
 *     draft.toPlan(QuantityParser.localeFree(), MaterialCatalogue.standard()::require);
 * plan.totalKilograms(); // 4.910 kg
 * plan.toDraft().leftInTins(); // 60 g
 * }</pre>
 *
 * <p>Immutable if its lists are.
 *
 * @param people how many there are, at least one
 * @param pieces what each of them makes
 * @param coverage film, layers and losses
 * @param leftInTins what stays in the tins of each, such as "60 g"; absent for nothing
 * @param spare the share on top of everything, a number, where 0.1 is a tenth more; absent for none
 * @param colours the colours with their shares; absent if all stays plain
 */
public record ClassPlanDraft(
    @Nullable Integer people,
    @Nullable List<PieceDraft> pieces,
    @Nullable CoverageDraft coverage,
    @Nullable String leftInTins,
    @Nullable String spare,
    @Nullable List<ColourDraft> colours) {

  /**
   * Pieces of one size that each person makes.
   *
   * @param count how many of them, at least one
   * @param area the area of one, such as "400 cm²"
   */
  public record PieceDraft(@Nullable Integer count, @Nullable String area) {

    private static PieceDraft of(Piece piece) {
      return new PieceDraft(
          piece.count(),
          QuantityFormatter.exact()
              .format(QuantityKind.AREA, piece.squareMetres(), MetricUnits.SQUARE_CENTIMETRE));
    }

    private Piece toPiece(QuantityParser parser) {
      FieldReader at = FieldReader.of(parser);
      Optional<Integer> number = at.read("count", count, Piece::checkedCount);
      Optional<Quantity<Area>> each =
          at.parse("area", area, (p, t) -> Piece.checkedArea(p.parseArea(t)));
      return at.make(() -> Piece.of(number.get(), each.get()));
    }
  }

  /**
   * The part of all paint that has one colour.
   *
   * @param name what it is called
   * @param share its share of the mass of all paint, such as "25 %"
   * @param composition what it is made of
   */
  public record ColourDraft(
      @Nullable String name, @Nullable String share, @Nullable CompositionDraft composition) {

    private static ColourDraft of(ColourShare colour) {
      return new ColourDraft(
          colour.name(),
          QuantityFormatter.exact().format(colour.share()),
          colour.composition().toDraft());
    }

    private ColourShare toColour(QuantityParser parser, MaterialLookup materials) {
      FieldReader at = FieldReader.of(parser);
      Optional<String> called = at.value("name", name);
      Optional<MassFraction> part = at.parse("share", share, QuantityParser::parseMassFraction);
      Optional<Composition> made =
          at.read("composition", composition, d -> d.toComposition(parser, materials));
      return at.make(() -> new ColourShare(called.get(), part.get(), made.get()));
    }
  }

  static ClassPlanDraft of(ClassPlan plan) {
    QuantityFormatter exact = QuantityFormatter.exact();
    double left = plan.leftInTinsKilograms();
    List<ColourDraft> colours = plan.colours().stream().map(ColourDraft::of).toList();
    return new ClassPlanDraft(
        plan.people(),
        plan.pieces().stream().map(PieceDraft::of).toList(),
        plan.coverage().toDraft(),
        left == 0 ? null : exact.format(QuantityKind.MASS, left, MetricUnits.GRAM),
        plan.spare() == 0 ? null : exact.format(plan.spare()),
        colours.isEmpty() ? null : colours);
  }

  /**
   * Returns the plan.
   *
   * @param parser reads the quantities
   * @param materials finds the materials of the colours
   * @return the plan
   * @throws ProblemException if a field is missing or wrong, or the colours are more than all; it
   *     carries all problems found, each at its field
   */
  public ClassPlan toPlan(QuantityParser parser, MaterialLookup materials) {
    FieldReader at = FieldReader.of(parser);
    FieldReader may = at.optional();
    Optional<Integer> learners = at.read("people", people, ClassPlan::checkedPeople);
    List<Piece> made = at.each("pieces", pieces, d -> d.toPiece(parser));
    Optional<Coverage> covered = at.read("coverage", coverage, d -> d.toCoverage(parser));
    Optional<Quantity<Mass>> left =
        may.parse("leftInTins", leftInTins, (p, t) -> ClassPlan.checkedLeft(p.parseMass(t)));
    Optional<Double> onTop =
        may.parse("spare", spare, (p, t) -> ClassPlan.checkedSpare(p.parseNumber(t).doubleValue()));
    List<ColourShare> coloured = may.each("colours", colours, d -> d.toColour(parser, materials));
    return at.make(
        () ->
            ClassPlan.of(learners.get(), made, covered.get())
                .withLeftInTins(left.orElse(QuantityKind.MASS.ofSi(0)))
                .withSpare(onTop.orElse(0.0))
                .withColours(coloured));
  }
}
