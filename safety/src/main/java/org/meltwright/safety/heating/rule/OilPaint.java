// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.mixture.Composition;
import org.meltwright.safety.heating.RuleOutcome;
import org.meltwright.units.Limit;
import org.meltwright.units.MassFraction;

/** The share of oil paint in a mix. */
final class OilPaint {

  private OilPaint() {}

  /** Returns a finding if the share of oil paint reaches one limit and not the next. */
  static RuleOutcome review(Composition mix, double from, double below) {
    MassFraction share = Mix.share(mix, Mix.family(MaterialFamily.OIL_PAINT));
    boolean within = Limit.reaches(share.value(), from) && !Limit.reaches(share.value(), below);
    return RuleOutcome.foundIf(within).with("paint", share);
  }
}
