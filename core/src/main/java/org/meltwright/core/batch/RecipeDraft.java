// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.material.MaterialLookup;
import org.meltwright.units.FieldReader;
import org.meltwright.units.ProblemException;
import org.meltwright.units.Problems;
import org.meltwright.units.QuantityParser;

/**
 * A {@link Recipe} as it is written down, not checked yet: its lines name materials and other
 * recipes.
 *
 * <p>Drafts may contradict each other or themselves; {@link RecipeBook} turns them into recipes, or
 * says all that is wrong.
 *
 * <p>For example, as a ratio and as it is written back:
 *
 * <pre>{@code
 * MaterialLookup catalogue = MaterialCatalogue.standard()::require;
 * RecipeDraft draft = new RecipeDraft("medium", "Medium", "1:8 damar:beeswax-yellow", null);
 * Recipe medium = draft.toRecipe(QuantityParser.localeFree(), catalogue);
 * medium; // Medium = 1.0 damar + 8.0 beeswax-yellow
 * medium.toDraft().parts().get(1).parts(); // 8
 * }</pre>
 *
 * <p>Immutable if its list is.
 *
 * @param id what other recipes call it; its name if absent
 * @param name the name of the recipe
 * @param ratio two sides by mass, such as "1:8 damar:beeswax-yellow"; absent if there are lines
 * @param parts its lines; absent if there is a ratio
 */
public record RecipeDraft(
    @Nullable String id,
    @Nullable String name,
    @Nullable String ratio,
    @Nullable List<RecipePartDraft> parts) {

  /** The draft; what recipes are called is asked by their names. */
  static RecipeDraft of(Recipe recipe, UnaryOperator<String> referenceOf) {
    OneReference.require(recipe.parts().stream().map(RecipePart::ingredient), referenceOf);
    String reference = referenceOf.apply(recipe.name());
    return new RecipeDraft(
        reference.equals(recipe.name()) ? null : reference,
        recipe.name(),
        null,
        RecipePartDraft.of(recipe, referenceOf));
  }

  /**
   * Returns the recipe, if it calls for materials alone; what calls for other recipes is read by
   * {@link RecipeBook}.
   *
   * @param parser reads the amounts
   * @param materials finds the materials
   * @return the recipe
   * @throws ProblemException if a field is missing or wrong; it carries all problems found, each at
   *     its field
   */
  public Recipe toRecipe(QuantityParser parser, MaterialLookup materials) {
    Problems problems = new Problems();
    Optional<Recipe> recipe =
        new RecipeReader(FieldReader.of(parser, problems), materials, List.of()).alone(this);
    problems.throwIfAny();
    return recipe.orElseThrow();
  }

  /** What other recipes call it; empty if nobody can. */
  Optional<String> reference() {
    return Stream.of(Optional.ofNullable(id), Optional.ofNullable(name))
        .flatMap(Optional::stream)
        .filter(text -> !text.isBlank())
        .findFirst();
  }
}
