// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import java.util.Optional;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.safety.heating.BindingTemperature;
import org.meltwright.safety.heating.BindingTemperature.Basis;
import org.meltwright.safety.heating.Finding;
import org.meltwright.safety.heating.HeatingReview;
import org.meltwright.units.TemperaturePoint;

/** What a file says that was read, whether the review goes by it, and what is a lower bound. */
final class Readings {

  private Readings() {}

  /** The reading in the wax, where a review goes by another temperature or by none. */
  static Optional<TemperaturePoint> setAside(HeatingReview review) {
    return review.bindingTemperature().filter(Readings::isReadInWax).isPresent()
        ? Optional.empty()
        : review.plan().liquidReading();
  }

  private static boolean isReadInWax(BindingTemperature wax) {
    return wax.basis() == Basis.LIQUID_MEASURED || wax.basis() == Basis.LIQUID_ON_PALETTE;
  }

  /** What a finding on the floor of a pot does not say: that the floor may be hotter. */
  static Optional<String> lowerBound(HeatingReview review, Finding finding, Say say) {
    return review
        .potFloor()
        .filter(floor -> !floor.isKnown() && finding.ruleId().startsWith("pot-floor"))
        .map(floor -> say.words("finding.at-least", "low", say.atLeast(floor.value())));
  }

  /** What a review goes by in place of the reading, in words. */
  static String inItsPlace(HeatingReview review, Say say) {
    return review
        .bindingTemperature()
        .map(t -> say.temperature(t.value()) + ", " + t.basis().text(say.locale()))
        .orElseGet(() -> say.words("none"));
  }
}
