// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import org.jspecify.annotations.Nullable;

/**
 * A weighed line as it stands in a file, not checked yet: either a material with its lot or an
 * earlier batch.
 *
 * <p>For example, a line with a date in place of a time:
 *
 * <pre>{@code
 * WeighedLineDraft line =
 *     new WeighedLineDraft("beeswax-yellow", "bag 7", null, "150 g", "2026-03-14");
 * BatchRecordDraft draft =
 *     new BatchRecordDraft(
 *         1, "B12", "plain cakes", "2026-03-14T09:30:00Z", List.of(line), null, null);
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * Recipe plain = Recipe.builder("plain cakes").part(wax, 1).build();
 * BatchLedger.ofDrafts(
 *     List.of(draft),
 *     QuantityParser.localeFree(),
 *     name -> Optional.of(plain),
 *     MaterialCatalogue.standard()::require); // throws ProblemException
 * }</pre>
 *
 * <p>Immutable.
 *
 * @param material the id of the material; absent if the line names a batch
 * @param lot the lot of the material; absent or empty if unknown
 * @param batch the number of the earlier batch; absent if the line names a material
 * @param mass how much was weighed, such as "150 g"
 * @param at when, for example {@code 2026-03-14T09:41:00Z} (ISO 8601)
 */
public record WeighedLineDraft(
    @Nullable String material,
    @Nullable String lot,
    @Nullable String batch,
    @Nullable String mass,
    @Nullable String at) {}
