// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.explain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.meltwright.core.source.Source;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Messages;

/**
 * How a result came about, as data: what went in, each formula with its numbers, what follows,
 * where to take care, and what it rests on.
 *
 * <p>A result explains itself; your own calculation can do the same. For example:
 *
 * <pre>{@code
 * Symbol wax = Symbol.beside(Explanation.class, "wax", "kg");
 * Symbol resin = Symbol.beside(Explanation.class, "resin", "kg");
 * Formula oneToEight = new Formula(resin, wax.over(Expr.of(8)));
 * Explanation working =
 *     Explanation.builder(new Bilingual("Resin for wax", "Harz zum Wachs"))
 *         .stated(wax, 0.730)
 *         .step(oneToEight, 0.09125)
 *         .build();
 * working.steps().get(0).result(); // resin: 91.25 g
 * working.text(Locale.ENGLISH).lines().count(); // 5
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param title what was worked out
 * @param givens what went in
 * @param methods what was found in a way that is no formula
 * @param steps the formulas in order, each with the number that the result kept
 * @param conclusions what follows
 * @param cautions where the result should be taken with care
 * @param sources what formulas and figures rest on
 */
public record Explanation(
    Bilingual title,
    List<Given> givens,
    List<Method> methods,
    List<Step> steps,
    List<Bilingual> conclusions,
    List<Bilingual> cautions,
    List<Source> sources) {

  /**
   * What went in. Immutable and thread-safe.
   *
   * @param figure the number
   * @param source where it comes from, {@link Source#USER} for what was stated; empty if it was
   *     worked out
   * @param working how it was worked out; empty if it was not
   */
  public record Given(Figure figure, Optional<Source> source, Optional<Explanation> working) {}

  /**
   * A formula and its number. Immutable and thread-safe.
   *
   * @param formula the formula
   * @param line which of several things it was used for; empty if there is but one
   * @param result the number that the result kept, with its symbol: that of the line, if there is
   *     one
   */
  public record Step(Formula formula, Optional<Bilingual> line, Figure result) {}

  /**
   * A way to a number that is no formula, such as a search or the solution of a differential
   * equation. Immutable and thread-safe.
   *
   * @param says what was done
   * @param found what was found
   * @param check how it was checked, with numbers
   */
  public record Method(Bilingual says, List<Figure> found, Bilingual check) {

    public Method {
      found = List.copyOf(found);
    }
  }

  /** Copies the lists. */
  public Explanation {
    givens = List.copyOf(givens);
    methods = List.copyOf(methods);
    steps = List.copyOf(steps);
    conclusions = List.copyOf(conclusions);
    cautions = List.copyOf(cautions);
    sources = List.copyOf(sources);
  }

  /**
   * Starts an explanation.
   *
   * @param title what was worked out
   * @return a builder
   */
  public static Builder builder(Bilingual title) {
    return new Builder(title, Messages.beside(Explanation.class));
  }

  /**
   * Starts an explanation whose words stand in a bundle.
   *
   * @param anchor a class in the package that holds the bundle
   * @param key the key of the title
   * @param values what stands in its places, by name
   * @return a builder
   * @throws java.util.MissingResourceException if the bundle lacks the key
   */
  public static Builder builder(Class<?> anchor, String key, Map<String, Bilingual> values) {
    Messages words = Messages.beside(anchor);
    return new Builder(words.both(key, values), words);
  }

  /**
   * Returns names of lines that differ: what stands twice is numbered from its second on.
   *
   * @param names the names
   * @return as many, in the same order
   */
  public static List<Bilingual> lines(List<Bilingual> names) {
    List<Bilingual> lines = new ArrayList<>();
    for (Bilingual name : names) {
      Bilingual line = name;
      for (int i = 2; lines.contains(line); i++) {
        line = name.plus(" " + i);
      }
      lines.add(line);
    }
    return List.copyOf(lines);
  }

  /**
   * Returns all numbers that are known.
   *
   * @return what went in, what was found, what was worked out, in this order
   */
  public List<Figure> figures() {
    List<Figure> all = new ArrayList<>();
    givens.forEach(given -> all.add(given.figure));
    methods.forEach(method -> all.addAll(method.found));
    steps.forEach(step -> all.add(step.result));
    return all;
  }

  /**
   * Returns the working as plain text, a line each.
   *
   * @param reader the reader's language: German for {@code de}, English for all others
   * @return the text, ending without a line break
   */
  public String text(Locale reader) {
    return new ExplanationWriter(this, reader).full();
  }

  /**
   * Returns what came out and where to take care, without the way there.
   *
   * @param reader the reader's language: German for {@code de}, English for all others
   * @return the text, a line each, ending without a line break
   */
  public String shortText(Locale reader) {
    return new ExplanationWriter(this, reader).brief();
  }

  /** {@return the English text, in short} */
  @Override
  public String toString() {
    return shortText(Locale.ENGLISH);
  }

  /**
   * Collects the parts of an explanation; not thread-safe.
   *
   * <p>Compared by identity: a builder changes.
   */
  public static final class Builder {

    private static final Messages RANGES = Messages.beside(Explanation.class);

    private final Bilingual title;
    private final Messages words;
    private final Map<Symbol, Given> givens = new LinkedHashMap<>();
    private final List<Method> methods = new ArrayList<>();
    private final List<Step> steps = new ArrayList<>();
    private final List<Bilingual> conclusions = new ArrayList<>();
    private final List<Bilingual> cautions = new ArrayList<>();
    private final List<Source> sources = new ArrayList<>();

    private Builder(Bilingual title, Messages words) {
      this.title = title;
      this.words = words;
    }

    /**
     * Adds what the user stated.
     *
     * @param symbol what it stands for
     * @param value the number in the unit of the symbol
     * @return this builder
     */
    public Builder stated(Symbol symbol, double value) {
      return stated(Figure.of(symbol, value));
    }

    /**
     * Adds what the user stated.
     *
     * @param figure the number with its symbol
     * @return this builder
     */
    public Builder stated(Figure figure) {
      return given(new Given(figure, Optional.of(Source.USER), Optional.empty()));
    }

    /**
     * Adds a number that is taken as it is.
     *
     * @param symbol what it stands for
     * @param value the number in the unit of the symbol
     * @return this builder
     */
    public Builder given(Symbol symbol, double value) {
      return given(Figure.of(symbol, value));
    }

    /**
     * Adds a number that is taken as it is.
     *
     * @param figure the number with its symbol
     * @return this builder
     */
    public Builder given(Figure figure) {
      return given(new Given(figure, Optional.empty(), Optional.empty()));
    }

    /**
     * Adds a figure with its source.
     *
     * @param figure the number with its symbol
     * @param source where it comes from
     * @return this builder
     */
    public Builder given(Figure figure, Source source) {
      return given(new Given(figure, Optional.of(source), Optional.empty())).source(source);
    }

    /**
     * Adds a figure that was itself worked out.
     *
     * @param figure the number with its symbol
     * @param working how it was worked out
     * @return this builder
     */
    public Builder given(Figure figure, Explanation working) {
      return given(new Given(figure, Optional.empty(), Optional.of(working)));
    }

    private Builder given(Given given) {
      givens.put(given.figure.symbol(), given);
      return this;
    }

    /**
     * Adds the inputs of an estimate: each at the middle of its range, and their ranges in words.
     *
     * @param inputs the inputs
     * @return this builder
     */
    public Builder inputs(List<EstimateInput> inputs) {
      inputs.forEach(input -> given(input.symbol(), input.central()));
      inputs.stream()
          .filter(input -> !input.isExact())
          .forEach(
              input ->
                  conclusion(
                      RANGES.both(
                          "explanation.range", Map.of("input", Bilingual.of(input::text)))));
      return this;
    }

    /**
     * Adds a way that is no formula.
     *
     * @param method what was done, found and checked
     * @return this builder
     */
    public Builder method(Method method) {
      methods.add(method);
      return this;
    }

    /**
     * Adds a step.
     *
     * @param formula the formula
     * @param kept the number that the result kept, in the unit of the formula's result
     * @return this builder
     */
    public Builder step(Formula formula, double kept) {
      return step(formula, Figure.of(formula.result(), kept));
    }

    /**
     * Adds a step for one of several things.
     *
     * @param formula the formula, of symbols without a thing
     * @param line the thing
     * @param kept the number that the result kept, in the unit of the formula's result
     * @return this builder
     */
    public Builder step(Formula formula, Bilingual line, double kept) {
      return step(formula, Figure.of(formula.result().of(line), kept));
    }

    /**
     * Adds a step.
     *
     * @param formula the formula, of symbols without a thing
     * @param kept the number that the result kept; its symbol names the thing, if there are several
     * @return this builder
     */
    public Builder step(Formula formula, Figure kept) {
      steps.add(new Step(formula, kept.symbol().whose(), kept));
      return this;
    }

    /**
     * Adds what follows.
     *
     * @param sentence a sentence
     * @return this builder
     */
    public Builder conclusion(Bilingual sentence) {
      conclusions.add(sentence);
      return this;
    }

    /**
     * Adds what follows.
     *
     * @param key the key of a sentence in the bundle
     * @param values what stands in its places, by name
     * @return this builder
     */
    public Builder conclusion(String key, Map<String, Bilingual> values) {
      return conclusion(words.both(key, values));
    }

    /**
     * Adds where to take care.
     *
     * @param sentence a sentence
     * @return this builder
     */
    public Builder caution(Bilingual sentence) {
      cautions.add(sentence);
      return this;
    }

    /**
     * Adds where to take care.
     *
     * @param key the key of a sentence in the bundle
     * @return this builder
     */
    public Builder caution(String key) {
      return caution(key, Map.of());
    }

    /**
     * Adds where to take care.
     *
     * @param key the key of a sentence in the bundle
     * @param values what stands in its places, by name
     * @return this builder
     */
    public Builder caution(String key, Map<String, Bilingual> values) {
      return caution(words.both(key, values));
    }

    /**
     * Adds a source, once.
     *
     * @param source what a formula or a figure rests on
     * @return this builder
     */
    public Builder source(Source source) {
      if (!sources.contains(source)) {
        sources.add(source);
      }
      return this;
    }

    /**
     * Returns the explanation.
     *
     * @return what was collected so far
     */
    public Explanation build() {
      return new Explanation(
          title, List.copyOf(givens.values()), methods, steps, conclusions, cautions, sources);
    }
  }
}
