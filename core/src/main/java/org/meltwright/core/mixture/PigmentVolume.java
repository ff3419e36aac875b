// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import static org.meltwright.core.mixture.MixtureProblem.CHECK;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.explain.Explanation;
import org.meltwright.core.explain.Figure;
import org.meltwright.core.explain.Formula;
import org.meltwright.core.material.Constituent;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.MaterialRole;
import org.meltwright.core.material.NumberRange;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.SourceKind;
import org.meltwright.core.source.Sourced;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Messages;
import org.meltwright.units.VolumeFraction;

/**
 * Pigments and fillers by volume in a mix, and how that stands to the critical pigment volume
 * concentration.
 *
 * <p>The pigment volume concentration counts dry solids: what is to evaporate is left out. The
 * critical one is where the binder just fills the voids:
 *
 * <pre>
 * critical = V / (V + Σ Vᵢ ρᵢ OAᵢ / 93.5)
 * </pre>
 *
 * <p>V volume of the pigments, ρ density in g/cm³, OA oil absorption in g per 100 g; 93.5 is 100
 * times the density of the oil of the test, 0.935 g/cm³, whatever the binder of the mix. For
 * example, 20 g per 100 g at 4.2 g/cm³ gives 0.52676. It is an upper limit: a melt wets pigment
 * worse than oil under a muller.
 *
 * <p>For example, a cake with 8 % of its volume of titanium white:
 *
 * <pre>{@code
 * MaterialCatalogue shelf = MaterialCatalogue.standard();
 * Material white = shelf.require("titanium-white-rutile");
 * Composition cake =
 *     Composition.of(shelf.require("beeswax-yellow"))
 *         .with(white, VolumeFraction.ofPercent(8), DensityBasis.SOLID);
 * PigmentVolume film = PigmentVolume.of(cake, DensityBasis.SOLID);
 * film.concentration().percent(); // 8.0 % by volume
 * film.critical().value(); // 0.529
 * film.reducedConcentration(); // 0.151
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class PigmentVolume {

  /** Where the critical pigment volume concentration comes from. */
  public static final Source CRITICAL_SOURCE =
      Source.of(
              "lewarchik-2014",
              "Lewarchik, Pigment volume concentration, part II",
              SourceKind.WEB_PAGE)
          .ofYear("2014");

  private static final double OIL_KILOGRAMS_PER_CUBIC_METRE = 935;

  private static final double LEAST_DENSITY = 1e-3;
  private static final double MOST = 1e12;

  private final Composition solids;
  private final DensityBasis basis;
  private final double low;
  private final double central;
  private final double high;
  private final VolumeFraction ofWhole;

  /**
   * Returns the pigment volume of a mix.
   *
   * @param mix the mix
   * @param basis the state that volumes are counted in, {@link DensityBasis#SOLID} for a cold film
   * @return the pigment volume
   * @throws org.meltwright.units.ProblemException if a density is missing, the constituents of a
   *     paint are not stated, or the mix holds no solids
   */
  public static PigmentVolume of(Composition mix, DensityBasis basis) {
    mix.share(ShareOf.PIGMENT_AND_FILLER);
    return new PigmentVolume(mix, basis);
  }

  private PigmentVolume(Composition mix, DensityBasis basis) {
    this.basis = basis;
    Composition whole = mix.expanded();
    this.solids = solids(whole);
    this.central = volumeShare(solids, basis, 0.5);
    this.low = Math.min(central, volumeShare(solids(expanded(mix, false)), basis, 0));
    this.high = Math.max(central, volumeShare(solids(expanded(mix, true)), basis, 1));
    this.ofWhole = VolumeFraction.of(Amounts.clamp(volumeShare(whole, basis, 0.5)));
  }

  /**
   * Returns the share of pigments and fillers in the whole volume, all that is to evaporate
   * included.
   *
   * @return the share, every figure at the middle of its range
   */
  public VolumeFraction ofWhole() {
    return ofWhole;
  }

  /**
   * Returns the pigment volume concentration: pigments and fillers in the volume of the dry solids.
   *
   * @return the share, every figure at the middle of its range
   */
  public VolumeFraction concentration() {
    return VolumeFraction.of(Amounts.clamp(central));
  }

  /**
   * Returns the low end of the pigment volume concentration.
   *
   * @return the share, with the least and densest pigment and the lightest binder
   */
  public VolumeFraction concentrationLow() {
    return VolumeFraction.of(Amounts.clamp(low));
  }

  /**
   * Returns the high end of the pigment volume concentration.
   *
   * @return the share, with the most and lightest pigment and the densest binder
   */
  public VolumeFraction concentrationHigh() {
    return VolumeFraction.of(Amounts.clamp(high));
  }

  /**
   * Returns the critical pigment volume concentration of the pigments in the mix: an upper limit.
   *
   * @return the share, every figure at the middle of its range; one for a mix without pigment
   * @throws org.meltwright.units.ProblemException if the oil absorption of a pigment is missing
   */
  public VolumeFraction critical() {
    double pigments = 0;
    double voids = 0;
    DensityTable densities = basis.table(solids.materials());
    for (int i = 0; i < solids.size(); i++) {
      Material material = solids.materials().get(i);
      double mass = solids.massFractionValue(i);
      if (isPigment(material) && mass > 0) {
        NumberRange absorption = material.require(PropertyKey.OIL_ABSORPTION).value();
        pigments += mass / densities.middle(i);
        voids += mass * absorption.middle() / 100 / OIL_KILOGRAMS_PER_CUBIC_METRE;
      }
    }
    return pigments == 0 ? VolumeFraction.ONE : VolumeFraction.of(pigments / (pigments + voids));
  }

  /**
   * Returns how full of pigment the mix is: concentration over critical concentration.
   *
   * @return the ratio; below 1 the binder fills all voids, above 1 the film is porous
   * @throws org.meltwright.units.ProblemException if the oil absorption of a pigment is missing
   */
  public double reducedConcentration() {
    return central / critical().value();
  }

  /**
   * Returns the critical pigment volume concentration of one pigment.
   *
   * @param gramsPerHundredGrams the oil absorption in g per 100 g, not negative
   * @param kilogramsPerCubicMetre the density of the pigment in kg/m³, above zero
   * @return the share; 0.52676 for 20 g per 100 g and 4200 kg/m³
   * @throws org.meltwright.units.ProblemException if the oil absorption is negative, the density
   *     below 0.001 kg/m³, or either is not finite or beyond 1e12
   */
  public static VolumeFraction critical(
      double gramsPerHundredGrams, double kilogramsPerCubicMetre) {
    double voids =
        Amounts.require(gramsPerHundredGrams, "g/100 g")
            / 100
            * CHECK.between(kilogramsPerCubicMetre, LEAST_DENSITY, MOST, "density")
            / OIL_KILOGRAMS_PER_CUBIC_METRE;
    return VolumeFraction.of(1 / (1 + voids));
  }

  /**
   * Returns the oil absorption that goes with a critical pigment volume concentration.
   *
   * @param critical the critical share, above zero
   * @param kilogramsPerCubicMetre the density of the pigment in kg/m³, above zero
   * @return the oil absorption in g per 100 g; 23.375 for 0.5 and 4000 kg/m³
   * @throws org.meltwright.units.ProblemException if the critical share or the density is zero, or
   *     the oil absorption comes out negative or not finite
   */
  public static double oilAbsorption(VolumeFraction critical, double kilogramsPerCubicMetre) {
    double voids = 1 / critical.value() - 1;
    return Amounts.require(
        voids * 100 * OIL_KILOGRAMS_PER_CUBIC_METRE / kilogramsPerCubicMetre, "g/100 g");
  }

  /**
   * Returns how the concentration comes about.
   *
   * @return the explanation; without the critical value where an oil absorption is missing
   */
  public Explanation explanation() {
    Explanation.Builder text = MixtureWorking.builder("working.pigment-volume", Map.of());
    List<Bilingual> names =
        Explanation.lines(solids.materials().stream().map(m -> Bilingual.of(m::name)).toList());
    DensityTable densities = basis.table(solids.materials());
    for (int i = 0; i < names.size(); i++) {
      Formula part =
          isPigment(solids.materials().get(i))
              ? MixtureWorking.PIGMENT_VOLUME
              : MixtureWorking.BINDER_VOLUME;
      double share = solids.massFractionValue(i);
      double density = densities.middle(i);
      text.given(MixtureWorking.SHARE.of(names.get(i)), share)
          .given(MixtureWorking.DENSITY.of(names.get(i)), density)
          .step(part, names.get(i), share / density);
    }
    text.step(MixtureWorking.BY_VOLUME, central).method(ends());
    if (solids.materials().stream()
        .filter(PigmentVolume::isPigment)
        .allMatch(m -> m.find(PropertyKey.OIL_ABSORPTION).isPresent())) {
      explainCritical(names, text);
    }
    return text.build();
  }

  private Explanation.Method ends() {
    Messages words = Messages.beside(PigmentVolume.class);
    return new Explanation.Method(
        words.both("working.pigment-volume.ends", Map.of()),
        List.of(
            Figure.of(MixtureWorking.CONCENTRATION.of(CHECK.name("at least")), low),
            Figure.of(MixtureWorking.CONCENTRATION.of(CHECK.name("at most")), high)),
        words.both("working.pigment-volume.checked", Map.of()));
  }

  private void explainCritical(List<Bilingual> names, Explanation.Builder text) {
    text.given(Figure.of(MixtureWorking.OF_OIL, OIL_KILOGRAMS_PER_CUBIC_METRE), CRITICAL_SOURCE);
    boolean any = false;
    for (int i = 0; i < names.size(); i++) {
      Material material = solids.materials().get(i);
      double mass = solids.massFractionValue(i);
      if (isPigment(material) && mass > 0) {
        Sourced<NumberRange> figure = material.require(PropertyKey.OIL_ABSORPTION);
        double absorption = figure.value().middle();
        any = true;
        text.given(
                Figure.of(MixtureWorking.ABSORPTION.of(names.get(i)), absorption), figure.source())
            .step(
                MixtureWorking.FILLS,
                names.get(i),
                mass * absorption / 100 / OIL_KILOGRAMS_PER_CUBIC_METRE);
      }
    }
    if (any) {
      text.step(MixtureWorking.AT_MOST, critical().value()).caution("working.critical.limit");
    }
  }

  private static boolean isPigment(Material material) {
    return material.family() == MaterialFamily.PIGMENT
        || material.family() == MaterialFamily.FILLER;
  }

  private static Composition solids(Composition mix) {
    double[] masses = new double[mix.size()];
    for (int i = 0; i < masses.length; i++) {
      boolean stays = mix.materials().get(i).role() != MaterialRole.CARRIER;
      masses[i] = stays ? mix.massFractionValue(i) : 0;
    }
    return mix.withParts(masses);
  }

  /** Pigment densities at one end of their ranges, all others at the other end. */
  private static double volumeShare(Composition mix, DensityBasis basis, double position) {
    DensityTable densities = basis.table(mix.materials());
    double pigments = 0;
    double total = 0;
    for (int i = 0; i < mix.size(); i++) {
      boolean pigment = isPigment(mix.materials().get(i));
      double place = pigment ? 1 - position : position;
      double density = densities.low(i) + place * (densities.high(i) - densities.low(i));
      double volume = mix.massFractionValue(i) / density;
      pigments += pigment ? volume : 0;
      total += volume;
    }
    return pigments / total;
  }

  private static Composition expanded(Composition mix, boolean most) {
    List<Composition> parts = mix.materials().stream().map(m -> expanded(m, most)).toList();
    double[] masses = new double[mix.size()];
    for (int i = 0; i < masses.length; i++) {
      masses[i] = mix.massFractionValue(i);
    }
    return Composition.blend(parts, masses);
  }

  /** Pigment constituents at one end of their shares; the others make up the rest. */
  private static Composition expanded(Material material, boolean most) {
    List<Constituent> parts = material.constituents();
    if (parts.isEmpty()) {
      return Composition.of(material);
    }
    double[] shares = Constituents.middles(parts);
    double pigments = 0;
    double others = 0;
    for (int i = 0; i < shares.length; i++) {
      if (isPigment(parts.get(i).material())) {
        shares[i] = (most ? parts.get(i).share().high() : parts.get(i).share().low()).value();
        pigments += shares[i];
      } else {
        others += shares[i];
      }
    }
    for (int i = 0; i < shares.length; i++) {
      if (!isPigment(parts.get(i).material())) {
        shares[i] = others > 0 ? shares[i] / others * Math.max(0, 1 - pigments) : 0;
      }
    }
    return Composition.blend(
        parts.stream().map(p -> Constituents.expanded(p.material())).toList(), shares);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof PigmentVolume that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(solids, basis, low, central, high, ofWhole);
  }

  @Override
  public String toString() {
    return "pigment volume concentration " + central + " of " + solids;
  }
}
