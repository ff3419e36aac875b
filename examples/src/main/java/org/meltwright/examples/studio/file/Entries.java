// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.file;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.FieldReader;
import org.meltwright.units.Nearest;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * The entries of one list of a studio file, by id; entries that could not be read keep their id, so
 * that who names them is not told that they do not exist.
 *
 * @param <T> what an entry becomes
 */
final class Entries<T> {

  private final Map<String, Optional<T>> byId = new LinkedHashMap<>();

  private Entries() {}

  /** Reads a list of drafts; an id that stands twice is a problem of the second entry. */
  static <D, T> Entries<T> read(
      FieldReader at,
      String name,
      @Nullable List<@Nullable D> drafts,
      Function<D, @Nullable String> id,
      BiFunction<FieldReader, D, Optional<T>> reader) {
    Entries<T> entries = new Entries<>();
    eachAt(at, name, drafts, (entry, d) -> entries.add(entry, id.apply(d), reader.apply(entry, d)));
    return entries;
  }

  private void add(FieldReader entry, @Nullable String id, Optional<T> value) {
    if (id != null && byId.putIfAbsent(id, value) != null) {
      entry.problems().add(Problem.of(StudioProblem.DOUBLE_ID, id).under(entry.path() + "/id"));
    }
  }

  /** Walks a list, each entry with a reader that stands at it; one that is null is a problem. */
  static <D> void eachAt(
      FieldReader at, String name, @Nullable List<@Nullable D> drafts, Walk<D> walk) {
    List<@Nullable D> all = drafts == null ? List.of() : drafts;
    at.each(name, all, Function.identity());
    FieldReader list = at.field(name);
    for (int i = 0; i < all.size(); i++) {
      D draft = all.get(i);
      if (draft != null) {
        walk.step(list.field(Integer.toString(i)), draft);
      }
    }
  }

  /** What is done with each entry. */
  interface Walk<D> {

    /** Does it with one; the reader stands at it. */
    void step(FieldReader entry, D draft);
  }

  /** Finds the entry that a field names; empty if there is none or it could not be read. */
  Optional<T> named(FieldReader at, String name, @Nullable String id) {
    return at.read(name, id, this::named).flatMap(Function.identity());
  }

  /** Finds the entries that a list names, without those that are not there or not readable. */
  List<T> allNamed(FieldReader at, String name, @Nullable List<@Nullable String> ids) {
    return at.each(name, ids, this::named).stream().flatMap(Optional::stream).toList();
  }

  private Optional<T> named(String id) {
    if (!byId.containsKey(id)) {
      throw unknown(id, byId.keySet());
    }
    return get(id);
  }

  /** What is told of a name that nothing has. */
  static ProblemException unknown(String id, Collection<String> names) {
    return new ProblemException(
        Problem.of(StudioProblem.UNKNOWN_NAME, id)
            .with("names", String.join(", ", names))
            .with("nearest", Nearest.of(id, names).orElse("")));
  }

  /** Notes a name; a problem is thrown if it was noted before. */
  static String onlyOnce(String id, Set<String> noted) {
    if (!noted.add(id)) {
      throw new ProblemException(Problem.of(StudioProblem.DOUBLE_ID, id));
    }
    return id;
  }

  boolean contains(String id) {
    return byId.containsKey(id);
  }

  Optional<T> get(String id) {
    return byId.getOrDefault(id, Optional.empty());
  }

  List<String> ids() {
    return new ArrayList<>(byId.keySet());
  }

  List<T> values() {
    return byId.values().stream().flatMap(Optional::stream).toList();
  }
}
