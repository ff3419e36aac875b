// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.settling;

import static org.meltwright.core.thermal.settling.MeltBath.CHECK;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.explain.Drivers;
import org.meltwright.core.explain.Drivers.Values;
import org.meltwright.core.explain.EstimateInput;
import org.meltwright.core.explain.EstimateInput.Direction;
import org.meltwright.core.explain.Explanation;
import org.meltwright.core.explain.Figure;
import org.meltwright.core.explain.Symbol;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.thermal.ThermalProblem;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Density;
import org.meltwright.units.Estimate;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityRange;
import org.meltwright.units.VolumeFraction;

/**
 * How long a coloured or filled melt may stand until a share of its particles is lost, as an
 * estimate: for a quiet pot and for one that convection keeps mixed.
 *
 * <p>The size of the pieces that settle decides, not their density: in a quiet melt of 12 mPa s and
 * 820 kg/m³ a little oxide of 1 µm and 5100 kg/m³ loses a tenth from the top 5 mm in 43 minutes; as
 * pieces of 20 µm in 6 seconds.
 *
 * <p>Red iron oxide as pieces of 2 µm and of 20 µm, in 50 mm of melt whose top 5 mm are used:
 *
 * <pre>{@code
 * Material oxide = MaterialCatalogue.standard().require("red-iron-oxide");
 * MeltBath pot =
 *     MeltBath.of(
 *         QuantityRange.of(QuantityKind.DENSITY, gramsPerMillilitre(0.82)),
 *         new QuantityRange<>(QuantityKind.DYNAMIC_VISCOSITY, 0.012, 0.012),
 *         millimetres(50),
 *         millimetres(5),
 *         ofCelsius(80));
 * var pieces = new QuantityRange<>(QuantityKind.LENGTH, 2e-6, 2e-6);
 * StirringInterval fine = StirringInterval.of(oxide, pieces, VolumeFraction.ZERO, pot, 0.1);
 * fine.quiet().centralSi() / 60; // 10 minutes
 * fine.convecting().centralSi() / 60; // 109 minutes
 * var lumps = new QuantityRange<>(QuantityKind.LENGTH, 20e-6, 20e-6);
 * StirringInterval coarse = StirringInterval.of(oxide, lumps, VolumeFraction.ZERO, pot, 0.1);
 * coarse.convecting().centralSi(); // 65 s
 * }</pre>
 *
 * <p>This class is immutable and thread-safe.
 */
public final class StirringInterval {

  private static final double STOKES_REYNOLDS = 0.1;

  private static final Symbol QUIET = symbol("time between two stirrings, quiet", "s");
  private static final Symbol CONVECTING = symbol("time between two stirrings, mixed", "s");

  private final Material particles;
  private final MeltBath bath;
  private final double share;
  private final double hindrance;
  private final EstimateInput size;
  private final EstimateInput density;
  private final EstimateInput meltDensity;
  private final EstimateInput viscosity;

  /**
   * Returns the interval of a material in a pot.
   *
   * @param particles what settles; it must state the density of its solid
   * @param pieces the diameter of the pieces that settle, as a range
   * @param content the volume fraction of the particles in the melt
   * @param bath the pot
   * @param lostShare the share that may be lost, from above 0 to below 1
   * @return the interval
   * @throws org.meltwright.units.ProblemException if the density is not known or a figure cannot be
   */
  public static StirringInterval of(
      Material particles,
      QuantityRange<Length> pieces,
      VolumeFraction content,
      MeltBath bath,
      double lostShare) {
    return new StirringInterval(
        particles,
        particles.require(PropertyKey.SOLID_DENSITY).value().range(),
        pieces,
        Settling.hindrance(content, Settling.HINDRANCE_EXPONENT),
        bath,
        CHECK.between(lostShare, 1e-6, Math.nextDown(1.0), "share lost"));
  }

  private StirringInterval(
      Material particles,
      QuantityRange<Density> density,
      QuantityRange<Length> pieces,
      double hindrance,
      MeltBath bath,
      double share) {
    this.particles = particles;
    this.bath = bath;
    this.share = share;
    this.hindrance = hindrance;
    this.size = input("diameter of the pieces", pieces, "m", Direction.LOWERS);
    this.density = input("density of the particles", density, "kg/m³", Direction.LOWERS);
    this.meltDensity = input("density of the melt", bath.density(), "kg/m³", Direction.RAISES);
    this.viscosity = input("viscosity of the melt", bath.viscosity(), "Pa s", Direction.RAISES);
    CHECK.finite(velocity(EstimateInput::forLow), "velocity in m/s");
    CHECK.finite(velocity(EstimateInput::central), "velocity in m/s");
    CHECK.finite(velocity(EstimateInput::forHigh), "velocity in m/s");
  }

  private static EstimateInput input(
      String name, QuantityRange<?> range, String unit, Direction direction) {
    return EstimateInput.of(symbol(name, unit), range.lowSi(), range.highSi(), direction);
  }

  private static Symbol symbol(String name, String unit) {
    return Symbol.beside(ThermalProblem.class, name, unit);
  }

