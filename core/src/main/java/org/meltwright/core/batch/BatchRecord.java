// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.material.Material;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.Mixture;
import org.meltwright.units.MetricUnits;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityFormatter;
import org.meltwright.units.QuantityKind;

/**
 * What was really made: what was weighed, when, from which lots, and the cakes that came of it.
 *
 * <p>A batch can hold only batches that were there before it, so a trace always ends. Its form for
 * files is its draft, {@link #toDraft}; {@link BatchLedger} reads drafts and traces both ways.
 *
 * <p>For example, 10 g of resin too much went into the pot:
 *
 * <pre>{@code
 * Material resin = MaterialCatalogue.standard().require("damar");
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * Recipe medium = Recipe.builder("medium").part(resin, 1).part(wax, 9).build();
 * Instant at = Instant.parse("2026-03-14T09:30:00Z");
 * WeighedLine first = WeighedLine.of(wax.withLot("bag 7"), grams(450), at);
 * WeighedLine second = WeighedLine.of(resin, grams(60), at.plusSeconds(600));
 * BatchRecord record = BatchRecord.of("B12", medium, at, List.of(first, second));
 * record.charge().massKilograms(); // 0.51 kg
 * record.charge().composition().massFraction(resin).percent(); // 11.8 %
 * }</pre>
 *
 * <p>Two records are equal if all that they note is; a ledger holds one record for each id.
 * Immutable and thread-safe.
 */
public final class BatchRecord {

  private final String id;
  private final Recipe recipe;
  private final Instant startedAt;
  private final List<WeighedLine> lines;
  private final List<String> cakes;
  private final Optional<String> note;
  private final Mixture charge;

  /**
   * Returns a record.
   *
   * @param id the batch number, not blank
   * @param recipe the recipe that was followed
   * @param startedAt when the batch was started
   * @param lines what was weighed, at least one line above zero
   * @return the record, without cakes
   * @throws ProblemException if the id is blank or nothing was weighed
   */
  public static BatchRecord of(
      String id, Recipe recipe, Instant startedAt, List<WeighedLine> lines) {
    return new BatchRecord(id, recipe, startedAt, lines, List.of(), Optional.empty());
  }

  private BatchRecord(
      String id,
      Recipe recipe,
      Instant startedAt,
      List<WeighedLine> lines,
      List<String> cakes,
      Optional<String> note) {
    if (id.isBlank()) {
      throw new ProblemException(Problem.of(BatchProblem.NAME_MISSING, id));
    }
    this.id = id;
    this.recipe = recipe;
    this.startedAt = startedAt;
    this.lines = List.copyOf(lines);
    this.cakes = List.copyOf(cakes);
    this.note = note;
    this.charge =
        Mixture.blend(
            lines.stream().map(l -> new Mixture(compositionOf(l), l.massKilograms())).toList());
  }

  /** An earlier batch counts as what it really was, not as its recipe. */
  private static Composition compositionOf(WeighedLine line) {
    return line.batch().map(b -> b.charge.composition()).orElse(line.ingredient().composition());
  }

  /**
   * Returns the batch number.
   *
   * @return the id
   */
  public String id() {
    return id;
  }

  /**
   * Returns the recipe that was followed.
   *
   * @return the recipe
   */
  public Recipe recipe() {
    return recipe;
  }

  /**
   * Returns when the batch was started.
   *
   * @return the time
   */
  public Instant startedAt() {
    return startedAt;
  }

  /**
   * Returns what was weighed.
   *
   * @return the lines, in the order of weighing
   */
  public List<WeighedLine> lines() {
    return lines;
  }

  /**
   * Returns the cakes that came of it.
   *
   * @return their numbers
   */
  public List<String> cakes() {
    return cakes;
  }

  /**
   * Returns what else there is to say.
   *
   * @return a text; empty if nothing is said
   */
  public Optional<String> note() {
    return note;
  }

  /**
   * Returns what is in the pot by what was weighed, before losses.
   *
   * @return the charge
   */
  public Mixture charge() {
    return charge;
  }

  /**
   * Returns how far each line lies from the recipe.
   *
   * @return a deviation for each ingredient of the recipe, all lots and versions of a material
   *     together unless the recipe names its lots, and for each that was weighed beside it
   */
  public List<LineDeviation> deviations() {
    List<Ingredient> all = new ArrayList<>();
    recipe.parts().forEach(p -> all.add(p.ingredient()));
    lines.forEach(l -> all.add(l.ingredient()));
    List<LineDeviation> deviations = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      if (!isMeantByAnother(all, i)) {
        Ingredient each = all.get(i);
        deviations.add(new LineDeviation(each, recipe.lineShare(each), weighedShare(each)));
      }
    }
    return List.copyOf(deviations);
  }

  /** Tells whether another means this one: one before it, or one that means more than this. */
  private static boolean isMeantByAnother(List<Ingredient> all, int place) {
    Ingredient one = all.get(place);
    for (int i = 0; i < all.size(); i++) {
      boolean isMeant = i != place && one.isMeantBy(all.get(i));
      if (isMeant && (i < place || !all.get(i).isMeantBy(one))) {
        return true;
      }
    }
    return false;
  }

  private double weighedShare(Ingredient asked) {
    return lines.stream()
            .filter(l -> l.ingredient().isMeantBy(asked))
            .mapToDouble(WeighedLine::massKilograms)
            .sum()
        / charge.massKilograms();
  }

  /**
   * Returns a copy with the cakes that came of it.
   *
   * @param numbers the numbers of the cakes
   * @return the new record
   */
  public BatchRecord withCakes(List<String> numbers) {
    return new BatchRecord(id, recipe, startedAt, lines, numbers, note);
  }

  /**
   * Returns a copy with a note.
   *
   * @param text what else there is to say; a blank text says nothing
   * @return the new record
   */
  public BatchRecord withNote(String text) {
    Optional<String> said = Optional.of(text).filter(t -> !t.isBlank());
    return new BatchRecord(id, recipe, startedAt, lines, cakes, said);
  }

  /**
   * Returns the form for files: materials, recipe and earlier batches by name.
   *
   * @return the draft; {@link BatchLedger#toDrafts} writes those of all batches
   * @throws ProblemException if two materials of one id and lot are in its lines
   */
  public BatchRecordDraft toDraft() {
    DraftOrder.requireOneReference(
        lines.stream().filter(l -> l.batch().isEmpty()).map(WeighedLine::ingredient),
        UnaryOperator.identity());
    return new BatchRecordDraft(
        BatchRecordDraft.VERSION,
        id,
        recipe.name(),
        startedAt.toString(),
        lines.stream().map(BatchRecord::draft).toList(),
        cakes.isEmpty() ? null : cakes,
        note.orElse(null));
  }

  private static BatchRecordDraft.LineDraft draft(WeighedLine line) {
    return new BatchRecordDraft.LineDraft(
        line.ingredient().material().map(Material::id).orElse(null),
        line.ingredient().material().flatMap(Material::lot).orElse(null),
        line.batch().map(BatchRecord::id).orElse(null),
        QuantityFormatter.exact().format(QuantityKind.MASS, line.massKilograms(), MetricUnits.GRAM),
        line.at().toString());
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return this == other || (other instanceof BatchRecord that && stated().equals(that.stated()));
  }

  @Override
  public int hashCode() {
    return id.hashCode();
  }

  private List<Object> stated() {
    return List.of(id, recipe, startedAt, lines, cakes, note);
  }

  @Override
  public String toString() {
    return id + ": " + charge.massKilograms() + " kg of " + recipe.name() + ", " + startedAt;
  }
}
