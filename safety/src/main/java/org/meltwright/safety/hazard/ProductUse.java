// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

/**
 * What a product is meant for, as far as it decides which law it is labelled by.
 *
 * <p>A balm for the skin is a cosmetic: the label says first that it is not for it.
 *
 * <pre>{@code
 * RuleSet rules = RuleSet.clpOn(LocalDate.of(2026, 6, 1));
 * HazardMixture balm = HazardMixture.builder(rules).cas("8012-89-3", 100).build();
 * LabelDetails details = LabelDetails.builder().use(ProductUse.ON_THE_SKIN).build();
 * HazardLabel label = HazardLabel.of(HazardReview.of(balm, rules), details);
 * label.gaps().get(0); // OTHER_LAW
 * label.isComplete(); // false
 * }</pre>
 */
public enum ProductUse {
  /** On skin, hair, lips or nails, such as a balm or a salve: a cosmetic. */
  ON_THE_SKIN,
  /** Anything else, such as a paint, a candle or a polish. */
  NOT_ON_THE_SKIN
}
