// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.Messages;

/**
 * What nobody mentioned, though a rule would look at it: it has no severity, and is said in one
 * line, once for all pots of a sheet.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * HeatingReview review = HeatingRules.standard().review(HeatingPlan.of(Composition.of(wax)));
 * NotAsked room =
 *     review.notAsked().stream().filter(n -> n.id().equals("room")).findFirst().get();
 * room.ruleIds(); // [air-changes, no-air]
 * NotAsked.line(List.of(room), Locale.ENGLISH); // Not asked: the room and its air.
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class NotAsked implements Comparable<NotAsked> {

  private final String id;
  private final List<HeatingRule> rules;

  NotAsked(String id, List<HeatingRule> rules) {
    this.id = id;
    this.rules = rules;
  }

  /**
   * Says in one line what nobody mentioned in one or several reviews.
   *
   * @param entries what was not asked, in any order; each thing is said once
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return one sentence; empty text if there is nothing
   */
  public static String line(Collection<NotAsked> entries, Locale locale) {
    String things =
        entries.stream()
            .sorted(Comparator.comparing(NotAsked::id))
            .map(entry -> entry.text(locale))
            .distinct()
            .collect(Collectors.joining("; "));
    return things.isEmpty()
        ? ""
        : Messages.beside(NotAsked.class).text("not-asked.line", locale, Map.of("things", things));
  }

  /**
   * Returns the id of what was not mentioned.
   *
   * @return for example {@code room}, or the id of a circumstance
   */
  public String id() {
    return id;
  }

  /**
   * Returns the rules that would look at it.
   *
   * @return their ids, in order
   */
  public List<String> ruleIds() {
    return rules.stream().map(rule -> rule.info().id()).toList();
  }

  /**
   * Says what was not mentioned.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return one phrase, for example "whether somebody stays with the hot wax"
   */
  public String text(Locale locale) {
    return RuleTexts.notAsked(rules, id, locale);
  }

  @Override
  public int compareTo(NotAsked other) {
    return id.compareTo(other.id);
  }

  /**
   * Compares id and rules.
   *
   * @param other the other object
   * @return whether both say the same
   */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof NotAsked that && id.equals(that.id) && ruleIds().equals(that.ruleIds());
  }

  @Override
  public int hashCode() {
    return id.hashCode() * 31 + ruleIds().hashCode();
  }

  @Override
  public String toString() {
    return "not asked " + ruleIds() + ": " + text(Locale.ENGLISH);
  }
}
