// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.meltwright.core.source.Source;

/**
 * How a result came about: inputs, formula, steps, warnings and sources, as lines in English.
 *
 * <p>Some results still tell their working so; {@link Explanation} holds it as data.
 *
 * <p>A result explains itself; your own calculation can do the same. For example:
 *
 * <pre>{@code
 * EnglishExplanation working =
 *     EnglishExplanation.builder("Resin for 730 g of wax at 1 : 8")
 *         .given("wax 730 g")
 *         .formula("resin = wax × first ÷ second")
 *         .step("730 g × 1 ÷ 8 = 91.25 g")
 *         .build();
 * working.steps(); // [730 g × 1 ÷ 8 = 91.25 g]
 * working.text().lines().count(); // 4
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param title what was worked out
 * @param inputs what went in, one line each with its unit
 * @param formula the formula with its symbols; empty if there is none
 * @param steps the numbers in order
 * @param warnings where the result should be taken with care
 * @param sources what the figures rest on
 */
public record EnglishExplanation(
    String title,
    List<String> inputs,
    String formula,
    List<String> steps,
    List<String> warnings,
    List<Source> sources) {

  public EnglishExplanation {
    inputs = List.copyOf(inputs);
    steps = List.copyOf(steps);
    warnings = List.copyOf(warnings);
    sources = List.copyOf(sources);
  }

  /**
   * Starts an explanation.
   *
   * @param title what was worked out
   * @return a builder
   */
  public static Builder builder(String title) {
    return new Builder(title);
  }

  /**
   * Returns the explanation as plain text, a line each.
   *
   * @return the text, ending without a line break
   */
  public String text() {
    List<String> lines = new ArrayList<>();
    lines.add(title);
    inputs.forEach(i -> lines.add("  given: " + i));
    if (!formula.isEmpty()) {
      lines.add("  formula: " + formula);
    }
    steps.forEach(s -> lines.add("  " + s));
    warnings.forEach(w -> lines.add("  take care: " + w));
    sources.forEach(s -> lines.add("  source: " + s.citation()));
    return lines.stream().collect(Collectors.joining("\n"));
  }

  /**
   * Collects the parts of an explanation; not thread-safe.
   *
   * <p>Compared by identity: a builder changes.
   */
  public static final class Builder {

    private final String title;
    private final List<String> inputs = new ArrayList<>();
    private final List<String> steps = new ArrayList<>();
    private final List<String> warnings = new ArrayList<>();
    private final List<Source> sources = new ArrayList<>();
    private String formula = "";

    private Builder(String title) {
      this.title = title;
    }

    /**
     * Adds an input.
     *
     * @param line what went in, with its unit
     * @return this builder
     */
    public Builder given(String line) {
      inputs.add(line);
      return this;
    }

    /**
     * Sets the formula.
     *
     * @param text the formula with its symbols
     * @return this builder
     */
    public Builder formula(String text) {
      formula = text;
      return this;
    }

    /**
     * Adds a step.
     *
     * @param line the numbers of this step
     * @return this builder
     */
    public Builder step(String line) {
      steps.add(line);
      return this;
    }

    /**
     * Adds a warning.
     *
     * @param line where to take care
     * @return this builder
     */
    public Builder warning(String line) {
      warnings.add(line);
      return this;
    }

    /**
     * Adds a source, once.
     *
     * @param source what a figure rests on
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
    public EnglishExplanation build() {
      return new EnglishExplanation(title, inputs, formula, steps, warnings, sources);
    }
  }
}
