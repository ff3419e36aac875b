// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.material.MaterialLookup;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityParser;

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
 * draft.lines().get(0).mass(); // 150 g
 * BatchLedger.ofDrafts(
 *         List.of(draft),
 *         QuantityParser.localeFree(),
 *         name -> Optional.of(plain),
 *         MaterialCatalogue.standard()::require)
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
    @Nullable List<LineDraft> lines,
    @Nullable List<String> cakes,
    @Nullable String note) {

  /** The version of this form that is written and read. */
  public static final int VERSION = 1;

  /**
   * Returns the record, if it holds materials alone; what holds earlier batches is read by {@link
   * BatchLedger#ofDrafts}.
   *
   * @param parser reads the masses
   * @param recipes finds a recipe by its name
   * @param materials finds the materials
   * @return the record
   * @throws ProblemException if a field is missing or wrong; it carries all problems found, each at
   *     its field
   */
  public BatchRecord toRecord(
      QuantityParser parser, Function<String, Optional<Recipe>> recipes, MaterialLookup materials) {
    return BatchRecordReader.alone(this, parser, recipes, materials);
  }

  /**
   * A weighed line as it stands in a file, not checked yet: either a material with its lot or an
   * earlier batch.
   *
   * <p>For example, a line with a date in place of a time:
   *
   * <pre>{@code
   * BatchRecordDraft.LineDraft line =
   *     new BatchRecordDraft.LineDraft("beeswax-yellow", "bag 7", null, "150 g", "2026-03-14");
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
  public record LineDraft(
      @Nullable String material,
      @Nullable String lot,
      @Nullable String batch,
      @Nullable String mass,
      @Nullable String at) {}
}
