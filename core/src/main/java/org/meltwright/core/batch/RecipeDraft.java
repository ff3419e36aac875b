// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A recipe as it stands in a file, not checked yet: its parts name materials and other recipes.
 *
 * <p>Drafts may contradict each other or themselves; {@link RecipeBook} turns them into recipes, or
 * says all that is wrong.
 *
 * <p>For example, two that call for each other:
 *
 * <pre>{@code
 * RecipePartDraft ofGlaze = new RecipePartDraft(null, "glaze", 1.0);
 * RecipePartDraft ofMedium = new RecipePartDraft(null, "medium", 1.0);
 * RecipeDraft medium = new RecipeDraft("medium", List.of(ofGlaze));
 * RecipeDraft glaze = new RecipeDraft("glaze", List.of(ofMedium));
 * List<Problem> problems = new ArrayList<>();
 * try {
 *   RecipeBook.of(List.of(medium, glaze), MaterialCatalogue.standard()::find);
 * } catch (ProblemException e) {
 *   problems.addAll(e.problems());
 * }
 * problems.get(0).found(); // medium → glaze → medium
 * }</pre>
 *
 * <p>Immutable if its list is.
 *
 * @param name the name of the recipe
 * @param parts its lines
 */
public record RecipeDraft(@Nullable String name, @Nullable List<RecipePartDraft> parts) {}
