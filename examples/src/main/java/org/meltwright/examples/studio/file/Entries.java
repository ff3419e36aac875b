// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.Problem;
import org.meltwright.units.Problems;

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
      String pointer,
      @Nullable List<D> drafts,
      Function<D, @Nullable String> id,
      BiFunction<String, D, Optional<T>> reader,
      Problems problems) {
    Entries<T> entries = new Entries<>();
    List<D> all = drafts == null ? List.of() : drafts;
    for (int i = 0; i < all.size(); i++) {
      D draft = all.get(i);
      if (draft != null) {
        entries.add(pointer + "/" + i, id.apply(draft), p -> reader.apply(p, draft), problems);
      }
    }
    return entries;
  }

  private void add(
      String path, @Nullable String id, Function<String, Optional<T>> reader, Problems problems) {
    Optional<T> value = reader.apply(path);
    if (id == null) {
      return;
    }
    if (byId.containsKey(id)) {
      problems.add(Problem.of(StudioProblem.DOUBLE_ID, id).under(path + "/id"));
    } else {
      byId.put(id, value);
    }
  }

  /** Finds the entry that a text names; empty if there is none or it could not be read. */
  Optional<T> named(String path, @Nullable String id, Problems problems) {
    if (id == null || id.isBlank()) {
      return Optional.empty();
    }
    if (!byId.containsKey(id)) {
      problems.add(
          Problem.of(StudioProblem.UNKNOWN_NAME, id)
              .with("names", String.join(", ", byId.keySet()))
              .under(path));
    }
    return byId.getOrDefault(id, Optional.empty());
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
