// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialLookup;
import org.meltwright.units.FieldReader;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.Problems;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityParser;

/** Turns drafts of batch records into records, or finds all that is wrong; for one reading. */
final class BatchRecordReader {

  /** What was weighed: a material, or the batch of this number. */
  private record Line(Optional<Material> material, String batch, double kilograms, Instant at) {

    Optional<WeighedLine> from(Map<String, BatchRecord> built) {
      return material.isPresent()
          ? material.map(m -> WeighedLine.of(m, QuantityKind.MASS.ofSi(kilograms), at))
          : Optional.ofNullable(built.get(batch))
              .map(b -> WeighedLine.of(b, QuantityKind.MASS.ofSi(kilograms), at));
    }
  }

  /** A record all of whose fields were read. */
  private record Unmade(
      FieldReader at,
      String id,
      Recipe recipe,
      Instant startedAt,
      List<Line> lines,
      List<String> cakes,
      Optional<String> note) {

    /** The record; empty if it or a batch that it holds has a problem. */
    Optional<BatchRecord> make(Map<String, BatchRecord> built) {
      List<WeighedLine> weighed =
          lines.stream().flatMap(line -> line.from(built).stream()).toList();
      return weighed.size() < lines.size()
          ? Optional.empty()
          : at.field("lines")
              .attempt(() -> BatchRecord.of(id, recipe, startedAt, weighed))
              .map(record -> record.withCakes(cakes))
              .map(record -> note.map(record::withNote).orElse(record));
    }
  }

  private final List<BatchRecordDraft> drafts;
  private final Function<String, Optional<Recipe>> recipes;
  private final MaterialLookup materials;
  private final Problems problems = new Problems();
  private final FieldReader at;
  private final Map<String, Integer> places = new LinkedHashMap<>();
  private final Map<String, Set<String>> needs = new LinkedHashMap<>();
  private final Map<String, Unmade> unmade = new HashMap<>();

  BatchRecordReader(
      List<BatchRecordDraft> drafts,
      QuantityParser parser,
      Function<String, Optional<Recipe>> recipes,
      MaterialLookup materials) {
    this.drafts = drafts;
    this.recipes = recipes;
    this.materials = materials;
    this.at = FieldReader.of(parser, problems);
  }

  /** Reads one; its paths are relative to it. */
  static BatchRecord alone(
      BatchRecordDraft draft,
      QuantityParser parser,
      Function<String, Optional<Recipe>> recipes,
      MaterialLookup materials) {
    BatchRecordReader reader = new BatchRecordReader(List.of(draft), parser, recipes, materials);
    Optional<Unmade> read = reader.fields(reader.at, draft, new LinkedHashSet<>());
    Optional<BatchRecord> record = read.flatMap(u -> u.make(Map.of()));
    reader.problems.throwIfAny();
    return record.orElseThrow();
  }

  List<BatchRecord> read() {
    at.entries(drafts, Function.identity());
    for (int i = 0; i < drafts.size(); i++) {
      number(i);
    }
    for (int i = 0; i < drafts.size(); i++) {
      if (drafts.get(i) != null) {
        record(i, drafts.get(i));
      }
    }
    DraftOrder order = DraftOrder.of(needs);
    order.circles().forEach(this::report);
    Map<String, BatchRecord> built = new LinkedHashMap<>();
    for (String id : order.order()) {
      Optional.ofNullable(unmade.get(id))
          .flatMap(u -> u.make(built))
          .ifPresent(record -> built.put(id, record));
    }
    problems.throwIfAny();
    return List.copyOf(built.values());
  }

  private void number(int place) {
    BatchRecordDraft draft = drafts.get(place);
    String id = draft == null ? null : draft.id();
    if (id != null && !id.isBlank() && places.putIfAbsent(id, place) != null) {
      problems.add(Problem.of(BatchProblem.NAME_TWICE, id).under("/" + place + "/id"));
    }
  }

