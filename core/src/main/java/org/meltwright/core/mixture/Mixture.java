// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.meltwright.core.explain.Drivers;
import org.meltwright.core.explain.EstimateInput.Direction;
import org.meltwright.core.explain.Symbol;
import org.meltwright.core.material.Material;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Estimate;
import org.meltwright.units.Limit;
import org.meltwright.units.MassFraction;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;

/**
 * An amount of a composition.
 *
 * <p>For example, two pots poured together, of which half is kept:
 *
 * <pre>{@code
 * MaterialCatalogue shelf = MaterialCatalogue.standard();
 * Material resin = shelf.require("damar");
 * Material wax = shelf.require("beeswax-yellow");
 * Mixture pot = Mixture.of(Composition.ofParts(List.of(resin, wax), 1, 4), grams(500));
 * Mixture both = pot.plus(Mixture.of(wax, grams(300)));
 * both; // 0.8 kg of damar 12.500 % + beeswax-yellow 87.500 % by mass
 * both.split(MassFraction.ofPercent(50)).get(0).massKilograms(resin); // 0.05 kg
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param composition what it is made of
 * @param massKilograms how much of it there is, in kg, not negative
 */
public record Mixture(Composition composition, double massKilograms) {

  private static final Symbol VOLUME = Symbol.beside(Mixture.class, "volume", "m³");

  /** Draws a problem if the mass is negative or not finite. */
  public Mixture {
    massKilograms = Amounts.require(massKilograms, "kg");
  }

  /**
   * Returns this mixture as it is written down.
   *
   * @return the draft, which reads back as an equal mixture
   * @throws ProblemException if two materials of one id and lot are in it
   */
  public MixtureDraft toDraft() {
    return MixtureDraft.of(this);
  }

  /**
   * Returns an amount of a composition.
   *
   * @param composition what it is made of
   * @param mass how much of it there is
   * @return the mixture
   * @throws ProblemException if the mass is negative or not finite
   */
  public static Mixture of(Composition composition, Quantity<Mass> mass) {
    return new Mixture(composition, Amounts.require(mass));
  }

  /**
   * Returns an amount of a composition by its volume, with every density at the middle of its
   * range.
   *
   * <p>How sure the mass is says {@link DensityBasis#mass}. For example, 60 ml of an oil of 0.92
   * g/ml are 55.2 g.
   *
   * @param composition what it is made of
   * @param volume how much of it there is
   * @param basis the state that the volume was measured in, and where its densities come from
   * @return the mixture
   * @throws ProblemException if the volume is negative or not finite, or a density is missing; the
   *     problem names material and property
   */
  public static Mixture ofVolume(
      Composition composition, Quantity<Volume> volume, DensityBasis basis) {
    return new Mixture(composition, basis.mass(composition, volume).centralSi());
  }

  /**
   * Returns an amount of one material.
   *
   * @param material the material
   * @param mass how much of it there is
   * @return the mixture
   * @throws ProblemException if the mass is negative or not finite
   */
  public static Mixture of(Material material, Quantity<Mass> mass) {
    return of(Composition.of(material), mass);
  }

  /**
   * Returns a mixture of weighed materials.
   *
   * @param materials the materials; equal ones become one line with the sum of their masses
   * @param kilograms the mass of each, in the order of the materials, in kg, not negative
   * @return the mixture
   * @throws ProblemException if there are not as many masses as materials, a mass is negative or
   *     not finite, or none is above zero
   */
  public static Mixture ofMasses(List<Material> materials, double... kilograms) {
    return new Mixture(Composition.ofParts(materials, kilograms), ExactSum.of(kilograms));
  }

  /**
   * Returns what comes of pouring mixtures together.
   *
   * <p>For example, 500 g of 1 : 6 with 300 g of 1 : 10 is 800 g of 1 : 7.1.
   *
   * @param mixtures what is poured together, at least one with a mass above zero
   * @return the whole
   * @throws ProblemException if there is nothing to pour
   */
  public static Mixture blend(List<Mixture> mixtures) {
    double[] masses = mixtures.stream().mapToDouble(Mixture::massKilograms).toArray();
    Composition whole =
        Composition.blend(mixtures.stream().map(Mixture::composition).toList(), masses);
    return new Mixture(whole, ExactSum.of(masses));
  }

  /**
   * Returns how much there is.
   *
   * @return the mass, in kilograms
   */
  public Quantity<Mass> mass() {
    return QuantityKind.MASS.ofSi(massKilograms);
  }

  /**
   * Returns how much of a material is in it.
   *
   * @param material the material: every line of it, or of its lot if it names one
   * @return its mass in kg; zero if it is not in the mix
   */
  public double massKilograms(Material material) {
    return massKilograms * composition.massFractionValue(material);
  }

