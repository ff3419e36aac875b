// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import org.jspecify.annotations.Nullable;

/**
 * A line of a recipe as it stands in a file, not checked yet: either a material or another recipe.
 *
 * <p>Immutable.
 *
 * @param material the id of the material; absent if the line calls for a recipe
 * @param recipe the name of the other recipe; absent if the line calls for a material
 * @param parts how many parts by mass, not negative
 */
public record RecipePartDraft(
    @Nullable String material, @Nullable String recipe, @Nullable Double parts) {}
