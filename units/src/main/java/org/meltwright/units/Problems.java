// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Collects the problems of what was given, so that all of them are told at once and none twice.
 *
 * <p>One check may find several problems at one place, and all count; what a later check finds at a
 * place that has a problem already, or above it, follows from that one and is left out.
 *
 * <p>For example, a vessel read from two texts:
 *
 * <pre>{@code
 * Problems problems = new Problems();
 * QuantityParser parser = QuantityParser.localeFree();
 * problems.attempt("/stock", () -> parser.parseMass("730")); // Optional.empty
 * problems.attempt("/film", () -> parser.parseMass("4 g")).isPresent(); // true
 * problems.read("/note", null, parser::parseMass); // Optional.empty
 * problems.toList().size(); // 1
 * problems.toList().get(0).path(); // /stock
 * }</pre>
 *
 * <p>Mutable, for one thread, and compared by identity: what it has collected changes.
 */
public final class Problems {

  private final List<Problem> problems = new ArrayList<>();
  private final Set<String> paths = new HashSet<>();

  /** Creates a collector that holds nothing. */
  public Problems() {}

  /**
   * Adds a problem, unless its place has one.
   *
   * @param problem the problem, with the path of its place
   */
  public void add(Problem problem) {
    if (paths.add(problem.path())) {
      problems.add(problem);
    }
  }

  /**
   * Adds the problems of one check: several of one place all count.
   *
   * @param more the problems, with the paths of their places
   */
  public void addAll(List<Problem> more) {
    problems.addAll(more);
    more.forEach(p -> paths.add(p.path()));
  }

  /**
   * Tries to make a value; its problems are collected below a path. What follows from a problem
   * that was found deeper is not told again.
   *
   * @param <T> the type of the value
   * @param pointer the JSON pointer (RFC 6901) of the value, empty or starting with "/"
   * @param value makes the value
   * @return the value; empty if it had problems
   */
  public <T> Optional<T> attempt(String pointer, Supplier<T> value) {
    try {
      return Optional.of(value.get());
    } catch (ProblemException e) {
      addAll(e.under(pointer).problems().stream().filter(this::isNew).toList());
      return Optional.empty();
    }
  }

  private boolean isNew(Problem problem) {
    return !paths.contains(problem.path())
        && paths.stream().noneMatch(p -> p.startsWith(problem.path() + "/"));
  }

  /** Whether a problem was found at a place or below it. */
  boolean hasBelow(String pointer) {
    return paths.stream().anyMatch(p -> p.equals(pointer) || p.startsWith(pointer + "/"));
  }

  /**
   * Tries to read a text that may be missing.
   *
   * @param <T> the type of the value
   * @param pointer the JSON pointer (RFC 6901) of the text, empty or starting with "/"
   * @param text the text; null or blank for none, which is no problem
   * @param reader reads it
   * @return the value; empty if there is no text or it had problems
   */
  public <T> Optional<T> read(String pointer, @Nullable String text, Function<String, T> reader) {
    return text == null || text.isBlank()
        ? Optional.empty()
        : attempt(pointer, () -> reader.apply(text));
  }

  /**
   * Tells whether nothing was collected.
   *
   * @return whether there is no problem
   */
  public boolean isEmpty() {
    return problems.isEmpty();
  }

  /**
   * Returns what was collected so far.
   *
   * @return the problems, in the order found; unmodifiable
   */
  public List<Problem> toList() {
    return List.copyOf(problems);
  }

  /**
   * Throws all that was collected, if anything was.
   *
   * @throws ProblemException if there is a problem
   */
  public void throwIfAny() {
    if (!problems.isEmpty()) {
      throw new ProblemException(problems);
    }
  }

  /**
   * Returns the problems, a line each.
   *
   * @return for example {@code [/stock: quantity.missing-unit: The number has no unit. …]}
   */
  @Override
  public String toString() {
    return problems.toString();
  }
}
