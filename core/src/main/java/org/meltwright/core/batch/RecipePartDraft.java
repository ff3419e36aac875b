// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import org.jspecify.annotations.Nullable;

/**
 * A line of a recipe as it stands in a file, not checked yet: either a material or another recipe.
 *
 * <p>For example, a line whose amount was forgotten:
 *
 * <pre>{@code
 * RecipePartDraft line = new RecipePartDraft("beeswax-yellow", null, null);
 * RecipeDraft draft = new RecipeDraft("plain cakes", List.of(line));
 * List<Problem> problems = new ArrayList<>();
 * try {
 *   RecipeBook.of(List.of(draft), MaterialCatalogue.standard()::find);
 * } catch (ProblemException e) {
 *   problems.addAll(e.problems());
 * }
 * problems.get(0).path(); // /0/parts/0/parts
 * problems.get(0).what(Locale.ENGLISH); // The amount is missing.
 * }</pre>
 *
 * <p>Immutable.
 *
 * @param material the id of the material; absent if the line calls for a recipe
 * @param recipe the name of the other recipe; absent if the line calls for a material
 * @param parts how many parts by mass, not negative
 */
public record RecipePartDraft(
    @Nullable String material, @Nullable String recipe, @Nullable Double parts) {}
