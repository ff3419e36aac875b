// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Reads the fields of a draft, a record of what was written, and collects what is wrong with each
 * at its place.
 *
 * <p>A field that is missing is a problem, unless it is read by {@link #optional()} or a problem of
 * it was found before, such as a text where a list belongs. A field with a problem is empty, and
 * the thing is made only when no field has one.
 *
 * <p>For example, a tin read from a draft whose capacity is a mass and whose kind is missing:
 *
 * <pre>{@code
 * FieldReader at = FieldReader.of(QuantityParser.localeFree());
 * at.value("id", "tin"); // tin
 * at.parse("capacity", "730 g", QuantityParser::parseVolume); // Optional.empty
 * at.word("state", null, MaterialState.class); // Optional.empty
 * at.optional().parse("mass", null, QuantityParser::parseMass); // Optional.empty
 * List<Problem> problems = at.problems().toList();
 * problems.get(0).path(); // /capacity
 * problems.get(1).what(Locale.ENGLISH); // The field "state" is missing.
 * problems.size(); // 2
 * at.make(() -> "a tin"); // throws ProblemException
 * }</pre>
 *
 * <p>For one thread, and compared by identity: what it has collected changes.
 */
public final class FieldReader {

  private final QuantityParser parser;
  private final Problems problems;
  private final String path;
  private final boolean required;

  /**
   * Returns a reader of one draft, whose paths are relative to it.
   *
   * @param parser reads the texts
   * @return the reader, which has found nothing yet
   */
  public static FieldReader of(QuantityParser parser) {
    return of(parser, new Problems());
  }

  /**
   * Returns a reader that adds to what was found before.
   *
   * @param parser reads the texts
   * @param problems collects the problems
   * @return the reader
   */
  public static FieldReader of(QuantityParser parser, Problems problems) {
    return new FieldReader(parser, problems, "", true);
  }

  private FieldReader(QuantityParser parser, Problems problems, String path, boolean required) {
    this.parser = parser;
    this.problems = problems;
    this.path = path;
    this.required = required;
  }

  /** {@return a reader of the same draft, for which a missing field is no problem} */
  public FieldReader optional() {
    return new FieldReader(parser, problems, path, false);
  }

  /**
   * Returns a reader of what lies in a field; it adds to the same problems.
   *
   * @param name the name of the field, or the place in a list
   * @return the reader, for which a missing field is a problem
   */
  public FieldReader field(String name) {
    return new FieldReader(parser, problems, path + "/" + name, true);
  }

  /** {@return the JSON pointer (RFC 6901) of what is read; empty for the draft itself} */
  public String path() {
    return path;
  }

  /** {@return what reads the texts} */
  public QuantityParser parser() {
    return parser;
  }

  /** {@return what was found so far} */
  public Problems problems() {
    return problems;
  }

  /**
   * Reads a field that is text, a number, a yes or no, or a draft of its own.
   *
   * @param <V> the type of the field
   * @param <T> the type of what it becomes
   * @param name the name of the field
   * @param value what stands in it; null or blank text is none
   * @param reader makes the value
   * @return the value; empty if there is none or it had problems
   */
  public <V, T> Optional<T> read(String name, @Nullable V value, Function<? super V, T> reader) {
    if (value == null || (value instanceof String text && text.isBlank())) {
      missing(name);
      return Optional.empty();
    }
    return problems.attempt(path + "/" + name, () -> reader.apply(value));
  }

  private void missing(String name) {
    if (required && !problems.hasBelow(path + "/" + name)) {
      problems.add(
          Problem.of(UnitsProblem.FIELD_MISSING, "").with("field", name).under(path + "/" + name));
    }
  }

  /**
   * Reads a field as it stands.
   *
   * @param <T> the type of the field
   * @param name the name of the field
   * @param value what stands in it; null or blank text is none
   * @return the value; empty if there is none
   */
  public <T> Optional<T> value(String name, @Nullable T value) {
    return read(name, value, Function.identity());
  }

  /**
   * Reads a text by the parser, in its notation.
   *
   * <p>For example {@code at.parse("mass", mass, QuantityParser::parseMass)}.
   *
   * @param <T> the type of what it becomes
   * @param name the name of the field
   * @param text the text; null or blank is none
   * @param reader the method of the parser, or what asks it and guards the value
   * @return the value; empty if there is none or it had problems
   */
  public <T> Optional<T> parse(
      String name, @Nullable String text, BiFunction<QuantityParser, String, T> reader) {
    return read(name, text, t -> reader.apply(parser, t));
  }

  /**
   * Reads one of the words that stand for the constants of an enum.
   *
   * @param <E> the enum
   * @param name the name of the field
   * @param word for example "stainless-steel"; null or blank is none
   * @param type the enum
   * @return the constant; empty if there is none or the word stands for none
   */
  public <E extends Enum<E>> Optional<E> word(String name, @Nullable String word, Class<E> type) {
    return read(name, word, w -> constant(w, type));
  }

  /**
   * Returns the constant of an enum that a word stands for, as in a list of words.
   *
   * @param <E> the enum
   * @param word for example "stainless-steel"
   * @param type the enum
   * @return the constant
   * @throws ProblemException if the word stands for none
   */
  public static <E extends Enum<E>> E constant(String word, Class<E> type) {
    Map<String, E> words = new LinkedHashMap<>();
    Arrays.stream(type.getEnumConstants()).forEach(e -> words.put(wordOf(e), e));
    return meaning(word.strip(), words);
  }

  /**
   * Reads one of several words.
   *
   * @param <T> the type of what they stand for
   * @param name the name of the field
   * @param word the word; null or blank is none
   * @param words what each word stands for, in the order in which they are told
   * @return what it stands for; empty if there is none or the word is not among them
   */
  public <T> Optional<T> oneOf(String name, @Nullable String word, Map<String, T> words) {
    return read(name, word, w -> meaning(w.strip(), words));
  }

  private static <T> T meaning(String word, Map<String, T> words) {
    T meaning = words.get(word);
    if (meaning != null) {
      return meaning;
    }
    throw new ProblemException(
        Problem.of(UnitsProblem.WORD_UNKNOWN, word)
            .with("words", String.join(", ", words.keySet()))
            .with("nearest", Nearest.of(word, words.keySet()).orElse("")));
  }

  /**
   * Returns the word for a constant of an enum.
   *
   * @param constant the constant
   * @return its name in lower case, words joined by hyphens, as {@link #word} reads it
   */
  public static String wordOf(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /**
   * Reads a list, each entry at its place; an entry that is null or blank is a problem.
   *
   * @param <V> the type of the entries
   * @param <T> the type of what they become
   * @param name the name of the field
   * @param entries what stands in it; null or an empty list is none
   * @param reader makes a value of an entry
   * @return the values that could be read, in order; unmodifiable
   */
  public <V, T> List<T> each(
      String name, @Nullable List<? extends @Nullable V> entries, Function<? super V, T> reader) {
    if (entries == null || entries.isEmpty()) {
      missing(name);
      return List.of();
    }
    return field(name).entries(entries, reader);
  }

  /**
   * Reads the list that this reader stands at, each entry at its place; an entry that is null or
   * blank is a problem.
   *
   * @param <V> the type of the entries
   * @param <T> the type of what they become
   * @param entries the entries
   * @param reader makes a value of an entry
   * @return the values that could be read, in order; unmodifiable
   */
  public <V, T> List<T> entries(
      List<? extends @Nullable V> entries, Function<? super V, T> reader) {
    List<T> values = new ArrayList<>();
    for (int i = 0; i < entries.size(); i++) {
      entry(i, entries.get(i), reader).ifPresent(values::add);
    }
    return List.copyOf(values);
  }

  private <V, T> Optional<T> entry(int place, @Nullable V entry, Function<? super V, T> reader) {
    if (entry == null || (entry instanceof String text && text.isBlank())) {
      problems.add(
          Problem.of(UnitsProblem.ENTRY_MISSING, "")
              .with("place", Integer.toString(place + 1))
              .under(path + "/" + place));
      return Optional.empty();
    }
    return read(Integer.toString(place), entry, reader);
  }

  /**
   * Makes something of fields that were read, if none has a problem.
   *
   * @param <T> the type of the thing
   * @param maker makes it; what it finds is a problem of the draft as a whole
   * @return the thing; empty if it or a field of it has a problem
   */
  public <T> Optional<T> attempt(Supplier<T> maker) {
    return problems.hasBelow(path) ? Optional.empty() : problems.attempt(path, maker);
  }

  /**
   * Makes the thing, or throws all that was found.
   *
   * @param <T> the type of the thing
   * @param maker makes it, when no field has a problem
   * @return the thing
   * @throws ProblemException if anything is wrong; it carries all problems found
   */
  public <T> T make(Supplier<T> maker) {
    Optional<T> made = attempt(maker);
    problems.throwIfAny();
    return made.orElseThrow();
  }

  /**
   * Returns what is read and what was found.
   *
   * @return for example {@code /vessels/0: []}
   */
  @Override
  public String toString() {
    return path + ": " + problems;
  }
}
