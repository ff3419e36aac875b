// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import static org.meltwright.safety.heating.HeatingProblem.CHECK;

import org.meltwright.core.source.Source;

/**
 * What a rule says of itself: id, severity, whether it blocks, whether it can be switched off, what
 * it is about, and what it rests on.
 *
 * <p>For example:
 *
 * <pre>{@code
 * RuleInfo ceiling = HeatingRules.standard().find("hard-ceiling").get().info();
 * ceiling.severity(); // DANGER
 * ceiling.topic(); // UPPER_LIMIT
 * ceiling.blocking(); // true
 * ceiling.fixed(); // true
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param id the stable id, lower case and hyphens, for example {@code hard-ceiling}
 * @param severity how badly what it finds may end
 * @param topic what it is about
 * @param blocking whether the work must not go on until its finding is gone
 * @param fixed whether it can never be switched off
 * @param source what it rests on; a trade rule rests on {@link Source#COMMON_PRACTICE}
 */
public record RuleInfo(
    String id, Severity severity, Topic topic, boolean blocking, boolean fixed, Source source) {

  /** What a rule is about. */
  public enum Topic {
    /** An upper limit of temperature: hotter never makes it milder. */
    UPPER_LIMIT,
    /** Melting, dissolving, the temperatures between which one can work. */
    WORKING,
    /** What is in the pot. */
    MIX,
    /** A pigment that heat or breath turns into a poison. */
    PIGMENT,
    /** The vessel and how full it is. */
    VESSEL,
    /** Tools that heat. */
    TOOL,
    /** Who works, and what stands near. */
    PLACE
  }

  /** Draws a problem if the id is blank. */
  public RuleInfo {
    CHECK.named(id, "id of a rule");
  }

  /**
   * Returns what a rule says of itself that neither blocks nor is fixed.
   *
   * @param id the stable id
   * @param severity how badly what it finds may end
   * @param topic what it is about
   * @param source what it rests on
   * @return the information
   */
  public static RuleInfo of(String id, Severity severity, Topic topic, Source source) {
    return new RuleInfo(id, severity, topic, false, false, source);
  }

  /**
   * Returns a copy that blocks.
   *
   * @return the new information
   */
  public RuleInfo asBlocking() {
    return new RuleInfo(id, severity, topic, true, fixed, source);
  }

  /**
   * Returns a copy that can never be switched off.
   *
   * @return the new information
   */
  public RuleInfo asFixed() {
    return new RuleInfo(id, severity, topic, blocking, true, source);
  }
}
