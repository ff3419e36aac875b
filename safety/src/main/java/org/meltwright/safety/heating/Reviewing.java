// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.meltwright.safety.heating.RuleOutcome.Missing;

/** Gathers what the rules make of one plan. */
final class Reviewing {

  private final HeatingPlan plan;
  private final Map<String, String> switchedOff;
  private final List<Finding> findings = new ArrayList<>();
  private final Map<Missing, List<HeatingRule>> missing = new LinkedHashMap<>();
  private final Map<String, List<HeatingRule>> notAsked = new LinkedHashMap<>();
  private final List<NotAssessed> notAssessed = new ArrayList<>();

  Reviewing(HeatingPlan plan, Map<String, String> switchedOff) {
    this.plan = plan;
    this.switchedOff = switchedOff;
  }

  HeatingReview review(Collection<HeatingRule> rules) {
    rules.forEach(this::apply);
    missing.forEach((datum, by) -> notAssessed.add(new NotAssessed(datum, by, plan.limits())));
    return new HeatingReview(
        plan,
        findings.stream().sorted().toList(),
        notAssessed.stream().sorted().toList(),
        notAsked.entrySet().stream()
            .map(e -> new NotAsked(e.getKey(), e.getValue()))
            .sorted()
            .toList(),
        switchedOff);
  }

  @SuppressWarnings("CatchingUnchecked") // one rule that fails must not silence the others
  private void apply(HeatingRule rule) {
    RuleOutcome outcome;
    try {
      outcome = rule.review(plan);
    } catch (Exception | StackOverflowError | AssertionError | LinkageError e) {
      failed(rule, told(e));
      return;
    }
    if (outcome == null) {
      failed(rule, "null");
    } else {
      take(rule, outcome);
    }
  }

  /** What went wrong; its kind alone if even telling it fails. */
  @SuppressWarnings("CatchingUnchecked")
  private static String told(Throwable failure) {
    try {
      return failure.toString();
    } catch (RuntimeException e) {
      return failure.getClass().getName();
    }
  }

  /** What was switched off with a reason blocks nothing, even by failing. */
  private void failed(HeatingRule rule, String failure) {
    if (switchedOff.containsKey(rule.info().id())) {
      return;
    }
    notAssessed.add(NotAssessed.ofFailed(rule, failure, plan.limits()));
  }

  private void take(HeatingRule rule, RuleOutcome outcome) {
    if (outcome.isFound() && !switchedOff.containsKey(rule.info().id())) {
      findings.add(new Finding(rule, outcome, plan.limits()));
    }
    for (Missing datum : outcome.missing()) {
      missing.computeIfAbsent(datum, d -> new ArrayList<>()).add(rule);
    }
    for (String what : outcome.notAsked()) {
      notAsked.computeIfAbsent(what, w -> new ArrayList<>()).add(rule);
    }
  }
}
