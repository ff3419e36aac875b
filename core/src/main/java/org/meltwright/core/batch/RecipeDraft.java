// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A recipe as it stands in a file, not checked yet: its parts name materials and other recipes.
 *
 * <p>Drafts may contradict each other or themselves; {@link RecipeBook} turns them into recipes, or
 * says all that is wrong. Immutable if its list is.
 *
 * @param name the name of the recipe
 * @param parts its lines
 */
public record RecipeDraft(@Nullable String name, @Nullable List<RecipePartDraft> parts) {}
