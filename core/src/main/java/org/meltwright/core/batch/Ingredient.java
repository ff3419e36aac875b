// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import java.util.Optional;
import org.meltwright.core.material.Material;
import org.meltwright.core.mixture.Composition;
import org.meltwright.units.Bilingual;

/**
 * What a line of a recipe calls for: a material from the shelf, or something made by another
 * recipe.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Material resin = MaterialCatalogue.standard().require("damar");
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * Material ochre = MaterialCatalogue.standard().require("yellow-ochre");
 * Recipe medium = Recipe.builder("medium").part(resin, 1).part(wax, 8).build();
 * Recipe colour = Recipe.builder("ochre cakes").part(medium, 9).part(ochre, 1).build();
 * Ingredient.of(medium).material().isPresent(); // false
 * colour.lineShare(Ingredient.of(medium)); // 0.9
 * colour.lineShare(Ingredient.of(wax)); // 0.0
 * }</pre>
 *
 * <p>What another recipe makes has been strained, where its losses say so:
 *
 * <pre>{@code
 * Material resin = MaterialCatalogue.standard().require("damar");
 * Recipe dissolved = Recipe.builder("dissolved resin").part(resin, 1).build();
 * Losses dirt = Losses.NONE.withInsolubles(resin, MassFraction.ofPercent(4));
 * Recipe varnish = Recipe.builder("varnish").part(Ingredient.of(dissolved, dirt), 1).build();
 * Batch.ofTotal(varnish, grams(100), dirt).net().massKilograms(); // 0.1 kg
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public sealed interface Ingredient {

  /**
   * Returns a material as an ingredient.
   *
   * @param material the material
   * @return the ingredient
   */
  static Ingredient of(Material material) {
    return new FromShelf(material);
  }

  /**
   * Returns what another recipe makes as an ingredient, nothing lost in making it.
   *
   * @param recipe the other recipe
   * @return the ingredient
   */
  static Ingredient of(Recipe recipe) {
    return of(recipe, Losses.NONE);
  }

  /**
   * Returns what another recipe makes as an ingredient, after what is lost in making it.
   *
   * <p>Its composition is without insolubles; a price or a purchase counts all that was weighed in.
   * What was strained out here stays out of the losses of a batch that it goes into.
   *
   * @param recipe the other recipe, as it is weighed in
   * @param losses what is lost in making it
   * @return the ingredient
   */
  static Ingredient of(Recipe recipe, Losses losses) {
    return new Made(recipe, losses);
  }

  /**
   * Tells whether who asks for an ingredient means this one: a material that {@linkplain
   * Material#isMeantBy is meant}, or what an equal recipe makes, whatever is lost on the way.
   *
   * @param asked the ingredient asked for
   * @return whether this one is meant
   */
  boolean isMeantBy(Ingredient asked);

  /**
   * Returns what it is called.
   *
   * @return the id of the material, with its lot if it names one, or the name of the recipe
   */
  String name();

  /**
   * Returns what a reader calls it.
   *
   * @return the name of the material, with its lot if it names one, or the name of the recipe
   */
  default Bilingual inWords() {
    return material()
        .map(m -> Bilingual.of(m::name).plus(m.lot().map(lot -> " (" + lot + ")").orElse("")))
        .orElseGet(() -> Bilingual.of(name()));
  }

  /**
   * Returns what it is made of.
   *
   * @return its composition
   */
  Composition composition();

  /**
   * Returns the material, if it comes from the shelf.
   *
   * @return the material; empty if it is made by a recipe
   */
  Optional<Material> material();

  /**
   * Returns the recipe, if it is made.
   *
   * @return the recipe; empty if it comes from the shelf
   */
  Optional<Recipe> recipe();

  /**
   * Returns what is lost in making it.
   *
   * @return the losses of the batch that makes it; none if it comes from the shelf
   */
  Losses losses();

  /**
   * A material from the shelf.
   *
   * @param fromShelf the material
   */
  record FromShelf(Material fromShelf) implements Ingredient {

    @Override
    public boolean isMeantBy(Ingredient asked) {
      return asked.material().filter(fromShelf::isMeantBy).isPresent();
    }

    @Override
    public String name() {
      return fromShelf.toString();
    }

    @Override
    public Composition composition() {
      return Composition.of(fromShelf);
    }

    @Override
    public Optional<Material> material() {
      return Optional.of(fromShelf);
    }

    @Override
    public Optional<Recipe> recipe() {
      return Optional.empty();
    }

    @Override
    public Losses losses() {
      return Losses.NONE;
    }
  }

  /**
   * What another recipe makes.
   *
   * @param made the recipe
   * @param losses what is lost in making it
   */
  record Made(Recipe made, Losses losses) implements Ingredient {

    @Override
    public boolean isMeantBy(Ingredient asked) {
      return asked.recipe().filter(made::equals).isPresent();
    }

    @Override
    public String name() {
      return made.name();
    }

    @Override
    public Composition composition() {
      return Contents.of(this).composition();
    }

    @Override
    public Optional<Material> material() {
      return Optional.empty();
    }

    @Override
    public Optional<Recipe> recipe() {
      return Optional.of(made);
    }
  }
}
