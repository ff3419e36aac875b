// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/** Limits for eye damage and irritation, to which what corrodes the skin adds as well. */
final class EyeLadder {

  private EyeLadder() {}

  static OptionalDouble limit(SubstanceHazards s, Category level, ClassRule rule) {
    return level == Category.ONE ? damage(s, rule) : irritation(s, level, rule);
  }

  /** Tells whether the substance damages the eye, by its own category or as corrosive to skin. */
  static boolean damages(SubstanceHazards s) {
    return s.claims(HazardClass.EYE, Effect.WHOLE).stream()
            .anyMatch(c -> c.category() == Category.ONE)
        || s.claims(HazardClass.SKIN, Effect.WHOLE).stream().anyMatch(c -> c.category().isOne());
  }

  /** Its own limit; else where its own irritation limit ends; else the general one. */
  private static OptionalDouble damage(SubstanceHazards s, ClassRule rule) {
    OptionalDouble own = own(s, Category.ONE);
    if (own.isPresent() || !damages(s)) {
      return own;
    }
    OptionalDouble endOfIrritation =
        eyeLimits(s).stream().flatMapToDouble(l -> l.belowPercent().stream()).max();
    return endOfIrritation.isPresent() ? endOfIrritation : generalDamage(s, rule);
  }

  private static OptionalDouble generalDamage(SubstanceHazards s, ClassRule rule) {
    OptionalDouble ownCorrosion =
        LimitLadder.lowest(
            s.limits(HazardClass.SKIN, Effect.WHOLE).stream().filter(l -> l.category().isOne()));
    return DoubleStream.concat(
            ownCorrosion.stream(), rule.limit(Category.ONE, Category.ONE, null).stream())
        .min();
  }

  private static OptionalDouble irritation(SubstanceHazards s, Category level, ClassRule rule) {
    OptionalDouble own = own(s, level);
    if (own.isPresent()) {
      return own;
    }
    if (damages(s)) {
      return DoubleStream.concat(
              damage(s, rule).stream(), rule.limit(Category.ONE, level, null).stream())
          .min();
    }
    return s.claims(HazardClass.EYE, Effect.WHOLE).stream()
        .flatMapToDouble(c -> rule.limit(rule.asKnown(c.category()), level, null).stream())
        .min();
  }

  private static OptionalDouble own(SubstanceHazards s, Category category) {
    return LimitLadder.lowest(eyeLimits(s).stream().filter(l -> l.category() == category));
  }

  private static List<SpecificLimit> eyeLimits(SubstanceHazards s) {
    return s.limits(HazardClass.EYE, Effect.WHOLE);
  }
}
