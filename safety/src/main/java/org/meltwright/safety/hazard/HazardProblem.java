// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import org.meltwright.units.ProblemCode;

/**
 * The problems that classification and labels report.
 *
 * <p>A day before the law that is held here:
 *
 * <pre>{@code
 * RuleSet.clpOn(LocalDate.of(2026, 4, 30)); // throws ProblemException
 * Problem problem =
 *     Problem.of(HazardProblem.DAY_TOO_EARLY, "2026-04-30").with("first", "2026-05-01");
 * problem.allowed(Locale.ENGLISH); // 2026-05-01 or later
 * problem.remedy(Locale.ENGLISH); // Ask for a later day;…
 * }</pre>
 */
public enum HazardProblem implements ProblemCode {
  /** A day before the rules that are held here. */
  DAY_TOO_EARLY("hazard.day-too-early"),
  /** A classification, limit or estimate that cannot be read. */
  NOTATION("hazard.notation"),
  /** A unique formula identifier that is not written as the law writes it. */
  UFI("hazard.ufi"),
  /** A class of which neither kinds nor label elements are held here. */
  KINDS_NOT_HELD("hazard.kinds-not-held"),
  /** A mixture that was put together by the rules of another day. */
  OTHER_DAY("hazard.other-day"),
  /** A category that the class does not have, or a statement that is not the category's. */
  CATEGORY("hazard.category"),
  /** A concentration limit that no mixture can reach, or that lies out of order. */
  LIMIT("hazard.limit"),
  /** An M-factor below 1. */
  FACTOR("hazard.factor"),
  /** An acute toxicity estimate that is not above zero. */
  ESTIMATE("hazard.estimate"),
  /** A vapour pressure or molar mass that is not above zero. */
  VAPOUR_PRESSURE("hazard.vapour-pressure"),
  /** The share of a metal outside 0 to 1. */
  METAL_SHARE("hazard.metal-share"),
  /** A supplement that the law does not have. */
  SUPPLEMENT("hazard.supplement"),
  /** A pH that cannot be. */
  PH("hazard.ph"),
  /** A viscosity that is not above zero. */
  VISCOSITY("hazard.viscosity"),
  /** An acid or alkaline reserve below zero. */
  RESERVE("hazard.reserve"),
  /** A viscosity at 40 °C of what is solid or a gas there. */
  STATE_AGAINST_VISCOSITY("hazard.state-against-viscosity"),
  /** The content of a pack that is not above zero. */
  PACK("hazard.pack"),
  /** A share outside 0 to 100 %. */
  SHARE("hazard.share"),
  /** A rule file, or a line of it, that is too long. */
  RULE_SIZE("hazard.rule-size"),
  /** A line of a rule file with too few or too many columns, or without a paragraph. */
  RULE_COLUMNS("hazard.rule-columns"),
  /** A word in a rule file that is not known. */
  RULE_WORD("hazard.rule-word"),
  /** A number in a rule file that cannot be. */
  RULE_NUMBER("hazard.rule-number"),
  /** A day in a rule file that cannot be read, or lies out of order. */
  RULE_DATE("hazard.rule-date"),
  /** What a rule file says twice for one day. */
  RULE_TWICE("hazard.rule-twice"),
  /** What a rule file does not say. */
  RULE_MISSING("hazard.rule-missing"),
  /** A share whose low end lies above its high end. */
  SHARE_RANGE("hazard.share-range"),
  /** A data sheet for what the mixture does not hold. */
  NO_SUCH_INGREDIENT("hazard.no-such-ingredient"),
  /** Shares that leave part of the mixture unsaid, or exceed it. */
  SHARES("hazard.shares"),
  /** A label by rules that know a classification only. */
  NO_LABEL_BY_THESE_RULES("hazard.no-label-by-these-rules"),
  /** Hours of what is not inhaled. */
  NOT_INHALED("hazard.not-inhaled"),
  /** The finding of a class that the rules do not compute. */
  CLASS_NOT_COMPUTED("hazard.class-not-computed"),
  /** A pigment whose reason has no text. */
  PIGMENT_REASON("hazard.pigment-reason"),
  /** A note of the law that no condition lifts. */
  NOTE("hazard.note"),
  /** A class that is worked out from the ingredients, or one unknown, stated from a test. */
  NOT_FOR_TEST("hazard.not-for-test");

  private final String id;

  HazardProblem(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
