// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.laws;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import org.meltwright.core.batch.Losses;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.material.Material;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.Mixture;
import org.meltwright.units.MassFraction;
import org.meltwright.units.QuantityKind;

/** Random materials, compositions, mixtures, recipes and losses for property tests. */
public final class MixtureArbitraries {

  private static final double LIGHTEST_KILOGRAMS = 1e-9;
  private static final double HEAVIEST_KILOGRAMS = 1e5;

  private MixtureArbitraries() {}

  /**
   * Returns random materials out of the samples.
   *
   * @return the materials
   */
  public static Arbitrary<Material> materials() {
    return Arbitraries.of(SampleMaterials.all());
  }

  /**
   * Returns random compositions of one to seven of the sample materials.
   *
   * @return the compositions
   */
  public static Arbitrary<Composition> compositions() {
    return compositions(SampleMaterials.all());
  }

  /**
   * Returns random compositions of sample materials, among them lots and versions of one material.
   *
   * @return the compositions
   */
  public static Arbitrary<Composition> compositionsOfLots() {
    return compositions(SampleMaterials.withLotsAndVersions());
  }

  /**
   * Returns random compositions of one to all of your own materials.
   *
   * @param materials the materials, all different; lots and versions of one are welcome
   * @return the compositions
   */
  public static Arbitrary<Composition> compositions(List<Material> materials) {
    return Arbitraries.subsetOf(materials)
        .ofMinSize(1)
        .map(List::copyOf)
        .flatMap(
            chosen ->
                parts()
                    .array(double[].class)
                    .ofSize(chosen.size())
                    .map(parts -> Composition.ofParts(chosen, parts)));
  }

  /**
   * Returns random parts, from a thousandth to a thousand.
   *
   * @return the parts
   */
  public static Arbitrary<Double> parts() {
    return Arbitraries.doubles().between(1e-3, 1e3).ofScale(9);
  }

  /**
   * Returns random masses from a microgram to a hundred tonnes.
   *
   * @return the masses in kg
   */
  public static Arbitrary<Double> kilograms() {
    return Arbitraries.doubles()
        .between(Math.log10(LIGHTEST_KILOGRAMS), Math.log10(HEAVIEST_KILOGRAMS))
        .ofScale(9)
        .map(exponent -> Math.pow(10, exponent));
  }

  /**
   * Returns random shares from nothing to all.
   *
   * @return the shares
   */
  public static Arbitrary<MassFraction> massFractions() {
    return Arbitraries.doubles().between(0, 1).ofScale(9).map(MassFraction::of);
  }

  /**
   * Returns random mixtures.
   *
   * @return the mixtures
   */
  public static Arbitrary<Mixture> mixtures() {
    return Combinators.combine(compositions(), kilograms()).as(Mixture::new);
  }

  /**
   * Returns random recipes, up to four levels deep, of shared sub-recipes.
   *
   * @return the recipes
   */
  public static Arbitrary<Recipe> recipes() {
    return recipes(3);
  }

  private static Arbitrary<Recipe> recipes(int levels) {
    Arbitrary<Recipe> flat = compositions().map(c -> flat("level 0", c));
    Arbitrary<Recipe> result = flat;
    for (int level = 1; level <= levels; level++) {
      String name = "level " + level;
      Arbitrary<Recipe> below = result;
      result =
          Combinators.combine(below, materials(), parts(), parts(), parts())
              .as(
                  (made, material, a, b, c) ->
                      Recipe.builder(name).part(made, a).part(material, b).part(made, c).build());
    }
    return result;
  }

  private static Recipe flat(String name, Composition composition) {
    Recipe.Builder recipe = Recipe.builder(name);
    for (Material material : composition.materials()) {
      recipe.part(material, composition.massFractionValue(material));
    }
    return recipe.build();
  }

  /**
   * Returns random losses that leave at least half of any charge above a kilogram.
   *
   * @return the losses
   */
  public static Arbitrary<Losses> losses() {
    Arbitrary<Double> few = Arbitraries.doubles().between(0, 0.15).ofScale(9);
    return Combinators.combine(materials(), few, few, few, few)
        .as(
            (material, insolubles, film, straining, fixed) ->
                Losses.NONE
                    .withInsolubles(material, MassFraction.of(insolubles))
                    .withFilm(QuantityKind.MASS.ofSi(fixed), MassFraction.of(film))
                    .withStraining(MassFraction.of(straining)));
  }
}