  private void report(List<String> circle) {
    String first = circle.get(0);
    problems.add(
        Problem.of(BatchProblem.CIRCLE, String.join(" → ", circle) + " → " + first)
            .under("/" + places.getOrDefault(first, 0) + "/lines"));
  }

  private void record(int place, BatchRecordDraft draft) {
    Set<String> own = new LinkedHashSet<>();
    Optional<Unmade> read = fields(at.field("" + place), draft, own);
    if (draft.id() != null && places.getOrDefault(draft.id(), -1) == place) {
      needs.put(draft.id(), own);
      read.ifPresent(u -> unmade.put(u.id, u));
    }
  }

  private Optional<Unmade> fields(FieldReader record, BatchRecordDraft draft, Set<String> own) {
    record.read("version", draft.version(), BatchRecordReader::version);
    Optional<String> id = record.value("id", draft.id());
    Optional<Recipe> recipe = record.read("recipe", draft.recipe(), this::recipe);
    Optional<Instant> startedAt =
        record.read("startedAt", draft.startedAt(), BatchRecordReader::time);
    List<Line> lines = lines(record, draft, own);
    List<String> cakes = record.optional().each("cakes", draft.cakes(), Function.identity());
    Optional<String> note = Optional.ofNullable(draft.note());
    return record.attempt(
        () -> new Unmade(record, id.get(), recipe.get(), startedAt.get(), lines, cakes, note));
  }

  private static int version(int version) {
    if (version != BatchRecordDraft.VERSION) {
      throw new ProblemException(Problem.of(BatchProblem.VERSION, "" + version));
    }
    return version;
  }

  private Recipe recipe(String name) {
    return recipes
        .apply(name)
        .orElseThrow(() -> new ProblemException(Problem.of(BatchProblem.UNKNOWN_RECIPE, name)));
  }

  private static Instant time(String text) {
    try {
      return Instant.parse(text);
    } catch (DateTimeException e) {
      throw new ProblemException(Problem.of(BatchProblem.TIME, text));
    }
  }

  private List<Line> lines(FieldReader record, BatchRecordDraft draft, Set<String> own) {
    List<BatchRecordDraft.LineDraft> given = draft.lines() == null ? List.of() : draft.lines();
    FieldReader list = record.field("lines");
    record.each("lines", given, Function.identity());
    List<Line> lines = new ArrayList<>();
    for (int i = 0; i < given.size(); i++) {
      if (given.get(i) != null) {
        line(list.field("" + i), given.get(i), own).ifPresent(lines::add);
      }
    }
    return lines;
  }

  private Optional<Line> line(FieldReader line, BatchRecordDraft.LineDraft draft, Set<String> own) {
    FieldReader may = line.optional();
    Optional<Material> material = may.read("material", draft.material(), materials::require);
    Optional<String> lot = may.value("lot", draft.lot());
    Optional<String> batch = may.read("batch", draft.batch(), this::batch);
    Optional<Double> mass =
        line.parse("mass", draft.mass(), (p, t) -> WeighedLine.checkedMass(p.parseMass(t)));
    Optional<Instant> weighed = line.read("at", draft.at(), BatchRecordReader::time);
    boolean isBatch = isStated(draft.batch());
    if (isStated(draft.material()) == isBatch || (lot.isPresent() && isBatch)) {
      String both = isBatch ? draft.material() + ", " + draft.batch() : "";
      line.problems().add(Problem.of(BatchProblem.ONE_OF_TWO, both).under(line.path()));
    }
    batch.ifPresent(own::add);
    return line.attempt(
        () ->
            new Line(
                material.map(m -> lot.map(m::withLot).orElse(m)),
                batch.orElse(""),
                mass.get(),
                weighed.get()));
  }

  private static boolean isStated(@Nullable String text) {
    return text != null && !text.isBlank();
  }

  private String batch(String id) {
    if (!places.containsKey(id)) {
      throw new ProblemException(Problem.of(BatchProblem.UNKNOWN_BATCH, id));
    }
    return id;
  }
}
