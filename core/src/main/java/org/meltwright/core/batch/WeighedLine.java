// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import static org.meltwright.core.batch.BatchProblem.CHECK;

import java.time.Instant;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.material.Material;

/**
 * What was really weighed in: from a lot of a material, or from an earlier batch; how much and
 * when.
 *
 * <p>For example, from a bag on the shelf, and from the cakes of an earlier day:
 *
 * <pre>{@code
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * Recipe plain = Recipe.named("plain cakes").part(wax, 1).build();
 * Instant at = Instant.parse("2026-03-14T09:30:00Z");
 * WeighedLine bag = WeighedLine.of(wax, "bag 7", grams(150), at);
 * BatchRecord first = BatchRecord.of("B12", plain, at, List.of(bag));
 * WeighedLine melted = WeighedLine.of(first, grams(40), at.plus(Duration.ofDays(1)));
 * bag; // 0.15 kg of beeswax-yellow, lot bag 7
 * melted; // 0.04 kg of plain cakes, lot B12
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class WeighedLine {

  private static final double MOST = 1e9;

  private final Ingredient ingredient;
  private final String lot;
  private final @Nullable BatchRecord batch;
  private final double massKilograms;
  private final Instant at;

  /**
   * Returns what was weighed from a lot of a material.
   *
   * @param material the material
   * @param lot the supplier's lot or your own number of the bag; empty if unknown
   * @param mass how much, not negative
   * @param at when
   * @return the line
   * @throws org.meltwright.units.ProblemException if the mass is negative or not finite
   */
  public static WeighedLine of(Material material, String lot, Quantity<Mass> mass, Instant at) {
    return new WeighedLine(Ingredient.of(material), lot, null, mass, at);
  }

  /**
   * Returns what was weighed from an earlier batch.
   *
   * @param batch the earlier batch
   * @param mass how much, not negative
   * @param at when
   * @return the line
   * @throws org.meltwright.units.ProblemException if the mass is negative or not finite
   */
  public static WeighedLine of(BatchRecord batch, Quantity<Mass> mass, Instant at) {
    return new WeighedLine(Ingredient.of(batch.recipe()), batch.id(), batch, mass, at);
  }

  private WeighedLine(
      Ingredient ingredient,
      String lot,
      @Nullable BatchRecord batch,
      Quantity<Mass> mass,
      Instant at) {
    this.ingredient = ingredient;
    this.lot = lot;
    this.batch = batch;
    this.massKilograms = CHECK.between(mass, 0, MOST, "mass", ingredient.name());
    this.at = at;
  }

  /**
   * Returns what was weighed.
   *
   * @return the material, or the recipe of the earlier batch
   */
  public Ingredient ingredient() {
    return ingredient;
  }

  /**
   * Returns the lot.
   *
   * @return the lot of the material or the id of the earlier batch; empty if unknown
   */
  public String lot() {
    return lot;
  }

  /**
   * Returns the earlier batch.
   *
   * @return the batch; empty if it came from the shelf
   */
  public Optional<BatchRecord> batch() {
    return Optional.ofNullable(batch);
  }

  /**
   * Returns how much was weighed.
   *
   * @return the mass in kg
   */
  public double massKilograms() {
    return massKilograms;
  }

  /**
   * Returns when it was weighed.
   *
   * @return the time
   */
  public Instant at() {
    return at;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof WeighedLine that
        && ingredient.equals(that.ingredient)
        && lot.equals(that.lot)
        && (batch == null) == (that.batch == null)
        && massKilograms == that.massKilograms
        && at.equals(that.at);
  }

  @Override
  public int hashCode() {
    return ingredient.hashCode() * 31 + lot.hashCode() * 7 + Double.hashCode(massKilograms);
  }

  @Override
  public String toString() {
    return massKilograms + " kg of " + ingredient.name() + (lot.isEmpty() ? "" : ", lot " + lot);
  }
}
