// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.List;
import org.meltwright.safety.heating.HeatingRule;

/** All rules of this library. */
public final class StandardRules {

  private StandardRules() {}

  /**
   * Returns one of each rule.
   *
   * @return the rules
   */
  public static List<HeatingRule> all() {
    return List.of(
        new Darkening(),
        new AboveTarget(),
        new HardCeiling(),
        new Fume(),
        new FlashMargin(),
        new WarmPotFloor(),
        new HotPotFloor(),
        new EstimatedTemperature(),
        new MissingTemperature(),
        new OilPaintNoted(),
        new OilPaintSoft(),
        new OilPaintTooMuch(),
        new WaterInPot(),
        new Acrylic(),
        new Solvent(),
        new PlasticLinedCan(),
        new LowHeatWaxUnderFlame(),
        new VesselTooFull(),
        new VesselOverflows());
  }
}
