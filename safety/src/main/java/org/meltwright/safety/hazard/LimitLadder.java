// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * From which share an ingredient alone takes the mixture to a category: its own limit where it has
 * one, else the general one.
 */
final class LimitLadder {

  private final ClassRule rule;
  private final Effect effect;
  private final @Nullable PhysicalState state;

  LimitLadder(ClassRule rule, Effect effect, @Nullable PhysicalState state) {
    this.rule = rule;
    this.effect = effect;
    this.state = state;
  }

  ClassRule rule() {
    return rule;
  }

  /** The limit in per cent; empty if the ingredient never leads to this level by itself. */
  OptionalDouble limit(SubstanceHazards s, Category level) {
    return switch (rule.hazardClass()) {
      case SKIN -> skin(s, level);
      case EYE -> EyeLadder.limit(s, level, rule);
      case AQUATIC_ACUTE -> general(s, level, factor(s.acuteFactor()));
      case AQUATIC_CHRONIC ->
          general(s, level, level == Category.FOUR ? 1 : factor(s.chronicFactor()));
      default -> ownElseGeneral(s, level);
    };
  }

  /** The lowest limit of those that its effects have for a level. */
  OptionalDouble limitOfAnyEffect(SubstanceHazards s, Category level) {
    return Stream.of(Effect.values())
        .filter(e -> e != Effect.WHOLE)
        .flatMapToDouble(e -> new LimitLadder(rule, e, state).limit(s, level).stream())
        .min();
  }

  private static double factor(OptionalDouble stated) {
    return stated.orElse(1);
  }

  /**
   * A substance with a limit of its own for its category is held against nothing else in the class;
   * limits of its own for graver or milder categories alone take nothing from the general one.
   */
  private OptionalDouble ownElseGeneral(SubstanceHazards s, Category level) {
    List<SpecificLimit> own = s.limits(rule.hazardClass(), effect);
    OptionalDouble ownLimit = lowest(own.stream().filter(l -> l.category() == level));
    return coversItsCategory(s, own)
        ? ownLimit
        : DoubleStream.concat(ownLimit.stream(), general(s, level, 1).stream()).min();
  }

  private boolean coversItsCategory(SubstanceHazards s, List<SpecificLimit> own) {
    return covers(s, rule.hazardClass(), effect, own);
  }

  /** Whether it has categories in a class, and each has a limit of its own. */
  static boolean covers(SubstanceHazards s, HazardClass c, List<SpecificLimit> own) {
    return covers(s, c, Effect.WHOLE, own);
  }

  private static boolean covers(
      SubstanceHazards s, HazardClass c, Effect effect, List<SpecificLimit> own) {
    List<Claim> claims = s.claims(c, effect);
    return !claims.isEmpty()
        && claims.stream()
            .allMatch(claim -> own.stream().anyMatch(l -> l.category() == claim.category()));
  }

  private OptionalDouble general(SubstanceHazards s, Category level, double factor) {
    return s.claims(rule.hazardClass(), effect).stream()
        .map(c -> rule.asKnown(c.category()))
        .flatMapToDouble(
            c -> {
              double m = c == Category.ONE ? factor : 1;
              return rule.limit(c, level, state).stream().map(x -> x / m);
            })
        .min();
  }

  /**
   * Corrosion and irritation: an own limit at the level, or for its category and above the level,
   * prevails; where only corrosion has one, irritation begins at the lower of it and the general
   * limit, as does corrosion where only a graver category has one.
   */
  private OptionalDouble skin(SubstanceHazards s, Category level) {
    List<SpecificLimit> own = s.limits(HazardClass.SKIN, Effect.WHOLE);
    OptionalDouble ownLimit =
        lowest(own.stream().filter(l -> rule.rank(l.category()) <= rule.rank(level)));
    boolean prevails =
        own.stream().anyMatch(l -> l.category() == level)
            || (level != Category.TWO && coversItsCategory(s, own));
    return ownLimit.isPresent() && prevails
        ? ownLimit
        : DoubleStream.concat(ownLimit.stream(), general(s, level, 1).stream()).min();
  }

  static OptionalDouble lowest(Stream<SpecificLimit> limits) {
    return limits.mapToDouble(SpecificLimit::fromPercent).min();
  }
}
