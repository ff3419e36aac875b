// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialLookup;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityParser;

/**
 * The batches of a studio: from a cake to all lots that are in it, from a lot to all cakes that
 * hold it, through batches made of batches.
 *
 * <p>For example, which cakes hold a bag of wax that turns out to be adulterated:
 *
 * <pre>{@code
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * Recipe plain = Recipe.builder("plain cakes").part(wax, 1).build();
 * Instant at = Instant.parse("2026-03-14T09:30:00Z");
 * Material bag = wax.withLot("bag 7");
 * WeighedLine weighed = WeighedLine.of(bag, grams(150), at);
 * BatchRecord batch =
 *     BatchRecord.of("B12", plain, at, List.of(weighed)).withCakes(List.of("12a", "12b"));
 * BatchLedger ledger = BatchLedger.of(List.of(batch));
 * ledger.cakesWith(bag); // [12a, 12b]
 * ledger.lotsIn("12b"); // [beeswax-yellow (lot bag 7)]
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class BatchLedger {

  private final Map<String, BatchRecord> batches;
  private final Map<String, BatchRecord> byCake;

  /**
   * Returns the ledger of records; batches that they are made of belong to it too.
   *
   * @param records the records
   * @return the ledger
   * @throws ProblemException if two batches or two cakes have the same number
   */
  public static BatchLedger of(Collection<BatchRecord> records) {
    Map<String, BatchRecord> all = new LinkedHashMap<>();
    List<Problem> problems = new ArrayList<>();
    Deque<BatchRecord> waiting = new ArrayDeque<>(records);
    Set<BatchRecord> seen = Collections.newSetFromMap(new java.util.IdentityHashMap<>());
    while (!waiting.isEmpty()) {
      BatchRecord record = waiting.remove();
      if (seen.add(record)) {
        if (all.putIfAbsent(record.id(), record) != null) {
          problems.add(Problem.of(BatchProblem.NAME_TWICE, record.id()));
        }
        record.lines().forEach(l -> l.batch().ifPresent(waiting::add));
      }
    }
    Map<String, BatchRecord> byCake = new LinkedHashMap<>();
    for (BatchRecord record : all.values()) {
      for (String cake : record.cakes()) {
        if (byCake.putIfAbsent(cake, record) != null) {
          problems.add(Problem.of(BatchProblem.NAME_TWICE, cake));
        }
      }
    }
    if (!problems.isEmpty()) {
      throw new ProblemException(problems);
    }
    return new BatchLedger(all, byCake);
  }

  /**
   * Returns the ledger of drafts, in any order.
   *
   * @param drafts the drafts
   * @param parser reads the masses
   * @param recipes finds a recipe by its name
   * @param materials finds the materials
   * @return the ledger
   * @throws ProblemException if anything is wrong; it carries all problems found
   */
  public static BatchLedger ofDrafts(
      List<BatchRecordDraft> drafts,
      QuantityParser parser,
      Function<String, Optional<Recipe>> recipes,
      MaterialLookup materials) {
    return of(new BatchRecordReader(drafts, parser, recipes, materials).read());
  }

  /**
   * Returns all batches as they are written down.
   *
   * @return the drafts; read again they are an equal ledger
   * @throws ProblemException if two materials have one id and lot
   */
  public List<BatchRecordDraft> toDrafts() {
    DraftOrder.requireOneReference(
        batches.values().stream()
            .flatMap(batch -> batch.lines().stream())
            .filter(line -> line.batch().isEmpty())
            .map(WeighedLine::ingredient),
        UnaryOperator.identity());
    return batches.values().stream().map(BatchRecord::toDraft).toList();
  }

  private BatchLedger(Map<String, BatchRecord> batches, Map<String, BatchRecord> byCake) {
    this.batches = Collections.unmodifiableMap(batches);
    this.byCake = byCake;
  }

  /**
   * Returns all batches.
   *
   * @return the batches by number
   */
  public Map<String, BatchRecord> batches() {
    return batches;
  }

  /**
   * Returns the batch that a cake came of.
   *
   * @param cake the number of the cake
   * @return the batch; empty if the ledger does not know the cake
   */
  public Optional<BatchRecord> batchOfCake(String cake) {
    return Optional.ofNullable(byCake.get(cake));
  }

  /**
   * Returns all lots that are in a cake, through nested batches.
   *
   * @param cake the number of the cake
   * @return the materials, each of its lot where that was noted; empty if the ledger does not know
   *     the cake
   */
  public Set<Material> lotsIn(String cake) {
    return batchOfCake(cake).map(this::lotsIn).orElse(Set.of());
  }

  /**
   * Returns all lots that are in a batch, through nested batches.
   *
   * @param batch the batch
   * @return the materials, each of its lot where that was noted
   */
  public Set<Material> lotsIn(BatchRecord batch) {
    Set<Material> lots = new LinkedHashSet<>();
    for (BatchRecord each : within(batch)) {
      for (WeighedLine line : each.lines()) {
        line.ingredient().material().ifPresent(lots::add);
      }
    }
    return Collections.unmodifiableSet(lots);
  }

  /**
   * Returns all cakes that hold a material or a lot of it, through nested batches.
   *
   * @param asked the material; of its lot if that alone is looked for. A line whose lot nobody
   *     noted is found by the material only
   * @return the numbers of the cakes
   */
  public Set<String> cakesWith(Material asked) {
    Set<String> holding = new LinkedHashSet<>();
    Map<String, List<BatchRecord>> usedIn = new LinkedHashMap<>();
    Deque<BatchRecord> waiting = new ArrayDeque<>();
    for (BatchRecord batch : batches.values()) {
      for (WeighedLine line : batch.lines()) {
        line.batch()
            .ifPresent(b -> usedIn.computeIfAbsent(b.id(), k -> new ArrayList<>()).add(batch));
        if (line.ingredient().material().filter(m -> m.isMeantBy(asked)).isPresent()) {
          waiting.add(batch);
        }
      }
    }
    Set<String> cakes = new LinkedHashSet<>();
    while (!waiting.isEmpty()) {
      BatchRecord batch = waiting.remove();
      if (holding.add(batch.id())) {
        cakes.addAll(batch.cakes());
        waiting.addAll(usedIn.getOrDefault(batch.id(), List.of()));
      }
    }
    return Collections.unmodifiableSet(cakes);
  }

  private static Set<BatchRecord> within(BatchRecord batch) {
    Set<BatchRecord> all = new LinkedHashSet<>();
    Deque<BatchRecord> waiting = new ArrayDeque<>(List.of(batch));
    while (!waiting.isEmpty()) {
      BatchRecord next = waiting.remove();
      if (all.add(next)) {
        next.lines().forEach(l -> l.batch().ifPresent(waiting::add));
      }
    }
    return all;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof BatchLedger that && batches.equals(that.batches);
  }

  @Override
  public int hashCode() {
    return batches.hashCode();
  }

  @Override
  public String toString() {
    return batches.size() + " batches: " + batches.keySet();
  }
}
