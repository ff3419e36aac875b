// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import org.jspecify.annotations.Nullable;

/**
 * A weighed line as it stands in a file, not checked yet: either a material with its lot or an
 * earlier batch.
 *
 * <p>Immutable.
 *
 * @param material the id of the material; absent if the line names a batch
 * @param lot the lot of the material; absent or empty if unknown
 * @param batch the number of the earlier batch; absent if the line names a material
 * @param massKilograms how much was weighed, in kg
 * @param at when, for example {@code 2026-03-14T09:41:00Z} (ISO 8601)
 */
public record WeighedLineDraft(
    @Nullable String material,
    @Nullable String lot,
    @Nullable String batch,
    @Nullable Double massKilograms,
    @Nullable String at) {}
