// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import static org.meltwright.core.batch.BatchProblem.CHECK;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialProblem;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.UnitsProblem;

/** Turns drafts of batch records into records, or finds all that is wrong; for one reading. */
final class BatchRecordReader {

  private final List<BatchRecordDraft> drafts;
  private final Function<String, Optional<Recipe>> recipes;
  private final Function<String, Optional<Material>> materials;
  private final Map<String, Integer> places = new LinkedHashMap<>();
  private final Map<String, BatchRecord> built = new LinkedHashMap<>();
  private final List<Problem> problems = new ArrayList<>();

  BatchRecordReader(
      List<BatchRecordDraft> drafts,
      Function<String, Optional<Recipe>> recipes,
      Function<String, Optional<Material>> materials) {
    this.drafts = drafts;
    this.recipes = recipes;
    this.materials = materials;
  }

  List<BatchRecord> read() {
    for (int i = 0; i < drafts.size(); i++) {
      checkHead(i);
    }
    DraftOrder order = DraftOrder.of(needs());
    for (List<String> circle : order.circles()) {
      String text = String.join(" → ", circle) + " → " + circle.get(0);
      problem(BatchProblem.CIRCLE, text, "/" + places.getOrDefault(circle.get(0), 0) + "/lines");
    }
    order.order().forEach(this::build);
    if (!problems.isEmpty()) {
      throw new ProblemException(problems);
    }
    return List.copyOf(built.values());
  }

  private void checkHead(int index) {
    BatchRecordDraft draft = drafts.get(index);
    if (draft.version() == null || draft.version() != BatchRecordDraft.VERSION) {
      problem(BatchProblem.VERSION, "" + draft.version(), "/" + index + "/version");
    }
    String id = draft.id();
    if (id == null || id.isBlank()) {
      problem(BatchProblem.NAME_MISSING, id == null ? "" : id, "/" + index + "/id");
    } else if (places.putIfAbsent(id, index) != null) {
      problem(BatchProblem.NAME_TWICE, id, "/" + index + "/id");
    }
  }

  private Map<String, Set<String>> needs() {
    Map<String, Set<String>> needs = new LinkedHashMap<>();
    places.forEach(
        (id, index) -> {
          Set<String> own = new LinkedHashSet<>();
          for (WeighedLineDraft line : lines(index)) {
            if (line.batch() != null) {
              own.add(line.batch());
            }
          }
          needs.put(id, own);
        });
    return needs;
  }

  private List<WeighedLineDraft> lines(int index) {
    List<WeighedLineDraft> lines = drafts.get(index).lines();
    return lines == null ? List.of() : lines;
  }

  private void build(String id) {
    int index = places.getOrDefault(id, 0);
    BatchRecordDraft draft = drafts.get(index);
    String path = "/" + index;
    Optional<Recipe> recipe = recipe(draft.recipe(), path + "/recipe");
    Optional<Instant> startedAt = time(draft.startedAt(), path + "/startedAt");
    List<WeighedLine> lines = new ArrayList<>();
    List<WeighedLineDraft> given = lines(index);
    for (int i = 0; i < given.size(); i++) {
      line(given.get(i), path + "/lines/" + i).ifPresent(lines::add);
    }
    if (recipe.isEmpty() || startedAt.isEmpty() || lines.size() < given.size()) {
      return;
    }
    try {
      BatchRecord record = BatchRecord.of(id, recipe.get(), startedAt.get(), lines);
      List<String> cakes = draft.cakes();
      String note = draft.note();
      built.put(
          id,
          record.withCakes(cakes == null ? List.of() : cakes).withNote(note == null ? "" : note));
    } catch (ProblemException e) {
      problems.addAll(e.under(path + "/lines").problems());
    }
  }

  private Optional<Recipe> recipe(@Nullable String name, String path) {
    Optional<Recipe> found = name == null ? Optional.empty() : recipes.apply(name);
    if (found.isEmpty()) {
      problem(BatchProblem.UNKNOWN_RECIPE, name == null ? "" : name, path);
    }
    return found;
  }

  private Optional<Instant> time(@Nullable String text, String path) {
    try {
      return Optional.of(Instant.parse(text == null ? "" : text));
    } catch (DateTimeException e) {
      problem(BatchProblem.TIME, text == null ? "" : text, path);
      return Optional.empty();
    }
  }

  private Optional<WeighedLine> line(WeighedLineDraft draft, String path) {
    Optional<Instant> at = time(draft.at(), path + "/at");
    Double mass = draft.massKilograms();
    if (mass == null) {
      problems.add(
          Problem.of(UnitsProblem.FIELD_MISSING, "")
              .with("field", "massKilograms")
              .under(path + "/massKilograms"));
    }
    String material = draft.material();
    String batch = draft.batch();
    if ((material == null) == (batch == null)) {
      String both = material == null ? "" : material + ", " + batch;
      problem(BatchProblem.ONE_OF_TWO, both, path);
      return Optional.empty();
    }
    if (mass == null || at.isEmpty()) {
      return Optional.empty();
    }
    try {
      return material != null
          ? fromShelf(material, draft, mass, at.get(), path)
          : fromBatch("" + batch, mass, at.get(), path);
    } catch (ProblemException e) {
      problems.addAll(e.under(path + "/massKilograms").problems());
      return Optional.empty();
    }
  }

  private Optional<WeighedLine> fromShelf(
      String id, WeighedLineDraft draft, double mass, Instant at, String path) {
    Optional<Material> material = materials.apply(id);
    if (material.isEmpty()) {
      problem(MaterialProblem.UNKNOWN, id, path + "/material");
    }
    String lot = draft.lot();
    return material
        .map(m -> lot == null || lot.isBlank() ? m : m.withLot(lot))
        .map(m -> WeighedLine.of(m, QuantityKind.MASS.ofSi(finite(mass)), at));
  }

  private Optional<WeighedLine> fromBatch(String id, double mass, Instant at, String path) {
    if (!places.containsKey(id)) {
      problem(BatchProblem.UNKNOWN_BATCH, id, path + "/batch");
    }
    return Optional.ofNullable(built.get(id))
        .map(b -> WeighedLine.of(b, QuantityKind.MASS.ofSi(finite(mass)), at));
  }

  private static double finite(double mass) {
    return CHECK.finite(mass, "mass in kg");
  }

  private void problem(org.meltwright.units.ProblemCode code, String found, String path) {
    problems.add(Problem.of(code, found).under(path));
  }
}
