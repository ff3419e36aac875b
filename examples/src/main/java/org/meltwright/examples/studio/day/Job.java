// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.day;

import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.batch.Batch;
import org.meltwright.core.batch.Casting;
import org.meltwright.core.batch.Losses;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.core.equipment.Mould;
import org.meltwright.core.equipment.Thermometer;
import org.meltwright.core.equipment.Vessel;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.core.mixture.Mixture;
import org.meltwright.examples.studio.page.Phrase;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.VolumeFraction;

/**
 * Something to make today: a batch, and what it is melted, measured and cast with.
 *
 * @param recipeId the id of its recipe in the file
 * @param recipe the recipe
 * @param losses what it leaves behind
 * @param amount how much of it
 * @param heating what it is melted with
 * @param activeSeconds how long someone works on it, in s; empty if not stated
 * @param cast how it is cast; null if it stays in the pot
 */
public record Job(
    String recipeId,
    Recipe recipe,
    Losses losses,
    Known<Batch> amount,
    Heating heating,
    OptionalDouble activeSeconds,
    @Nullable Cast cast) {

  /**
   * What a batch is melted with.
   *
   * @param vessel the vessel
   * @param source what heats it
   * @param thermometer the thermometer; null if there is none
   * @param reading what the thermometer shows; null if not stated
   * @param hoursHeld how long it is kept molten, in h; empty if not stated
   */
  public record Heating(
      Vessel vessel,
      HeatSource source,
      @Nullable Thermometer thermometer,
      @Nullable TemperaturePoint reading,
      OptionalDouble hoursHeld) {}

  /**
   * How a batch is cast.
   *
   * @param mould the mould
   * @param fill how full each cup is poured
   * @param measuredDensity the measured density of the melt in kg/m³; empty if the catalogue's is
   *     used
   */
  public record Cast(Mould mould, VolumeFraction fill, OptionalDouble measuredDensity) {

    /**
     * Returns what a net amount gives, by the measured density of the melt or else by the
     * catalogue's.
     *
     * @param net the net amount
     * @return the casting, or why it is not known
     */
    public Known<Casting> casting(Mixture net) {
      return measuredDensity().isPresent()
          ? Known.of(measured(net, measuredDensity.getAsDouble()))
          : Known.of(
              Casting.find(net, mould, fill, DensityBasis.MELT), () -> unknown(net.composition()));
    }

    private static NotKnown unknown(Composition melt) {
      return NotKnown.density(
          Phrase.of("not-known.cakes"),
          DensityBasis.MELT,
          melt.materials(),
          Phrase.of("not-known.cakes.remedy"));
    }

    private Casting measured(Mixture net, double meltDensity) {
      Composition mix = net.composition();
      return DensityBasis.SOLID
          .findTable(mix.materials())
          .map(table -> mix.volumeView(table).density())
          .map(cold -> Casting.of(net.mass(), mould, fill, Densities.exactly(meltDensity), cold))
          .orElseGet(
              () -> Casting.of(net.mass(), mould, fill, QuantityKind.DENSITY.ofSi(meltDensity)));
    }
  }

  String name() {
    return recipe.name();
  }

  /**
   * Returns what is in the pot; known also where it is not how much.
   *
   * @return its composition
   */
  public Composition mix() {
    return recipe.composition();
  }

  /** How much is made; empty if that is not known. */
  Optional<Batch> batch() {
    return amount.value();
  }

  /**
   * Returns how it is cast.
   *
   * @return how; empty if it is not cast
   */
  public Optional<Cast> casting() {
    return Optional.ofNullable(cast);
  }
}
