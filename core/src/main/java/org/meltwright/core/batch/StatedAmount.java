// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import static org.meltwright.core.batch.BatchProblem.CHECK;

import java.util.Locale;
import java.util.function.UnaryOperator;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.units.Density;
import org.meltwright.units.MassFraction;
import org.meltwright.units.VolumeFraction;

/**
 * How much of an ingredient a line of a recipe states: parts, a mass, a volume, a share of the
 * whole, a mass in a volume of the whole, or the rest.
 *
 * <p>A line is kept as it was stated; what it weighs is worked out by the recipe. For example, a
 * paint with a tenth of pigment by volume, 2 % of resin by mass, and medium as the rest:
 *
 * <pre>{@code
 * Material resin = MaterialCatalogue.standard().require("damar");
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * Material white = MaterialCatalogue.standard().require("titanium-white-rutile");
 * StatedAmount tenth = StatedAmount.of(VolumeFraction.ofPercent(10), DensityBasis.SOLID);
 * Recipe paint =
 *     Recipe.of(
 *         "white",
 *         List.of(
 *             new RecipePart(Ingredient.of(white), tenth),
 *             new RecipePart(Ingredient.of(resin), StatedAmount.of(MassFraction.ofPercent(2))),
 *             new RecipePart(Ingredient.of(wax), StatedAmount.rest())));
 * paint.composition().massFraction(resin).percent(); // 2.0 %
 * paint.composition().volumeView(DensityBasis.SOLID).volumeFraction(white).percent(); // 10.0 %
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public sealed interface StatedAmount {

  /**
   * Returns parts by mass.
   *
   * @param parts how many, in the recipe's own unit, from 0 to 1e12
   * @return the amount
   * @throws org.meltwright.units.ProblemException if the parts are negative, not finite or beyond
   *     1e12
   */
  static StatedAmount parts(double parts) {
    return new Parts(parts);
  }

  /**
   * Returns parts by volume.
   *
   * @param parts how many, in the recipe's own unit, from 0 to 1e12
   * @param basis the state that the volume was measured in: solid, melt or loose bulk
   * @return the amount
   * @throws org.meltwright.units.ProblemException if the parts are negative, not finite or beyond
   *     1e12
   */
  static StatedAmount volumeParts(double parts, DensityBasis basis) {
    return new VolumeParts(parts, basis);
  }

  /**
   * Returns a share by mass of the whole.
   *
   * @param share the share
   * @return the amount
   */
  static StatedAmount of(MassFraction share) {
    return new MassShare(share);
  }

  /**
   * Returns a share by volume of the whole.
   *
   * @param share the share
   * @param basis the state that the volumes of all lines are measured in
   * @return the amount
   */
  static StatedAmount of(VolumeFraction share, DensityBasis basis) {
    return new VolumeShare(share, basis);
  }

  /**
   * Returns a mass.
   *
   * @param mass the mass, from 0 to 1e9 kg
   * @return the amount
   * @throws org.meltwright.units.ProblemException if the mass lies outside
   */
  static StatedAmount of(Quantity<Mass> mass) {
    return new InMass(CHECK.between(mass, 0, InMass.MOST, "mass"));
  }

  /**
   * Returns a volume.
   *
   * <p>For example, a balm of 40 g of wax and 60 ml of oil; the oil counts with its density:
   *
   * <pre>{@code
   * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
   * Material oil =
   *     Material.builder("our-oil")
   *         .figure(
   *             PropertyKey.LIQUID_DENSITY,
   *             Sourced.of(
   *                 PropertyKey.LIQUID_DENSITY.parse("0.92 g/ml"), Source.USER, Knowledge.READ))
   *         .build();
   * StatedAmount sixty = StatedAmount.of(millilitres(60), DensityBasis.MELT);
   * Recipe balm =
   *     Recipe.of(
   *         "balm",
   *         List.of(
   *             new RecipePart(Ingredient.of(wax), StatedAmount.of(grams(40))),
   *             new RecipePart(Ingredient.of(oil), sixty)));
   * balm.composition().massFraction(oil).percent(); // 57.98 %
   * }</pre>
   *
   * @param volume the volume, from 0 to 1e6 m³
   * @param basis the state that it was measured in: solid, melt or loose bulk
   * @return the amount
   * @throws org.meltwright.units.ProblemException if the volume lies outside
   */
  static StatedAmount of(Quantity<Volume> volume, DensityBasis basis) {
    return new InVolume(CHECK.between(volume, 0, InVolume.MOST, "volume"), basis);
  }

  /**
   * Returns a mass in a volume of the whole, such as 25 g in each 100 ml.
   *
   * <p>For example, a varnish of 25 g of resin in 100 ml of what is ready to use:
   *
   * <pre>{@code
   * Material resin = MaterialCatalogue.standard().require("damar");
   * Material solvent = MaterialCatalogue.standard().require("gum-turpentine");
   * Recipe varnish =
   *     Recipe.of(
   *         "varnish",
   *         List.of(
   *             new RecipePart(
   *                 Ingredient.of(resin),
   *                 StatedAmount.inEach(gramsPerMillilitre(0.25), DensityBasis.SOLID)),
   *             new RecipePart(Ingredient.of(solvent), StatedAmount.rest())));
   * VolumeView cold = varnish.composition().volumeView(DensityBasis.SOLID);
   * QuantityKind.DENSITY.toSi(cold.massPerVolume(resin)); // 250 kg/m³
   * }</pre>
   *
   * @param massPerVolume the mass of the ingredient per volume of the whole, from 0 to 1e5 kg/m³
   * @param basis the state that the volumes of all lines are measured in
   * @return the amount
   * @throws org.meltwright.units.ProblemException if it lies outside
   */
  static StatedAmount inEach(Quantity<Density> massPerVolume, DensityBasis basis) {
    return new MassInVolume(
        CHECK.between(massPerVolume, 0, MassInVolume.MOST, "mass per volume"), basis);
  }

  /**
   * Returns what makes the other lines up to a mass: "to 100 g".
   *
   * @param total the mass of the whole, from 1e-9 kg to 1e9 kg
   * @return the amount
   * @throws org.meltwright.units.ProblemException if the mass lies outside
   */
  static StatedAmount upTo(Quantity<Mass> total) {
    return new UpToMass(CHECK.between(total, UpToMass.LEAST, InMass.MOST, "mass"));
  }

  /**
   * Returns what makes the other lines up to a volume: "made up to 1 l".
   *
   * @param total the volume of the whole, from 1e-12 m³ to 1e6 m³
   * @param basis the state that it is measured in; volumes add up
   * @return the amount
   * @throws org.meltwright.units.ProblemException if the volume lies outside
   */
  static StatedAmount upTo(Quantity<Volume> total, DensityBasis basis) {
    return new UpToVolume(CHECK.between(total, UpToVolume.LEAST, InVolume.MOST, "volume"), basis);
  }

  /**
   * Returns what the other lines of a recipe leave of the whole.
   *
   * @return the amount
   */
  static StatedAmount rest() {
    return new Rest();
  }

  /**
   * Returns the same amount, its volume counted with other densities.
   *
   * @param densities gives what is counted with instead of the densities that were stated
   * @return the new amount; this one if it is stated by mass
   */
  default StatedAmount withDensities(UnaryOperator<DensityBasis> densities) {
    return this;
  }

  /**
   * Parts by mass.
   *
   * @param parts how many
   */
  record Parts(double parts) implements StatedAmount {

    static final double MOST = 1e12;

    /** Draws a problem if they are negative, not finite or beyond 1e12. */
    public Parts {
      CHECK.between(parts, 0, MOST, "number of parts");
    }

    @Override
    public String toString() {
      return Double.toString(parts);
    }
  }

  /**
   * Parts by volume.
   *
   * @param parts how many
   * @param basis the state that the volume was measured in
   */
  record VolumeParts(double parts, DensityBasis basis) implements StatedAmount {

    /** Draws a problem if they are negative, not finite or beyond 1e12. */
    public VolumeParts {
      CHECK.between(parts, 0, Parts.MOST, "number of parts");
    }

    @Override
    public StatedAmount withDensities(UnaryOperator<DensityBasis> densities) {
      return new VolumeParts(parts, densities.apply(basis));
    }

    @Override
    public String toString() {
      return parts + " by volume, " + basis.state().name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * A share by mass.
   *
   * @param share the share of the whole
   */
  record MassShare(MassFraction share) implements StatedAmount {

    @Override
    public String toString() {
      return share.toString();
    }
  }

  /**
   * A share by volume.
   *
   * @param share the share of the whole
   * @param basis the state that all volumes are measured in
   */
  record VolumeShare(VolumeFraction share, DensityBasis basis) implements StatedAmount {

    @Override
    public StatedAmount withDensities(UnaryOperator<DensityBasis> densities) {
      return new VolumeShare(share, densities.apply(basis));
    }

    @Override
    public String toString() {
      return share + ", " + basis.state().name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * A mass.
   *
   * @param kilograms the mass in kg
   */
  record InMass(double kilograms) implements StatedAmount {

    static final double MOST = 1e9;

    /** Draws a problem if it is negative, not finite or beyond 1e9 kg. */
    public InMass {
      CHECK.between(kilograms, 0, MOST, "mass in kg");
    }

    @Override
    public String toString() {
      return kilograms + " kg";
    }
  }

  /**
   * A volume.
   *
   * @param cubicMetres the volume in m³
   * @param basis the state that it was measured in
   */
  record InVolume(double cubicMetres, DensityBasis basis) implements StatedAmount {

    static final double MOST = 1e6;

    /** Draws a problem if it is negative, not finite or beyond 1e6 m³. */
    public InVolume {
      CHECK.between(cubicMetres, 0, MOST, "volume in m³");
    }

    @Override
    public StatedAmount withDensities(UnaryOperator<DensityBasis> densities) {
      return new InVolume(cubicMetres, densities.apply(basis));
    }

    @Override
    public String toString() {
      return cubicMetres + " m³, " + basis.state().name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * A mass in a volume of the whole.
   *
   * @param kilogramsPerCubicMetre the mass of the ingredient per volume of the whole, in kg/m³
   * @param basis the state that all volumes are measured in
   */
  record MassInVolume(double kilogramsPerCubicMetre, DensityBasis basis) implements StatedAmount {

    static final double MOST = 1e5;

    /** Draws a problem if it is negative, not finite or beyond 1e5 kg/m³. */
    public MassInVolume {
      CHECK.between(kilogramsPerCubicMetre, 0, MOST, "mass per volume in kg/m³");
    }

    @Override
    public StatedAmount withDensities(UnaryOperator<DensityBasis> densities) {
      return new MassInVolume(kilogramsPerCubicMetre, densities.apply(basis));
    }

    @Override
    public String toString() {
      return kilogramsPerCubicMetre
          + " kg/m³ of the whole, "
          + basis.state().name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * What makes the other lines up to a mass.
   *
   * @param kilograms the mass of the whole in kg
   */
  record UpToMass(double kilograms) implements StatedAmount {

    static final double LEAST = 1e-9;

    /** Draws a problem if it is below 1e-9 kg or beyond 1e9 kg. */
    public UpToMass {
      CHECK.between(kilograms, LEAST, InMass.MOST, "mass in kg");
    }

    @Override
    public String toString() {
      return "up to " + kilograms + " kg";
    }
  }

  /**
   * What makes the other lines up to a volume.
   *
   * @param cubicMetres the volume of the whole in m³
   * @param basis the state that it is measured in
   */
  record UpToVolume(double cubicMetres, DensityBasis basis) implements StatedAmount {

    static final double LEAST = 1e-12;

    /** Draws a problem if it is below 1e-12 m³ or beyond 1e6 m³. */
    public UpToVolume {
      CHECK.between(cubicMetres, LEAST, InVolume.MOST, "volume in m³");
    }

    @Override
    public StatedAmount withDensities(UnaryOperator<DensityBasis> densities) {
      return new UpToVolume(cubicMetres, densities.apply(basis));
    }

    @Override
    public String toString() {
      return "up to " + cubicMetres + " m³, " + basis.state().name().toLowerCase(Locale.ROOT);
    }
  }

  /** What the other lines leave. */
  record Rest() implements StatedAmount {

    @Override
    public String toString() {
      return "rest";
    }
  }
}