  /**
   * Returns intervals in the order of need: what wants stirring most often first.
   *
   * @param intervals the intervals
   * @return the same, by the central interval of the convecting pot
   */
  public static List<StirringInterval> byNeed(List<StirringInterval> intervals) {
    return intervals.stream()
        .sorted(Comparator.comparingDouble((StirringInterval i) -> i.convecting().centralSi()))
        .toList();
  }

  /**
   * Returns what settles.
   *
   * @return the material
   */
  public Material particles() {
    return particles;
  }

  /**
   * Returns the time in a quiet pot, until the share is lost from the top layer.
   *
   * @return the time; infinite at an end where nothing settles
   */
  public Estimate<Time> quiet() {
    return estimate(this::quietSeconds);
  }

  private double quietSeconds(double velocity) {
    return Settling.quietSeconds(share, bath.layerMetres(), velocity);
  }

  /**
   * Returns what the time in a quiet pot hangs on.
   *
   * @return the drivers: size, densities and viscosity
   */
  public Drivers quietDrivers() {
    return Drivers.of(QUIET, inputs(), values -> quietSeconds(velocity(values)));
  }

  /**
   * Returns the time in a pot that convection keeps mixed, until the share has settled out of it.
   *
   * @return the time; infinite at an end where nothing settles
   */
  public Estimate<Time> convecting() {
    return estimate(this::convectingSeconds);
  }

  private double convectingSeconds(double velocity) {
    return Settling.convectingSeconds(share, bath.depthMetres(), velocity);
  }

  /**
   * Returns what the time in a pot that convection keeps mixed hangs on.
   *
   * @return the drivers: size, densities and viscosity
   */
  public Drivers convectingDrivers() {
    return Drivers.of(CONVECTING, inputs(), values -> convectingSeconds(velocity(values)));
  }

  /**
   * Returns the settling velocity with every input at the middle of its range.
   *
   * @return the velocity, in m/s; negative for what floats
   */
  public double centralVelocity() {
    return velocity(EstimateInput::central);
  }

  /**
   * Tells whether nothing ever settles: diffusion holds the largest pieces up over the whole depth,
   * or nothing is denser than the melt.
   *
   * @return whether nothing ever settles
   */
  public boolean neverSettles() {
    double excess = density.high() - meltDensity.low();
    return excess <= 0
        || size.high()
            <= Settling.suspendedDiameter(excess, bath.depthMetres(), bath.temperature());
  }

  /**
   * Returns the named inputs with their ranges and directions.
   *
   * @return size, density, density of the melt, viscosity
   */
  public List<EstimateInput> inputs() {
    return List.of(size, density, meltDensity, viscosity);
  }

  private double largestReynolds() {
    return meltDensity.high()
        * Math.abs(velocity(EstimateInput::forLow))
        * size.high()
        / viscosity.low();
  }

  private interface Law {
    double seconds(double velocity);
  }

  private Estimate<Time> estimate(Law law) {
    return new Estimate<>(
        QuantityKind.TIME,
        law.seconds(velocity(EstimateInput::forLow)),
        law.seconds(velocity(EstimateInput::central)),
        law.seconds(velocity(EstimateInput::forHigh)));
  }

  private double velocity(Values values) {
    return hindrance
        * Settling.stokesVelocity(
            values.of(size), values.of(density) - values.of(meltDensity), values.of(viscosity));
  }

  /**
   * Explains the interval.
   *
   * @return inputs, velocity, both times and what was assumed
   */
  public Explanation explanation() {
    Bilingual name = Bilingual.of(particles::name);
    Explanation.Builder text =
        SettlingWorking.builder("working.stirring", Map.of("name", name))
            .stated(SettlingWorking.LOST, share)
            .stated(SettlingWorking.DEPTH, bath.depthMetres())
            .stated(SettlingWorking.LAYER, bath.layerMetres())
            .given(SettlingWorking.GRAVITY, Settling.GRAVITY)
            .given(SettlingWorking.CROWDING, hindrance);
    explain(Figure.LOW, EstimateInput::forLow, text);
    explain(Figure.CENTRAL, EstimateInput::central, text);
    explain(Figure.HIGH, EstimateInput::forHigh, text);
    text.caution("working.stirring.assumed");
    if (density.high() <= meltDensity.low()) {
      text.caution("working.stirring.floats");
    } else if (neverSettles()) {
      text.caution("working.stirring.never");
    }
    if (largestReynolds() > STOKES_REYNOLDS) {
      text.caution("working.stirring.large");
    }
    particles.find(PropertyKey.SOLID_DENSITY).ifPresent(f -> text.source(f.source()));
    return text.build();
  }

  private void explain(Bilingual end, Values values, Explanation.Builder text) {
    inputs().forEach(input -> text.given(input.symbol().of(end), values.of(input)));
    double velocity = velocity(values);
    text.step(SettlingWorking.STOKES, end, velocity);
    if (velocity > 0) {
      text.step(SettlingWorking.IN_QUIET, end, quietSeconds(velocity))
          .step(SettlingWorking.MIXED, end, convectingSeconds(velocity));
    }
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof StirringInterval that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(particles, bath, share, hindrance, size, density, meltDensity, viscosity);
  }

  @Override
  public String toString() {
    return "stirring of " + particles + " in " + bath;
  }
}
