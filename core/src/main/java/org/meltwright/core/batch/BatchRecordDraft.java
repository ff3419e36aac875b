// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A batch record as it stands in a file, not checked yet; free of annotations, so that any JSON
 * library reads and writes it.
 *
 * <p>For example, a record as it goes into a file, and back:
 *
 * <pre>{@code
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * Recipe plain = Recipe.builder("plain cakes").part(wax, 1).build();
 * Instant at = Instant.parse("2026-03-14T09:30:00Z");
 * WeighedLine weighed = WeighedLine.of(wax.withLot("bag 7"), grams(150), at);
 * BatchRecordDraft draft = BatchRecord.of("B12", plain, at, List.of(weighed)).toDraft();
 * draft.recipe(); // plain cakes
 * draft.startedAt(); // 2026-03-14T09:30:00Z
 * BatchLedger.ofDrafts(
 *         List.of(draft), name -> Optional.of(plain), MaterialCatalogue.standard()::find)
 *     .batches().keySet(); // [B12]
 * }</pre>
 *
 * <p>Immutable if its lists are.
 *
 * @param version the version of this form, {@link #VERSION}
 * @param id the batch number
 * @param recipe the name of the recipe that was followed
 * @param startedAt when the batch was started, for example {@code 2026-03-14T09:30:00Z} (ISO 8601)
 * @param lines what was weighed
 * @param cakes the numbers of the cakes that came of it; absent for none
 * @param note what else there is to say; absent for nothing
 */
public record BatchRecordDraft(
    @Nullable Integer version,
    @Nullable String id,
    @Nullable String recipe,
    @Nullable String startedAt,
    @Nullable List<WeighedLineDraft> lines,
    @Nullable List<String> cakes,
    @Nullable String note) {

  /** The version of this form that is written and read. */
  public static final int VERSION = 1;
}