  /**
   * Returns its volume in a state, by additive volumes.
   *
   * @param basis the state of matter, and where its densities come from
   * @return the volume; the low one goes with the high densities
   * @throws ProblemException if a density is missing; the problem names material and property
   */
  public Estimate<Volume> volume(DensityBasis basis) {
    var density = composition.density(basis);
    return new Estimate<>(
        QuantityKind.VOLUME,
        massKilograms / density.highSi(),
        massKilograms / density.centralSi(),
        massKilograms / density.lowSi());
  }

  /**
   * Returns what its volume in a state hangs on.
   *
   * @param basis the state of matter, and where its densities come from
   * @return the drivers: the density of each material
   * @throws ProblemException if a density is missing; the problem names material and property
   */
  public Drivers volumeDrivers(DensityBasis basis) {
    return composition
        .volumeView(basis)
        .drivers(VOLUME, Direction.LOWERS, density -> massKilograms / density);
  }

  /**
   * Returns what comes of adding another mixture.
   *
   * @param other what is added
   * @return the whole
   * @throws ProblemException if both are empty
   */
  public Mixture plus(Mixture other) {
    return blend(List.of(this, other));
  }

  /**
   * Returns what comes of adding some of one material.
   *
   * @param material what is added
   * @param mass how much of it
   * @return the whole
   * @throws ProblemException if the mass is negative or not finite, or both are empty
   */
  public Mixture plus(Material material, Quantity<Mass> mass) {
    return plus(of(material, mass));
  }

  /**
   * Returns the same composition, a number of times as much.
   *
   * @param factor the factor, not negative
   * @return the new mixture
   * @throws ProblemException if the factor is negative or not finite
   */
  public Mixture times(double factor) {
    return new Mixture(composition, massKilograms * Amounts.require(factor, ""));
  }

  /**
   * Returns what is left when some of it is taken away.
   *
   * @param mass how much is taken
   * @return the rest
   * @throws ProblemException if more is taken than there is
   */
  public Mixture minus(Quantity<Mass> mass) {
    return new Mixture(composition, rest(mass, massKilograms));
  }

  /**
   * Returns what is left when some of one material leaves, by straining, draining or drying.
   *
   * <p>For example, 1 kg at 20 % of a carrier that loses 0.18 kg of it is 0.82 kg at 2.44 %.
   *
   * @param material what leaves: every line of it in proportion, or of its lot if it names one
   * @param mass how much of it leaves
   * @return the rest
   * @throws ProblemException if more leaves than there is of it, or nothing else is there
   */
  public Mixture minus(Material material, Quantity<Mass> mass) {
    Lines lines = composition.lines().requireHeld(material);
    double[] masses = new double[composition.size()];
    for (int i = 0; i < masses.length; i++) {
      masses[i] = massKilograms * composition.massFractionValue(i);
    }
    lines.reduce(masses, material, rest(mass, lines.sumOver(material, masses)));
    return new Mixture(composition.withParts(masses), ExactSum.of(masses));
  }

  private static double rest(Quantity<Mass> leaves, double there) {
    double taken = Amounts.require(leaves);
    if (Limit.exceeds(taken, there)) {
      throw new ProblemException(
          Problem.of(MixtureProblem.MORE_THAN_THERE_IS, Bilingual.of(leaves))
              .with("most", Bilingual.of(QuantityKind.MASS, there, leaves.getUnit())));
    }
    return Math.max(0, there - taken);
  }

  /**
   * Returns the parts that it is split into.
   *
   * @param shares the share of each part, which together make up the whole or less
   * @return the parts, and last what is left over, which may be nothing
   * @throws ProblemException if the shares make up more than the whole
   */
  public List<Mixture> split(MassFraction... shares) {
    double[] masses = Arrays.stream(shares).mapToDouble(s -> s.value() * massKilograms).toArray();
    double left = rest(QuantityKind.MASS.ofSi(ExactSum.of(masses)), massKilograms);
    List<Mixture> parts = new ArrayList<>();
    Arrays.stream(masses).forEach(m -> parts.add(new Mixture(composition, m)));
    parts.add(new Mixture(composition, left));
    return List.copyOf(parts);
  }

  /**
   * Tells whether two mixtures are the same within a tolerance.
   *
   * @param other the other mixture
   * @param tolerance the largest relative difference of the mass and the largest difference of a
   *     share allowed
   * @return whether neither differs by more
   */
  public boolean isCloseTo(Mixture other, double tolerance) {
    double larger = Math.max(massKilograms, other.massKilograms);
    return Math.abs(massKilograms - other.massKilograms) <= tolerance * larger
        && composition.isCloseTo(other.composition, tolerance);
  }

  @Override
  public String toString() {
    return massKilograms + " kg of " + composition;
  }
}
