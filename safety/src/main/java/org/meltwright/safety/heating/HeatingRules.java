// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.meltwright.safety.heating.RuleOutcome.Missing;
import org.meltwright.safety.heating.rule.StandardRules;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * A set of rules, and what was switched off in it and why.
 *
 * <p>{@link #standard} holds all rules of this library. An app adds its own, takes only those it
 * wants, or switches one off with a reason that each review shows. Fixed rules are part of every
 * set and cannot be switched off. What a switched-off rule could not assess is shown all the same.
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
      new HeatingRules(byId(StandardRules.all()), Map.of());

  private final Map<String, HeatingRule> rules;
  private final Map<String, String> switchedOff;

  /**
   * Returns all rules of this library, none switched off.
   *
   * @return the standard set
   */
  public static HeatingRules standard() {
    return STANDARD;
  }

  private HeatingRules(Map<String, HeatingRule> rules, Map<String, String> switchedOff) {
    this.rules = rules;
    this.switchedOff = switchedOff;
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
    return new HeatingRules(byId(more), switchedOff);
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
    if (reason.isBlank()) {
      throw new ProblemException(Problem.of(HeatingProblem.REASON_MISSING, id));
    }
    Map<String, String> off = new TreeMap<>(switchedOff);
    off.put(id, reason.strip());
    return new HeatingRules(rules, Collections.unmodifiableMap(off));
  }

  /**
   * Returns a set that keeps the rules that match, and always the fixed ones.
   *
   * <p>For example, only the rules of one topic, or none but what may hurt someone.
   *
   * @param wanted which rules to keep
   * @return the new set
   */
  public HeatingRules keeping(Predicate<RuleInfo> wanted) {
    List<HeatingRule> kept =
        rules.values().stream().filter(r -> r.info().fixed() || wanted.test(r.info())).toList();
    Map<String, String> off = new TreeMap<>(switchedOff);
    off.keySet().removeIf(id -> kept.stream().noneMatch(r -> r.info().id().equals(id)));
    return new HeatingRules(byId(kept), Collections.unmodifiableMap(off));
  }

  /**
   * Holds all rules against a plan.
   *
   * @param plan what is to be heated, with what and where
   * @return the review
   */
  public HeatingReview review(HeatingPlan plan) {
    List<Finding> findings = new ArrayList<>();
    Map<Missing, List<HeatingRule>> missing = new LinkedHashMap<>();
    for (HeatingRule rule : rules.values()) {
      RuleOutcome outcome = rule.review(plan);
      if (outcome.isFound() && !switchedOff.containsKey(rule.info().id())) {
        findings.add(new Finding(rule, outcome.details()));
      }
      for (Missing datum : outcome.missing()) {
        missing.computeIfAbsent(datum, d -> new ArrayList<>()).add(rule);
      }
    }
    List<NotAssessed> notAssessed = new ArrayList<>();
    missing.forEach(
        (datum, wantedBy) ->
            notAssessed.add(new NotAssessed(datum.material(), datum.property(), wantedBy)));
    return new HeatingReview(
        plan,
        findings.stream().sorted().toList(),
        notAssessed.stream().sorted().toList(),
        switchedOff);
  }

  private static Map<String, HeatingRule> byId(Collection<HeatingRule> rules) {
    Map<String, HeatingRule> sorted = new TreeMap<>();
    rules.forEach(rule -> sorted.put(rule.info().id(), rule));
    return Collections.unmodifiableMap(sorted);
  }
}
