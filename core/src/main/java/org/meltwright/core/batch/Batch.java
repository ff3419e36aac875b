// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import static org.meltwright.core.batch.BatchProblem.CHECK;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.explain.Explanation;
import org.meltwright.core.material.Material;
import org.meltwright.core.mixture.Mixture;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;

/**
 * A recipe in an amount, worked out from any one thing that is known: an ingredient's mass, all
 * that is left of it, the total in the pot, the net wanted, or a number of cakes.
 *
 * <p>For example, 730 g of the second side at 1 : 8 is 91.25 g of the first and 821.25 g in the
 * pot. {@link #charge} is before losses, {@link #net} after; both know their shares by mass, and by
 * volume in a stated state.
 *
 * <p>With 4 % insolubles in the resin and 2 % left on pot and tools, in code:
 *
 * <pre>{@code
 * Material resin = MaterialCatalogue.standard().require("damar");
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * Recipe medium = Recipe.builder("medium").part(resin, 1).part(wax, 8).build();
 * Losses losses =
 *     Losses.NONE
 *         .withInsolubles(resin, MassFraction.ofPercent(4))
 *         .withFilm(MassFraction.ofPercent(2));
 * Batch batch = Batch.usingUp(medium, wax, grams(730), losses);
 * batch.charge().massKilograms(); // 0.82125 kg
 * batch.net().massKilograms(); // 0.8012 kg
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class Batch {

  /**
   * From a tenth of a microgram to a million tonnes: the guard against slips, not a craft limit.
   */
  static final double LIGHTEST = 1e-10;

  private static final double HEAVIEST = 1e9;

  private final Recipe recipe;
  private final Losses losses;
  private final double chargeKilograms;
  private final Mixture net;
  private final @Nullable BatchLine usedUp;

  /**
   * Returns the batch that holds a given mass of one ingredient.
   *
   * @param recipe the recipe
   * @param material the ingredient: as a line of the recipe calls for it; if none does, wherever it
   *     is in the sub-recipes
   * @param mass its mass
   * @param losses what is lost
   * @return the batch
   * @throws ProblemException if the recipe does not hold the ingredient, the mass is not above
   *     zero, or the losses leave nothing
   */
  public static Batch ofIngredient(
      Recipe recipe, Material material, Quantity<Mass> mass, Losses losses) {
    return ofIngredient(recipe, Ingredient.of(material), mass, losses);
  }

  /**
   * Returns the batch that holds a given mass of one ingredient, also of what a sub-recipe makes.
   *
   * @param recipe the recipe
   * @param ingredient the ingredient, as a line of the recipe calls for it; a material wherever it
   *     is, if no line does
   * @param mass its mass
   * @param losses what is lost
   * @return the batch
   * @throws ProblemException if the recipe does not call for it, the mass is not above zero, or the
   *     losses leave nothing
   */
  public static Batch ofIngredient(
      Recipe recipe, Ingredient ingredient, Quantity<Mass> mass, Losses losses) {
    return new Batch(recipe, losses, requireMass(mass) / share(recipe, ingredient), null);
  }

  /**
   * Returns the batch that uses up all that is left of one ingredient; its line is never rounded
   * up.
   *
   * @param recipe the recipe
   * @param material the ingredient, as a line of the recipe calls for it
   * @param left all that is left of it
   * @param losses what is lost
   * @return the batch
   * @throws ProblemException if the recipe does not hold the ingredient, the mass is not above
   *     zero, or the losses leave nothing
   */
  public static Batch usingUp(
      Recipe recipe, Material material, Quantity<Mass> left, Losses losses) {
    BatchLine usedUp = new BatchLine(Ingredient.of(material), requireMass(left));
    double charge = usedUp.massKilograms() / share(recipe, usedUp.ingredient());
    return new Batch(recipe, losses, charge, usedUp);
  }

  /**
   * Returns the batch of a mass of which nothing is lost.
   *
   * @param recipe the recipe
   * @param mass all that is weighed in, and all that comes out
   * @return the batch
   * @throws ProblemException if the mass is not above zero
   */
  public static Batch of(Recipe recipe, Quantity<Mass> mass) {
    return ofTotal(recipe, mass, Losses.NONE);
  }

  /**
   * Returns the batch with a given total in the pot, before losses.
   *
   * @param recipe the recipe
   * @param total all that is weighed in
   * @param losses what is lost
   * @return the batch
   * @throws ProblemException if the total is not above zero or the losses leave nothing
   */
  public static Batch ofTotal(Recipe recipe, Quantity<Mass> total, Losses losses) {
    return new Batch(recipe, losses, requireMass(total), null);
  }

  /**
   * Returns the batch that leaves a given net amount after losses.
   *
   * @param recipe the recipe
   * @param net what is to be left
   * @param losses what is lost
   * @return the batch
   * @throws ProblemException if the net amount is not above zero or the losses leave nothing
   */
  public static Batch ofNet(Recipe recipe, Quantity<Mass> net, Losses losses) {
    return new Batch(
        recipe, losses, losses.chargeKilograms(recipe.contents(), requireMass(net)), null);
  }

  /**
   * Returns the batch that leaves a number of cakes after losses.
   *
   * @param recipe the recipe
   * @param cakes how many, at least 1
   * @param cake the mass of one, as {@link Casting#cake} gives it
   * @param losses what is lost
   * @return the batch
   * @throws ProblemException if there is no cake, its mass is not above zero, or the losses leave
   *     nothing
   */
  public static Batch ofCakes(Recipe recipe, int cakes, Quantity<Mass> cake, Losses losses) {
    CHECK.between(cakes, 1, Integer.MAX_VALUE, "number of cakes");
    return ofNet(recipe, QuantityKind.MASS.ofSi(cakes * requireMass(cake)), losses);
  }

  private static double requireMass(Quantity<Mass> mass) {
    return CHECK.between(mass, LIGHTEST, HEAVIEST, "mass");
  }

  private static double share(Recipe recipe, Ingredient ingredient) {
    double share = recipe.lineShare(ingredient);
    if (share == 0) {
      share = ingredient.material().map(recipe.composition()::massFractionValue).orElse(0.0);
    }
    if (!(share > 0)) {
      throw new ProblemException(
          Problem.of(BatchProblem.NOT_IN_RECIPE, ingredient.name()).with("recipe", recipe.name()));
    }
    return share;
  }

  private Batch(Recipe recipe, Losses losses, double chargeKilograms, @Nullable BatchLine usedUp) {
    this.recipe = recipe;
    this.losses = losses;
    this.chargeKilograms =
        CHECK.between(chargeKilograms, LIGHTEST, HEAVIEST, "mass in the pot in kg");
    this.net = losses.net(recipe.contents(), chargeKilograms);
    this.usedUp = usedUp;
  }

  /** {@return the recipe} */
  public Recipe recipe() {
    return recipe;
  }

  /**
   * Returns what is lost.
   *
   * @return the losses
   */
  public Losses losses() {
    return losses;
  }

  /**
   * Returns the ingredient that is to be used up.
   *
   * @return the ingredient; empty unless the batch was worked out from all that is left of it
   */
  public Optional<Ingredient> usedUp() {
    return Optional.ofNullable(usedUp).map(BatchLine::ingredient);
  }

  /**
   * Returns all that is weighed in: the pot before losses.
   *
   * @return the charge
   */
  public Mixture charge() {
    return new Mixture(recipe.composition(), chargeKilograms);
  }

  /**
   * Returns what is left to cast: the pot after losses, without insolubles.
   *
   * @return the net mixture
   */
  public Mixture net() {
    return net;
  }

  /**
   * Returns what goes in, a line for each line of the recipe; what is used up as it was given.
   *
   * @return the lines, in the recipe's order, not rounded
   */
  public List<BatchLine> lines() {
    double[] shares = recipe.lineShares();
    List<BatchLine> lines = new ArrayList<>();
    for (int i = 0; i < shares.length; i++) {
      RecipePart part = recipe.parts().get(i);
      BatchLine line = new BatchLine(part.ingredient(), chargeKilograms * shares[i]);
      lines.add(
          usedUp != null && isOnlyLineOf(usedUp, part)
              ? new BatchLine(part.ingredient(), usedUp.massKilograms())
              : line);
    }
    return List.copyOf(lines);
  }

  private boolean isOnlyLineOf(BatchLine all, RecipePart part) {
    return part.ingredient().isMeantBy(all.ingredient())
        && recipe.parts().stream().filter(p -> p.ingredient().isMeantBy(all.ingredient())).count()
            == 1;
  }

  /**
   * Returns the mass of what a line of the recipe calls for.
   *
   * @param material the ingredient: all lines of it, or of its lot if it names one
   * @return its mass; zero if no line calls for it
   */
  public Quantity<Mass> massOf(Material material) {
    Ingredient asked = Ingredient.of(material);
    double share = recipe.lineShare(asked);
    return usedUp != null
            && share > 0
            && asked.isMeantBy(usedUp.ingredient())
            && usedUp.ingredient().isMeantBy(asked)
        ? usedUp.mass()
        : QuantityKind.MASS.ofSi(chargeKilograms * share);
  }

  /**
   * Returns what stays behind as insolubles.
   *
   * @return the mass in kg
   */
  public double insolublesKilograms() {
    return chargeKilograms * recipe.contents().insolublesShare(losses);
  }

  /**
   * Returns what stays on pot and tools.
   *
   * @return the film loss in kg
   */
  public double filmKilograms() {
    return losses.filmKilograms(chargeKilograms);
  }

  /**
   * Returns what is lost in straining.
   *
   * @return the straining loss in kg
   */
  public double strainingKilograms() {
    return losses.strainingKilograms(chargeKilograms);
  }

  /**
   * Returns how the net amount comes about.
   *
   * @return the explanation
   */
  public Explanation explanation() {
    return BatchWorking.of(this);
  }

  @Override
  public String toString() {
    return chargeKilograms + " kg of " + recipe.name() + ", " + net.massKilograms() + " kg net";
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Batch that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<@Nullable Object> stated() {
    return Arrays.asList(recipe, losses, chargeKilograms, usedUp);
  }
}
