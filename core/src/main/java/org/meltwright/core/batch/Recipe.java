// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.material.Material;
import org.meltwright.core.mixture.Composition;
import org.meltwright.units.MixingRatio;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * A named recipe: lines of materials and of what other recipes make, each {@linkplain StatedAmount
 * as stated}, and the composition by mass that they come to.
 *
 * <p>Recipes share their sub-recipes: a medium that ten colours use is one object. A recipe can
 * hold only recipes that were there before it, so none contains itself, and each works out its
 * composition once, from those of its parts: 50 levels of shared sub-recipes cost 50 steps.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Material resin = MaterialCatalogue.standard().require("damar");
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * Material white = MaterialCatalogue.standard().require("titanium-white-rutile");
 * MixingRatio ratio = QuantityParser.localeFree().parseMixingRatio("1:8", "resin", "wax");
 * Recipe medium = Recipe.ofRatio("medium", ratio, Map.of("resin", resin, "wax", wax));
 * Recipe cakes = Recipe.builder("white cakes").part(medium, 9).part(white, 1).build();
 * cakes; // white cakes = 9.0 medium + 1.0 titanium-white-rutile
 * cakes.composition().massFraction(resin).percent(); // 10.0 %
 * }</pre>
 *
 * <p>Two recipes are equal if their names and compositions are, and as much of each material has
 * been strained before, whatever the order of the lines. Immutable and thread-safe.
 */
public final class Recipe {

  private final String name;
  private final List<RecipePart> parts;
  private final double[] masses;
  private final Contents contents;

  /**
   * Starts a recipe.
   *
   * @param name its name, not blank
   * @return a builder
   */
  public static Builder builder(String name) {
    return new Builder(name);
  }

  /**
   * Returns a recipe of lines as they are stated.
   *
   * <p>All lines state parts by mass; or all parts by volume; or all a mass or a volume; or all a
   * share of the whole, by mass or by volume, in one state. One of the shares may be the rest; it
   * has to be there where some shares are by mass and others by volume. Where one line is made up
   * to a mass or a volume, the others may state masses, volumes and shares of that whole side by
   * side.
   *
   * @param name its name, not blank
   * @param parts the lines, at least one above zero
   * @return the recipe
   * @throws ProblemException if the name is blank, no part is above zero, the lines make no whole,
   *     what they state does not go together, or a density is missing
   */
  public static Recipe of(String name, List<RecipePart> parts) {
    return new Recipe(name, parts);
  }

  /**
   * Returns a recipe of two materials in a ratio by mass.
   *
   * <p>The ratio names its sides, so each material is given by the name of its side, never by its
   * place: 1:7 resin:wax cannot be read as seven parts of resin. A ratio written without names gets
   * them in {@link org.meltwright.units.QuantityParser#parseMixingRatio(CharSequence, String,
   * String)}.
   *
   * @param name its name, not blank
   * @param ratio the ratio; 1 : 8 is one part in nine
   * @param sides the material of each side of the ratio, by the name of the side
   * @return the recipe, in the order of the ratio
   * @throws ProblemException if the names are not those of the ratio's two sides, or the name is
   *     blank
   */
  public static Recipe ofRatio(String name, MixingRatio ratio, Map<String, Material> sides) {
    List<Material> inOrder = Composition.ofRatio(ratio, sides).materials();
    return builder(name)
        .part(inOrder.get(0), ratio.firstParts())
        .part(inOrder.get(inOrder.size() - 1), ratio.secondParts())
        .build();
  }

  private Recipe(String name, List<RecipePart> parts) {
    this.name = name;
    this.parts = List.copyOf(parts);
    if (name.isBlank()) {
      throw new ProblemException(Problem.of(BatchProblem.NAME_MISSING, name));
    }
    if (parts.isEmpty()) {
      throw new ProblemException(Problem.of(BatchProblem.NO_PARTS, name));
    }
    this.masses = LineMasses.of(this.parts);
    this.contents =
        Contents.blend(this.parts.stream().map(p -> Contents.of(p.ingredient())).toList(), masses);
  }

  /** {@return the name} */
  public String name() {
    return name;
  }

  /**
   * Returns its lines.
   *
   * @return the parts, in the order given
   */
  public List<RecipePart> parts() {
    return parts;
  }

  /**
   * Returns what it is made of, down to materials.
   *
   * @return the composition by mass
   */
  public Composition composition() {
    return contents.composition();
  }

