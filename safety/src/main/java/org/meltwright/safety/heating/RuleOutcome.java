// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import static org.meltwright.safety.heating.HeatingProblem.CHECK;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.material.Material;

/**
 * What one rule makes of one plan: nothing, a finding with the numbers it speaks of, what it could
 * not assess, and what nobody mentioned.
 *
 * <p><em>Not assessed</em> is a figure or a reading without which something that was mentioned
 * cannot be judged: a pot without a probe, a wax without a flash point. <em>Not asked</em> is what
 * nobody mentioned at all, such as the room.
 *
 * <p>For example, what a rule answers about a pot that is 70 % full on a plate of which the
 * overshoot is not stated:
 *
 * <pre>{@code
 * double level = 0.7;
 * RuleOutcome outcome =
 *     RuleOutcome.foundIf(Limit.exceeds(level, 2.0 / 3))
 *         .with("percent", level * 100)
 *         .andNotAssessed("overshoot");
 * outcome.isFound(); // true
 * RuleOutcome.notAsked("fill-level").isFound(); // false
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class RuleOutcome {

  /** Nothing found and nothing left unassessed. */
  public static final RuleOutcome NOTHING = new RuleOutcome(null, List.of(), List.of(), List.of());

  private static final RuleOutcome FOUND =
      new RuleOutcome(Map.of(), List.of(), List.of(), List.of());

  /** What most plans do not mention, made once: a review asks a hundred rules. */
  private static final Map<String, RuleOutcome> NOT_ASKED =
      Collections.unmodifiableMap(
          Stream.concat(
                  Stream.of(Circumstance.values()).map(Circumstance::id),
                  Stream.of("people", "room", "vessel", "fill-level", "hours-held", "thermometer"))
              .collect(Collectors.toMap(what -> what, NOTHING::andNotAsked)));

  private final @Nullable Map<String, Object> found;
  private final List<Missing> missing;
  private final List<String> notAsked;
  private final List<HeatingLimits.Figure> limits;

  /**
   * A datum that a rule needed and did not have.
   *
   * @param material the material it is missing of; null if it is missing of the plan
   * @param property the id of what is missing, for example {@code flash-point}
   * @param severity how it ranks, a caution at least
   */
  record Missing(@Nullable Material material, String property, Severity severity) {

    Missing {
      CHECK.named(property, "what was not assessed");
      severity = severity.isAtLeast(Severity.CAUTION) ? severity : Severity.CAUTION;
    }
  }

  /**
   * Returns a finding without numbers.
   *
   * @return the outcome
   */
  public static RuleOutcome found() {
    return FOUND;
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

  /**
   * Returns that nobody mentioned something.
   *
   * @param what the id of what was not mentioned; its text stands beside the rule under {@code
   *     asked.<what>}
   * @return the outcome
   */
  public static RuleOutcome notAsked(String what) {
    RuleOutcome known = NOT_ASKED.get(what);
    return known == null ? NOTHING.andNotAsked(what) : known;
  }

  /**
   * Returns what a plan says of a circumstance.
   *
   * @param plan the plan
   * @param circumstance what is always a wrong
   * @return a finding if it is stated, nothing if it is denied; else that nobody mentioned it
   */
  public static RuleOutcome of(HeatingPlan plan, Circumstance circumstance) {
    if (plan.has(circumstance)) {
      return FOUND;
    }
    return plan.denies(circumstance) ? NOTHING : notAsked(circumstance.id());
  }

  private RuleOutcome(
      @Nullable Map<String, Object> found,
      List<Missing> missing,
      List<String> notAsked,
      List<HeatingLimits.Figure> limits) {
    this.found = found;
    this.missing = missing;
    this.notAsked = notAsked;
    this.limits = limits;
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
    more.put(name, Objects.requireNonNull(value, name));
    return new RuleOutcome(Collections.unmodifiableMap(more), missing, notAsked, limits);
  }

  /**
   * Returns a copy whose finding rests on figures of the plan's limits: where one is tightened, the
   * finding says so and why.
   *
   * @param figures the figures
   * @return the new outcome
   */
  public RuleOutcome at(HeatingLimits.Figure... figures) {
    return found == null ? this : new RuleOutcome(found, missing, notAsked, List.of(figures));
  }

  /**
   * Returns a copy in which a datum of the plan was missing as well.
   *
   * @param property the id of what is missing
   * @return the new outcome
   */
  public RuleOutcome andNotAssessed(String property) {
    return and(new Missing(null, property, Severity.CAUTION));
  }

  /**
   * Returns a copy in which nobody mentioned something.
   *
   * @param what the id of what was not mentioned
   * @return the new outcome
   */
  public RuleOutcome andNotAsked(String what) {
    List<String> more = new ArrayList<>(notAsked);
    more.add(CHECK.named(what, "what was not asked"));
    return new RuleOutcome(found, missing, List.copyOf(more), limits);
  }

  /**
   * Returns a copy in which a datum of a material was missing as well.
   *
   * @param material the material
   * @param property the id of what is missing
   * @return the new outcome
   */
  public RuleOutcome andNotAssessed(Material material, String property) {
    return andNotAssessed(material, property, Severity.CAUTION);
  }

  /**
   * Returns a copy in which a datum of the plan was missing that ranks above a caution.
   *
   * @param property the id of what is missing
   * @param severity how it ranks; below a caution it counts as one
   * @return the new outcome
   */
  public RuleOutcome andNotAssessed(String property, Severity severity) {
    return and(new Missing(null, property, severity));
  }

  /**
   * Returns a copy in which a datum of a material was missing that ranks above a caution.
   *
   * @param material the material
   * @param property the id of what is missing
   * @param severity how it ranks; below a caution it counts as one
   * @return the new outcome
   */
  public RuleOutcome andNotAssessed(Material material, String property, Severity severity) {
    return and(new Missing(material, property, severity));
  }

  /**
   * Returns a copy that is a finding as well if a condition holds.
   *
   * @param condition the condition
   * @return the new outcome
   */
  public RuleOutcome andFoundIf(boolean condition) {
    return condition && found == null ? new RuleOutcome(Map.of(), missing, notAsked, limits) : this;
  }

  private RuleOutcome and(Missing one) {
    List<Missing> more = new ArrayList<>(missing);
    more.add(one);
    return new RuleOutcome(found, List.copyOf(more), notAsked, limits);
  }

  Map<String, Object> details() {
    return found == null ? Map.of() : found;
  }

  List<Missing> missing() {
    return missing;
  }

  List<String> notAsked() {
    return notAsked;
  }

  List<HeatingLimits.Figure> limits() {
    return limits;
  }

  /**
   * Compares the finding with its values, what was not assessed and what was not asked.
   *
   * @param other the other object
   * @return whether both say the same
   */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof RuleOutcome that
        && Objects.equals(found, that.found)
        && missing.equals(that.missing)
        && notAsked.equals(that.notAsked)
        && limits.equals(that.limits);
  }

  @Override
  public int hashCode() {
    return Objects.hash(found, missing, notAsked, limits);
  }

  @Override
  public String toString() {
    return (found == null ? "nothing found" : "found " + found)
        + (missing.isEmpty() ? "" : ", not assessed " + missing)
        + (notAsked.isEmpty() ? "" : ", not asked " + notAsked);
  }
}
