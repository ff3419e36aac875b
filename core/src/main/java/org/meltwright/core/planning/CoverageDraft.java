// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.Density;
import org.meltwright.units.FieldReader;
import org.meltwright.units.MassFraction;
import org.meltwright.units.MetricUnits;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityFormatter;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityParser;
import org.meltwright.units.VolumeFraction;

/**
 * A {@link Coverage} as it is written down, not checked yet.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Coverage panel =
 *     new CoverageDraft("0.3 mm", 10, "0.97 g/ml", "20 %", null, null)
 *         .toCoverage(QuantityParser.localeFree());
 * QuantityKind.MASS.toSi(panel.mass(squareCentimetres(1200))); // 0.4365 kg
 * panel.toDraft().loss(); // 20 % by mass
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param film the thickness of one layer, as it stays, such as "0.3 mm"
 * @param layers how many layers, at least one
 * @param density the density as applied, such as "0.97 g/ml"
 * @param loss the share of the mass that does not reach the ground; absent for none
 * @param drunkPerSquareMetre what a square metre of the ground drinks of the first coat, a mass;
 *     absent for nothing
 * @param solids the share of the volume that stays; absent for all
 */
public record CoverageDraft(
    @Nullable String film,
    @Nullable Integer layers,
    @Nullable String density,
    @Nullable String loss,
    @Nullable String drunkPerSquareMetre,
    @Nullable String solids) {

  /** So many digits tell any number from all others. */
  private static final int DIGITS = 17;

  static CoverageDraft of(Coverage coverage) {
    QuantityFormatter exact = QuantityFormatter.exact();
    double lost = lost(coverage.transferredShare());
    double drunk = coverage.drunkKilogramsPerSquareMetre();
    double stays = coverage.solidsShare();
    return new CoverageDraft(
        exact.format(QuantityKind.LENGTH, coverage.filmMetres(), MetricUnits.MILLIMETRE),
        coverage.layers(),
        exact.format(QuantityKind.DENSITY, coverage.density(), MetricUnits.GRAM_PER_MILLILITRE),
        lost == 0 ? null : exact.format(MassFraction.of(lost)),
        drunk == 0 ? null : exact.format(QuantityKind.MASS, drunk, MetricUnits.GRAM),
        stays == 1 ? null : exact.format(VolumeFraction.of(stays)));
  }

  /** The share of the fewest digits that leaves what reaches the ground, to the last bit. */
  private static double lost(double transferred) {
    BigDecimal lost = new BigDecimal(1 - transferred);
    for (int digits = 1; digits < DIGITS; digits++) {
      double share = lost.round(new MathContext(digits)).doubleValue();
      if (1 - share == transferred) {
        return share;
      }
    }
    return lost.doubleValue();
  }

  /**
   * Returns the coverage.
   *
   * @param parser reads the quantities
   * @return the coverage
   * @throws ProblemException if a field is missing or wrong; it carries all problems found, each at
   *     its field
   */
  public Coverage toCoverage(QuantityParser parser) {
    FieldReader at = FieldReader.of(parser);
    FieldReader may = at.optional();
    Optional<Quantity<Length>> thick =
        at.parse("film", film, (p, t) -> Coverage.checkedFilm(p.parseLength(t)));
    Optional<Integer> coats = at.read("layers", layers, Coverage::checkedLayers);
    Optional<Quantity<Density>> dense =
        at.parse("density", density, (p, t) -> Coverage.checkedDensity(p.parseDensity(t)));
    Optional<Double> lost =
        may.parse("loss", loss, (p, t) -> Coverage.checkedLoss(p.parseMassFraction(t).value()));
    Optional<Quantity<Mass>> drunk =
        may.parse(
            "drunkPerSquareMetre",
            drunkPerSquareMetre,
            (p, t) -> Coverage.checkedDrunk(p.parseMass(t)));
    Optional<VolumeFraction> stays =
        may.parse("solids", solids, (p, t) -> Coverage.checkedSolids(p.parseVolumeFraction(t)));
    return at.make(
        () ->
            Coverage.of(thick.get(), coats.get(), dense.get())
                .withLoss(lost.orElse(0.0))
                .withAbsorbentGround(
                    drunk.orElse(QuantityKind.MASS.ofSi(0)), QuantityKind.AREA.ofSi(1))
                .withSolids(stays.orElse(VolumeFraction.of(1))));
  }
}
