// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/** Problems gathered on the way, one for each place: what is wrong already is not told twice. */
final class Gathered {

  private final List<Problem> problems = new ArrayList<>();
  private final Set<String> paths = new HashSet<>();

  /** Adds a problem, unless its place has one. */
  void add(Problem problem) {
    if (paths.add(problem.path())) {
      problems.add(problem);
    }
  }

  /** Adds problems that come from one check: several of one place all count. */
  void addAll(List<Problem> more) {
    problems.addAll(more);
    more.forEach(p -> paths.add(p.path()));
  }

  /**
   * Tries to make a value; its problems are gathered below a path. What follows from a problem that
   * was found deeper is not told again.
   */
  <T> Optional<T> attempt(String path, Supplier<T> value) {
    try {
      return Optional.of(value.get());
    } catch (ProblemException e) {
      e.problems().stream().map(p -> p.under(path)).filter(this::isNew).forEach(this::add);
      return Optional.empty();
    }
  }

  private boolean isNew(Problem problem) {
    return paths.stream().noneMatch(p -> p.startsWith(problem.path() + "/"));
  }

  /** Tries to read a text that may be missing. */
  <T> Optional<T> read(String path, @Nullable String text, Function<String, T> reader) {
    return text == null || text.isBlank()
        ? Optional.empty()
        : attempt(path, () -> reader.apply(text));
  }

  /** Throws all that was gathered, if anything was. */
  void throwIfAny() {
    if (!problems.isEmpty()) {
      throw new ProblemException(problems);
    }
  }
}
