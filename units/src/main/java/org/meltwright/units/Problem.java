// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

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
 * <p>A text is never missing: a code whose bundle lacks it is told by its id and the problem's
 * details. Serialised, a problem keeps its code (one that is no constant of an enum by its id
 * alone), its path, its details and its texts in both languages.
 *
 * <p>This class is immutable and thread-safe.
 *
 * @serial exclude
 */
@SuppressWarnings("InvalidBlockTag") // the serialised form is no API
public final class Problem implements Serializable {

  private static final long serialVersionUID = 1L;

  private static final String FOUND = "found";

  private final transient ProblemCode code;
  private final String path;
  private final transient Map<String, Bilingual> details;
  private final transient @Nullable Map<String, Bilingual> kept;

  /**
   * Creates a problem at the root of what was given.
   *
   * @param code what kind of problem it is
   * @param found what was found, as the person wrote it
   * @return the problem
   */
  public static Problem of(ProblemCode code, String found) {
    return of(code, Bilingual.of(found));
  }

  /**
   * Creates a problem at the root of what was given, about a value that no one wrote as text.
   *
   * @param code what kind of problem it is
   * @param found what was found, as each reader reads it
   * @return the problem
   */
  public static Problem of(ProblemCode code, Bilingual found) {
    return new Problem(code, "", Map.of(FOUND, found), null);
  }

  Problem(
      ProblemCode code,
      String path,
      Map<String, Bilingual> details,
      @Nullable Map<String, Bilingual> kept) {
    this.code = Objects.requireNonNull(code, "code");
    this.path = path;
    this.details = details;
    this.kept = kept;
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

  /** {@return what was found, as the person wrote it; a value that was not text, locale-free} */
  public String found() {
    return found(Locale.ENGLISH);
  }

  /**
   * Returns what was found, for a reader.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return what was found, as the person wrote it; a value that was not text in the reader's
   *     notation
   */
  public String found(Locale locale) {
    Bilingual found = details.get(FOUND);
    return found == null ? "" : found.in(locale);
  }

  /**
   * Returns the values that the texts speak of, by name, "found" among them.
   *
   * @return an unmodifiable map in the order given, in English
   */
  public Map<String, String> details() {
    return details(Locale.ENGLISH);
  }

  private Map<String, String> details(Locale locale) {
    Map<String, String> said = new LinkedHashMap<>();
    details.forEach((name, value) -> said.put(name, value.in(locale)));
    return Collections.unmodifiableMap(said);
  }

  /**
   * Returns a copy with one more value for the texts.
   *
   * @param name the name of the place in the texts, letters only
   * @param value what stands there
   * @return the new problem
   */
  public Problem with(String name, String value) {
    return with(name, Bilingual.of(value));
  }

  /**
   * Returns a copy with one more value for the texts, said in each language.
   *
   * @param name the name of the place in the texts, letters only
   * @param value what stands there
   * @return the new problem
   */
  public Problem with(String name, Bilingual value) {
    Map<String, Bilingual> more = new LinkedHashMap<>(details);
    more.put(name, value);
    return new Problem(code, path, more, null);
  }

  /**
   * Returns a copy whose path lies below another.
   *
   * @param pointer the JSON pointer (RFC 6901) of the enclosing value, empty or starting with "/"
   * @return the new problem, at {@code pointer + path()}
   */
  public Problem under(String pointer) {
    return new Problem(code, pointer + path, details, kept);
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
   * @return one phrase; empty if the code has no such text
   */
  public String allowed(Locale locale) {
    return text("allowed", locale);
  }

  /**
   * Says what to do.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return one sentence; empty if the code has no such text
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
                "what",
                what(locale),
                FOUND,
                found(locale),
                "allowed",
                allowed(locale),
                "remedy",
                remedy(locale)));
  }

  String text(String part, Locale locale) {
    Bilingual before = kept == null ? null : kept.get(part);
    return before == null ? lookedUp(part, locale) : before.in(locale);
  }

  /** An app's code may come without a bundle, or with one that cannot be read: never a failure. */
  private String lookedUp(String part, Locale locale) {
    try {
      return Messages.beside(code.getClass())
          .text("problem." + code.id() + "." + part, locale, details(locale));
    } catch (RuntimeException e) {
      return part.equals("what") ? withoutText(locale) : "";
    }
  }

  private String withoutText(Locale locale) {
    String values =
        details.entrySet().stream()
            .filter(detail -> !detail.getKey().equals(FOUND))
            .map(detail -> detail.getKey() + ": " + detail.getValue().in(locale))
            .collect(Collectors.joining(", "));
    return code.id() + (values.isEmpty() ? "." : " (" + values + ").");
  }

  Map<String, Bilingual> bilingualDetails() {
    return details;
  }

  private Object writeReplace() {
    return SavedProblem.of(this);
  }

  @SuppressWarnings("unused") // called by the JDK; a stream can only hold what stands for a problem
  private void readObject(ObjectInputStream stream) throws InvalidObjectException {
    throw new InvalidObjectException("a problem is read from what stands for it");
  }

  /**
   * Compares code, path and details.
   *
   * @param other the other object
   * @return whether both are the same problem at the same place
   */
  @Override
  public boolean equals(@Nullable Object other) {
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
