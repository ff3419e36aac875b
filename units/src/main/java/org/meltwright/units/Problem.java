// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;

/**
 * One thing that is wrong with what was given: a stable code, where it is, what was found, what is
 * allowed, and what to do.
 *
 * <p>For example, for the text "8 fl oz" where a mass is asked for: code {@code
 * quantity.wrong-kind}, path {@code /recipes/0/amount}, found "8 fl oz", and texts in English and
 * German that name both kinds.
 *
 * <p>In code:
 *
 * <pre>{@code
 * Problem problem =
 *     Problem.of(UnitsProblem.WRONG_KIND, "8 fl oz US")
 *         .with("expected", "mass")
 *         .with("kind", "volume")
 *         .under("/recipes/0/amount");
 * problem.code().id(); // quantity.wrong-kind
 * problem.path(); // /recipes/0/amount
 * problem.what(Locale.ENGLISH); // Expected a mass, found a volume: 8 fl oz US.
 * problem.remedy(Locale.ENGLISH); // Give the value in a unit of the kind asked for.
 * }</pre>
 *
 * <p>This class is immutable and thread-safe.
 */
public final class Problem {

  private final ProblemCode code;
  private final String path;
  private final Map<String, String> details;

  /**
   * Creates a problem at the root of what was given.
   *
   * @param code what kind of problem it is
   * @param found what was found, as the person wrote it
   * @return the problem
   */
  public static Problem of(ProblemCode code, String found) {
    return new Problem(code, "", Map.of("found", found));
  }

  private Problem(ProblemCode code, String path, Map<String, String> details) {
    this.code = Objects.requireNonNull(code, "code");
    this.path = path;
    this.details = details;
  }

  /**
   * Returns the stable code.
   *
   * @return what kind of problem it is
   */
  public ProblemCode code() {
    return code;
  }

  /**
   * Returns where the problem is, as a JSON pointer (RFC 6901).
   *
   * @return the pointer; empty for the whole of what was given
   */
  public String path() {
    return path;
  }

  /**
   * Returns what was found.
   *
   * @return what was found, as the person wrote it
   */
  public String found() {
    return details.getOrDefault("found", "");
  }

  /**
   * Returns the values that the texts speak of, by name, "found" among them.
   *
   * @return an unmodifiable map
   */
  public Map<String, String> details() {
    return details;
  }

  /**
   * Returns a copy with one more value for the texts.
   *
   * @param name the name of the place in the texts, letters only
   * @param value what stands there
   * @return the new problem
   */
  public Problem with(String name, String value) {
    Map<String, String> more = new LinkedHashMap<>(details);
    more.put(name, value);
    return new Problem(code, path, Map.copyOf(more));
  }

  /**
   * Returns a copy whose path lies below another.
   *
   * @param pointer the JSON pointer (RFC 6901) of the enclosing value, empty or starting with "/"
   * @return the new problem, at {@code pointer + path()}
   */
  public Problem under(String pointer) {
    return new Problem(code, pointer + path, details);
  }

  /**
   * Says what is wrong.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return one sentence
   */
  public String what(Locale locale) {
    return text("what", locale);
  }

  /**
   * Says what is allowed.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return one phrase
   */
  public String allowed(Locale locale) {
    return text("allowed", locale);
  }

  /**
   * Says what to do.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return one sentence
   */
  public String remedy(Locale locale) {
    return text("remedy", locale);
  }

  /**
   * Says all of it on one line: what is wrong, what was found, what is allowed, what to do.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return the line, without the path
   */
  public String inWords(Locale locale) {
    return Messages.beside(Problem.class)
        .text(
            "problem.line",
            locale,
            Map.of(
                "what", what(locale),
                "found", found(),
                "allowed", allowed(locale),
                "remedy", remedy(locale)));
  }

  private String text(String part, Locale locale) {
    return Messages.beside(code.getClass())
        .text("problem." + code.id() + "." + part, locale, details);
  }

  /**
   * Compares code, path and details.
   *
   * @param other the other object
   * @return whether both are the same problem at the same place
   */
  @Override
  public boolean equals(@org.jspecify.annotations.Nullable Object other) {
    return other instanceof Problem that
        && code.equals(that.code)
        && path.equals(that.path)
        && details.equals(that.details);
  }

  @Override
  public int hashCode() {
    return Objects.hash(code, path, details);
  }

  /**
   * Returns the English text on one line.
   *
   * @return for example {@code /amount: quantity.wrong-kind: Expected a mass, found a volume …}
   */
  @Override
  public String toString() {
    return (path.isEmpty() ? "" : path + ": ") + code.id() + ": " + inWords(Locale.ENGLISH);
  }
}
