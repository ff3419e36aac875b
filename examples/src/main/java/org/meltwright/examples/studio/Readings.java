// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import java.util.Optional;
import org.meltwright.examples.page.Say;
import org.meltwright.safety.heating.BindingTemperature;
import org.meltwright.safety.heating.BindingTemperature.Basis;
import org.meltwright.safety.heating.HeatingReview;
import org.meltwright.units.TemperaturePoint;

/** What a file says that a thermometer shows, and whether the review goes by it. */
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

  /** What a review goes by in place of the reading, in words. */
  static String inItsPlace(HeatingReview review) {
    return review
        .bindingTemperature()
        .map(t -> Say.temperature(t.value()) + ", " + Words.of(t.basis()).replace('-', ' '))
        .orElse("none");
  }
}
