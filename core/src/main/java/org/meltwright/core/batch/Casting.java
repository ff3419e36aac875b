// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import static org.meltwright.core.batch.BatchProblem.CHECK;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.equipment.Mould;
import org.meltwright.core.explain.Drivers;
import org.meltwright.core.explain.EstimateInput;
import org.meltwright.core.explain.EstimateInput.Direction;
import org.meltwright.core.explain.Explanation;
import org.meltwright.core.explain.Symbol;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.core.mixture.Mixture;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Density;
import org.meltwright.units.Estimate;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.VolumeFraction;

/**
 * What a melt gives when it is poured into a mould: whole cakes, a last part cake, and how they
 * shrink.
 *
 * <p>Cups are filled hot to a level; the hot density gives the mass of a cake, the cold density its
 * cold volume. For example, 801.2 g into cups of 103.5 ml filled to 80 % at 0.86 g/ml is 11 cakes
 * of 71.2 g and one of 17.9 g. An open cake shrinks as a dish and away from the walls, not evenly:
 * the linear shrinkage is an upper bound.
 *
 * <p>In code:
 *
 * <pre>{@code
 * Mould tin = Mould.of("muffin tin", VesselMaterial.STEEL, 12, millilitres(103.5));
 * Casting cakes =
 *     Casting.of(grams(801.2), tin, VolumeFraction.ofPercent(80), gramsPerMillilitre(0.86));
 * cakes.cakeKilograms(); // 0.0712 kg
 * cakes.wholeCakes(); // 11
 * cakes.partCakeKilograms(); // 0.0179 kg
 * cakes.pours(); // 1
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class Casting {

  /** A last cake below this share of a whole one is nothing but rounding. */
  static final double NOTHING = 1e-9;

  /** The lightest density in kg/m³ that is computed with: below that of any gas in a room. */
  private static final double LEAST_DENSITY = 1e-3;

  private static final double MOST = 1e12;

  private static final Symbol MELT_DENSITY = symbol("density of the melt", "kg/m³");
  private static final Symbol CAKE_DENSITY = symbol("density of the cold cake", "kg/m³");
  private static final Symbol CAKE = symbol("mass of a cake", "kg");
  private static final Symbol POURED = symbol("volume of the melt", "m³");
  private static final Symbol COLD = symbol("volume of a cold cake", "m³");
  private static final Symbol SHRINKAGE = symbol("share of its volume that a cake loses", "");

  private final double netKilograms;
  private final Mould mould;
  private final double fillLevel;
  private final Estimate<Density> hot;
  private final @Nullable Estimate<Density> cold;

  /**
   * Returns the casting of a mixture.
   *
   * @param net what is poured
   * @param mould what it is poured into
   * @param fillLevel how full each cup is poured, hot, of its volume to the brim, above zero
   * @param melt the state of the melt; cold cakes count as {@link DensityBasis#SOLID}
   * @return the casting
   * @throws ProblemException if a density is missing or not above zero, or the fill level is zero
   */
  public static Casting of(Mixture net, Mould mould, VolumeFraction fillLevel, DensityBasis melt) {
    return new Casting(
        net.mass(),
        mould,
        fillLevel,
        net.composition().density(melt),
        net.composition().density(DensityBasis.SOLID));
  }

  /**
   * Returns the casting of a mixture, if the density of its melt is known.
   *
   * @param net what is poured
   * @param mould what it is poured into
   * @param fillLevel how full each cup is poured, hot, of its volume to the brim, above zero
   * @param melt the state of the melt; cold cakes count as {@link DensityBasis#SOLID}
   * @return the casting, with no statement about shrinkage if only the cold density is missing;
   *     empty if a density of the melt is missing, and {@link DensityBasis#unknown} names whose
   * @throws ProblemException if a density is not above zero, or the fill level is zero
   */
  public static Optional<Casting> find(
      Mixture net, Mould mould, VolumeFraction fillLevel, DensityBasis melt) {
    return findDensity(net, melt)
        .map(
            hot ->
                new Casting(
                    net.mass(),
                    mould,
                    fillLevel,
                    hot,
                    findDensity(net, DensityBasis.SOLID).orElse(null)));
  }

  private static Optional<Estimate<Density>> findDensity(Mixture mixture, DensityBasis basis) {
    Composition mix = mixture.composition();
    return basis.findTable(mix.materials()).map(table -> mix.volumeView(table).density());
  }

  /**
   * Returns the casting of a melt of which only the hot density is known.
   *
   * @param net how much is poured
   * @param mould what it is poured into
   * @param fillLevel how full each cup is poured, hot, of its volume to the brim, above zero
   * @param hot the density of the melt
   * @return the casting, with no statement about shrinkage
   * @throws ProblemException if the fill level is zero, a density is below 0.001 kg/m³, the net
   *     mass is negative, or either is beyond 1e12 or not finite
   */
  public static Casting of(
      Quantity<Mass> net, Mould mould, VolumeFraction fillLevel, Quantity<Density> hot) {
    double density = CHECK.between(hot, LEAST_DENSITY, MOST, "density of the melt");
    return new Casting(
        net,
        mould,
        fillLevel,
        new Estimate<>(QuantityKind.DENSITY, density, density, density),
        null);
  }

  /**
   * Returns the casting of a melt with stated densities.
   *
   * @param net how much is poured
   * @param mould what it is poured into
   * @param fillLevel how full each cup is poured, hot, of its volume to the brim, above zero
   * @param hot the density of the melt
   * @param cold the density of the cold cake
   * @return the casting
   * @throws ProblemException if the fill level is zero, a density is below 0.001 kg/m³, the net
   *     mass is negative, or either is beyond 1e12 or not finite
   */
  public static Casting of(
      Quantity<Mass> net,
      Mould mould,
      VolumeFraction fillLevel,
      Estimate<Density> hot,
      Estimate<Density> cold) {
    return new Casting(net, mould, fillLevel, hot, cold);
  }

  private Casting(
      Quantity<Mass> net,
      Mould mould,
      VolumeFraction fillLevel,
      Estimate<Density> hot,
      @Nullable Estimate<Density> cold) {
    if (!(fillLevel.value() > 0)) {
      throw new ProblemException(Problem.of(BatchProblem.FILL_LEVEL, Bilingual.of(fillLevel)));
    }
    this.netKilograms = CHECK.between(net, 0, MOST, "mass");
    this.mould = mould;
    this.fillLevel = fillLevel.value();
    this.hot = requirePositive(hot);
    this.cold = cold == null ? null : requirePositive(cold);
  }

  private static Symbol symbol(String name, String unit) {
    return Symbol.beside(Casting.class, name, unit);
  }

  private static Estimate<Density> requirePositive(Estimate<Density> density) {
    CHECK.between(density.lowSi(), LEAST_DENSITY, MOST, "density in kg/m³");
    CHECK.between(density.highSi(), LEAST_DENSITY, MOST, "density in kg/m³");
    return density;
  }

  /**
   * Returns the mould.
   *
   * @return what is poured into
   */
  public Mould mould() {
    return mould;
  }

  /**
   * Returns the mass of one whole cake, with the hot density at the middle of its range.
   *
   * @return the mass in kg
   */
  public double cakeKilograms() {
    return cakeCubicMetres() * hot.centralSi();
  }

  /**
   * Returns the mass of one whole cake.
   *
   * @return the mass, with the hot density at the middle of its range
   */
  public Quantity<Mass> cake() {
    return QuantityKind.MASS.ofSi(cakeKilograms());
  }

  /**
   * Returns the mass of one whole cake with its range.
   *
   * @return the mass, with the hot density at the ends of its range
   */
  public Estimate<Mass> cakeMass() {
    return new Estimate<>(
        QuantityKind.MASS,
        cakeCubicMetres() * hot.lowSi(),
        cakeKilograms(),
        cakeCubicMetres() * hot.highSi());
  }

  /**
   * Returns what the mass of one whole cake hangs on.
   *
   * @return the drivers: the density of the melt
   */
  public Drivers cakeMassDrivers() {
    EstimateInput melt = EstimateInput.of(MELT_DENSITY, hot, Direction.RAISES);
    return Drivers.of(CAKE, List.of(melt), values -> cakeCubicMetres() * values.of(melt));
  }

  /**
   * Returns how many whole cakes it makes.
   *
   * @return the number
   */
  public long wholeCakes() {
    return (long) Math.floor(netKilograms / cakeKilograms() + NOTHING);
  }

  /**
   * Returns the last, smaller cake.
   *
   * @return its mass in kg; zero if the whole cakes use up everything
   */
  public double partCakeKilograms() {
    double rest = netKilograms - wholeCakes() * cakeKilograms();
    return rest > NOTHING * cakeKilograms() ? rest : 0;
  }

  /**
   * Returns how many cups are used, that of the part cake among them.
   *
   * @return the number of cups
   */
  public long cups() {
    return wholeCakes() + (partCakeKilograms() > 0 ? 1 : 0);
  }

  /**
   * Returns how many times the mould is filled.
   *
   * @return the number of pours, the last perhaps not full
   */
  public long pours() {
    return (cups() + mould.cups() - 1) / mould.cups();
  }

  /**
   * Returns the volume of a cake when it is poured.
   *
   * @return the hot volume in m³
   */
  public double cakeCubicMetres() {
    return mould.cupCubicMetres() * fillLevel;
  }

  /**
   * Returns the volume of all that is poured.
   *
   * @return the hot volume
   */
  public Estimate<Volume> hotVolume() {
    return volume(netKilograms, hot);
  }

  /**
   * Returns what the volume of all that is poured hangs on.
   *
   * @return the drivers: the density of the melt
   */
  public Drivers hotVolumeDrivers() {
    EstimateInput melt = EstimateInput.of(MELT_DENSITY, hot, Direction.LOWERS);
    return Drivers.of(POURED, List.of(melt), values -> netKilograms / values.of(melt));
  }

  /**
   * Returns the volume of a whole cake when it is cold.
   *
   * @return the cold volume; empty if the cold density was not stated
   */
  public Optional<Estimate<Volume>> coldCake() {
    return Optional.ofNullable(cold).map(c -> volume(cakeKilograms(), c));
  }

  /**
   * Returns what the volume of a whole cold cake hangs on.
   *
   * @return the drivers: the density of the cold cake; empty if it was not stated
   */
  public Optional<Drivers> coldCakeDrivers() {
    return Optional.ofNullable(cold)
        .map(c -> EstimateInput.of(CAKE_DENSITY, c, Direction.LOWERS))
        .map(c -> Drivers.of(COLD, List.of(c), values -> cakeKilograms() / values.of(c)));
  }

  /**
   * Returns the share of its hot volume that a cake loses in cooling: 1 − ρ(hot)/ρ(cold).
   *
   * @return the shrinkage; empty if the cold density was not stated
   */
  public Optional<ShrinkRange> shrinkage() {
    return Optional.ofNullable(cold).map(c -> ShrinkRange.of(hot, c));
  }

  /**
   * Returns what the share that a cake loses hangs on.
   *
   * @return the drivers: the densities of the melt and of the cold cake; empty if the cold density
   *     was not stated
   */
  public Optional<Drivers> shrinkageDrivers() {
    EstimateInput melt = EstimateInput.of(MELT_DENSITY, hot, Direction.LOWERS);
    return Optional.ofNullable(cold)
        .map(c -> EstimateInput.of(CAKE_DENSITY, c, Direction.RAISES))
        .map(
            c ->
                Drivers.of(
                    SHRINKAGE,
                    List.of(melt, c),
                    values -> ShrinkRange.share(values.of(melt), values.of(c)).value()));
  }

  /**
   * Returns how the cakes come about.
   *
   * @return the explanation
   */
  public Explanation explanation() {
    return BatchWorking.builder("working.casting", Bilingual.of(mould.name()))
        .given(BatchWorking.NET, netKilograms)
        .stated(BatchWorking.CUP, mould.cupCubicMetres())
        .stated(BatchWorking.FILL_LEVEL, fillLevel)
        .given(BatchWorking.MELT_DENSITY, hot.centralSi())
        .step(BatchWorking.CAKES, cakeKilograms())
        .step(BatchWorking.WHOLE_CAKES, (double) wholeCakes())
        .step(BatchWorking.PART_CAKES, partCakeKilograms())
        .build();
  }

  private static Estimate<Volume> volume(double kilograms, Estimate<Density> density) {
    return new Estimate<>(
        QuantityKind.VOLUME,
        kilograms / density.highSi(),
        kilograms / density.centralSi(),
        kilograms / density.lowSi());
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Casting that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<@Nullable Object> stated() {
    return Arrays.asList(netKilograms, mould, fillLevel, hot, cold);
  }

  @Override
  public String toString() {
    return "casting of " + netKilograms + " kg in " + mould;
  }
}
