// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/** Limits for eye damage and irritation, to which what corrodes the skin adds as well. */
final class EyeLadder {

  private EyeLadder() {}

  static OptionalDouble limit(SubstanceHazards s, String level, ClassRule rule) {
    return level.equals("1") ? damage(s, rule) : irritation(s, rule);
  }

  /** Tells whether the substance damages the eye, by its own category or as corrosive to skin. */
  static boolean damages(SubstanceHazards s) {
    return s.claims(HazardClass.EYE, "").stream().anyMatch(c -> c.category().equals("1"))
        || s.claims(HazardClass.SKIN, "").stream().anyMatch(c -> c.category().startsWith("1"));
  }

  /** Its own limit; else where its own irritation limit ends; else the general one. */
  private static OptionalDouble damage(SubstanceHazards s, ClassRule rule) {
    OptionalDouble own = own(s, "1");
    if (own.isPresent() || !damages(s)) {
      return own;
    }
    OptionalDouble endOfIrritation =
        eyeLimits(s).stream()
            .filter(l -> l.belowPercent() < Double.POSITIVE_INFINITY)
            .mapToDouble(SpecificLimit::belowPercent)
            .max();
    return endOfIrritation.isPresent() ? endOfIrritation : generalDamage(s, rule);
  }

  private static OptionalDouble generalDamage(SubstanceHazards s, ClassRule rule) {
    OptionalDouble ownCorrosion =
        LimitLadder.lowest(
            s.limits(HazardClass.SKIN, "").stream().filter(l -> l.category().startsWith("1")));
    return DoubleStream.concat(ownCorrosion.stream(), rule.limit("1", "1", null).stream()).min();
  }

  private static OptionalDouble irritation(SubstanceHazards s, ClassRule rule) {
    OptionalDouble own = own(s, "2");
    if (own.isPresent()) {
      return own;
    }
    if (damages(s)) {
      return DoubleStream.concat(damage(s, rule).stream(), rule.limit("1", "2", null).stream())
          .min();
    }
    boolean irritates =
        s.claims(HazardClass.EYE, "").stream().anyMatch(c -> c.category().equals("2"));
    return irritates ? rule.limit("2", "2", null) : OptionalDouble.empty();
  }

  private static OptionalDouble own(SubstanceHazards s, String category) {
    return LimitLadder.lowest(eyeLimits(s).stream().filter(l -> l.category().equals(category)));
  }

  private static List<SpecificLimit> eyeLimits(SubstanceHazards s) {
    return s.limits(HazardClass.EYE, "");
  }
}
