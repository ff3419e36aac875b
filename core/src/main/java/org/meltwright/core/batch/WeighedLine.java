// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import static org.meltwright.core.batch.BatchProblem.CHECK;

import java.time.Instant;
import java.util.Objects;
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
 * Recipe plain = Recipe.builder("plain cakes").part(wax, 1).build();
 * Instant at = Instant.parse("2026-03-14T09:30:00Z");
 * WeighedLine bag = WeighedLine.of(wax.withLot("bag 7"), grams(150), at);
 * BatchRecord first = BatchRecord.of("B12", plain, at, List.of(bag));
 * WeighedLine melted = WeighedLine.of(first, grams(40), at.plus(Duration.ofDays(1)));
 * bag; // 0.15 kg of beeswax-yellow (lot bag 7)
 * melted; // 0.04 kg of plain cakes (batch B12)
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class WeighedLine {

  private static final double MOST = 1e9;

  private final Ingredient ingredient;
  private final @Nullable BatchRecord batch;
  private final double massKilograms;
  private final Instant at;

  /**
   * Returns what was weighed from the shelf.
   *
   * @param material the material, {@linkplain Material#withLot of its lot} where that is known
   * @param mass how much, not negative
   * @param at when
   * @return the line
   * @throws org.meltwright.units.ProblemException if the mass is negative or not finite
   */
  public static WeighedLine of(Material material, Quantity<Mass> mass, Instant at) {
    return new WeighedLine(Ingredient.of(material), null, mass, at);
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
    return new WeighedLine(Ingredient.of(batch.recipe()), batch, mass, at);
  }

  private WeighedLine(
      Ingredient ingredient, @Nullable BatchRecord batch, Quantity<Mass> mass, Instant at) {
    this.ingredient = ingredient;
    this.batch = batch;
    this.massKilograms = CHECK.between(mass, 0, MOST, "mass", ingredient.name());
    this.at = at;
  }

  static double checkedMass(Quantity<Mass> mass) {
    return CHECK.between(mass, 0, MOST, "mass");
  }

  /**
   * Returns what was weighed.
   *
   * @return the material of its lot, or the recipe of the earlier batch
   */
  public Ingredient ingredient() {
    return ingredient;
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
        && Objects.equals(batch, that.batch)
        && massKilograms == that.massKilograms
        && at.equals(that.at);
  }

  @Override
  public int hashCode() {
    return Objects.hash(ingredient, batch, massKilograms);
  }

  @Override
  public String toString() {
    return massKilograms
        + " kg of "
        + ingredient.material().map(Material::toString).orElse(ingredient.name())
        + (batch == null ? "" : " (batch " + batch.id() + ")");
  }
}
