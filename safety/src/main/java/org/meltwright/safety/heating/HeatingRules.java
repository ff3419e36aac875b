// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.meltwright.safety.heating.rule.StandardRules;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * A set of rules and the limits they hold a plan against, with what was switched off or tightened
 * and why.
 *
 * <p>{@link #standard} holds all rules of this library. An app adds its own, tightens the limits,
 * or switches rules off with a reason that each review shows. Fixed rules cannot be switched off.
 * What a switched-off rule could not assess is shown all the same.
 *
 * <p>For example:
 *
 * <pre>{@code
 * HeatingRules studio =
 *     HeatingRules.standard().without("minors-consent", "we teach adults only");
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * HeatingPlan plan =
 *     HeatingPlan.builder(Composition.of(wax)).liquidReading(ofCelsius(91)).build();
 * HeatingReview review = studio.review(plan);
 * review.findings().get(0).ruleId(); // above-target
 * review.switchedOff(); // {minors-consent=we teach adults only}
 * studio.without("hard-ceiling", "we are careful"); // throws ProblemException
 * }</pre>
 *
 * <p>This class is immutable and thread-safe.
 */
public final class HeatingRules {

  private static final HeatingRules STANDARD =
      new HeatingRules(byId(StandardRules.all()), Map.of(), HeatingLimits.standard());

  private final Map<String, HeatingRule> rules;
  private final Map<String, String> switchedOff;
  private final HeatingLimits limits;

  /**
   * Returns all rules of this library, none switched off.
   *
   * @return the standard set
   */
  public static HeatingRules standard() {
    return STANDARD;
  }

  private HeatingRules(
      Map<String, HeatingRule> rules, Map<String, String> switchedOff, HeatingLimits limits) {
    this.rules = rules;
    this.switchedOff = switchedOff;
    this.limits = limits;
  }

  /**
   * Returns the limits of the set.
   *
   * @return the limits that each plan is held against, tightened further by the age of the youngest
   */
  public HeatingLimits limits() {
    return limits;
  }

  /**
   * Returns a set with tighter limits; each finding at such a limit says so and why. All that
   * depends on a limit follows: target, margins, texts, actions, record forms.
   *
   * @param tighter the limits, in no figure looser than those of the set
   * @param reason why, in the user's words
   * @return the new set
   * @throws ProblemException if a figure is looser, each one a problem, or no reason is given
   */
  public HeatingRules withLimits(HeatingLimits tighter, String reason) {
    List<Problem> problems = new ArrayList<>(tighter.looserThan(limits));
    if (reason.isBlank()) {
      problems.add(Problem.of(HeatingProblem.REASON_MISSING, "limits"));
    }
    if (!problems.isEmpty()) {
      throw new ProblemException(problems);
    }
    HeatingLimits all = limits.tightened(tighter.because(Bilingual.of(reason.strip())));
    return new HeatingRules(rules, switchedOff, all);
  }

  /**
   * Returns the rules of the set.
   *
   * @return the rules by id, those switched off included
   */
  public List<HeatingRule> rules() {
    return List.copyOf(rules.values());
  }

  /**
   * Returns the rule of an id.
   *
   * @param id the id
   * @return the rule; empty if it is not in the set
   */
  public Optional<HeatingRule> find(String id) {
    return Optional.ofNullable(rules.get(id));
  }

  /**
   * Returns what is switched off and why.
   *
   * @return the reasons by rule id, in order of the ids
   */
  public Map<String, String> switchedOff() {
    return switchedOff;
  }

  /**
   * Returns a set with one more rule.
   *
   * @param rule the rule
   * @return the new set
   * @throws ProblemException if a rule of its id is in the set already
   */
  public HeatingRules with(HeatingRule rule) {
    if (rules.containsKey(rule.info().id())) {
      throw new ProblemException(Problem.of(HeatingProblem.RULE_TWICE, rule.info().id()));
    }
    List<HeatingRule> more = new ArrayList<>(rules.values());
    more.add(rule);
    return new HeatingRules(byId(more), switchedOff, limits);
  }

  /**
   * Returns a set in which a rule is switched off; each review shows it with the reason.
   *
   * @param id the id of the rule
   * @param reason why, in the user's words
   * @return the new set
   * @throws ProblemException if the rule is fixed or not in the set, or no reason is given
   */
  public HeatingRules without(String id, String reason) {
    HeatingRule rule =
        find(id)
            .orElseThrow(() -> new ProblemException(Problem.of(HeatingProblem.RULE_UNKNOWN, id)));
    if (rule.info().fixed()) {
      throw new ProblemException(Problem.of(HeatingProblem.RULE_FIXED, id));
    }
    return switchingOff(List.of(id), reason);
  }

  /**
   * Returns a set in which all rules are switched off that do not match, but for the fixed ones;
   * each review shows them with the reason.
   *
   * <p>For example, only the rules of one topic, or none but what may hurt someone.
   *
   * @param wanted which rules to keep
   * @param reason why the others go, in the user's words
   * @return the new set; what was switched off before keeps its reason
   * @throws ProblemException if no reason is given
   */
  public HeatingRules keeping(Predicate<RuleInfo> wanted, String reason) {
    List<String> dropped =
        rules.values().stream()
            .map(HeatingRule::info)
            .filter(info -> !info.fixed() && !wanted.test(info))
            .map(RuleInfo::id)
            .toList();
    return switchingOff(dropped, reason);
  }

  /** A reason given before stays: what is switched off twice has both. */
  private HeatingRules switchingOff(List<String> ids, String reason) {
    if (reason.isBlank()) {
      throw new ProblemException(Problem.of(HeatingProblem.REASON_MISSING, String.join(", ", ids)));
    }
    Map<String, String> off = new TreeMap<>(switchedOff);
    for (String id : ids) {
      off.merge(id, reason.strip(), (one, other) -> one.equals(other) ? one : one + "; " + other);
    }
    return new HeatingRules(rules, Collections.unmodifiableMap(off), limits);
  }

  /**
   * Holds all rules against a plan.
   *
   * <p>A rule that fails is named and not assessed, blocks if it would block, and spoils no other.
   *
   * @param plan what is to be heated, with what and where
   * @return the review
   */
  public HeatingReview review(HeatingPlan plan) {
    return new Reviewing(plan.heldAgainst(limits), switchedOff).review(rules.values());
  }

  private static Map<String, HeatingRule> byId(Collection<HeatingRule> rules) {
    Map<String, HeatingRule> sorted = new TreeMap<>();
    rules.forEach(rule -> sorted.put(rule.info().id(), rule));
    return Collections.unmodifiableMap(sorted);
  }

  /**
   * Returns the ids of the rules, what is switched off, and the limits.
   *
   * @return for example "73 rules, switched off: {minors-consent=…}, target 90.0 °C, …"
   */
  @Override
  public String toString() {
    return rules.size() + " rules, switched off: " + switchedOff + ", " + limits;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof HeatingRules that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(rules, switchedOff, limits);
  }
}