  Contents contents() {
    return contents;
  }

  /**
   * Returns the share of an ingredient as the recipe's own lines call for it.
   *
   * @param ingredient a material or a sub-recipe; all lines that are {@linkplain
   *     Ingredient#isMeantBy meant} add up
   * @return its share by mass of the whole; zero if no line calls for it
   */
  public double lineShare(Ingredient ingredient) {
    double wanted = 0;
    for (int i = 0; i < masses.length; i++) {
      wanted += parts.get(i).ingredient().isMeantBy(ingredient) ? masses[i] : 0;
    }
    return wanted / Arrays.stream(masses).sum();
  }

  /** The shares by mass of the lines, in their order. */
  double[] lineShares() {
    double total = Arrays.stream(masses).sum();
    return Arrays.stream(masses).map(mass -> mass / total).toArray();
  }

  /** What the lines weigh, in a unit of their own. */
  double[] lineMasses() {
    return masses.clone();
  }

  /**
   * Returns this recipe as it is written down; other recipes that it calls for stand by name.
   *
   * <p>Its lines are as they were stated. Where volumes were counted with densities of one's own,
   * which a draft does not hold, they are parts by mass that come to the same composition.
   *
   * @return the draft; {@link RecipeBook#toDrafts} writes those of all that it needs
   * @throws ProblemException if two materials of one id and lot are in its lines
   */
  public RecipeDraft toDraft() {
    return RecipeDraft.of(this, UnaryOperator.identity());
  }

  /**
   * Returns the recipe as a tree of lines, each sub-recipe spelled out where it comes first.
   *
   * @param mostLines the most lines wanted, at least 1; a last line "…" stands for what is cut off
   * @return the lines, without line breaks
   */
  public List<String> tree(int mostLines) {
    return RecipeTree.lines(this, mostLines);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Recipe that
        && name.equals(that.name)
        && composition().equals(that.composition())
        && contents.rawShares().equals(that.contents.rawShares());
  }

  @Override
  public int hashCode() {
    return name.hashCode() * 31 + composition().hashCode();
  }

  /**
   * Returns name and lines, locale-free; sub-recipes stand by name.
   *
   * @return for example "medium = 1.0 resin + 8.0 wax"
   */
  @Override
  public String toString() {
    StringJoiner text = new StringJoiner(" + ", name + " = ", "");
    parts.forEach(p -> text.add(p.toString()));
    return text.toString();
  }

  /**
   * Collects the parts of a recipe; not thread-safe.
   *
   * <p>Compared by identity: a builder changes.
   */
  public static final class Builder {

    private final String name;
    private final List<RecipePart> parts = new ArrayList<>();

    private Builder(String name) {
      this.name = name;
    }

    /**
     * Adds parts of a material.
     *
     * @param material the material
     * @param byMass its parts by mass, not negative
     * @return this builder
     * @throws ProblemException if the parts are negative or not finite
     */
    public Builder part(Material material, double byMass) {
      return part(Ingredient.of(material), byMass);
    }

    /**
     * Adds parts of what another recipe makes.
     *
     * @param recipe the other recipe
     * @param byMass its parts by mass, not negative
     * @return this builder
     * @throws ProblemException if the parts are negative or not finite
     */
    public Builder part(Recipe recipe, double byMass) {
      return part(Ingredient.of(recipe), byMass);
    }

    /**
     * Adds parts of an ingredient.
     *
     * @param ingredient a material, or what another recipe makes after its losses
     * @param byMass its parts by mass, not negative
     * @return this builder
     * @throws ProblemException if the parts are negative or not finite
     */
    public Builder part(Ingredient ingredient, double byMass) {
      parts.add(new RecipePart(ingredient, byMass));
      return this;
    }

    /**
     * Adds parts of all materials of a composition.
     *
     * @param composition the composition; its shares are the parts, as if the whole were one
     * @return this builder
     */
    public Builder parts(Composition composition) {
      for (int i = 0; i < composition.size(); i++) {
        part(composition.materials().get(i), composition.massFractionValue(i));
      }
      return this;
    }

    /**
     * Returns the recipe.
     *
     * @return what was collected so far
     * @throws ProblemException if the name is blank or no part is above zero
     */
    public Recipe build() {
      return new Recipe(name, parts);
    }
  }
}
