// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.List;
import java.util.Optional;

/**
 * The arithmetic of one answer: what is added up and what it is held against.
 *
 * <p>Five per cent of an irritant is half of the limit of 10 %, seven per cent more is above it:
 *
 * <pre>{@code
 * RuleSet rules = RuleSet.clpOn(LocalDate.of(2026, 6, 1));
 * SubstanceHazards soap = SubstanceHazards.builder("soap").classified("Skin Irrit. 2 H315").build();
 * SubstanceHazards salt = SubstanceHazards.builder("salt").classified("Skin Irrit. 2 H315").build();
 * HazardMixture mixture =
 *     HazardMixture.builder(rules).substance(soap, 5).substance(salt, 7).restNotClassified().build();
 * Working skin =
 *     HazardReview.of(mixture, rules).finding(HazardClass.SKIN).workings().get(0);
 * skin.kind(); // SUM
 * skin.level(); // 2
 * skin.value(); // 1.2
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param kind how the shares combine
 * @param category the category that the sum is held against; empty for an estimate
 * @param form the form of uptake of an estimate; empty for a sum of shares
 * @param value the sum, or the acute toxicity estimate of the mixture in the form's unit
 * @param unknownPercent the share of ingredients of which nothing is known, in per cent
 * @param contributions what each ingredient adds
 */
public record Working(
    Kind kind,
    Optional<Category> category,
    Optional<UptakeForm> form,
    double value,
    double unknownPercent,
    List<Contribution> contributions) {

  /** How shares combine. */
  public enum Kind {
    /** The sum of share divided by limit. */
    SUM,
    /** The share of one ingredient divided by its limit. */
    HIGHEST,
    /** The acute toxicity estimate by the formula. */
    ACUTE,
    /** The acute toxicity estimate, corrected for what is unknown. */
    ACUTE_CORRECTED
  }

  public Working {
    contributions = List.copyOf(contributions);
  }

  static Working of(Kind kind, Category category, double value, List<Contribution> contributions) {
    return new Working(kind, Optional.of(category), Optional.empty(), value, 0, contributions);
  }

  static Working of(
      Kind kind, UptakeForm form, double value, double unknown, List<Contribution> contributions) {
    return new Working(kind, Optional.empty(), Optional.of(form), value, unknown, contributions);
  }

  /**
   * Returns what it is reckoned for.
   *
   * @return the category, such as "1B", or the form of uptake, such as "oral"
   */
  public String level() {
    return category.map(Category::id).or(() -> form.map(UptakeForm::id)).orElse("");
  }

  boolean isEstimate() {
    return form.isPresent();
  }
}
