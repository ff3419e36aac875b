// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import static org.meltwright.safety.heating.Checks.CHECK;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.material.Material;

/**
 * What one rule makes of one plan: nothing, a finding with the numbers it speaks of, and what it
 * could not assess.
 *
 * <p>For example, what a rule answers about a pot that is 70 % full, of which no thermometer is
 * stated:
 *
 * <pre>{@code
 * double level = 0.7;
 * RuleOutcome outcome =
 *     RuleOutcome.foundIf(Limit.exceeds(level, 2.0 / 3))
 *         .with("percent", level * 100)
 *         .andNotAssessed("thermometer");
 * outcome.isFound(); // true
 * RuleOutcome.notAssessed("fill-level").isFound(); // false
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class RuleOutcome {

  /** Nothing found and nothing left unassessed. */
  public static final RuleOutcome NOTHING = new RuleOutcome(null, List.of());

  private final @Nullable Map<String, Object> found;
  private final List<Missing> missing;

  /**
   * A datum that a rule needed and did not have.
   *
   * @param material the material it is missing of; null if it is missing of the plan
   * @param property the id of what is missing, for example {@code flash-point}
   */
  record Missing(@Nullable Material material, String property) {

    Missing {
      CHECK.named(property, "what was not assessed");
    }
  }

  /**
   * Returns a finding without numbers.
   *
   * @return the outcome
   */
  public static RuleOutcome found() {
    return new RuleOutcome(Map.of(), List.of());
  }

  /**
   * Returns a finding if a condition holds, else nothing.
   *
   * @param condition the condition
   * @return the outcome
   */
  public static RuleOutcome foundIf(boolean condition) {
    return condition ? found() : NOTHING;
  }

  /**
   * Returns that a datum of the plan was missing.
   *
   * @param property the id of what is missing; the texts stand beside the rule under {@code
   *     missing.<property>.what} and {@code .remedy}
   * @return the outcome
   */
  public static RuleOutcome notAssessed(String property) {
    return NOTHING.andNotAssessed(property);
  }

  private RuleOutcome(@Nullable Map<String, Object> found, List<Missing> missing) {
    this.found = found;
    this.missing = missing;
  }

  /**
   * Tells whether the rule found what it looks for.
   *
   * @return whether there is a finding
   */
  public boolean isFound() {
    return found != null;
  }

  /**
   * Returns a copy whose finding carries one more value for its texts; nothing stays nothing.
   *
   * @param name the name of the place in the texts, letters only
   * @param value a temperature, a difference, a mass fraction, a material or a list of them, a
   *     number or a text: it is written in the reader's language when asked
   * @return the new outcome
   */
  public RuleOutcome with(String name, Object value) {
    if (found == null) {
      return this;
    }
    Map<String, Object> more = new LinkedHashMap<>(found);
    more.put(name, value);
    return new RuleOutcome(Map.copyOf(more), missing);
  }

  /**
   * Returns a copy in which a datum of the plan was missing as well.
   *
   * @param property the id of what is missing
   * @return the new outcome
   */
  public RuleOutcome andNotAssessed(String property) {
    return and(new Missing(null, property));
  }

  /**
   * Returns a copy in which a datum of a material was missing as well.
   *
   * @param material the material
   * @param property the id of what is missing
   * @return the new outcome
   */
  public RuleOutcome andNotAssessed(Material material, String property) {
    return and(new Missing(material, property));
  }

  /**
   * Returns a copy that is a finding as well if a condition holds.
   *
   * @param condition the condition
   * @return the new outcome
   */
  public RuleOutcome andFoundIf(boolean condition) {
    return condition && found == null ? new RuleOutcome(Map.of(), missing) : this;
  }

  private RuleOutcome and(Missing one) {
    List<Missing> more = new ArrayList<>(missing);
    more.add(one);
    return new RuleOutcome(found, List.copyOf(more));
  }

  Map<String, Object> details() {
    return found == null ? Map.of() : found;
  }

  List<Missing> missing() {
    return missing;
  }
}
